#include "importers/wfdb/wfdb_annotations.h"
#include "importers/wfdb/wfdb_header.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

namespace afterbeat {
namespace {

/// Marks of the beginning of fibrillation this close after a rhythm mark that says the same are
/// taken for the same onset.
constexpr Duration kSameOnset{1'000'000};

std::string upperCase(std::string_view label) {
  std::string text{label};
  std::transform(text.begin(), text.end(), text.begin(), [](char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  });
  return text;
}

/// Builds stretches from marks in time order.
class StretchBuilder {
public:
  explicit StretchBuilder(std::vector<Entry>& into) : into_(into) {}

  void rhythmChange(Time t, std::string label) {
    close(t);
    begin_ = t;
    label_ = std::move(label);
    bracketed_ = false;
  }
  void fibrillationBegins(Time t) {
    if (begin_ && rhythmOfLabel(label_) == RhythmKind::shockable) {
      if (!bracketed_ && t - *begin_ < kSameOnset) {
        begin_ = t;
      }
    } else {
      close(t);
      begin_ = t;
      label_ = "VF";
    }
    bracketed_ = true;
  }
  void fibrillationEnds(Time t) {
    if (bracketed_) {
      close(t);
    }
  }
  void close(Time t) {
    if (begin_) {
      into_.push_back(stretch(*begin_, std::max(*begin_, t)));
    }
    begin_.reset();
    bracketed_ = false;
  }

private:
  [[nodiscard]] Entry stretch(Time begin, Time end) const {
    entry::Rhythm rhythm;
    rhythm.is = rhythmOfLabel(label_);
    const auto label = upperCase(label_);
    rhythm.reason = label == "VT"      ? "VT, rate not stated by the source"
                    : label == "NOISE" ? "noise"
                                       : label_;
    Entry entry;
    entry.t = begin;
    entry.end = end;
    entry.data = std::move(rhythm);
    entry.source = Source::observer;
    return entry;
  }

  std::vector<Entry>& into_;
  std::optional<Time> begin_;
  std::string label_;
  /// A [ was seen and its ] not yet.
  bool bracketed_ = false;
};

Entry remark(Time t, std::string text) {
  Entry entry;
  entry.t = t;
  entry.data = entry::Mark{std::move(text), {}};
  entry.source = Source::observer;
  return entry;
}

/// The label of a rhythm mark: `(VFIB` without the bracket.
std::string rhythmLabel(const WfdbAnnotation& annotation) {
  auto label = cleanText(annotation.text);
  if (!label.empty() && label.front() == '(') {
    label.erase(0, 1);
  }
  return label.empty() ? "not named" : label;
}

std::string remarkText(const WfdbAnnotation& annotation) {
  const auto text = cleanText(annotation.text);
  if (annotation.code == static_cast<int>(AnnotationCode::signalQuality)) {
    return text.empty() ? "Signal quality changes" : "Signal quality: " + text;
  }
  return text.empty() ? "Remark without a text" : text;
}

/// What was counted and not taken over.
struct LeftOut {
  std::size_t beats = 0;
  std::size_t outside = 0;

  void report(std::vector<Problem>& problems) const {
    if (beats > 0) {
      problems.push_back(importNote(
          0, Severity::info,
          inEnglish("Importers", "%1 marks on single heart beats and waves were not taken over."),
          beats));
    }
    if (outside > 0) {
      problems.push_back(importNote(
          0, Severity::error,
          inEnglish("Importers",
                    "%1 annotations lie outside the times a record can hold and are lost."),
          outside));
    }
  }
};

} // namespace

RhythmKind rhythmOfLabel(std::string_view label) {
  // Labels of the rhythm annotations of the PhysioNet databases (WFDB Applications Guide, and the
  // label key of the MIT-BIH Malignant Ventricular Arrhythmia Database).
  static constexpr std::array<std::string_view, 26> kOrganised = {
      "AB",   "AFIB", "AFL", "B",   "BI", "BII", "HGEA", "IVR", "N",   "NOD", "NSR", "P", "PM",
      "PREX", "SAB",  "SB",  "SBR", "SR", "ST",  "SVTA", "T",   "VER", "VT",  "AVB", "J", "PAT"};
  const auto name = upperCase(label);
  if (name == "VF" || name == "VFIB" || name == "VFL") {
    return RhythmKind::shockable;
  }
  if (name == "ASYS") {
    return RhythmKind::asystole;
  }
  const bool known = std::find(kOrganised.begin(), kOrganised.end(), name) != kOrganised.end();
  return known ? RhythmKind::organised : RhythmKind::unclear;
}

std::vector<Entry> entriesFrom(const WfdbAnnotations& annotations, double frequency, Time recordEnd,
                               std::vector<Problem>& problems) {
  std::vector<Entry> entries;
  StretchBuilder stretches{entries};
  LeftOut leftOut;
  const double steps = annotations.frequency > 0 ? annotations.frequency : frequency;
  for (const auto& annotation : annotations.all) {
    const auto t = timeFromSeconds(static_cast<double>(annotation.sample) / steps);
    if (!t) {
      ++leftOut.outside;
      continue;
    }
    switch (annotation.code) {
    case static_cast<int>(AnnotationCode::rhythmChange):
      stretches.rhythmChange(*t, rhythmLabel(annotation));
      break;
    case static_cast<int>(AnnotationCode::fibrillationBegins):
      stretches.fibrillationBegins(*t);
      break;
    case static_cast<int>(AnnotationCode::fibrillationEnds):
      stretches.fibrillationEnds(*t);
      break;
    case static_cast<int>(AnnotationCode::signalQuality):
    case static_cast<int>(AnnotationCode::comment):
      entries.push_back(remark(*t, remarkText(annotation)));
      break;
    default:
      ++leftOut.beats;
    }
  }
  stretches.close(recordEnd);
  leftOut.report(problems);
  return entries;
}

} // namespace afterbeat
