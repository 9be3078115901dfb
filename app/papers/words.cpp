#include "app/papers/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QDir>
#include <QLocale>
#include <QStringList>
#include <QTranslator>

#include <array>
#include <cmath>
#include <memory>

/// Q_INIT_RESOURCE must stand outside every namespace; a static library needs it.
static void openLanguageResource() {
  Q_INIT_RESOURCE(afterbeat_languages);
}

namespace afterbeat::papers {

namespace {

/// Whole seconds, the half rounded away from zero.
long long wholeSeconds(Duration length) {
  return std::llround(seconds(length));
}

} // namespace

QString plainText(const std::string& text) {
  QString plain;
  bool rightToLeft = false;
  for (const QChar c : QString::fromStdString(text).simplified()) {
    const auto code = c.unicode();
    const bool direction = (code >= 0x202A && code <= 0x202E) ||
                           (code >= 0x2066 && code <= 0x2069) || code == 0x200E || code == 0x200F;
    if (direction || c.category() == QChar::Other_Control) {
      continue;
    }
    rightToLeft = rightToLeft || c.direction() == QChar::DirR || c.direction() == QChar::DirAL;
    plain += c;
  }
  constexpr QChar kIsolate(0x2068);
  constexpr QChar kEndIsolate(0x2069);
  return rightToLeft ? kIsolate + plain + kEndIsolate : plain;
}

bool loadLanguage(QTranslator& translator, const QString& language) {
  openLanguageResource();
  return translator.load(QStringLiteral(":/languages/afterbeat_%1.qm").arg(language));
}

QStringList languages() {
  openLanguageResource();
  QStringList codes;
  for (const QString& name : QDir(QStringLiteral(":/languages")).entryList(QDir::Files)) {
    codes << name.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
  }
  return codes;
}

Words::Words(Translate translate) : translate_(std::move(translate)) {}

QString inOwnLanguage(const char* english) {
  const QString found = QCoreApplication::translate("Papers", english);
  return found == QString::fromUtf8(english) ? QCoreApplication::translate("Measures", english)
                                             : found;
}

Words Words::inLanguage(const QString& language) {
  auto translator = std::make_shared<QTranslator>();
  if (!loadLanguage(*translator, language)) {
    return Words{};
  }
  return Words{[translator](const char* english) {
    for (const char* context : {"Papers", "Measures"}) {
      if (const QString found = translator->translate(context, english); !found.isEmpty()) {
        return found;
      }
    }
    return QString::fromUtf8(english);
  }};
}

QString Words::operator()(const char* english) const {
  return translate_ ? translate_(english) : QString::fromUtf8(english);
}

QString Words::language() const {
  //: The code of this language: "de" in German.
  return (*this)(QT_TRANSLATE_NOOP("Papers", "en"));
}

QString Words::number(double value, int decimals) const {
  QLocale locale(language());
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(value, 'f', decimals);
}

QString Words::plainNumber(double value) const {
  for (int decimals = 0; decimals < 2; ++decimals) {
    const double scale = std::pow(10.0, decimals);
    if (std::fabs(std::round(value * scale) / scale - value) < 1e-9) {
      return number(value, decimals);
    }
  }
  return number(value, 2);
}

QString Words::percent(double share) const {
  double whole = std::round(share * 100);
  if (share < 1 && whole >= 100) {
    whole = 99;
  }
  if (share > 0 && whole <= 0) {
    return (*this)(QT_TRANSLATE_NOOP("Papers", "less than 1 %"));
  }
  return (*this)(QT_TRANSLATE_NOOP("Papers", "%1 %")).arg(number(whole));
}

QString Words::length(Duration length) const {
  const Words& say = *this;
  if (length < Duration{0}) {
    return QStringLiteral("−") + this->length(-length);
  }
  if (length < Duration{1'950'000} && length.count() % 1'000'000 != 0) {
    return say(QT_TRANSLATE_NOOP("Papers", "%1 s")).arg(number(seconds(length), 1));
  }
  const long long all = wholeSeconds(length);
  if (all < 60) {
    return say(QT_TRANSLATE_NOOP("Papers", "%1 s")).arg(all);
  }
  if (all < 3600) {
    return all % 60 == 0
               ? say(QT_TRANSLATE_NOOP("Papers", "%1 min")).arg(all / 60)
               : say(QT_TRANSLATE_NOOP("Papers", "%1 min %2 s")).arg(all / 60).arg(all % 60);
  }
  return hours((all + 30) / 60);
}

QString Words::shortLength(Duration length) const {
  const long long all = wholeSeconds(length);
  if (all < 120) {
    return this->length(Duration{all * 1'000'000});
  }
  const long long minutes = (all + 30) / 60;
  if (minutes < 60) {
    return (*this)(QT_TRANSLATE_NOOP("Papers", "%1 min")).arg(minutes);
  }
  return hours(minutes);
}

QString Words::hours(long long minutes) const {
  return minutes % 60 == 0 ? (*this)(QT_TRANSLATE_NOOP("Papers", "%1 h")).arg(minutes / 60)
                           : (*this)(QT_TRANSLATE_NOOP("Papers", "%1 h %2 min"))
                                 .arg(minutes / 60)
                                 .arg(minutes % 60);
}

QString Words::date(const WallTime& time) const {
  const auto day = std::chrono::floor<std::chrono::days>(time.local());
  const std::chrono::year_month_day parts{day};
  const QDate date(int{parts.year()}, static_cast<int>(unsigned{parts.month()}),
                   static_cast<int>(unsigned{parts.day()}));
  //: How a date is written: weekday, day, month, year (Qt's letters).
  const QString format = (*this)(QT_TRANSLATE_NOOP("Papers", "dddd d MMMM yyyy"));
  return QLocale(language()).toString(date, format);
}

QString Words::clock(const WallTime& time) const {
  return QString::fromStdString(formatClock(time));
}

QString Words::list(const QStringList& parts) const {
  if (parts.size() < 2) {
    return parts.join(QString());
  }
  return (*this)(QT_TRANSLATE_NOOP("Papers", "%1 and %2"))
      .arg(parts.mid(0, parts.size() - 1).join(QStringLiteral(", ")), parts.last());
}

QString Words::count(int number) const {
  static constexpr std::array kWords{
      QT_TRANSLATE_NOOP("Papers", "no"),     QT_TRANSLATE_NOOP("Papers", "one"),
      QT_TRANSLATE_NOOP("Papers", "two"),    QT_TRANSLATE_NOOP("Papers", "three"),
      QT_TRANSLATE_NOOP("Papers", "four"),   QT_TRANSLATE_NOOP("Papers", "five"),
      QT_TRANSLATE_NOOP("Papers", "six"),    QT_TRANSLATE_NOOP("Papers", "seven"),
      QT_TRANSLATE_NOOP("Papers", "eight"),  QT_TRANSLATE_NOOP("Papers", "nine"),
      QT_TRANSLATE_NOOP("Papers", "ten"),    QT_TRANSLATE_NOOP("Papers", "eleven"),
      QT_TRANSLATE_NOOP("Papers", "twelve"),
  };
  const auto index = static_cast<std::size_t>(number);
  return number >= 0 && index < kWords.size() ? (*this)(kWords[index]) : QString::number(number);
}

} // namespace afterbeat::papers
