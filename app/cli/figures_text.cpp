#include "app/cli/figures_text.h"
#include "core/measures/derived_use.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace afterbeat::cli {
namespace {

/// Measures in the order in which a person asks.
struct Group {
  std::string_view title;
  std::vector<MeasureId> ids;
};

const std::vector<Group>& groups() {
  using enum MeasureId;
  static const std::vector<Group> kGroups{
      {"What the crew asks first",
       {timeOn, shocksDelivered, shocksWithheld, shocksUnknown, energyTotal, analyses,
        analysesAdvisingShock}},
      {"Hands on the chest",
       {arrestTime, handsOffTime, handsOffFraction, chestCompressionFraction, adjustedHandsOffTime,
        longestPause, pausesOverLimit}},
      {"How well",
       {compressions, compressionsPerMinute, compressionRate, compressionRateInRange,
        compressionDepth, compressionDepthInRange, fullRelease, ventilations,
        ventilationsPerMinute}},
      {"Around shocks",
       {preShockPauseMedian, preShockPauseWorst, postShockPauseMedian, postShockPauseWorst,
        periShockPauseMedian, periShockPauseWorst, adviceToShockMedian, adviceToShockWorst}},
      {"How fast",
       {powerOnToElectrodes, powerOnToFirstHandsOn, powerOnToFirstShock, electrodesToFirstAnalysis,
        electrodesToFirstShock, firstHandsOnToFirstShock, collapseToFirstHandsOn,
        collapseToFirstShock, callToFirstHandsOn, callToFirstShock, callToDeviceArrived}},
      {"Circulation", {circulationTime, longestCirculation, collapseToCirculationReturned}}};
  return kGroups;
}

std::string percent(double share) {
  return fmt::format("{:.1f} %", 100 * share);
}

std::string valueText(const Measure& measure) {
  switch (measure.status) {
  case Status::notRecorded:
    return "not recorded";
  case Status::notApplicable:
    return "not applicable";
  case Status::ok:
    break;
  }
  const MeasureInfo& info = measureInfo(measure.id);
  const double value = *measure.value;
  if (info.unit == "s") {
    return lengthText(value);
  }
  if (info.unit == "/min") {
    return fmt::format("{:.1f}/min", value);
  }
  if (info.unit == "mm") {
    return fmt::format("{:.1f} mm", value);
  }
  if (info.unit == "J") {
    return fmt::format("{:g} J", value);
  }
  const bool isShare = measure.denominator.has_value();
  return isShare ? percent(value) : fmt::format("{:.0f}", value);
}

std::string withSource(const std::string& words, const Citation& source) {
  return fmt::format("{} [{}]", words, markWords(source.mark));
}

/// Breaths a minute are held against a target only once an advanced airway is in place.
bool advancedAirway(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(), [](const Entry& entry) {
    const auto* airway = entry.complete<entry::Airway>();
    return airway != nullptr &&
           (airway->device == AirwayDevice::supraglottic || airway->device == AirwayDevice::tube);
  });
}

std::string rangeText(const Range& range, const char* unit) {
  return range.low == range.high
             ? fmt::format("target {:g}{}", range.low, unit)
             : fmt::format("target {:g} to {:g}{}", range.low, range.high, unit);
}

std::string depthTargetText(const Profile& profile, PatientCategory category) {
  const auto it = profile.depth.find(category);
  if (it == profile.depth.end()) {
    return "";
  }
  const DepthTarget& target = it->second.value;
  return withSource(target.range ? rangeText(*target.range, " mm") : "target " + target.words,
                    it->second.source);
}

std::string breathTargetText(const Profile& profile, const Record& record) {
  const auto it = profile.advancedAirwayBreaths.find(record.header.patient);
  if (it == profile.advancedAirwayBreaths.end() || !advancedAirway(record)) {
    return "";
  }
  return withSource(rangeText(it->second.value, "/min with an advanced airway"), it->second.source);
}

/// The target that belongs to a measure, in words; empty if the profile has none.
std::string targetText(MeasureId id, const Profile& profile, const Record& record) {
  using enum MeasureId;
  const auto limitText = [](const char* words, const std::optional<Target<double>>& limit) {
    return limit ? withSource(words + lengthText(limit->value), limit->source) : "";
  };
  switch (id) {
  case handsOffFraction:
    return profile.fractionTarget
               ? withSource("target at most " + percent(1 - profile.fractionTarget->value),
                            profile.fractionTarget->source)
               : "";
  case chestCompressionFraction:
    return profile.fractionTarget
               ? withSource("target at least " + percent(profile.fractionTarget->value),
                            profile.fractionTarget->source)
               : "";
  case compressionRate:
  case compressionRateInRange:
    return profile.ratePerMin ? withSource(rangeText(profile.ratePerMin->value, "/min"),
                                           profile.ratePerMin->source)
                              : "";
  case compressionDepth:
  case compressionDepthInRange:
    return depthTargetText(profile, record.header.patient);
  case ventilationsPerMinute:
    return breathTargetText(profile, record);
  case longestPause:
  case pausesOverLimit:
    return limitText("limit ", profile.pauseLimit);
  case preShockPauseMedian:
  case preShockPauseWorst:
    return limitText("target below ", profile.preShockPauseLimit);
  default:
    return "";
  }
}

/// What a figure depends on or leaves out: threshold, excluded time, coverage.
std::string remarkText(MeasureId id, const Figures& figures) {
  std::vector<std::string> remarks;
  const MeasureInfo& info = measureInfo(id);
  if (figures[id].status != Status::ok) {
    return "";
  }
  if (info.dependsOnThreshold) {
    remarks.push_back(
        fmt::format("pause: more than {:g} s", seconds(figures.settings.pauseThreshold)));
  }
  if (info.unit == "1" && figures[id].denominator && figures.excludedLength > Duration{}) {
    remarks.push_back(lengthText(seconds(figures.excludedLength)) + " excluded");
  }
  for (const Coverage& coverage : figures.coverage) {
    if (coverage.id == id && coverage.used < coverage.of) {
      remarks.push_back(fmt::format("known for {:g} of {:g}{}", coverage.used, coverage.of,
                                    id == MeasureId::compressionRate ? " s" : ""));
    }
  }
  return remarks.empty() ? "" : fmt::format("({})", fmt::join(remarks, ", "));
}

void addHead(std::string& out, const Opened& opened) {
  const Header& header = opened.record.header;
  out += forTerminal(opened.file) + "\n";
  std::string line;
  const auto add = [&line](const std::string& word) {
    if (!word.empty()) {
      line += (line.empty() ? "  " : " · ") + word;
    }
  };
  add(forTerminal(header.site));
  if (const auto begin = wallTimeAt(opened.record, Time{})) {
    add(formatDate(*begin) + " " + formatClock(*begin));
  } else {
    add("clock time not recorded");
  }
  add(!header.kind                         ? "kind not recorded"
      : *header.kind == RecordKind::rescue ? "rescue"
      : *header.kind == RecordKind::drill  ? "DRILL"
                                           : "TEST");
  add(header.synthetic ? "SYNTHETIC" : "");
  out += line + "\n";
  if (opened.record.otherRecordsInFile > 0) {
    out += fmt::format("  Other records in the file: {}. They are not in these figures; "
                       "`afterbeat-cli rewrite` gives each a file of its own.\n",
                       opened.record.otherRecordsInFile);
  }
}

void addMeasures(std::string& out, const Record& record, const Figures& figures) {
  const DerivedUse use = derivedUse(record, figures);
  for (const Group& group : groups()) {
    out += fmt::format("\n{}\n", group.title);
    for (const MeasureId id : group.ids) {
      std::string line =
          fmt::format("  {:<38}{:<18}", measureInfo(id).title, valueText(figures[id]));
      for (const std::string& words :
           {targetText(id, figures.settings.profile, record), remarkText(id, figures)}) {
        line += words.empty() ? "" : words + "  ";
      }
      if (figures[id].status == Status::ok && restsOnDerived(id, use)) {
        line += "(from the signals)";
      }
      line.erase(line.find_last_not_of(' ') + 1);
      out += line + "\n";
    }
  }
}

std::string causeText(PauseCause cause) {
  switch (cause) {
  case PauseCause::shock:
    return "around a shock";
  case PauseCause::analysis:
    return "rhythm analysis";
  case PauseCause::beforeFirst:
    return "before the first compressions";
  case PauseCause::afterLast:
    return "after the last compressions";
  case PauseCause::breaths:
    return "breaths";
  case PauseCause::breathsLong:
    return "breaths, longer than the limit";
  case PauseCause::noReasonRecorded:
    return "no reason recorded";
  }
  return "";
}

void addPauses(std::string& out, const Record& record, const Figures& figures) {
  if (figures.pauses.empty()) {
    return;
  }
  out += fmt::format("\nPauses longer than {:g} s\n", seconds(figures.settings.pauseThreshold));
  for (const Pause& pause : figures.pauses) {
    out += fmt::format("  {:<12}{:>14}  {}\n", moment(record, pause.stretch.begin),
                       lengthText(seconds(pause.stretch.length())), causeText(pause.cause));
  }
}

std::string orLine(std::optional<Duration> length) {
  return length ? lengthText(seconds(*length)) : "—";
}

void addShocks(std::string& out, const Record& record, const Figures& figures) {
  if (figures.shocks.empty()) {
    return;
  }
  out += "\nShocks\n";
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number == 0) {
      out += fmt::format("  {:<12}{}\n", moment(record, shock.t),
                         shock.delivered ? "advised or charged, not given" : "delivery unknown");
      continue;
    }
    out += fmt::format("  {:<12}{:<10}hands off before {}, after {}\n", moment(record, shock.t),
                       shock.energyJ ? fmt::format("{:g} J", *shock.energyJ) : "energy ?",
                       orLine(shock.pre), orLine(shock.post));
  }
}

std::string evidenceText(Evidence evidence) {
  switch (evidence) {
  case Evidence::none:
    return "no compressions recorded, so hands-off time is not known";
  case Evidence::compressions:
    return "single compressions";
  case Evidence::segments:
    return "stretches of compressions";
  case Evidence::both:
    return "single compressions, and stretches where there are none";
  }
  return "";
}

void addWindow(std::string& out, const Record& record, const Figures& figures) {
  out += "\nWhat was counted\n";
  out += fmt::format("  Evidence: {}.\n", evidenceText(figures.evidence));
  if (figures.window) {
    out += fmt::format("  Window: {} to {}, end at {}.\n", moment(record, figures.window->begin),
                       moment(record, figures.window->end), name(figures.settings.windowEnd));
  }
  for (const NotCounted& stretch : figures.notCounted) {
    out += fmt::format("  Not counted: {} from {} ({}).\n",
                       lengthText(seconds(stretch.stretch.length())),
                       moment(record, stretch.stretch.begin), name(stretch.why));
  }
  out += fmt::format("  Pause threshold {:g} s. Targets: {}.\n",
                     seconds(figures.settings.pauseThreshold),
                     forTerminal(figures.settings.profile.name));
}

} // namespace

std::string lengthText(double s) {
  const double tenths = std::round(std::fabs(s) * 10);
  const char* sign = s < 0 && tenths > 0 ? "-" : "";
  if (tenths < 600) {
    return fmt::format("{}{:.1f} s", sign, tenths / 10);
  }
  const auto whole = static_cast<long long>(std::llround(std::fabs(s)));
  if (whole < 3600) {
    return fmt::format("{}{} min {:02} s", sign, whole / 60, whole % 60);
  }
  return fmt::format("{}{} h {:02} min {:02} s", sign, whole / 3600, whole / 60 % 60, whole % 60);
}

std::string figuresText(const OpenedAndDerived& read, const Figures& figures) {
  const Opened& opened = read.opened;
  std::string out;
  addHead(out, opened);
  addMeasures(out, opened.record, figures);
  addPauses(out, opened.record, figures);
  addShocks(out, opened.record, figures);
  addWindow(out, opened.record, figures);
  out += derivedText(read, figures);
  out += "\nFor review after the event: not a medical device, no prognosis, no diagnosis. Local "
         "protocol and licensed practice go first.\n";
  return out;
}

} // namespace afterbeat::cli
