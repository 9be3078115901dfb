#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// What was said, marked so; nothing said: a line for the pen and nothing beside it.
void put(SheetFigure& figure, const QString& value, const Words& say) {
  figure.value = value;
  figure.doubt.clear();
  figure.unknown = say(QT_TRANSLATE_NOOP("Papers", "fill in by pen"));
  figure.notes =
      value.isEmpty() ? QStringList() : QStringList{say(QT_TRANSLATE_NOOP("Papers", "as told"))};
}

QString lastShockWords(const ToldFigures& told, const Words& say) {
  if (!told.lastShockAt.isEmpty()) {
    return told.lastShockAt;
  }
  return told.shocks == 0 ? say(QT_TRANSLATE_NOOP("Papers", "none")) : QString();
}

SheetSection lines(const char* title, const QStringList& labels, const Words& say) {
  SheetSection section{say(title), {}};
  for (const QString& label : labels) {
    section.lines.push_back({SheetLine::Kind::blank, {}, label.split(QLatin1Char('\n'))});
  }
  return section;
}

} // namespace

void tell(SheetContent& content, const ToldFigures& told, bool drill, const Words& say) {
  content.hasRows = false;
  content.ticks.clear();
  content.rowsCaption.clear();
  content.recordLine.clear();
  if (drill) {
    content.subtitle = say(QT_TRANSLATE_NOOP("Papers", "Training: as told, without a recording"));
  } else {
    content.subtitle =
        say(QT_TRANSLATE_NOOP("Papers", "Cardiac arrest: as told, without a recording"));
  }
  put(content.figures[0],
      told.minutesOn ? say(QT_TRANSLATE_NOOP("Papers", "%1 min")).arg(say.number(*told.minutesOn))
                     : QString(),
      say);
  put(content.figures[1], told.shocks ? say.number(*told.shocks) : QString(), say);
  put(content.figures[2], lastShockWords(told, say), say);
  put(content.figures[3], settingValue(told.setting, say), say);
  put(content.figures[4], {}, say);
  put(content.figures[5], {}, say);

  const auto line = [&](std::initializer_list<const char*> labels) {
    QStringList words;
    for (const char* label : labels) {
      words << say(label);
    }
    return words.join(QLatin1Char('\n'));
  };
  const bool anything = std::any_of(content.figures.begin(), content.figures.end(),
                                    [](const SheetFigure& one) { return !one.value.isEmpty(); });
  content.notices = {
      anything
          ? say(QT_TRANSLATE_NOOP("Papers", "There is no recording. The large figures are as told "
                                            "by people who were there; nothing was measured."))
          : say(QT_TRANSLATE_NOOP("Papers", "There is no recording: everything is filled in by "
                                            "pen."))};
  content.sections = {
      lines(QT_TRANSLATE_NOOP("Papers", "Told by"),
            {line({QT_TRANSLATE_NOOP("Papers", "Name, role"), QT_TRANSLATE_NOOP("Papers", "At")})},
            say),
      lines(QT_TRANSLATE_NOOP("Papers", "Patient"),
            {line({QT_TRANSLATE_NOOP("Papers", "Name"), QT_TRANSLATE_NOOP("Papers", "Age")})}, say),
      lines(QT_TRANSLATE_NOOP("Papers", "Time"),
            {line({QT_TRANSLATE_NOOP("Papers", "Collapse at"),
                   QT_TRANSLATE_NOOP("Papers", "Call received at")}),
             line({QT_TRANSLATE_NOOP("Papers", "Device switched on at"),
                   QT_TRANSLATE_NOOP("Papers", "First shock at")})},
            say),
      lines(QT_TRANSLATE_NOOP("Papers", "What happened"),
            {line({QT_TRANSLATE_NOOP("Papers", "Seen by"),
                   QT_TRANSLATE_NOOP("Papers", "First help by")}),
             line({QT_TRANSLATE_NOOP("Papers", "What the device advised")})},
            say),
      lines(QT_TRANSLATE_NOOP("Papers", "Treatment"),
            {line({QT_TRANSLATE_NOOP("Papers", "Chest compressions from"),
                   QT_TRANSLATE_NOOP("Papers", "to")}),
             line({QT_TRANSLATE_NOOP("Papers", "Breaths, airway"),
                   QT_TRANSLATE_NOOP("Papers", "Medication")}),
             line({QT_TRANSLATE_NOOP("Papers", "Anything else given")})},
            say),
      lines(QT_TRANSLATE_NOOP("Papers", "Handed over"),
            {line({QT_TRANSLATE_NOOP("Papers", "To"), QT_TRANSLATE_NOOP("Papers", "At")})}, say),
  };
  content.notes = {say(QT_TRANSLATE_NOOP("Papers", "A ruled line stands for what is not known."))};
}

} // namespace afterbeat::papers
