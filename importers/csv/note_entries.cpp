#include "importers/csv/note_entries.h"

#include "importers/csv/meaning.h"
#include "importers/imported.h"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

namespace afterbeat {
namespace {

/// What an analysis advised may be noted this much later.
constexpr Duration kAdviceFollowsWithin{60'000'000};

std::string joined(const std::string& a, const std::string& b, const char* between) {
  return a.empty() || b.empty() ? a + b : a + between + b;
}

/// Builds entries note by note.
class EntryBuilder {
public:
  EntryBuilder(std::vector<Problem>& problems) : problems_(problems) {}

  void add(const TimedNote& note) {
    last_ = note.t;
    if (note.what.empty()) {
      addRemark(note, note.value);
      return;
    }
    const auto meaning = meaningOf(note.what, note.value);
    if (meaning) {
      addUnderstood(note, *meaning);
      return;
    }
    report(note, Severity::info,
           inEnglish("Importers",
                     "\"%1\" is none of the words known for an event; it is kept as a remark."),
           note.what);
    addRemark(note, joined(note.what, note.value, " "));
  }

  std::vector<Entry> finish() {
    closeCompressions();
    closeAnalysis();
    if (rhythm_) {
      entries_[*rhythm_].end = last_;
    }
    std::stable_sort(entries_.begin(), entries_.end(),
                     [](const Entry& a, const Entry& b) { return a.t < b.t; });
    return std::move(entries_);
  }

private:
  template <typename... Values>
  void report(const TimedNote& note, Severity severity, EnglishText said, const Values&... values) {
    problems_.push_back(importNote(note.line, severity, said, values...));
  }

  Entry& addEntry(const TimedNote& note, EntryData data, const std::string& leftOver = {}) {
    Entry entry;
    entry.t = note.t;
    entry.line = note.line;
    entry.data = std::move(data);
    entry.source = Source::observer;
    entry.note = joined(note.remark, leftOver, "; ");
    entries_.push_back(std::move(entry));
    return entries_.back();
  }

  void addRemark(const TimedNote& note, const std::string& text) {
    if (text.empty() && note.remark.empty()) {
      report(note, Severity::info,
             inEnglish("Importers", "This line has a time and nothing else; it is left out."));
    } else if (text.empty()) {
      addEntry(note, entry::Mark{note.remark, {}}).note.clear();
    } else {
      addEntry(note, entry::Mark{text, {}});
    }
  }

  void addUnderstood(const TimedNote& note, const NoteMeaning& meaning) {
    switch (meaning.role) {
    case NoteRole::moment:
      addMoment(note, meaning);
      noticeEffortsEnded(note, meaning);
      break;
    case NoteRole::remark:
      addRemark(note, std::get<entry::Mark>(meaning.data).text);
      break;
    case NoteRole::analysis:
    case NoteRole::advice:
      addAnalysis(note, meaning);
      break;
    case NoteRole::analysisBegins:
      closeAnalysis();
      analysis_ = OpenAnalysis{addAnalysisEntry(note, meaning), note, true};
      break;
    case NoteRole::analysisEnds:
      endAnalysis(note, meaning);
      break;
    case NoteRole::compressionsBegin:
    case NoteRole::cprBegins:
      beginCompressions(note, meaning);
      break;
    case NoteRole::compressionsEnd:
      endCompressions(note, meaning);
      break;
    case NoteRole::rhythm:
      if (rhythm_) {
        entries_[*rhythm_].end = note.t;
      }
      addEntry(note, meaning.data, meaning.leftOver);
      rhythm_ = entries_.size() - 1;
      break;
    }
  }

  void addMoment(const TimedNote& note, const NoteMeaning& meaning) {
    for (int i = 0; i < meaning.times; ++i) {
      auto data = meaning.data;
      auto leftOver = meaning.leftOver;
      if (auto* change = std::get_if<entry::RescuerChange>(&data)) {
        change->text = std::exchange(leftOver, {});
      }
      if (auto* shock = std::get_if<entry::Shock>(&data); shock && shock->delivered == false) {
        shock->reason = note.remark;
      }
      addEntry(note, std::move(data), leftOver);
    }
  }

  /// Whoever ends the resuscitation takes the hands off the chest.
  void noticeEffortsEnded(const TimedNote& note, const NoteMeaning& meaning) {
    const auto* milestone = std::get_if<entry::Milestone>(&meaning.data);
    if (milestone == nullptr || milestone->what != "efforts_ended") {
      return;
    }
    effortsEnded_ = EffortsEnded{entries_.size() - 1, note.what};
    if (compressions_) {
      entries_[compressions_->entry].end = note.t;
      compressions_.reset();
    }
  }

  /// Compressions that begin again show that the efforts went on: the note was about compressions.
  void takeBackEffortsEnded() {
    if (effortsEnded_) {
      entries_[effortsEnded_->entry].data = entry::Mark{effortsEnded_->words, {}};
      effortsEnded_.reset();
    }
  }

  std::size_t addAnalysisEntry(const TimedNote& note, const NoteMeaning& meaning) {
    addEntry(note, meaning.data, meaning.leftOver).end = note.t;
    return entries_.size() - 1;
  }

  [[nodiscard]] entry::Analysis& analysisData() {
    return std::get<entry::Analysis>(entries_[analysis_->entry].data);
  }

  void addAnalysis(const TimedNote& note, const NoteMeaning& meaning) {
    const auto advice = std::get<entry::Analysis>(meaning.data).advice;
    const bool follows =
        analysis_ && note.t - *entries_[analysis_->entry].end <= kAdviceFollowsWithin;
    const bool completes =
        follows && (analysis_->open || (meaning.role == NoteRole::advice && advice));
    if (completes) {
      auto& open = entries_[analysis_->entry];
      if (!analysis_->ended) {
        open.end = note.t;
      }
      open.note = joined(open.note, joined(note.remark, meaning.leftOver, "; "), "; ");
      analysisData().advice = advice;
      analysis_->open = false;
    } else {
      closeAnalysis();
      analysis_ = OpenAnalysis{addAnalysisEntry(note, meaning), note, false};
    }
    if (analysisData().advice) {
      analysis_.reset();
    }
  }

  void endAnalysis(const TimedNote& note, const NoteMeaning& meaning) {
    if (!analysis_ || !analysis_->open) {
      closeAnalysis();
      analysis_ = OpenAnalysis{addAnalysisEntry(note, meaning), note, false, true};
      return;
    }
    entries_[analysis_->entry].end = note.t;
    analysis_->open = false;
    analysis_->ended = true;
  }

  /// An analysis of which it never became known what it advised is incomplete.
  void closeAnalysis() {
    if (analysis_) {
      entries_[analysis_->entry].incomplete = true;
      report(analysis_->note, Severity::warning,
             inEnglish("Importers",
                       "What this analysis advised is not noted, so it counts in no figure."));
    }
    analysis_.reset();
  }

  void beginCompressions(const TimedNote& note, const NoteMeaning& meaning) {
    takeBackEffortsEnded();
    if (compressions_) {
      report(note, Severity::info,
             inEnglish("Importers",
                       "Compressions were already noted as begun; this line changes nothing."));
      if (!note.remark.empty() || !meaning.leftOver.empty()) {
        addRemark(note, joined(note.what, meaning.leftOver, " "));
      }
      return;
    }
    addEntry(note, meaning.data, meaning.leftOver);
    compressions_ =
        OpenCompressions{entries_.size() - 1, note, meaning.role == NoteRole::cprBegins};
  }

  void endCompressions(const TimedNote& note, const NoteMeaning& meaning) {
    if (!compressions_) {
      report(
          note, Severity::info,
          inEnglish(
              "Importers",
              "Compressions end here and their begin is not noted; the line is kept as a remark."));
      addRemark(note, joined(note.what, note.value, " "));
      return;
    }
    auto& stretch = entries_[compressions_->entry];
    auto& cpr = std::get<entry::Cpr>(stretch.data);
    if (!cpr.ratePerMin) {
      cpr.ratePerMin = std::get<entry::Cpr>(meaning.data).ratePerMin;
    }
    stretch.end = note.t;
    stretch.note = joined(stretch.note, joined(note.remark, meaning.leftOver, "; "), "; ");
    compressions_.reset();
  }

  void closeCompressions() {
    if (!compressions_) {
      return;
    }
    auto& stretch = entries_[compressions_->entry];
    if (compressions_->mayBeMoment) {
      stretch.data = entry::Milestone{"cpr_started"};
      return;
    }
    stretch.end = last_;
    report(compressions_->note, Severity::warning,
           inEnglish("Importers", "Compressions begin here and their end is not noted; they are "
                                  "taken to go on to the last note."));
  }

  struct OpenAnalysis {
    std::size_t entry;
    TimedNote note;
    /// Its begin was noted, and nothing after it yet.
    bool open = false;
    /// Its end was noted.
    bool ended = false;
  };
  struct OpenCompressions {
    std::size_t entry;
    TimedNote note;
    /// Noted as the start of CPR, which is a known moment if no end follows.
    bool mayBeMoment = false;
  };

  std::vector<Problem>& problems_;
  std::vector<Entry> entries_;
  Time last_{};
  std::optional<OpenAnalysis> analysis_;
  struct EffortsEnded {
    std::size_t entry;
    std::string words;
  };
  std::optional<OpenCompressions> compressions_;
  std::optional<EffortsEnded> effortsEnded_;
  std::optional<std::size_t> rhythm_;
};

} // namespace

std::vector<Entry> entriesFromNotes(const std::vector<TimedNote>& notes,
                                    std::vector<Problem>& problems) {
  EntryBuilder builder{problems};
  for (const auto& note : notes) {
    builder.add(note);
  }
  return builder.finish();
}

} // namespace afterbeat
