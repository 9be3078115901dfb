#include "core/compare/order.h"

#include "core/compare/filter.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace afterbeat {
namespace {

/// A record and what it is sorted by.
struct Keyed {
  double key;
  std::uint32_t place;
};

/// Sorts the records that `keyOf` gives a key, in their order where keys are equal; appends those
/// without.
template <typename KeyOf>
void sortByKey(Chosen& chosen, bool descending, const KeyOf& keyOf) {
  std::vector<Keyed> keyed;
  keyed.reserve(chosen.size());
  Chosen without;
  for (const std::uint32_t place : chosen) {
    const std::optional<double> key = keyOf(place);
    if (key) {
      keyed.push_back({descending ? -*key : *key, place});
    } else {
      without.push_back(place);
    }
  }
  std::stable_sort(keyed.begin(), keyed.end(),
                   [](const Keyed& a, const Keyed& b) { return a.key < b.key; });
  std::transform(keyed.begin(), keyed.end(), chosen.begin(),
                 [](const Keyed& one) { return one.place; });
  std::copy(without.begin(), without.end(),
            chosen.begin() + static_cast<std::ptrdiff_t>(keyed.size()));
}

/// A text with its first sixteen letters as two numbers: nearly all comparisons end there.
struct Prefixed {
  std::uint64_t first, second;
  std::string_view rest;
  std::uint32_t place;
  bool operator<(const Prefixed& o) const {
    if (first != o.first) {
      return first < o.first;
    }
    return second != o.second ? second < o.second : rest < o.rest;
  }
};

std::uint64_t eightLetters(std::string_view text, std::size_t from) {
  std::uint64_t letters = 0;
  for (std::size_t i = from; i < from + 8; ++i) {
    letters = letters << 8U | (i < text.size() ? static_cast<unsigned char>(text[i]) : 0U);
  }
  return letters;
}

/// Texts in small letters, one after the other in one piece of memory.
class FoldedTexts {
public:
  void add(std::string_view text) {
    appendFolded(text_, text);
    ends_.push_back(text_.size());
  }
  [[nodiscard]] std::size_t size() const { return ends_.size(); }
  [[nodiscard]] std::string_view operator[](std::size_t i) const {
    const std::size_t begin = i == 0 ? 0 : ends_[i - 1];
    return std::string_view(text_).substr(begin, ends_[i] - begin);
  }
  /// How many letters all begin with in common.
  [[nodiscard]] std::size_t commonBegin() const {
    std::size_t common = ends_.empty() ? 0 : (*this)[0].size();
    for (std::size_t i = 1; i < size(); ++i) {
      const std::string_view text = (*this)[i].substr(0, common);
      const auto differ = std::mismatch(text.begin(), text.end(), text_.begin());
      common = static_cast<std::size_t>(differ.first - text.begin());
    }
    return common;
  }
  /// Text `i` is that of record `places[i]`.
  [[nodiscard]] std::vector<Prefixed> prefixed(const Chosen& places) const {
    const std::size_t common = commonBegin();
    std::vector<Prefixed> all;
    all.reserve(size());
    for (std::size_t i = 0; i < size(); ++i) {
      const std::string_view rest = (*this)[i].substr(common);
      all.push_back({eightLetters(rest, 0), eightLetters(rest, 8), rest, places[i]});
    }
    return all;
  }

private:
  std::string text_;
  std::vector<std::size_t> ends_;
};

/// For texts of which nearly every record has its own.
void sortByOwnText(const Season& season, Chosen& chosen, bool descending,
                   std::string RecordFacts::*field) {
  FoldedTexts texts;
  Chosen with, without;
  for (const std::uint32_t place : chosen) {
    const std::string& text = season.records[place].*field;
    (text.empty() ? without : with).push_back(place);
    if (!text.empty()) {
      texts.add(text);
    }
  }
  auto sorted = texts.prefixed(with);
  std::stable_sort(
      sorted.begin(), sorted.end(),
      [descending](const Prefixed& a, const Prefixed& b) { return descending ? b < a : a < b; });
  std::transform(sorted.begin(), sorted.end(), chosen.begin(),
                 [](const Prefixed& one) { return one.place; });
  std::copy(without.begin(), without.end(),
            chosen.begin() + static_cast<std::ptrdiff_t>(sorted.size()));
}

/// For names that many records share: each is sorted once.
void sortBySharedText(const Season& season, Chosen& chosen, bool descending,
                      std::string RecordFacts::*field) {
  std::unordered_map<std::string_view, std::uint32_t> known;
  FoldedTexts texts;
  Chosen numbers;
  std::vector<std::uint32_t> textOf(season.records.size());
  for (const std::uint32_t place : chosen) {
    const std::string& text = season.records[place].*field;
    const auto [at, isNew] = known.try_emplace(text, static_cast<std::uint32_t>(texts.size()));
    if (isNew) {
      texts.add(text);
      numbers.push_back(at->second);
    }
    textOf[place] = at->second;
  }
  auto sorted = texts.prefixed(numbers);
  std::sort(sorted.begin(), sorted.end());
  std::vector<double> ranks(sorted.size());
  double rank = 0;
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    rank += i > 0 && sorted[i - 1] < sorted[i] ? 1 : 0;
    ranks[sorted[i].place] = rank;
  }
  sortByKey(chosen, descending, [&](std::uint32_t place) -> std::optional<double> {
    if ((season.records[place].*field).empty()) {
      return std::nullopt;
    }
    return ranks[textOf[place]];
  });
}

template <typename T>
std::optional<double> number(const std::optional<T>& value) {
  return value ? std::optional<double>(static_cast<double>(*value)) : std::nullopt;
}

std::optional<double> numberOf(const RecordFacts& record, Fact fact) {
  switch (fact) {
  case Fact::day:
    return record.day ? std::optional<double>(record.day->time_since_epoch().count())
                      : std::nullopt;
  case Fact::kind:
    return number(record.kind);
  case Fact::evidence:
    return record.evidence == Evidence::none
               ? std::nullopt
               : std::optional<double>(static_cast<double>(record.evidence));
  case Fact::hadShock:
    return number(record.hadShock);
  case Fact::longestPauseCause:
    return number(record.longestPauseCause);
  case Fact::version:
    return record.version;
  default:
    return std::nullopt;
  }
}

void sortByFact(const Season& season, Chosen& chosen, Fact fact, bool descending) {
  switch (fact) {
  case Fact::site:
    return sortBySharedText(season, chosen, descending, &RecordFacts::site);
  case Fact::team:
    return sortBySharedText(season, chosen, descending, &RecordFacts::team);
  case Fact::device:
    return sortBySharedText(season, chosen, descending, &RecordFacts::device);
  case Fact::file:
    return sortByOwnText(season, chosen, descending, &RecordFacts::file);
  case Fact::id:
    return sortByOwnText(season, chosen, descending, &RecordFacts::id);
  default:
    return sortByKey(chosen, descending,
                     [&](std::uint32_t place) { return numberOf(season.records[place], fact); });
  }
}

} // namespace

void sortBy(const Season& season, Chosen& chosen, const Order& order) {
  if (const auto* fact = std::get_if<Fact>(&order.by)) {
    return sortByFact(season, chosen, *fact, order.descending);
  }
  const FigureColumn& column = season.column(std::get<MeasureId>(order.by));
  sortByKey(chosen, order.descending, [&](std::uint32_t place) -> std::optional<double> {
    return column[place].ok() ? std::optional<double>(column[place].value) : std::nullopt;
  });
}

} // namespace afterbeat
