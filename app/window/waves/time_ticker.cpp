#include "app/window/waves/time_ticker.h"

#include <cmath>

namespace afterbeat::window {

double roundTimeStep(double least) {
  constexpr double kSteps[] = {0.1, 0.2, 0.5, 1,   2,   5,    10,   15,    30,
                               60,  120, 300, 600, 900, 1800, 3600, 10'800};
  for (const double step : kSteps) {
    if (step >= least) {
      return step;
    }
  }
  return 10'800;
}

void TimeTicker::setRecord(const Record* record) {
  moments_.reset();
  double origin = 0;
  if (record) {
    moments_.emplace(*record);
    if (const auto wall = wallTimeAt(*record, Time{})) {
      constexpr long long kDay = 86'400'000'000LL;
      origin = -static_cast<double>(wall->local().time_since_epoch().count() % kDay) / 1e6;
    }
  }
  setTickOrigin(origin);
}

double TimeTicker::getTickStep(const QCPRange&) {
  step_ = roundTimeStep(leastStep_);
  return step_;
}

int TimeTicker::getSubTickCount(double) {
  return 4;
}

QString TimeTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
  if (!moments_) {
    return {};
  }
  // A tick is a sum in floating point: without rounding it could fall just before its second.
  const Time t{Duration{std::llround(tick * 1000) * 1000}};
  return moments_->words(t, step_ < 1);
}

} // namespace afterbeat::window
