#include "core/compare/filter.h"

#include "core/compare/facts.h"
#include "core/compare/typed_words.h"

#include <algorithm>
#include <numeric>

namespace afterbeat {
namespace {

template <std::size_t n>
void foldAll(std::array<std::string, n>& texts) {
  for (std::string& text : texts) {
    std::string folded;
    appendFolded(folded, text);
    text = std::move(folded);
  }
}

/// Everything of a record that typed words are looked for in, apart from each other.
class SearchedText {
public:
  explicit SearchedText(FilterWords words) : words_(std::move(words)) {
    foldAll(words_.kinds);
    foldAll(words_.causes);
  }

  const std::string& of(const RecordFacts& record) {
    text_.clear();
    for (const std::string* field :
         {&record.site, &record.team, &record.device, &record.file, &record.id}) {
      appendFolded(text_, *field);
      text_ += '\n';
    }
    text_ += words_.kinds[record.kind ? static_cast<std::size_t>(*record.kind) : 3];
    text_ += '\n';
    if (record.longestPauseCause) {
      text_ += words_.causes[static_cast<std::size_t>(*record.longestPauseCause)];
    } else if (record.evidence != Evidence::none) {
      // Where nothing shows compressions, nothing shows that there was no pause.
      text_ += words_.causes.back();
    }
    if (record.day) {
      text_ += '\n';
      addDay(record);
    }
    return text_;
  }

private:
  /// Neighbouring records often share their day.
  void addDay(const RecordFacts& record) {
    if (lastText_.empty() || *record.day != lastDay_) {
      lastDay_ = *record.day;
      lastText_ = isoDay(record);
    }
    text_ += lastText_;
  }

  FilterWords words_;
  std::string text_;
  std::chrono::sys_days lastDay_{};
  std::string lastText_;
};

bool fits(const RecordFacts& record, const Filter& filter) {
  if (filter.kind && record.kind != filter.kind) {
    return false;
  }
  if ((filter.firstDay && !(record.day && *record.day >= *filter.firstDay)) ||
      (filter.lastDay && !(record.day && *record.day <= *filter.lastDay))) {
    return false;
  }
  if ((filter.hadShock && record.hadShock != filter.hadShock) ||
      (filter.longestPauseCause && record.longestPauseCause != filter.longestPauseCause)) {
    return false;
  }
  return (!filter.site || record.site == *filter.site) &&
         (!filter.team || record.team == *filter.team);
}

bool fits(const RecordFacts& record, const TypedWords& typed) {
  return (!typed.hadShock || record.hadShock == typed.hadShock) &&
         std::all_of(typed.periods.begin(), typed.periods.end(), [&record](const DayRange& period) {
           return record.day && *record.day >= period.first && *record.day <= period.second;
         });
}

bool holdsAll(const std::string& text, const std::vector<std::string>& words) {
  for (const std::string& word : words) {
    if (text.find(word) == std::string::npos) {
      return false;
    }
  }
  return true;
}

} // namespace

Chosen everything(const Season& season) {
  Chosen all(season.records.size());
  std::iota(all.begin(), all.end(), 0U);
  return all;
}

Chosen matching(const Season& season, const Filter& filter, const FilterWords& words) {
  const TypedWords typed = typedWords(filter.words, words.withShock, words.withoutShock);
  SearchedText searched(words);
  Chosen chosen;
  for (std::uint32_t place = 0; place < season.records.size(); ++place) {
    const RecordFacts& record = season.records[place];
    if (fits(record, filter) && fits(record, typed) &&
        (typed.words.empty() || holdsAll(searched.of(record), typed.words))) {
      chosen.push_back(place);
    }
  }
  return chosen;
}

} // namespace afterbeat
