#include "app/papers/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cmath>

namespace afterbeat::papers {
namespace {

QString dayOf(std::chrono::sys_days day, const Words& say) {
  const QDate date = QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
  return QLocale(say.language()).toString(date, say(QT_TRANSLATE_NOOP("Papers", "d MMM yyyy")));
}

struct PartWords {
  const Words& say;
  QString operator()(const Amount& amount) const { return said(amount, say); }
  QString operator()(MeasureId id) const { return titleOf(id, say); }
  QString operator()(std::chrono::sys_days day) const { return dayOf(day, say); }
  QString operator()(const DayOrMonth& day) const {
    return day.monthOnly
               ? QLocale(say.language())
                     .toString(QDate(1970, 1, 1).addDays(day.day.time_since_epoch().count()),
                               QStringLiteral("MMM yyyy"))
               : dayOf(day.day, say);
  }
  QString operator()(const Term& term) const { return say(std::string(term.english).c_str()); }
  QString operator()(const std::string& text) const { return plainText(text); }
};

/// Below a minute with a tenth, as a pause is told.
QString lengthOf(double length, const Words& say) {
  if (std::fabs(length) < 60) {
    return say(QT_TRANSLATE_NOOP("Papers", "%1 s")).arg(say.number(length, 1));
  }
  return say.length(Duration{std::llround(length * 1e6)});
}

} // namespace

QString said(const Amount& amount, const Words& say) {
  switch (amount.kind) {
  case AmountKind::plain:
  case AmountKind::count:
    return say.plainNumber(amount.value);
  case AmountKind::share:
    return say.percent(amount.value);
  case AmountKind::seconds:
    return lengthOf(amount.value, say);
  case AmountKind::perMinute:
    return say(QT_TRANSLATE_NOOP("Papers", "%1 a minute")).arg(say.number(amount.value, 1));
  case AmountKind::millimetres:
    return QStringLiteral("%1 mm").arg(say.number(amount.value, 1));
  case AmountKind::joules:
    return QStringLiteral("%1 J").arg(say.number(amount.value));
  }
  return {};
}

QString said(const Saying& saying, const Words& say) {
  const QString text = say(std::string(saying.english).c_str());
  QString filled;
  // All places in one pass: what stands in one of them may hold "%2" itself.
  for (qsizetype i = 0; i < text.size(); ++i) {
    const bool place = text[i] == QLatin1Char('%') && i + 1 < text.size();
    const int number = place ? text[i + 1].digitValue() : 0;
    if (number >= 1 && static_cast<std::size_t>(number) <= saying.parts.size()) {
      filled += std::visit(PartWords{say}, saying.parts[static_cast<std::size_t>(number - 1)]);
      ++i;
    } else {
      filled += text[i];
    }
  }
  return filled;
}

QString said(const std::vector<Saying>& sayings, const Words& say) {
  QStringList all;
  for (const Saying& saying : sayings) {
    all << said(saying, say);
  }
  return all.join(QLatin1Char(' '));
}

QString titleOf(MeasureId id, const Words& say) {
  return say(measureInfo(id).title.data());
}

QString definitionOf(MeasureId id, const Words& say) {
  return say(measureInfo(id).definition.data());
}

QString settingsOf(const FigureSettings& settings, const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "Pauses longer than %1 s  ·  %2  ·  to the %3"))
      .arg(say.plainNumber(seconds(settings.pauseThreshold)),
           plainText(say(settings.profile.name.c_str()).toStdString()),
           settings.windowEnd == WindowEnd::lastActivity
               ? say(QT_TRANSLATE_NOOP("Papers", "last activity"))
               : say(QT_TRANSLATE_NOOP("Papers", "end of the record")));
}

QString sourceOf(MeasureId id, const Words& say) {
  const MeasureInfo& info = measureInfo(id);
  // What has no source cannot have been read.
  return info.source == kCommonPractice
             ? say(QT_TRANSLATE_NOOP("Papers", "Definition: common practice, no source."))
             : say(QT_TRANSLATE_NOOP("Papers", "Definition: %1 (%2)."))
                   .arg(say(info.source.data()), say(markWords(info.mark).data()));
}

} // namespace afterbeat::papers
