/// The language of the window: the system's, or the one the reader chose.
#pragma once

#include <QList>
#include <QObject>
#include <QStringList>

class QAction;

namespace afterbeat::window {

/// Codes of the languages that the program speaks: "en" first, then every translation that is built
/// in.
[[nodiscard]] QStringList spokenLanguages();

/// The language to speak: `chosen` where it is spoken, else the first of the system's ("de-AT",
/// "de_DE", "de") that is, else English.
[[nodiscard]] QString languageFor(const QString& chosen, const QStringList& ofSystem);

/// Installs the words of a language for the whole program, Qt's own dialogs included, and makes
/// numbers and dates follow it. To be called before the first widget is made.
void speak(const QString& language);

/// The entries of the menu that choose a language; the choice is remembered for the next start.
class LanguageActions final : public QObject {
  Q_OBJECT

public:
  explicit LanguageActions(QObject* parent = nullptr);
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
  /// What was remembered ("de"); empty: as the system.
  [[nodiscard]] static QString chosen();

signals:
  /// A sentence for the reader: when the choice takes effect.
  void chose(const QString& sentence);

private:
  void add(const QString& text, int number, const QString& code);
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
