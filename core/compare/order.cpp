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

/// A text with its first letters as one number: most comparisons end there.
struct Prefixed {
  std::uint64_t head;
  std::string_view rest;
  std::size_t index;
};

std::uint64_t headOf(std::string_view text) {
  std::uint64_t head = 0;
  for (std::size_t i = 0; i < 8; ++i) {
    head = head << 8U | (i < text.size() ? static_cast<unsigned char>(text[i]) : 0U);
  }
  return head;
}

/// How many letters all texts begin with in common.
std::size_t commonBegin(const std::vector<std::string>& texts) {
  std::size_t common = texts.empty() ? 0 : texts.front().size();
  for (const std::string& text : texts) {
    common = std::min(common, text.size());
    const auto differ = std::mismatch(
        text.begin(), text.begin() + static_cast<std::ptrdiff_t>(common), texts.front().begin());
    common = static_cast<std::size_t>(differ.first - text.begin());
  }
  return common;
}

/// The rank of each text among all; equal texts share one.
std::vector<double> ranksOf(const std::vector<std::string>& texts) {
  const std::size_t common = commonBegin(texts);
  std::vector<Prefixed> sorted;
  sorted.reserve(texts.size());
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const std::string_view rest = std::string_view(texts[i]).substr(common);
    sorted.push_back({headOf(rest), rest, i});
  }
  std::sort(sorted.begin(), sorted.end(), [](const Prefixed& a, const Prefixed& b) {
    return a.head != b.head ? a.head < b.head : a.rest < b.rest;
  });
  std::vector<double> ranks(texts.size());
  double rank = 0;
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    rank += i > 0 && sorted[i].rest != sorted[i - 1].rest ? 1 : 0;
    ranks[sorted[i].index] = rank;
  }
  return ranks;
}

void sortByText(const Season& season, Chosen& chosen, bool descending,
                std::string RecordFacts::*field) {
  // Sites and teams are few: their names are sorted once each.
  std::unordered_map<std::string_view, std::size_t> known;
  known.reserve(chosen.size() / 4);
  std::vector<std::string> folded;
  std::vector<std::size_t> textOf(season.records.size());
  for (const std::uint32_t place : chosen) {
    const std::string& text = season.records[place].*field;
    const auto [at, isNew] = known.try_emplace(text, folded.size());
    if (isNew) {
      folded.emplace_back();
      appendFolded(folded.back(), text);
    }
    textOf[place] = at->second;
  }
  const auto ranks = ranksOf(folded);
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
    return sortByText(season, chosen, descending, &RecordFacts::site);
  case Fact::team:
    return sortByText(season, chosen, descending, &RecordFacts::team);
  case Fact::device:
    return sortByText(season, chosen, descending, &RecordFacts::device);
  case Fact::file:
    return sortByText(season, chosen, descending, &RecordFacts::file);
  case Fact::id:
    return sortByText(season, chosen, descending, &RecordFacts::id);
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
