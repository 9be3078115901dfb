#include "importers/csv/meaning.h"

#include "importers/csv/note_cells.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

std::string text(std::string_view cell) {
  return std::string{cell};
}

std::string joined(std::string_view a, std::string_view b) {
  return a.empty() || b.empty() ? text(a) + text(b) : text(a) + " " + text(b);
}

/// A note while it is being understood.
class Understanding {
public:
  Understanding(std::string_view what, std::string_view value)
      : what_(what), value_(value), whatCell_(takeApart(what, false)),
        valueCell_(takeApart(value, true)) {}

  std::optional<NoteMeaning> result() {
    std::size_t at = 0;
    const auto* phrase = findTopic(whatCell_.words, at);
    if (phrase == nullptr) {
      return std::nullopt;
    }
    topic_ = phrase->topic;
    state_ = phrase->state;
    rest_ = whatCell_.words;
    const auto begin = rest_.begin() + static_cast<std::ptrdiff_t>(at);
    rest_.erase(begin, begin + static_cast<std::ptrdiff_t>(phrase->words.size()));
    leads_ = at == 0;
    if (takesAnyWords()) {
      return leads_ ? freeText() : std::nullopt;
    }
    if (state_ != State::none && namesTopic(rest_, topic_)) {
      rest_.clear(); // "analysis: no shock"
    }
    if (state_ != State::none && !rest_.empty()) {
      return std::nullopt;
    }
    auto meaning = state_ != State::none ? ofState(state_) : ofCells();
    if (meaning) {
      meaning->leftOver = leftOver();
    }
    return meaning;
  }

private:
  [[nodiscard]] bool takesAnyWords() const {
    return topic_ == Topic::drug || topic_ == Topic::medication || topic_ == Topic::note;
  }

  std::optional<NoteMeaning> freeText() const {
    NoteMeaning meaning;
    if (topic_ == Topic::drug) {
      meaning.data = entry::Medication{joined(what_, value_)};
    } else if (topic_ == Topic::medication) {
      meaning.data = entry::Medication{joined(afterHeading(), value_)};
    } else {
      meaning.role = NoteRole::remark;
      meaning.data = entry::Mark{joined(afterHeading(), value_), {}};
    }
    return meaning;
  }

  /// What stands behind the topic's word in the cell as written: "Note: family arrived".
  [[nodiscard]] std::string_view afterHeading() const {
    if (rest_.empty() && whatCell_.quantities.empty()) {
      return {};
    }
    const auto mark = what_.find_first_of(": -");
    const auto begin = what_.find_first_not_of(": -", mark);
    return mark == std::string_view::npos || begin == std::string_view::npos ? what_
                                                                             : what_.substr(begin);
  }

  /// The meaning with what stands beside the topic in its cell, else with what the value says.
  std::optional<NoteMeaning> ofCells() {
    if (!rest_.empty()) {
      return firstOf(statesOf(rest_));
    }
    if (auto meaning = firstOf(statesOf(valueCell_.words))) {
      valueUsed_ = true;
      return meaning;
    }
    return ofState(State::none);
  }

  std::optional<NoteMeaning> firstOf(const std::vector<State>& states) {
    for (const auto state : states) {
      if (auto meaning = ofState(state)) {
        return meaning;
      }
    }
    return std::nullopt;
  }

  std::optional<NoteMeaning> ofState(State state);
  std::optional<NoteMeaning> ofDevice(State state) const;
  std::optional<NoteMeaning> ofElectrodes(State state) const;
  std::optional<NoteMeaning> ofAnalysis(State state) const;
  std::optional<NoteMeaning> ofShock(State state);
  std::optional<NoteMeaning> ofCompressions(State state);
  std::optional<NoteMeaning> ofCpr(State state);
  std::optional<NoteMeaning> ofVentilation(State state);
  std::optional<NoteMeaning> ofAirway(State state) const;
  std::optional<NoteMeaning> ofCirculation(State state) const;
  std::optional<NoteMeaning> ofRhythm(State state) const;
  std::optional<NoteMeaning> ofMode(State state) const;

  /// The first number with one of these units; with `bare`, else a number without a unit in the
  /// value cell.
  std::optional<double> take(std::initializer_list<std::string_view> units, bool bare, double low,
                             double high) {
    for (const auto* cell : {&valueCell_, &whatCell_}) {
      for (const auto& quantity : cell->quantities) {
        const bool named = std::find(units.begin(), units.end(), quantity.unit) != units.end();
        const bool plain = bare && quantity.unit.empty() && quantity.inValue;
        if ((named || plain) && quantity.number >= low && quantity.number <= high) {
          valueUsed_ = valueUsed_ || (quantity.inValue && valueCell_.words.empty());
          return quantity.number;
        }
      }
    }
    return std::nullopt;
  }

  /// "2 breaths", but not "2. Beatmung".
  [[nodiscard]] bool saysSeveral() const {
    static const Words kSeveral =
        wordsOf("breaths ventilations Beatmungen Atemspenden Atemh\u00fcbe");
    return std::find_first_of(whatCell_.words.begin(), whatCell_.words.end(), kSeveral.begin(),
                              kSeveral.end()) != whatCell_.words.end();
  }

  [[nodiscard]] std::optional<double> rate() {
    const auto named = take({"min", "bpm"}, false, 20, 300);
    return named ? named : take({}, true, 60, 300); // a smaller bare number may be a count
  }

  [[nodiscard]] std::string leftOver() const {
    const auto fromWhat = whatCell_.aside ? what_ : std::string_view{};
    const auto fromValue = valueUsed_ && !valueCell_.aside ? std::string_view{} : value_;
    return fromWhat.empty() || fromValue.empty() ? text(fromWhat) + text(fromValue)
                                                 : text(fromWhat) + "; " + text(fromValue);
  }

  std::string_view what_, value_;
  CellWords whatCell_, valueCell_;
  Topic topic_{};
  State state_ = State::none;
  Words rest_;
  bool leads_ = false;
  bool valueUsed_ = false;
};

std::optional<NoteMeaning> moment(EntryData data) {
  return NoteMeaning{NoteRole::moment, std::move(data), 1, {}};
}

std::optional<NoteMeaning> milestone(const char* what) {
  return moment(entry::Milestone{what});
}

std::optional<NoteMeaning> Understanding::ofState(State state) {
  const bool bare = state == State::none || state == State::yes;
  switch (topic_) {
  case Topic::device:
    return ofDevice(state);
  case Topic::electrodes:
    return ofElectrodes(state);
  case Topic::analysis:
    return ofAnalysis(state);
  case Topic::shock:
    return ofShock(state);
  case Topic::compressions:
  case Topic::singleCompression:
    return ofCompressions(state);
  case Topic::cpr:
  case Topic::resuscitation:
    return ofCpr(state);
  case Topic::ventilation:
    return ofVentilation(state);
  case Topic::airway:
    return ofAirway(state);
  case Topic::circulation:
    return ofCirculation(state);
  case Topic::rhythm:
    return ofRhythm(state);
  case Topic::patientMode:
    return ofMode(state);
  case Topic::crew:
    return state == State::arrived ? milestone("crew_arrived") : std::nullopt;
  case Topic::collapse:
    return bare ? milestone("collapse") : std::nullopt;
  case Topic::callReceived:
    return bare ? milestone("call_received") : std::nullopt;
  case Topic::handover:
    return bare || state == State::given ? milestone("handover") : std::nullopt;
  case Topic::effortsEnded:
    return bare ? milestone("efforts_ended") : std::nullopt;
  case Topic::cprStartedByOthers:
    return bare || state == State::start ? milestone("cpr_started") : std::nullopt;
  case Topic::rescuerChange:
    return bare || state == State::given ? moment(entry::RescuerChange{}) : std::nullopt;
  case Topic::medication:
  case Topic::drug:
  case Topic::note:
    break;
  }
  return std::nullopt;
}

std::optional<NoteMeaning> Understanding::ofDevice(State state) const {
  switch (state) {
  case State::on:
  case State::start:
    return moment(entry::PowerOn{});
  case State::off:
    return moment(entry::PowerOff{});
  case State::arrived:
    return milestone("device_arrived");
  case State::requested:
    return milestone("device_requested");
  default:
    return std::nullopt;
  }
}

std::optional<NoteMeaning> Understanding::ofElectrodes(State state) const {
  switch (state) {
  case State::on:
  case State::yes:
    return moment(entry::Electrodes{ElectrodeState::attached, {}});
  case State::off:
    return moment(entry::Electrodes{ElectrodeState::detached, {}});
  case State::poor:
    return moment(entry::Electrodes{ElectrodeState::poorContact, {}});
  default:
    return std::nullopt;
  }
}

std::optional<NoteMeaning> Understanding::ofAnalysis(State state) const {
  const auto advice = [&](std::optional<Advice> given) -> std::optional<NoteMeaning> {
    // "shock advised" alone completes an analysis noted before.
    const bool alone =
        state_ != State::none && whatCell_.words.size() > 0 &&
        !std::any_of(whatCell_.words.begin(), whatCell_.words.end(),
                     [](const auto& word) { return namesTopic({word}, Topic::analysis); });
    return NoteMeaning{
        alone ? NoteRole::advice : NoteRole::analysis, entry::Analysis{given}, 1, {}};
  };
  switch (state) {
  case State::none:
    return advice(std::nullopt);
  case State::advised:
  case State::yes:
    return advice(Advice::shock);
  case State::notAdvised:
  case State::no:
    return advice(Advice::noShock);
  case State::unclear:
    return advice(Advice::inconclusive);
  case State::start:
    return NoteMeaning{NoteRole::analysisBegins, entry::Analysis{}, 1, {}};
  case State::stop:
    return NoteMeaning{NoteRole::analysisEnds, entry::Analysis{}, 1, {}};
  default:
    return std::nullopt;
  }
}

std::optional<NoteMeaning> Understanding::ofShock(State state) {
  switch (state) {
  case State::advised:
    return NoteMeaning{NoteRole::advice, entry::Analysis{Advice::shock}, 1, {}};
  case State::notAdvised:
    return NoteMeaning{NoteRole::advice, entry::Analysis{Advice::noShock}, 1, {}};
  case State::none:
  case State::given:
  case State::yes:
  case State::withheld:
  case State::no:
    break;
  default:
    return std::nullopt;
  }
  entry::Shock shock;
  shock.delivered = state != State::withheld && state != State::no;
  shock.energyJ = take({"j", "joule", "joules", "ws"}, true, 1, 1000);
  return moment(std::move(shock));
}

std::optional<NoteMeaning> Understanding::ofCompressions(State state) {
  const bool begins = state == State::start || state == State::on || state == State::yes ||
                      (state == State::none && topic_ == Topic::compressions);
  if (begins || state == State::stop || state == State::off || state == State::no) {
    entry::Cpr cpr;
    cpr.ratePerMin = rate();
    return NoteMeaning{
        begins ? NoteRole::compressionsBegin : NoteRole::compressionsEnd, cpr, 1, {}};
  }
  if (state != State::none) {
    return std::nullopt;
  }
  entry::Compression one;
  one.depthMm = take({"mm"}, false, 1, 150);
  if (const auto cm = one.depthMm ? std::nullopt : take({"cm"}, false, 0.1, 15)) {
    one.depthMm = *cm * 10;
  }
  return moment(one);
}

std::optional<NoteMeaning> Understanding::ofCpr(State state) {
  if (state == State::none || state == State::start || state == State::yes) {
    entry::Cpr cpr;
    cpr.ratePerMin = rate();
    return NoteMeaning{NoteRole::cprBegins, cpr, 1, {}};
  }
  if (state != State::stop) {
    return std::nullopt;
  }
  return topic_ == Topic::cpr
             ? std::optional{NoteMeaning{NoteRole::compressionsEnd, entry::Cpr{}, 1, {}}}
             : milestone("efforts_ended");
}

std::optional<NoteMeaning> Understanding::ofVentilation(State state) {
  if (state != State::none && state != State::given && state != State::yes) {
    return std::nullopt;
  }
  entry::Ventilation breath;
  breath.volumeMl = take({"ml"}, false, 1, 3000);
  auto meaning = moment(breath);
  for (const auto* cell : {&whatCell_, &valueCell_}) {
    for (const auto& one : cell->quantities) {
      const bool count = one.unit.empty() && one.leads && one.number >= 1 && one.number <= 10 &&
                         one.number == std::floor(one.number);
      if (count && (one.inValue || saysSeveral())) {
        meaning->times = static_cast<int>(one.number);
        valueUsed_ = valueUsed_ || one.inValue;
      }
    }
  }
  return meaning;
}

std::optional<NoteMeaning> Understanding::ofAirway(State state) const {
  switch (state) {
  case State::noAirway:
    return moment(entry::Airway{AirwayDevice::none});
  case State::mask:
    return moment(entry::Airway{AirwayDevice::mask});
  case State::supraglottic:
    return moment(entry::Airway{AirwayDevice::supraglottic});
  case State::tube:
    return moment(entry::Airway{AirwayDevice::tube});
  default:
    return std::nullopt;
  }
}

std::optional<NoteMeaning> Understanding::ofCirculation(State state) const {
  switch (state) {
  case State::returned:
  case State::yes:
    return moment(entry::Circulation{CirculationState::returned});
  case State::lost:
  case State::no:
    return moment(entry::Circulation{CirculationState::lost});
  default:
    return std::nullopt;
  }
}

std::optional<NoteMeaning> Understanding::ofRhythm(State state) const {
  entry::Rhythm rhythm;
  switch (state) {
  case State::shockable:
    rhythm.is = RhythmKind::shockable;
    break;
  case State::organised:
    rhythm.is = RhythmKind::organised;
    break;
  case State::ventricularTachycardia:
    // Whether it is to be shocked depends on pulse and rate, which the word does not tell.
    rhythm.is = RhythmKind::organised;
    rhythm.reason = "VT, rate not stated by the source";
    return NoteMeaning{NoteRole::rhythm, std::move(rhythm), 1, {}};
  case State::asystole:
    rhythm.is = RhythmKind::asystole;
    break;
  case State::unclear:
  case State::notAdvised:
    rhythm.is = RhythmKind::unclear;
    break;
  default:
    return std::nullopt;
  }
  rhythm.reason = state_ != State::none || !rest_.empty() ? text(what_) : text(value_);
  return NoteMeaning{NoteRole::rhythm, std::move(rhythm), 1, {}};
}

std::optional<NoteMeaning> Understanding::ofMode(State state) const {
  switch (state) {
  case State::adult:
    return moment(entry::PatientMode{PatientCategory::adult});
  case State::child:
    return moment(entry::PatientMode{PatientCategory::child});
  case State::infant:
    return moment(entry::PatientMode{PatientCategory::infant});
  default:
    return std::nullopt;
  }
}

} // namespace

std::optional<NoteMeaning> meaningOf(std::string_view what, std::string_view value) {
  return Understanding{what, value}.result();
}

} // namespace afterbeat
