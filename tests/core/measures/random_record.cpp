#include "tests/core/measures/random_record.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <ostream>
#include <sstream>
#include <tuple>

namespace afterbeat::reference {

namespace {

/// Kinds of items; those that shape the figures most come more than once in `kKindWeights`.
enum Kind {
  kRun,
  kCpr,
  kAnalysis,
  kShock,
  kBreaths,
  kCirculation,
  kExcluded,
  kElectrodes,
  kPower,
  kPatientMode,
  kMilestone,
  kOther,
  kKinds
};

constexpr std::array kKindWeights{
    kRun,      kRun,   kRun,        kRun,         kCpr,       kCpr,         kAnalysis,    kAnalysis,
    kAnalysis, kShock, kShock,      kShock,       kBreaths,   kCirculation, kCirculation, kExcluded,
    kExcluded, kPower, kElectrodes, kPatientMode, kMilestone, kMilestone,   kOther,       kOther};
constexpr std::array kLengthsMs{0,    0,    100,  200,  500,   1000,  1500,  1501,  2000,
                                3000, 5000, 8000, 9999, 10000, 10001, 12000, 20000, 40000};
constexpr std::array kSpacingsMs{100, 150, 199, 200, 201,  300,  500,  500,  501,  545,  550, 599,
                                 600, 600, 601, 700, 1000, 1499, 1500, 1501, 2000, 3000, 5000};
constexpr std::array kDeviationsMs{0, 0, 0, 1, -1, 50, 37, 199, 201, 250};
constexpr std::array kThresholdsUs{1'500'000, 1'500'000, 500'000,   600'000,   1'000'000,
                                   2'000'000, 3'000'000, 5'000'000, 1'501'000, 1'499'999};
constexpr std::array kSpansMs{5000, 10000, 20000, 20000, 40000, 40000, 70000, 130000, 240000};
constexpr std::array kDepthsMm{39.9, 40.0, 45.0, 49.9, 50.0, 52.5, 55.0, 60.0, 60.1, 65.0};
constexpr std::array kLeaningMm{0.0, 2.0, 4.9, 5.0, 5.1, 9.0};
constexpr std::array kRates{60.0, 99.9, 100.0, 110.0, 120.0, 120.1, 150.0};
constexpr std::array kEnergiesJ{50.0, 150.0, 200.0, 360.0};

/// An element of a list, whatever the number.
template <typename List>
auto pick(const List& list, int n) {
  return list[static_cast<std::size_t>(n) % list.size()];
}

Time atMs(int ms) {
  return Time{Duration{std::int64_t{1000} * ms}};
}

/// Turns items into entries.
class Maker {
public:
  Maker(const Scenario& scenario, Record& record) : s_(scenario), record_(record) {}

  void add(const Item& item) {
    if (((s_.without >> item.kind) & 1) != 0) {
      return;
    }
    switch (item.kind) {
    case kRun:
      addRun(item);
      break;
    case kBreaths:
      for (int i = 0; i < 1 + item.count % 3; ++i) {
        put(item, startMs(item) + roundMs(i * spacingMs(item)), entry::Ventilation{});
      }
      break;
    case kOther:
      addOther(item);
      break;
    case kElectrodes:
    case kPower:
    case kPatientMode:
    case kMilestone:
      addDeviceMoment(item);
      break;
    default:
      addMain(item);
    }
  }

private:
  [[nodiscard]] int roundMs(int ms) const {
    return s_.fine ? ms : (ms + s_.unitMs / 2) / s_.unitMs * s_.unitMs;
  }
  [[nodiscard]] int startMs(const Item& item) const {
    const int steps = s_.spanMs / s_.unitMs;
    const int coarse = s_.beginMs + item.place * steps / 1000 * s_.unitMs;
    return s_.fine ? coarse + pick(kDeviationsMs, item.deviation) : coarse;
  }
  [[nodiscard]] int lengthMs(const Item& item) const {
    return roundMs(pick(kLengthsMs, item.length));
  }
  [[nodiscard]] int spacingMs(const Item& item) const { return pick(kSpacingsMs, item.spacing); }

  Entry& put(const Item& item, int ms, EntryData data, std::optional<int> lengthMs = std::nullopt) {
    Entry e;
    e.t = atMs(ms);
    if (lengthMs) {
      e.end = atMs(ms + *lengthMs);
    }
    e.data = std::move(data);
    if (s_.observerOnly || item.place % 7 == 0) {
      e.source = item.detail % 6 == 5 ? Source::derived : Source::observer;
    }
    if (item.flaw == 0) {
      e.incomplete = true;
      spoil(e, item.detail);
    }
    record_.entries.push_back(std::move(e));
    return record_.entries.back();
  }

  /// What an incomplete entry can look like: no time, no end, end before begin, a required key
  /// gone.
  static void spoil(Entry& e, int way) {
    if (auto* shock = std::get_if<entry::Shock>(&e.data); shock && way % 4 != 0) {
      shock->delivered.reset();
      e.hasTime = way % 4 != 1;
    } else if (auto* analysis = std::get_if<entry::Analysis>(&e.data); analysis && way % 2 == 0) {
      analysis->advice.reset();
    } else if (auto* excluded = std::get_if<entry::Excluded>(&e.data); excluded && way % 2 == 0) {
      excluded->why.reset();
    } else if (auto* electrodes = std::get_if<entry::Electrodes>(&e.data)) {
      electrodes->state.reset();
    } else if (auto* mode = std::get_if<entry::PatientMode>(&e.data)) {
      mode->category.reset();
    } else if (auto* circulation = std::get_if<entry::Circulation>(&e.data)) {
      circulation->state.reset();
    } else if (auto* milestone = std::get_if<entry::Milestone>(&e.data)) {
      milestone->what.clear();
    } else if (e.end && way % 4 == 1) {
      e.end.reset();
    } else if (e.end && way % 4 == 3) {
      e.end = e.t - std::chrono::milliseconds{500};
    } else if (!e.end) {
      e.hasTime = false;
    }
    if (!e.hasTime) {
      e.t = Time{};
    }
  }

  void addRun(const Item& item) {
    const int other = pick(kSpacingsMs, item.spacing + item.detail % 3);
    int ms = startMs(item);
    for (int i = 0; i < item.count; ++i) {
      entry::Compression c;
      const int n = item.detail + i;
      if (item.detail % 3 != 0 && n % 7 != 0) {
        c.depthMm = pick(kDepthsMm, n * 7);
      }
      if (item.detail % 4 == 1 && n % 3 != 0) {
        c.leaningMm = pick(kLeaningMm, n);
      }
      if (item.detail % 5 == 2 && n % 4 != 0) {
        c.fullRelease = n % 3 != 0;
      }
      Entry& e = put(item, ms, c);
      e.source = Source::device;
      if (!s_.oneStream) {
        e.source =
            pick(std::array{Source::device, Source::device, Source::observer, Source::derived},
                 item.choice);
        e.part = item.choice / 4 % 4 - 1;
      }
      ms += roundMs(i % 2 == 0 ? spacingMs(item) : other);
    }
  }

  void addMain(const Item& item) {
    const int ms = startMs(item);
    switch (item.kind) {
    case kCpr: {
      entry::Cpr c;
      if (item.detail % 3 != 0) {
        c.ratePerMin = pick(kRates, item.choice);
      }
      put(item, ms, c, lengthMs(item));
      break;
    }
    case kAnalysis:
      put(item, ms,
          entry::Analysis{
              pick(std::array{Advice::shock, Advice::shock, Advice::noShock, Advice::inconclusive},
                   item.choice)},
          lengthMs(item));
      break;
    case kShock: {
      entry::Shock s;
      s.delivered = item.choice % 5 != 4;
      if (item.detail % 4 != 0) {
        s.energyJ = pick(kEnergiesJ, item.detail);
      }
      put(item, ms, s);
      break;
    }
    case kCirculation:
      put(item, ms,
          entry::Circulation{item.choice % 3 != 2 ? CirculationState::returned
                                                  : CirculationState::lost});
      break;
    default:
      put(item, ms,
          entry::Excluded{pick(std::array{ExclusionReason::notRescue, ExclusionReason::notTrusted,
                                          ExclusionReason::notObserved},
                               item.choice)},
          lengthMs(item));
    }
  }

  void addDeviceMoment(const Item& item) {
    const int ms = startMs(item);
    switch (item.kind) {
    case kElectrodes:
      put(item, ms,
          entry::Electrodes{pick(std::array{ElectrodeState::attached, ElectrodeState::attached,
                                            ElectrodeState::detached, ElectrodeState::poorContact},
                                 item.choice),
                            {}});
      break;
    case kPower:
      if (item.choice % 2 == 0) {
        put(item, ms, entry::PowerOn{});
      } else {
        put(item, ms, entry::PowerOff{});
      }
      break;
    case kPatientMode:
      put(item, ms,
          entry::PatientMode{pick(std::array{PatientCategory::adult, PatientCategory::child,
                                             PatientCategory::infant, PatientCategory::unknown,
                                             PatientCategory::adult},
                                  item.choice)});
      break;
    default: {
      const std::array<const char*, 6> words{"collapse",       "call_received", "device_arrived",
                                             "device_arrived", "handover",      "tea_was_served"};
      put(item, ms, entry::Milestone{pick(words, item.choice)});
    }
    }
  }

  void addOther(const Item& item) {
    // Some of them long after everything else.
    const int ms = startMs(item) + (item.choice % 3 == 0 ? roundMs(s_.spanMs) : 0);
    switch (item.detail % 14) {
    case 0:
      put(item, ms, entry::Other{"heart_song"});
      break;
    case 1:
      put(item, ms, entry::Mark{"here", "a colleague"});
      break;
    case 2:
      put(item, ms, entry::Pads{"2031-04"});
      break;
    case 3:
      put(item, ms, entry::SelfTest{true, ""});
      break;
    case 4:
      put(item, ms, entry::Battery{60.0, {}, {}});
      break;
    case 5:
      put(item, ms, entry::Prompt{"stand clear", ""});
      break;
    case 6:
      put(item, ms, entry::Airway{AirwayDevice::tube});
      break;
    case 7:
      put(item, ms, entry::Rhythm{RhythmKind::organised, {}, ""}, lengthMs(item));
      break;
    case 8:
    case 9:
      put(item, ms, entry::Charge{}, lengthMs(item));
      break;
    case 10:
      put(item, ms, entry::Medication{"1 mg"});
      break;
    case 11:
      put(item, ms, entry::Unreadable{"AAAA"});
      break;
    case 12:
      put(item, ms, entry::Fault{"low contrast", ""});
      break;
    default:
      put(item, ms, entry::RescuerChange{""});
    }
  }

  const Scenario& s_;
  Record& record_;
};

rc::Gen<Item> items() {
  using rc::gen::inRange;
  const auto size = static_cast<int>(kKindWeights.size());
  return rc::gen::resize(
      rc::kNominalSize,
      rc::gen::map(rc::gen::tuple(inRange(0, size), inRange(0, 1000), inRange(0, 10),
                                  inRange(0, 100), inRange(0, 100), inRange(1, 14),
                                  inRange(0, 1000), inRange(0, 1000), inRange(0, 16)),
                   [](const std::tuple<int, int, int, int, int, int, int, int, int>& n) {
                     Item item;
                     int kind = 0;
                     std::tie(kind, item.place, item.deviation, item.length, item.spacing,
                              item.count, item.choice, item.detail, item.flaw) = n;
                     item.kind = pick(kKindWeights, kind);
                     return item;
                   }));
}

/// What of a scenario is not its items, from one number each.
rc::Gen<Scenario> frames() {
  using rc::gen::inRange;
  return rc::gen::resize(
      rc::kNominalSize,
      rc::gen::map(rc::gen::tuple(inRange(0, 4), inRange(0, 9), inRange(0, 16),
                                  inRange(0, 1 << kKinds), inRange(0, 1 << kKinds), inRange(0, 4),
                                  inRange(0, 8), inRange(0, 10), inRange(0, 6), inRange(0, 4)),
                   [](const std::tuple<int, int, int, int, int, int, int, int, int, int>& n) {
                     Scenario s;
                     s.beginMs = std::array{0, 0, -5000, -30000}[std::get<0>(n) % 4U];
                     s.spanMs = pick(kSpansMs, std::get<1>(n));
                     s.unitMs = pick(std::array{100, 500, 1000}, std::get<2>(n));
                     // Fine records are slow for the reference; the long ones mostly stay coarse.
                     const bool longOne = s.spanMs > 40000;
                     s.fine = std::get<2>(n) % (longOne ? 16 : 3) == 0;
                     s.without = std::get<3>(n) & std::get<4>(n);
                     s.oneStream = std::get<5>(n) == 0;
                     s.patient = std::get<6>(n);
                     s.observerOnly = s.patient == 7;
                     s.threshold = std::get<7>(n);
                     s.profile = std::get<8>(n);
                     s.recordEnd = std::get<9>(n) % 2 == 1;
                     s.samples = std::get<9>(n) == 2 || std::get<9>(n) == 1;
                     return s;
                   }));
}

void addSamples(const Scenario& s, Record& record) {
  Channel channel;
  channel.id = "ecg";
  channel.quantity = "ecg";
  channel.rateHz = 250;
  for (int i = 0; i < 2; ++i) {
    const int ms = std::max(0, s.beginMs) + i * (s.spanMs / s.unitMs) * s.unitMs;
    channel.blocks.push_back({atMs(ms), channel.samples.size(), 25});
    channel.samples.resize(channel.samples.size() + 25);
    // The last line of a joined block begins later than the block.
    channel.firstLine = atMs(ms);
    channel.lastLine = atMs(ms + (s.profile % 2) * s.unitMs);
  }
  record.channels.push_back(channel);
}

} // namespace

rc::Gen<Scenario> scenarios() {
  return rc::gen::map(
      rc::gen::pair(frames(), rc::gen::scale(0.3, rc::gen::container<std::vector<Item>>(items()))),
      [](std::pair<Scenario, std::vector<Item>> both) {
        both.first.items = std::move(both.second);
        return both.first;
      });
}

Record recordOf(const Scenario& scenario) {
  Record record;
  record.header.kind = RecordKind::test;
  record.header.patient =
      pick(std::array{PatientCategory::unknown, PatientCategory::unknown, PatientCategory::unknown,
                      PatientCategory::adult, PatientCategory::adult, PatientCategory::child,
                      PatientCategory::infant},
           scenario.patient);
  record.header.parts.resize(3);
  Maker maker(scenario, record);
  for (const Item& item : scenario.items) {
    maker.add(item);
  }
  if (scenario.samples) {
    addSamples(scenario, record);
  }
  std::stable_sort(record.entries.begin(), record.entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
  return record;
}

FigureSettings settingsOf(const Scenario& scenario) {
  FigureSettings settings;
  settings.pauseThreshold = Duration{pick(kThresholdsUs, scenario.threshold)};
  settings.windowEnd = scenario.recordEnd ? WindowEnd::recordEnd : WindowEnd::lastActivity;
  const auto n = static_cast<std::size_t>(scenario.profile);
  settings.profile = n < builtInProfiles().size() ? builtInProfiles()[n] : Profile{};
  if (scenario.profile == 5) {
    // A local protocol, with limits that random records meet exactly.
    settings.profile.ratePerMin = Target<Range>{{60, 120}, {}};
    settings.profile.depth[PatientCategory::child] = Target<DepthTarget>{{Range{45, 55}, ""}, {}};
    settings.profile.pauseLimit = Target<double>{3, {}};
    settings.profile.breathPauseLimit = Target<double>{2, {}};
    settings.profile.leaningLimitMm = Target<double>{2, {}};
  }
  return settings;
}

namespace {

/// Whole seconds and milliseconds, so that a tie is seen.
std::string words(Time t) {
  std::ostringstream out;
  out << seconds(t);
  return out.str();
}

void printData(std::ostream& out, const Entry& e) {
  if (const auto* c = std::get_if<entry::Compression>(&e.data)) {
    out << " source " << static_cast<int>(e.source) << " part " << e.part;
    out << (c->depthMm ? " depth " + std::to_string(*c->depthMm) : "");
    out << (c->leaningMm ? " leaning " + std::to_string(*c->leaningMm) : "");
    out << (c->fullRelease ? (*c->fullRelease ? " released" : " not released") : "");
  } else if (const auto* cpr = std::get_if<entry::Cpr>(&e.data)) {
    out << (cpr->ratePerMin ? " rate " + std::to_string(*cpr->ratePerMin) : "");
  } else if (const auto* a = std::get_if<entry::Analysis>(&e.data)) {
    out << " advice " << (a->advice ? std::to_string(static_cast<int>(*a->advice)) : "?");
  } else if (const auto* s = std::get_if<entry::Shock>(&e.data)) {
    out << (s->delivered ? (*s->delivered ? " delivered" : " withheld") : " unknown");
    out << (s->energyJ ? " J " + std::to_string(*s->energyJ) : "");
  } else if (const auto* circulation = std::get_if<entry::Circulation>(&e.data)) {
    out << (circulation->state == CirculationState::returned ? " returned" : " lost");
  } else if (const auto* x = std::get_if<entry::Electrodes>(&e.data)) {
    out << " state " << (x->state ? std::to_string(static_cast<int>(*x->state)) : "?");
  } else if (const auto* m = std::get_if<entry::PatientMode>(&e.data)) {
    out << " category " << (m->category ? std::to_string(static_cast<int>(*m->category)) : "?");
  } else if (const auto* milestone = std::get_if<entry::Milestone>(&e.data)) {
    out << " " << milestone->what;
  }
}

} // namespace

std::string asText(const Record& record, const FigureSettings& settings) {
  std::ostringstream out;
  out << "threshold " << seconds(settings.pauseThreshold) << " s, profile '" << settings.profile.id
      << "', window to " << (settings.windowEnd == WindowEnd::recordEnd ? "record end" : "activity")
      << ", patient " << static_cast<int>(record.header.patient) << "\n";
  for (std::size_t i = 0; i < record.entries.size(); ++i) {
    const Entry& e = record.entries[i];
    out << "  #" << i << " " << (e.hasTime ? words(e.t) : "no time");
    out << (e.end ? " to " + words(*e.end) : "") << " " << typeName(e.data);
    printData(out, e);
    out << (e.incomplete ? " INCOMPLETE" : "") << "\n";
  }
  for (const Channel& channel : record.channels) {
    for (const SampleBlock& block : channel.blocks) {
      out << "  samples at " << words(block.t) << "\n";
    }
    out << (channel.lastLine ? "  last line at " + words(*channel.lastLine) + "\n" : "");
  }
  return out.str();
}

std::ostream& operator<<(std::ostream& out, const Scenario& scenario) {
  return out << asText(recordOf(scenario), settingsOf(scenario));
}

} // namespace afterbeat::reference
