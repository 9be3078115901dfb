/// Ticks of a time axis: whole steps of the clock where there is one, else of the record's time.
#pragma once

#include "app/window/look/figure_words.h"
#include "core/record/record.h"

#include <qcustomplot.h>

namespace afterbeat::window {

class TimeTicker final : public QCPAxisTicker {
public:
  /// The record gives the clock; null: no labels.
  void setRecord(const Record* record);
  /// Ticks are at least this many axis seconds apart (so that labels have room).
  void setLeastStep(double seconds) { leastStep_ = seconds; }

protected:
  double getTickStep(const QCPRange& range) override;
  int getSubTickCount(double tickStep) override;
  QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;

private:
  std::optional<Moments> moments_;
  double leastStep_ = 0;
  double step_ = 1;
};

/// The step from a fixed list of round ones (0.1 s to 3 h) that is at least `least` seconds.
[[nodiscard]] double roundTimeStep(double least);

} // namespace afterbeat::window
