// What is derived from a whole record: which kinds, from which channels, what stays open.
#include "core/measures/derived_use.h"
#include "core/resuslog/write_log.h"
#include "core/signal/derive/derive.h"
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/quality.h"
#include "samples/samples.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

Entry entryAt(double s, EntryData data, Source source = Source::device) {
  Entry entry;
  entry.t = *timeFromSeconds(s);
  entry.data = std::move(data);
  entry.source = source;
  return entry;
}

/// The invented rescue at the ferry terminal as the device would have kept it with its waveforms
/// and without a single compression or breath.
const Record& wavesOnly() {
  static const Record record = [] {
    Record made = samples::ferryTerminal(1).story.record;
    made.entries.erase(std::remove_if(made.entries.begin(), made.entries.end(),
                                      [](const Entry& e) {
                                        return e.complete<entry::Compression>() ||
                                               e.complete<entry::Ventilation>() ||
                                               e.complete<entry::Cpr>();
                                      }),
                       made.entries.end());
    return made;
  }();
  return record;
}

const samples::Truth& truth() {
  static const samples::Truth known = samples::ferryTerminal(1).story.truth;
  return known;
}

const Derived& all() {
  static const Derived derived = derive(wavesOnly(), DeriveWhat::all());
  return derived;
}

template <typename T>
std::vector<Time> timesOf(const std::vector<Entry>& entries) {
  std::vector<Time> times;
  for (const Entry& entry : entries) {
    if (entry.complete<T>() && entry.source == Source::derived) {
      times.push_back(entry.t);
    }
  }
  return times;
}

/// How many of `wanted` have one of `found` within `reach`.
long near(const std::vector<Time>& wanted, const std::vector<Time>& found, Duration reach) {
  return std::count_if(wanted.begin(), wanted.end(), [&](Time t) {
    const auto at = std::lower_bound(found.begin(), found.end(), t - reach);
    return at != found.end() && *at <= t + reach;
  });
}

TEST(WhatToDerive, TakesKindsThatTheRecordHoldsNoneOf) {
  Record record;
  EXPECT_EQ(whatToDerive(record, DeriveMode::automatic), DeriveWhat::all());
  EXPECT_FALSE(whatToDerive(record, DeriveMode::never).any());
  record.entries = {entryAt(1, entry::Compression{}), entryAt(2, entry::Ventilation{})};
  EXPECT_EQ(whatToDerive(record, DeriveMode::automatic), (DeriveWhat{false, false, true}));
  EXPECT_EQ(whatToDerive(record, DeriveMode::always), DeriveWhat::all());
  // An observer's compressions give way to derived ones, a device's stretches do not.
  record.entries = {entryAt(1, entry::Compression{}, Source::observer)};
  EXPECT_TRUE(whatToDerive(record, DeriveMode::automatic).compressions);
  record.entries = {entryAt(1, entry::Cpr{})};
  record.entries[0].end = *timeFromSeconds(9);
  EXPECT_FALSE(whatToDerive(record, DeriveMode::automatic).compressions);
  record.entries = {entryAt(1, entry::Rhythm{RhythmKind::asystole, {}, {}}, Source::derived)};
  EXPECT_FALSE(whatToDerive(record, DeriveMode::automatic).rhythm);
  record.entries[0].incomplete = true;
  EXPECT_TRUE(whatToDerive(record, DeriveMode::automatic).rhythm);
}

TEST(Derive, FindsTheCompressionsOfTheStory) {
  const auto wanted = [] {
    std::vector<Time> times;
    for (const Entry& entry : truth().compressions) {
      times.push_back(entry.t);
    }
    return times;
  }();
  const auto found = timesOf<entry::Compression>(all().entries);
  constexpr Duration kReach{150'000};
  EXPECT_GE(near(wanted, found, kReach), 99 * static_cast<long>(wanted.size()) / 100);
  EXPECT_GE(near(found, wanted, kReach), 99 * static_cast<long>(found.size()) / 100);
  ASSERT_TRUE(all().compressions);
  EXPECT_GT(all().compressions->share(), 0.95);
  EXPECT_EQ(all().compressions->channels.front(), "Chest compression depth");
}

TEST(Derive, EveryEntryIsMarkedAndInOrder) {
  ASSERT_FALSE(all().empty());
  for (const Entry& entry : all().entries) {
    EXPECT_EQ(entry.source, Source::derived);
    ASSERT_TRUE(entry.quality);
    EXPECT_GE(*entry.quality, 0);
    EXPECT_LE(*entry.quality, 1);
    if (entry.complete<entry::Rhythm>()) {
      EXPECT_EQ(entry.note, kHintCaution);
    }
  }
  EXPECT_TRUE(std::is_sorted(all().entries.begin(), all().entries.end(),
                             [](const Entry& a, const Entry& b) { return a.t < b.t; }));
}

TEST(Derive, HintsNeverNameAnotherRhythmThanTheStory) {
  std::size_t clear = 0;
  for (const Entry& entry : all().entries) {
    const auto* hint = entry.complete<entry::Rhythm>();
    if (hint == nullptr || hint->is == RhythmKind::unclear) {
      continue;
    }
    ++clear;
    const Time middle = entry.t + (entry.lastTime() - entry.t) / 2;
    const auto true_ = std::find_if(
        truth().rhythm.begin(), truth().rhythm.end(),
        [middle](const samples::TrueRhythm& one) { return middle >= one.from && middle < one.to; });
    ASSERT_NE(true_, truth().rhythm.end());
    EXPECT_EQ(hint->is, true_->is) << seconds(middle);
  }
  EXPECT_GT(clear, 5U);
}

/// What the shock itself does to the ECG is no reason to be silent about the seconds before it.
TEST(Derive, TellsTheFibrillationBeforeAShock) {
  ASSERT_EQ(all().shocks.size(), 4U);
  // Hands were off for more than 16 s before the first three, and for 2.6 s before the last.
  for (std::size_t i = 0; i < 3; ++i) {
    ASSERT_TRUE(all().shocks[i].before) << i;
    EXPECT_TRUE(all().shocks[i].before->coarse());
    EXPECT_GT(all().shocks[i].before->amsaMvHz, 1);
    EXPECT_LT(all().shocks[i].before->dominantHz, 9);
  }
}

TEST(Derive, FiguresSayThatTheyRestOnIt) {
  Record record = wavesOnly();
  const Figures without = computeFigures(record);
  EXPECT_EQ(without[MeasureId::handsOffFraction].status, Status::notRecorded);
  EXPECT_FALSE(derivedUse(record, without).any());
  addDerived(record, all());
  const Figures with = computeFigures(record);
  const DerivedUse use = derivedUse(record, with);
  EXPECT_EQ(use.compressions.derived, use.compressions.of);
  EXPECT_GT(use.compressions.quality.value_or(0), 0.8);
  EXPECT_TRUE(restsOnDerived(MeasureId::handsOffFraction, use));
  EXPECT_FALSE(restsOnDerived(MeasureId::shocksDelivered, use));
  const Figures told = computeFigures(samples::ferryTerminal(1).story.record);
  EXPECT_NEAR(*with[MeasureId::handsOffFraction].value, *told[MeasureId::handsOffFraction].value,
              0.02);
}

/// The ECG is read in pieces of ten minutes; read at once it says the same.
TEST(Derive, PiecesOfTheEcgSayWhatTheWholeSays) {
  const Record& record = wavesOnly();
  const auto ecg = std::find_if(record.channels.begin(), record.channels.end(),
                                [](const Channel& channel) { return channel.quantity == "ecg"; });
  ASSERT_NE(ecg, record.channels.end());
  ASSERT_EQ(ecg->blocks.size(), 1U);
  ASSERT_GT(static_cast<double>(ecg->blocks[0].count) / ecg->rateHz, 1250);
  std::vector<double> values;
  readValues(*ecg, ecg->blocks[0], 0, ecg->blocks[0].count, 1, values);
  const SignalView whole{ecg->blocks[0].t, ecg->rateHz, values};
  const std::vector<FaultyStretch> faults = ecgFaults(whole);
  std::vector<Time> beats;
  for (const Beat& beat : findBeats(whole)) {
    beats.push_back(beat.at);
  }
  const std::vector<Time> compressions = timesOf<entry::Compression>(all().entries);
  const RhythmHints hints = hintRhythm({{&whole, 1}, faults, compressions, {}, beats});
  EXPECT_EQ(all().ecgFaults, faults);
  std::vector<Entry> found;
  std::copy_if(all().entries.begin(), all().entries.end(), std::back_inserter(found),
               [](const Entry& entry) { return entry.complete<entry::Rhythm>(); });
  ASSERT_EQ(found.size(), hints.entries.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_EQ(found[i].t, hints.entries[i].t);
    EXPECT_EQ(found[i].end, hints.entries[i].end);
    EXPECT_EQ(found[i].complete<entry::Rhythm>()->is,
              hints.entries[i].complete<entry::Rhythm>()->is);
    EXPECT_EQ(found[i].complete<entry::Rhythm>()->ratePerMin,
              hints.entries[i].complete<entry::Rhythm>()->ratePerMin);
  }
  EXPECT_EQ(all().windows.size(), hints.windows.size());
}

/// Where no channel was recording nobody knows, so nothing counts as hands off.
TEST(Derive, AHoleInAllChannelsIsNotObserved) {
  Record record = wavesOnly();
  const Time from = *timeFromSeconds(400), to = *timeFromSeconds(460);
  for (Channel& channel : record.channels) {
    std::vector<SampleBlock> blocks;
    for (const SampleBlock& block : channel.blocks) {
      const auto index = [&](Time t) {
        return static_cast<std::size_t>(
            std::clamp(std::llround(seconds(t - block.t) * channel.rateHz), 0LL,
                       static_cast<long long>(block.count)));
      };
      const std::size_t a = index(from), b = index(to);
      blocks.push_back({block.t, block.first, a});
      blocks.push_back({channel.timeOf(block, b), block.first + b, block.count - b});
    }
    channel.blocks = blocks;
  }
  const Derived derived = derive(record, {true, true, false});
  std::vector<Entry> excluded;
  for (const Entry& entry : derived.entries) {
    if (const auto* one = entry.complete<entry::Excluded>()) {
      EXPECT_EQ(one->why, ExclusionReason::notObserved);
      excluded.push_back(entry);
    }
  }
  ASSERT_EQ(excluded.size(), 1U);
  EXPECT_NEAR(seconds(excluded[0].t), 400, 1.5);
  EXPECT_NEAR(seconds(*excluded[0].end), 460, 1.5);
  addDerived(record, derived);
  const Figures figures = computeFigures(record);
  for (const Pause& pause : figures.pauses) {
    EXPECT_LT(pause.stretch.length(), Duration{45'000'000});
  }
  EXPECT_GT(seconds(figures.excludedLength), 57);
}

TEST(Derive, ARecordWithoutWaveformsGivesNothing) {
  Record record = wavesOnly();
  record.channels.clear();
  const Derived derived = derive(record, DeriveWhat::all());
  EXPECT_TRUE(derived.empty());
  EXPECT_FALSE(derived.compressions || derived.ventilations || derived.rhythm);
}

TEST(AddDerived, ReplacesWhatWasDerivedBeforeAndNothingElse) {
  Record record = wavesOnly();
  const std::size_t own = record.entries.size();
  addDerived(record, all());
  EXPECT_EQ(record.entries.size(), own + all().entries.size());
  addDerived(record, all());
  EXPECT_EQ(record.entries.size(), own + all().entries.size());
  EXPECT_TRUE(std::is_sorted(record.entries.begin(), record.entries.end(),
                             [](const Entry& a, const Entry& b) { return a.t < b.t; }));
  Derived nothing;
  nothing.what = DeriveWhat::all();
  addDerived(record, nothing);
  ASSERT_EQ(record.entries.size(), own);
  for (std::size_t i = 0; i < own; ++i) {
    EXPECT_EQ(record.entries[i].t, wavesOnly().entries[i].t);
  }
}

TEST(MakeDerivedLog, ComesBackFromItsFileWithItsOrigin) {
  Record record = wavesOnly();
  const std::string oldId = record.header.id;
  makeDerivedLog(record, all(), "ab12", 3);
  EXPECT_NE(record.header.id, oldId);
  std::string bytes;
  ASSERT_TRUE(writeRecord(record, [&bytes](std::string_view part) {
    bytes += part;
    return true;
  }));
  MemorySource source(bytes);
  const auto log = readLog(source);
  ASSERT_TRUE(log);
  EXPECT_TRUE(std::none_of(log->problems.begin(), log->problems.end(), [](const Problem& problem) {
    return problem.severity != Severity::info;
  }));
  const Record& read = log->records.front().record;
  ASSERT_TRUE(read.header.derivedFrom);
  EXPECT_EQ(read.header.derivedFrom->id, oldId);
  EXPECT_EQ(read.header.derivedFrom->sha256, "ab12");
  EXPECT_EQ(read.header.derivedFrom->problems, 3);
  EXPECT_EQ(timesOf<entry::Compression>(read.entries), timesOf<entry::Compression>(all().entries));
  EXPECT_EQ(timesOf<entry::Rhythm>(read.entries), timesOf<entry::Rhythm>(all().entries));
}

/// The same signals an hour later say the same an hour later.
TEST(Derive, DoesNotDependOnWhereTheRecordLies) {
  Record moved = wavesOnly();
  const Duration later{3'600'000'000};
  for (Entry& entry : moved.entries) {
    entry.t += later;
    if (entry.end) {
      *entry.end += later;
    }
  }
  for (Channel& channel : moved.channels) {
    for (SampleBlock& block : channel.blocks) {
      block.t += later;
    }
  }
  const Derived derived = derive(moved, DeriveWhat::all());
  ASSERT_EQ(derived.entries.size(), all().entries.size());
  for (std::size_t i = 0; i < derived.entries.size(); ++i) {
    EXPECT_EQ(derived.entries[i].t - later, all().entries[i].t);
  }
}

} // namespace
} // namespace afterbeat
