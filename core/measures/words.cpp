#include "core/measures/figures.h"

#include <fmt/format.h>

namespace afterbeat {

std::string_view name(Evidence evidence) {
  switch (evidence) {
  case Evidence::none:
    return "none";
  case Evidence::compressions:
    return "compressions";
  case Evidence::segments:
    return "segments";
  case Evidence::both:
    return "both";
  }
  return "";
}

std::string_view name(Status status) {
  switch (status) {
  case Status::ok:
    return "ok";
  case Status::notRecorded:
    return "not_recorded";
  case Status::notApplicable:
    return "not_applicable";
  }
  return "";
}

std::string_view name(PauseCause cause) {
  switch (cause) {
  case PauseCause::shock:
    return "shock";
  case PauseCause::analysis:
    return "analysis";
  case PauseCause::beforeFirst:
    return "before_first";
  case PauseCause::afterLast:
    return "after_last";
  case PauseCause::breaths:
    return "breaths";
  case PauseCause::breathsLong:
    return "breaths_long";
  case PauseCause::noReasonRecorded:
    return "no_reason_recorded";
  }
  return "";
}

std::string_view name(WindowEnd end) {
  return end == WindowEnd::lastActivity ? "last_activity" : "record_end";
}

std::string_view name(NotCountedReason why) {
  switch (why) {
  case NotCountedReason::beforeWindow:
    return "before_window";
  case NotCountedReason::afterWindow:
    return "after_window";
  case NotCountedReason::circulationReturned:
    return "circulation_returned";
  case NotCountedReason::notRescue:
    return "not_rescue";
  case NotCountedReason::notTrusted:
    return "not_trusted";
  case NotCountedReason::notObserved:
    return "not_observed";
  }
  return "";
}

std::string label(const WorkingPart& part) {
  const double n = part.n.value_or(0);
  switch (part.kind) {
  case WorkingKind::arrestInterval:
    return "time without circulation";
  case WorkingKind::pause:
    return "pause";
  case WorkingKind::pauseForAnalysis:
    return "taken away: analysis, or advice to shock";
  case WorkingKind::compressionRun:
    return n == 1 ? "1 compression" : fmt::format("{:.0f} compressions", n);
  case WorkingKind::cprStretch:
    return part.n ? fmt::format("compressions at {:g}/min", n) : "compressions, rate not recorded";
  case WorkingKind::ventilation:
    return "breath";
  case WorkingKind::shock:
    return fmt::format("shock {:.0f}", n);
  case WorkingKind::shockWithheld:
    return "shock not given";
  case WorkingKind::shockUnknown:
    return "shock, delivery unknown";
  case WorkingKind::preShockPause:
    return fmt::format("before shock {:.0f}", n);
  case WorkingKind::postShockPause:
    return fmt::format("after shock {:.0f}", n);
  case WorkingKind::periShockPause:
    return fmt::format("around shock {:.0f}", n);
  case WorkingKind::analysis:
    return "analysis";
  case WorkingKind::adviceToShock:
    return fmt::format("advice to shock {:.0f}", n);
  case WorkingKind::fromTo:
    return "from the one to the other";
  case WorkingKind::circulation:
    return "circulation";
  case WorkingKind::onPeriod:
    return "device on";
  }
  return "";
}

} // namespace afterbeat
