/// What stands in the window when there is no record to show: what to do first, what is being read,
/// why a file was refused.
#pragma once

#include "core/record/record.h"

#include <QWidget>

class QAction;
class QBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;
class QTimer;

namespace afterbeat::window {

class Session;

/// A button that does what an action does, and says its key.
[[nodiscard]] QPushButton* buttonFor(QAction* action, QWidget* parent);

/// A calm column of text in the middle of the window.
class Page : public QWidget {
  Q_OBJECT

public:
  static constexpr int kColumnWidth = 620;
  explicit Page(QWidget* parent = nullptr, int columnWidth = kColumnWidth);

protected:
  void changeEvent(QEvent* event) override;
  QLabel* addHeading(const QString& text);
  QLabel* addSentence(const QString& text);
  QBoxLayout* column_;

private:
  void restyle();
  QLabel* heading_ = nullptr;
};

/// Nothing is open: what to do first.
class WelcomePage final : public Page {
  Q_OBJECT

public:
  WelcomePage(QAction* open, QAction* openFolder, QAction* withoutRecording, QAction* compare,
              QWidget* parent = nullptr);
  /// Up to four buttons for files opened lately.
  void showRecent(const QStringList& paths);

signals:
  void openRecent(const QString& path);

private:
  QLabel* recentHeading_;
  QList<QPushButton*> recent_;
};

/// A file is being read.
class LoadingPage final : public Page {
  Q_OBJECT

public:
  explicit LoadingPage(Session& session, QAction* stop, QWidget* parent = nullptr);

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  Session& session_;
  QLabel* name_;
  QProgressBar* bar_;
  QLabel* share_;
  QTimer* tick_;
};

/// A file was refused: what happened, what was kept, what to do next.
class RefusalPage final : public Page {
  Q_OBJECT

public:
  /// `instead`: what can be done with another file, or without one.
  RefusalPage(Session& session, const QList<QAction*>& madeUp, const QList<QAction*>& instead,
              QWidget* parent = nullptr);
  [[nodiscard]] QString asText() const;

private:
  void refresh();
  Session& session_;
  QLabel *name_, *happened_, *kept_, *next_;
  QList<QPushButton*> anyway_;
};

} // namespace afterbeat::window
