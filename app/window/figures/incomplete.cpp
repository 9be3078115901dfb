#include "app/window/figures/incomplete.h"

#include "app/papers/facts.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// The log of a device that neither closed it nor was switched off; a person's notes just end.
bool stoppedWhileOn(const Record& record) {
  bool device = false, off = false;
  for (const Entry& entry : record.entries) {
    device = device || entry.source == Source::device;
    off = entry.complete<entry::PowerOff>() != nullptr ||
          (off && entry.complete<entry::PowerOn>() == nullptr);
  }
  return device && !off && !record.seal.present;
}

} // namespace

Incomplete incompleteOf(const Record& record, const Figures& figures) {
  const papers::ShockCount count = papers::countShocks(record, figures);
  Incomplete found;
  found.linesLost = papers::lostLines(record);
  if (!count.deviceRecorded || !stoppedWhileOn(record)) {
    return found;
  }
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && !entry.incomplete) {
      found.brokeOffAt = std::max(found.brokeOffAt.value_or(entry.t), entry.lastTime());
    }
  }
  return found;
}

QString incompleteWords(const Record& record, const Incomplete& what) {
  QStringList sentences;
  if (what.brokeOffAt) {
    sentences << tr("This recording broke off at %1. What came after is not in it: there may be "
                    "more shocks and more time than is shown.")
                     .arg(momentWords(record, *what.brokeOffAt));
  }
  if (what.linesLost == 1) {
    sentences << tr("One line of this recording could not be read: counts may be too low and "
                    "pauses shorter than shown.");
  } else if (what.linesLost > 1) {
    sentences << tr("%1 lines of this recording could not be read: counts may be too low and "
                    "pauses shorter than shown.")
                     .arg(words().number(what.linesLost));
  }
  return sentences.join(QLatin1Char(' '));
}

} // namespace afterbeat::window
