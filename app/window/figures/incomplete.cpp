#include "app/window/figures/incomplete.h"

#include "app/papers/facts.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

} // namespace

Incomplete incompleteOf(const Record& record, const Figures& figures) {
  return {papers::brokeOffAt(record, figures), papers::lostLines(record)};
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
