#include "importers/gather/gathered_header.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat {
namespace {

const char* kindName(RecordKind kind) {
  return kind == RecordKind::rescue ? "a rescue" : kind == RecordKind::drill ? "a drill" : "a test";
}

const char* categoryName(PatientCategory category) {
  switch (category) {
  case PatientCategory::adult:
    return "adult";
  case PatientCategory::child:
    return "child";
  case PatientCategory::infant:
    return "infant";
  case PatientCategory::unknown:
    break;
  }
  return "unknown";
}

/// Takes over facts source by source.
class FactsMerger {
public:
  FactsMerger(Header& into, std::vector<Problem>& problems) : into_(into), problems_(problems) {}

  void add(const GatherSource& source) {
    label_ = source.label;
    const auto& from = source.imported.record.header;
    if (from.kind && !source.imported.kindAssumed) {
      addKind(*from.kind);
    } else if (from.kind && !assumed_) {
      assumed_ = from.kind;
    }
    addCategory(from.patient);
    addNumber("age", into_.ageYears, from.ageYears);
    addText("sex", into_.sex, from.sex);
    addDevice(from.device);
    addText("witnessed", into_.event.witnessed, from.event.witnessed);
    addText("bystander CPR", into_.event.bystanderCpr, from.event.bystanderCpr);
    addText("location", into_.event.location, from.event.location);
    addText("cause", into_.event.cause, from.event.cause);
    addText("site", into_.site, from.site);
    addText("team", into_.team, from.team);
    addText("case", into_.caseNumber, from.caseNumber);
    addOtherKeys(from.otherKeys);
    into_.synthetic = into_.synthetic || from.synthetic;
  }

  void finish() {
    if (!into_.kind) {
      into_.kind = assumed_.value_or(RecordKind::test);
    }
  }

private:
  template <typename... Values>
  void say(Severity severity, EnglishText said, const Values&... values) {
    problems_.push_back(importNote(0, severity, said, values...));
  }

  void differs(const char* what, const std::string& kept, const std::string& other) {
    say(Severity::info,
        inEnglish("Importers", "%1 says otherwise about the %2: \"%3\"; \"%4\" is kept."), label_,
        what, other, kept);
  }

  void addKind(RecordKind kind) {
    if (!into_.kind) {
      into_.kind = kind;
    } else if (*into_.kind != kind) {
      // Of two kinds the one that is no rescue: a drill never enters rescue statistics.
      const RecordKind kept = *into_.kind == RecordKind::rescue ? kind : *into_.kind;
      say(Severity::error,
          inEnglish("Importers", "%1 says it is %2, a source before it %3; %4 is kept."), label_,
          kindName(kind), kindName(*into_.kind), kindName(kept));
      into_.kind = kept;
    }
  }

  void addCategory(PatientCategory category) {
    if (into_.patient == PatientCategory::unknown) {
      into_.patient = category;
    } else if (category != PatientCategory::unknown && category != into_.patient) {
      differs("patient", categoryName(into_.patient), categoryName(category));
    }
  }

  void addText(const char* what, std::string& kept, const std::string& said) {
    if (kept.empty()) {
      kept = said;
    } else if (!said.empty() && said != kept) {
      differs(what, kept, said);
    }
  }

  void addNumber(const char* what, std::optional<double>& kept, const std::optional<double>& said) {
    if (!kept) {
      kept = said;
    } else if (said && *said != *kept) {
      differs(what, fmt::format("{}", *kept), fmt::format("{}", *said));
    }
  }

  /// A device's facts belong together: the maker of one and the number of another would be a third.
  void addDevice(const DeviceFacts& device) {
    const auto texts = [](const DeviceFacts& d) {
      return std::vector<std::string>{d.label, d.maker, d.model, d.serial, d.software, d.returnTo};
    };
    const auto said = texts(device);
    const std::vector<std::string> nothing(said.size());
    if (texts(into_.device) == nothing) {
      into_.device = device;
    } else if (said != nothing && said != texts(into_.device)) {
      const auto named = [&](const DeviceFacts& d) {
        const auto all = texts(d);
        return *std::find_if(all.begin(), all.end(), [](const auto& one) { return !one.empty(); });
      };
      differs("device", named(into_.device), named(device));
    }
  }

  void addOtherKeys(const std::string& keys) {
    if (into_.otherKeys.empty()) {
      into_.otherKeys = keys;
    } else if (!keys.empty() && keys != into_.otherKeys) {
      say(Severity::info,
          inEnglish(
              "Importers",
              "The header of %1 holds more that this program does not know; it is not taken over."),
          label_);
    }
  }

  Header& into_;
  std::vector<Problem>& problems_;
  std::string label_;
  std::optional<RecordKind> assumed_;
};

} // namespace

Header gatheredFacts(const std::vector<GatherSource>& sources, std::vector<Problem>& problems) {
  Header header;
  FactsMerger merger{header, problems};
  for (const auto& source : sources) {
    merger.add(source);
  }
  merger.finish();
  return header;
}

void setGatheredClock(Header& header, const std::vector<GatherSource>& sources,
                      const Placement& placement, std::vector<Problem>& problems) {
  auto index = placement.clockSource;
  for (std::size_t i = 0; i < sources.size() && !index; ++i) {
    if (sources[i].imported.record.header.recorded) {
      index = i;
    }
  }
  if (index && sources[*index].imported.record.header.recorded) {
    const auto& from = sources[*index].imported.record.header;
    header.recorded = from.recorded;
    header.recorded->utc -= placement.offsets[*index];
    header.clock = from.clock;
    if (*index > 0) {
      problems.push_back(importNote(
          0, Severity::info,
          inEnglish("Importers", "The clock times are those of %1, carried back to the begin."),
          sources[*index].label));
    }
    return;
  }
  // A record may also be tied to the clock by `clock_set` alone; its entries are kept.
  header.clock = index ? sources[*index].imported.record.header.clock : ClockFacts{};
  header.clock.state = ClockState::unset;
  header.recorded = WallTime{{}, std::chrono::minutes{0}, false};
  if (!index) {
    problems.push_back(
        importNote(0, Severity::info,
                   inEnglish("Importers", "No source tells date and time, so the clock times of "
                                          "the gathered record are not known.")));
  }
}

} // namespace afterbeat
