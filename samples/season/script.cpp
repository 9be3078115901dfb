#include "samples/season/script.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace afterbeat::samples {
namespace {

constexpr std::array<std::string_view, 12> kTeams{
    "Jetty wardens",  "Swimming club",  "Ferry crew",     "Pier guard",
    "Steamer crew",   "Landing office", "North lifeboat", "North reserve",
    "Lifeboat class", "South reserve",  "Hill station",   "Ice road patrol",
};

/// A length of time that leans to the long side, as such times do: half lie above `middle`.
double about(Dice& dice, double middle, double spread) {
  return middle * std::exp(spread * dice.normal());
}

bool happens(Dice& dice, double share) {
  return dice.between(0, 1) < share;
}

/// A seed of its own for every record, so that one can be made without the others.
Dice diceOf(const SeasonPlan& plan, std::size_t index) {
  Dice first(plan.seed * 0x2545f4914f6cdd1dU + index);
  return Dice(first.next());
}

std::optional<RecordKind> kindOf(const SeasonPlan& plan, Dice& dice) {
  const double drawn = dice.between(0, 1);
  if (drawn < plan.drills) {
    return RecordKind::drill;
  }
  if (drawn < plan.drills + plan.tests) {
    return RecordKind::test;
  }
  return drawn < plan.drills + plan.tests + plan.unstated ? std::nullopt
                                                          : std::optional(RecordKind::rescue);
}

std::chrono::sys_days dayOf(const SeasonPlan& plan, std::size_t index) {
  const auto length = (plan.lastDay - plan.firstDay).count();
  const auto last = static_cast<double>(std::max<std::size_t>(plan.records, 2) - 1);
  return plan.firstDay + std::chrono::days(std::lround(static_cast<double>(length) *
                                                       static_cast<double>(index) / last));
}

std::string dayText(std::chrono::sys_days day) {
  const std::chrono::year_month_day date(day);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

RecordFacts factsOf(const SeasonPlan& plan, std::size_t index, std::size_t site, Dice& dice) {
  RecordFacts facts;
  facts.number = static_cast<std::int64_t>(index) + 1;
  const std::uint64_t high = dice.next(), low = dice.next();
  facts.id = fmt::format("urn:uuid:{:08x}-{:04x}-4{:03x}-8{:03x}-{:012x}", high >> 32U,
                         high >> 16U & 0xffffU, high & 0xfffU, low >> 52U, low & 0xffffffffffffU);
  facts.kind = kindOf(plan, dice);
  facts.site = kLakeSites[site];
  if (!happens(dice, plan.missing)) {
    facts.team = kTeams[2 * site + (happens(dice, 0.5) ? 1 : 0)];
  }
  facts.device = fmt::format("L-{:02}", 10 * (site + 1) + dice.next() % 4);
  const auto day = dayOf(plan, index);
  facts.file = fmt::format("{}-{:07}.resuslog", dayText(day), index + 1);
  if (!happens(dice, plan.missing / 4)) {
    facts.day = day;
  }
  facts.synthetic = true;
  return facts;
}

void addBegin(const SeasonPlan& plan, std::size_t site, Script& s, Dice& dice) {
  if (!happens(dice, plan.missing)) {
    s.call = -about(dice, 240, 0.4);
    s.deviceArrived = -about(dice, 15, 0.5);
  }
  const bool slow = static_cast<int>(site) == plan.slowSite;
  s.electrodes = about(dice, 30, 0.35) * (slow ? plan.slowTimes : 1);
  s.handsOn = about(dice, 10, 0.5);
}

/// One cycle from its analysis on; the next begins where its hands stop.
ScriptedCycle cycle(double analysis, double toShockTimes, Dice& dice) {
  ScriptedCycle c;
  c.analysis = analysis;
  c.advice = analysis + dice.between(5.5, 8);
  const bool advised = happens(dice, 0.45);
  const double toShock = about(dice, 5, 0.4) * toShockTimes;
  const double toHands = about(dice, 3.5, 0.4);
  if (advised) {
    c.shock = c.advice + toShock;
    c.withheld = happens(dice, 0.02);
  }
  c.begin = (advised ? *c.shock : c.advice) + toHands;
  c.end = c.begin + dice.between(95, 120);
  if (happens(dice, 0.1)) {
    const double from = c.begin + dice.between(30, 60);
    c.unexplained = {from, from + std::min(25.0, about(dice, 7, 0.5))};
  }
  return c;
}

void addCycles(double toShockTimes, Script& s, Dice& dice) {
  const std::size_t count = 1 + dice.next() % 6;
  double analysis = s.electrodes + about(dice, 9, 0.3);
  for (std::size_t i = 0; i < count; ++i) {
    s.cycles.push_back(cycle(analysis, toShockTimes, dice));
    analysis = s.cycles.back().end + dice.between(0.8, 1.5);
  }
  s.off = s.cycles.back().end + dice.between(5, 60);
}

void addHands(const SeasonPlan& plan, Script& s, Dice& dice) {
  s.hands.rate = s.hands.rateEnd = std::clamp(112 + 7 * dice.normal(), 85.0, 140.0);
  s.hands.depth = s.hands.depthEnd = std::clamp(53 + 4 * dice.normal(), 35.0, 70.0);
  if (happens(dice, plan.missing)) {
    s.hands.depth = s.hands.depthEnd = 0;
  }
  s.hands.leaning = -1;
  s.showsCompressions = !happens(dice, plan.missing);
  s.patient = happens(dice, 0.05) ? PatientCategory::child : PatientCategory::adult;
  s.setting = s.patient == PatientCategory::child && happens(dice, 0.2) ? PatientCategory::adult
                                                                        : s.patient;
}

/// From and to of every stretch of compressions.
std::vector<std::pair<double, double>> runs(const Script& s) {
  std::vector<std::pair<double, double>> all;
  if (!s.showsCompressions) {
    return all;
  }
  const double stop = s.cycles.front().analysis - 1;
  if (s.handsOn < stop - 2) {
    all.emplace_back(s.handsOn, stop);
  }
  for (const ScriptedCycle& c : s.cycles) {
    all.emplace_back(c.begin, c.unexplained ? c.unexplained->first : c.end);
    if (c.unexplained) {
      all.emplace_back(c.unexplained->second, c.end);
    }
  }
  return all;
}

/// Everything but compressions, told in any order.
void tellEvents(const Script& s, Story& story) {
  using namespace entry;
  if (s.call) {
    story.happens(*s.call, Milestone{"call_received"}, Source::observer);
    story.happens(*s.deviceArrived, Milestone{"device_arrived"}, Source::observer);
  }
  story.happens(0, PowerOn{});
  story.happens(0.5, PatientMode{s.setting});
  story.happens(s.electrodes, Electrodes{ElectrodeState::attached, {}});
  for (const ScriptedCycle& c : s.cycles) {
    story.analyse(c.analysis, c.advice, c.shock ? Advice::shock : Advice::noShock);
    if (c.shock) {
      story.shock(*c.shock, !c.withheld, 150, *c.shock - c.advice);
    }
  }
  story.happens(s.off, PowerOff{});
}

void tellHead(const Script& s, Header& h) {
  h.id = s.facts.id;
  h.kind = s.facts.kind;
  h.patient = s.patient;
  h.site = s.facts.site;
  h.team = s.facts.team;
  h.device.label = s.facts.device;
  h.madeBy = "afterbeat-season";
  h.synthetic = true;
  if (s.facts.day) {
    h.recorded = parseWallTime(dayText(*s.facts.day) + "T14:05:00+01:00");
  }
}

double windowBegin(const Script& s) {
  const auto all = runs(s);
  return all.empty() ? s.electrodes : std::min(s.electrodes, all.front().first);
}

} // namespace

Script script(const SeasonPlan& plan, std::size_t index) {
  Dice dice = diceOf(plan, index);
  Script s;
  const auto site = static_cast<std::size_t>(dice.next() % kLakeSites.size());
  s.facts = factsOf(plan, index, site, dice);
  addBegin(plan, site, s, dice);
  // The day counts, whether the record knows it or not.
  const bool trained = plan.training && dayOf(plan, index) >= *plan.training;
  addCycles(trained ? plan.trainingTimes : 1, s, dice);
  addHands(plan, s, dice);
  return s;
}

Record outline(const Script& s) {
  Story told("", 0);
  tellEvents(s, told);
  for (const auto& [from, to] : runs(s)) {
    told.keepGoing(from, to, s.hands.rate);
  }
  told.finish(windowBegin(s), s.cycles.back().end);
  tellHead(s, told.record.header);
  return std::move(told.record);
}

Story story(const Script& s) {
  Story told(s.facts.file, static_cast<std::uint64_t>(s.facts.number));
  tellEvents(s, told);
  for (const auto& [from, to] : runs(s)) {
    told.compress(from, to, s.hands);
  }
  told.finish(windowBegin(s), s.cycles.back().end);
  tellHead(s, told.record.header);
  return told;
}

} // namespace afterbeat::samples
