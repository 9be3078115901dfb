// How good the rhythm hint is on public recordings, whole records held out.
//
//     rhythm_report FOLDER_OF_RECORDINGS

#include "score.h"

#include <array>

#include <fmt/format.h>

using namespace afterbeat;

namespace {

struct Row {
  RhythmClass scored;
  const char* name;
  /// Percent of Kerber et al., Circulation 1997;95:1677-1682; read in a secondary publication.
  const char* kerber;
};

constexpr std::array kRows{
    Row{RhythmClass::fibrillation, "fibrillation, flutter >= 0.2 mV", "> 90"},
    Row{RhythmClass::fastTachycardia, "VT >= 180/min", "> 75"},
    Row{RhythmClass::normal, "normal rhythm", "> 99"},
    Row{RhythmClass::otherOrganised, "other non-shockable", "> 95"},
    Row{RhythmClass::noise, "NOISE, not called shockable", ""},
    Row{RhythmClass::beatsMarked, "cudb, all beats marked", ""},
};

std::string percentText(std::optional<double> value) {
  return value ? fmt::format("{:6.2f}", *value) : std::string{"     -"};
}

void printTable(const std::vector<LabelledSignal>& signals, const std::string& title,
                const Selection& selection) {
  fmt::print("\n{}\n{:<33}{:>4}{:>7}{:>9}{:>16}{:>9}{:>9}{:>8}\n", title, "", "rec.", "windows",
             "decided", "90 % limits", "all", "unclear", "Kerber");
  for (const auto& row : kRows) {
    const auto score = scoreOf(signals, row.scored, selection);
    if (score.all() == 0) {
      continue;
    }
    const bool shockable = oughtToBeShockable(row.scored);
    const auto limits = limitsOf(signals, row.scored, selection);
    fmt::print("{:<33}{:>4}{:>7}{:>9}{:>16}{:>9}{:>9.2f}{:>8}\n", row.name, score.records,
               score.all(), percentText(percentOfDecided(score, shockable)),
               limits ? fmt::format("{:.2f}-{:.2f}", limits->low, limits->high) : "one record",
               percentText(percentOfAll(score, shockable)), percentUnclear(score), row.kerber);
  }
}

void printCounts(const std::vector<LabelledSignal>& signals, const char* name, RhythmClass scored,
                 const Selection& selection) {
  const auto s = scoreOf(signals, scored, selection);
  fmt::print("{:<42}{:>5} shockable {:>5} organised {:>5} asystole {:>5} unclear\n", name,
             s.shockable, s.organised, s.asystole, s.unclear);
}

void printMistakes(const std::vector<LabelledSignal>& signals) {
  fmt::print("\nDecided wrongly, by signal (window begins, s):\n");
  for (const auto& signal : signals) {
    for (const auto& row : kRows) {
      std::string at;
      int wrong = 0;
      for (const auto& w : signal.windows) {
        const bool shockable = w.window.is == RhythmKind::shockable;
        if (w.scored == row.scored && w.window.is != RhythmKind::unclear &&
            shockable != oughtToBeShockable(row.scored) && ++wrong <= 12) {
          at += fmt::format(" {:g}", w.beginS);
        }
      }
      if (wrong > 0) {
        fmt::print("  {}/{} {}: {}:{}{}\n", signal.record, signal.signal, row.name, wrong, at,
                   wrong > 12 ? " ..." : "");
      }
    }
  }
}

} // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    fmt::print(stderr, "rhythm_report FOLDER: the one that holds ecg/\n");
    return 2;
  }
  auto signals = labelledSignals(std::filesystem::path{argv[1]} / "ecg");
  crossValidate(signals);
  fmt::print(
      "Windows of 8 s, one every 2 s, wholly inside one label; each judged by a model fitted\n"
      "without its record, smoothed over its neighbours whatever their labels. Sensitivity for\n"
      "fibrillation, flutter and VT, specificity for the others, in percent of decided and of all\n"
      "windows. Limits by drawing records with replacement. VT rate: first large peak of the\n"
      "window's autocorrelation where that is 0.5 or more, else the largest line of its spectrum.\n"
      "The weights are refitted for each record; which features there are, and the limits of the\n"
      "rules in core/signal/rhythm/judge.h, were chosen looking at these recordings, so that new\n"
      "ones may do somewhat worse. No recording holds chest compressions.\n"
      "Goals of Kerber et al., Circulation 1997;95:1677-1682: a yardstick, not a claim.\n");
  for (const bool first : {true, false}) {
    for (const bool doubtful : {false, true}) {
      for (const bool disputed : {true, false}) {
        for (const auto* database : {"", "vfdb", "cudb", "mitdb"}) {
          if (std::string{"vfdb"} != database && *database != 0 && (doubtful || !first)) {
            continue;
          }
          printTable(signals,
                     fmt::format("{}: {} 418 and 419, {} disputed stretches, {}",
                                 *database == 0 ? "all databases" : database,
                                 doubtful ? "with" : "without", disputed ? "with" : "without",
                                 first ? "first signals" : "all signals"),
                     {database, doubtful, disputed, first});
        }
      }
    }
  }
  fmt::print("\nToo little for percentages (all signals, without 418 and 419):\n");
  const Selection all{.firstSignalOnly = false};
  printCounts(signals, "asystole as labelled", RhythmClass::asystole, all);
  printCounts(signals, "asystole without disputed stretches", RhythmClass::asystole,
              {.withDisputed = false, .firstSignalOnly = false});
  printCounts(signals, "fibrillation below 0.2 mV", RhythmClass::fineFibrillation, all);
  printCounts(signals, "VT measured below 180/min", RhythmClass::slowTachycardia, all);
  const auto flat = scoreOfFlat(signals);
  fmt::print("{:<42}{:>5} shockable {:>5} organised {:>5} asystole {:>5} unclear\n",
             "amplitude below 0.12 mV, any label", flat.shockable, flat.organised, flat.asystole,
             flat.unclear);
  printMistakes(signals);

  crossValidate(signals, HeldOut::database);
  fmt::print("\nThe same with the window's whole database held out:\n");
  for (const auto* database : {"vfdb", "cudb", "mitdb"}) {
    printTable(
        signals,
        fmt::format("{}: without 418 and 419, without disputed stretches, first signals", database),
        {database, false, false, true});
  }
  return 0;
}
