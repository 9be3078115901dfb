#include "app/window/look/language.h"

#include "app/papers/words.h"
#include "app/window/look/remembered.h"

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace afterbeat::window {

namespace {

const QString kEnglish = QStringLiteral("en");

/// The language's own name for itself, with a capital: "Deutsch".
QString ownName(const QString& code) {
  QString name = QLocale(code).nativeLanguageName();
  // "American English" where the code alone is given.
  if (code == kEnglish) {
    name = QStringLiteral("English");
  }
  return name.isEmpty() ? code : name.left(1).toUpper() + name.mid(1);
}

} // namespace

QStringList spokenLanguages() {
  return QStringList{kEnglish} + papers::languages();
}

QString languageFor(const QString& chosen, const QStringList& ofSystem) {
  const QStringList spoken = spokenLanguages();
  for (const QString& wanted : QStringList{chosen} + ofSystem) {
    const QString code = wanted.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
    if (spoken.contains(code)) {
      return code;
    }
  }
  return kEnglish;
}

void speak(const QString& language) {
  QLocale locale(language == kEnglish ? QStringLiteral("en_GB") : language);
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  QLocale::setDefault(locale);
  if (language == kEnglish) {
    return;
  }
  auto* ofQt = new QTranslator(QCoreApplication::instance());
  if (ofQt->load(QStringLiteral("qtbase_%1").arg(language),
                 QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
    QCoreApplication::installTranslator(ofQt);
  }
  auto* own = new QTranslator(QCoreApplication::instance());
  if (papers::loadLanguage(*own, language)) {
    QCoreApplication::installTranslator(own);
  }
}

LanguageActions::LanguageActions(QObject* parent) : QObject(parent) {
  auto* group = new QActionGroup(this);
  add(tr("As the &system"), 1, {});
  int number = 1;
  for (const QString& code : spokenLanguages()) {
    add(QLatin1Char('&') + ownName(code), ++number, code);
  }
  for (QAction* action : actions_) {
    group->addAction(action);
  }
}

QString LanguageActions::chosen() {
  return remembered::text(QStringLiteral("language"));
}

void LanguageActions::add(const QString& text, int number, const QString& code) {
  auto* action = new QAction(text, this);
  action->setShortcut(QKeySequence(QStringLiteral("Ctrl+L, %1").arg(number)));
  action->setCheckable(true);
  action->setChecked(code == chosen());
  connect(action, &QAction::triggered, this, [this, code] {
    remembered::setText(QStringLiteral("language"), code);
    emit chose(tr("The language changes when Afterbeat is started the next time."));
  });
  actions_ << action;
}

} // namespace afterbeat::window
