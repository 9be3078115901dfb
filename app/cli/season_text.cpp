#include "app/cli/season_text.h"

#include "app/cli/command.h"
#include "app/papers/said.h"
#include "core/compare/facts.h"
#include "core/compare/stand_out.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

constexpr std::size_t kMostWorthALook = 10;
/// What a line of the list of records shows.
constexpr std::array kListed{MeasureId::powerOnToFirstShock, MeasureId::longestPause,
                             MeasureId::handsOffFraction, MeasureId::arrestTime,
                             MeasureId::shocksDelivered};

std::string kindTitle(StatedKind kind) {
  if (!kind) {
    return "RECORDS OF NO STATED KIND";
  }
  return *kind == RecordKind::rescue  ? "RESCUES"
         : *kind == RecordKind::drill ? "DRILLS (not real patients)"
                                      : "TESTS";
}

std::string valueOf(MeasureId measure, double value) {
  return inEnglish(amountOf(measure, value));
}

/// Few values are told themselves.
std::string valuesOf(const SpreadGroup& group, MeasureId measure) {
  std::string all;
  for (const SpreadPoint& point : group.points) {
    all += (all.empty() ? "" : "; ") + valueOf(measure, point.value);
  }
  return all;
}

std::string missing(const Missing& missing) {
  std::string text;
  if (missing.notRecorded > 0) {
    text += fmt::format("; not recorded: {}", missing.notRecorded);
  }
  if (missing.notApplicable > 0) {
    text += fmt::format("; does not apply: {}", missing.notApplicable);
  }
  return text;
}

std::string summary(const SpreadGroup& group, MeasureId measure) {
  if (group.points.empty()) {
    return "no value" + missing(group.missing);
  }
  if (!group.quartiles || !group.interval) {
    return fmt::format("{} of {}, too few for a middle{}", valuesOf(group, measure),
                       group.points.size(), missing(group.missing));
  }
  return fmt::format("middle {} of {} (may really be {} to {}), middle half {} to {}{}",
                     valueOf(measure, group.quartiles->median), group.points.size(),
                     valueOf(measure, group.interval->low), valueOf(measure, group.interval->high),
                     valueOf(measure, group.quartiles->low),
                     valueOf(measure, group.quartiles->high), missing(group.missing));
}

std::string figures(const Season& season, const Chosen& chosen) {
  std::string text = "Figures\n";
  for (const MeasureId measure : papers::reportMeasures()) {
    const auto found = spread(season, chosen, measure, GroupBy::nothing);
    text += fmt::format("  {:<28} {}\n", measureInfo(measure).title,
                        summary(found.value().groups.front(), measure));
  }
  return text;
}

std::string bySite(const Season& season, const Chosen& chosen) {
  std::string text = "By site, in the order of names\n";
  std::vector<Spread> spreads;
  for (const MeasureId measure : papers::reportMeasures()) {
    spreads.push_back(spread(season, chosen, measure, GroupBy::site).value());
  }
  for (std::size_t i = 0; i < spreads.front().groups.size(); ++i) {
    const std::string& name = spreads.front().groups[i].name;
    text += fmt::format("  {}\n", name.empty() ? "(site not recorded)" : forTerminal(name));
    for (const Spread& one : spreads) {
      text += fmt::format("    {:<28} {}\n", measureInfo(one.measure).title,
                          summary(one.groups[i], one.measure));
    }
  }
  return text;
}

std::string lines(const char* head, const std::vector<Saying>& sayings) {
  std::string text = fmt::format("{}\n", head);
  for (const Saying& saying : sayings) {
    text += fmt::format("  {}\n", forTerminal(inEnglish(saying)));
  }
  return text;
}

std::string nameOf(const RecordFacts& record) {
  return forTerminal(record.file.empty() ? record.id : record.file);
}

std::string lookAt(const Season& season, const Chosen& chosen, const Profile& profile) {
  const std::vector<StandOut> found = worthALook(season, chosen, profile);
  std::string text = "Worth a look\n";
  for (std::size_t i = 0; i < std::min(found.size(), kMostWorthALook); ++i) {
    text += fmt::format("  {}:", nameOf(season.records[found[i].place]));
    for (const StandOutReason& reason : found[i].reasons) {
      text += fmt::format(" {}", forTerminal(inEnglish(reason.saying)));
    }
    text += '\n';
  }
  if (found.empty()) {
    text += "  No record stands out.\n";
  } else if (found.size() > kMostWorthALook) {
    text += fmt::format("  Further records stand out: {}.\n", found.size() - kMostWorthALook);
  }
  if (const auto usual = usualHere(season, chosen, profile)) {
    for (const Saying& saying : *usual) {
      text += fmt::format("  {}\n", forTerminal(inEnglish(saying)));
    }
  }
  return text;
}

std::string records(const Season& season, const Chosen& chosen) {
  std::string text = fmt::format("{:<10}  {:<24}  {:<24}", "Day", "Record", "Site");
  for (const MeasureId measure : kListed) {
    text += fmt::format("  {:>24}", measureInfo(measure).title);
  }
  text += '\n';
  for (const std::uint32_t place : chosen) {
    const RecordFacts& record = season.records[place];
    text += fmt::format("{:<10}  {:<24}  {:<24}", record.day ? isoDay(record) : "-", nameOf(record),
                        record.site.empty() ? "-" : forTerminal(record.site));
    for (const MeasureId measure : kListed) {
      const FigureCell& cell = season.column(measure)[place];
      text += fmt::format("  {:>24}", cell.ok() ? valueOf(measure, cell.value)
                                      : cell.status == Status::notRecorded ? "not recorded"
                                                                           : "does not apply");
    }
    text += '\n';
  }
  return text;
}

/// Written as days of records are written.
RecordFacts dayOf(const MarkedStep& step, const papers::ReportSettings& settings) {
  RecordFacts day;
  day.day = step.day;
  day.monthOnly = settings.withoutIdentity;
  return day;
}

std::string overTimeTitle(const OverTime& chart) {
  return fmt::format("Over time: {}",
                     measureInfo(std::get<ValueOf>(chart.settings.subject).measure).title);
}

/// What holds for all kinds.
std::string about(const papers::ReportSettings& settings) {
  std::string text;
  if (settings.withoutIdentity) {
    text += "Without identity: sites, teams and records have pseudonyms; days are cut to their "
            "month.\n\n";
  }
  if (!settings.steps.empty()) {
    text += "Marked days\n";
    for (const MarkedStep& step : settings.steps) {
      text += fmt::format("  {}{}\n", isoDay(dayOf(step, settings)),
                          step.words.empty() ? "" : "  " + forTerminal(step.words));
    }
    text += '\n';
  }
  return text;
}

/// Named, and in nothing else.
std::string unfigured(const Season& season, const Chosen& chosen) {
  const std::size_t count = withoutFigures(season, chosen);
  if (count == 0) {
    return "";
  }
  std::string text = fmt::format("No figures under these settings: {}\n", count);
  for (const std::uint32_t place : chosen) {
    if (!season.records[place].hasFigures) {
      text += fmt::format("  {}\n", nameOf(season.records[place]));
    }
  }
  return text;
}

} // namespace

std::string seasonText(const Season& season, const Chosen& chosen,
                       const papers::ReportSettings& settings) {
  std::string text;
  for (const KindCount& count : kindsOf(season, chosen)) {
    const Chosen one = ofKind(season, chosen, count.kind);
    const bool synthetic = std::any_of(one.begin(), one.end(), [&](std::uint32_t place) {
      return season.records[place].synthetic;
    });
    text += fmt::format("{}{}: {}{}\n\n", text.empty() ? "" : "\n", kindTitle(count.kind),
                        count.records, synthetic ? "  SYNTHETIC" : "");
    text += figures(season, one) + '\n' + bySite(season, one) + '\n';
    const OverTime time = overTime(season, one, papers::reportOverTime(settings)).value();
    text += lines(overTimeTitle(time).c_str(), words(time)) + '\n';
    text += lines("Where the time goes", words(stages(season, one, StagesFrom::powerOn).value())) +
            '\n';
    text += lookAt(season, one, settings.figures.profile) + '\n' + records(season, one);
  }
  if (const std::string without = unfigured(season, chosen); !without.empty()) {
    text += (text.empty() ? "" : "\n") + without;
  }
  if (text.empty()) {
    return "There is no record to compare.\n";
  }
  return about(settings) + text +
         fmt::format(
             "\nFigures computed with: {}.\n",
             forTerminal(papers::settingsOf(settings.figures, papers::Words()).toStdString()));
}

} // namespace afterbeat::cli
