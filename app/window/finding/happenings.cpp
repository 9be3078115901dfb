#include "app/window/finding/happenings.h"

#include "app/window/finding/entry_words.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/problems/problem_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <unordered_map>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

Origin originOf(Source source) {
  switch (source) {
  case Source::device:
    return Origin::device;
  case Source::observer:
    return Origin::observer;
  case Source::derived:
    break;
  }
  return Origin::derived;
}

QString runWords(int count, const Interval& stretch) {
  if (count == 1) {
    return tr("1 compression");
  }
  const double perMinute = 60 * (count - 1) / std::max(1e-6, seconds(stretch.length()));
  return tr("%1 compressions, %2 a minute").arg(count).arg(words().number(perMinute));
}

/// Compressions of one source and part, gathered while no pause lies between them.
class Runs {
public:
  Runs(std::vector<Happening>& into, Duration threshold) : into_(into), threshold_(threshold) {}

  void add(const Entry& entry) {
    Run& run = runs_[{entry.source, entry.part}];
    if (run.count > 0 && entry.t - run.stretch.end > threshold_) {
      close(run, entry.source);
    }
    if (run.count == 0) {
      run.stretch.begin = entry.t;
    }
    run.stretch.end = entry.t;
    ++run.count;
  }
  void closeAll() {
    for (auto& [key, run] : runs_) {
      close(run, key.first);
    }
  }

private:
  struct Run {
    Interval stretch;
    int count = 0;
  };
  void close(Run& run, Source source) {
    if (run.count > 0) {
      into_.push_back({run.stretch, originOf(source), runWords(run.count, run.stretch),
                       entryKindWords(entry::Compression{}) + QStringLiteral(" compression")});
    }
    run = {};
  }

  std::vector<Happening>& into_;
  Duration threshold_;
  std::map<std::pair<Source, int>, Run> runs_;
};

void addEntries(const Record& record, Duration threshold, std::vector<Happening>& into) {
  Runs runs(into, threshold);
  for (const Entry& entry : record.entries) {
    if (!entry.hasTime || std::holds_alternative<entry::Unreadable>(entry.data)) {
      continue;
    }
    if (entry.complete<entry::Compression>() != nullptr) {
      runs.add(entry);
      continue;
    }
    const std::string_view type = typeName(entry.data);
    into.push_back({{entry.t, std::max(entry.t, entry.lastTime())},
                    originOf(entry.source),
                    entryWords(entry),
                    entryKindWords(entry.data) + QLatin1Char(' ') +
                        QString::fromUtf8(type.data(), static_cast<qsizetype>(type.size()))});
  }
  runs.closeAll();
}

void addPauses(const Figures& figures, std::vector<Happening>& into) {
  for (const Pause& pause : figures.pauses) {
    into.push_back(
        {pause.stretch, Origin::computed,
         tr("pause of %1: %2").arg(lengthWords(pause.stretch.length()), causeWords(pause, figures)),
         tr("pause, hands off")});
  }
}

void addProblems(const Record& record, const std::vector<Problem>& problems,
                 std::vector<Happening>& into) {
  std::unordered_map<int, Time> byLine;
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && entry.line > 0) {
      byLine.emplace(entry.line, entry.t);
    }
  }
  for (const Problem& problem : problems) {
    if (const auto it = byLine.find(problem.line); it != byLine.end()) {
      into.push_back({{it->second, it->second},
                      Origin::reading,
                      tr("problem: %1").arg(problemWords(problem)),
                      tr("problem")});
    }
  }
}

} // namespace

QString originWords(Origin origin) {
  switch (origin) {
  case Origin::device:
    return sourceWords(Source::device);
  case Origin::observer:
    return sourceWords(Source::observer);
  case Origin::derived:
    return sourceWords(Source::derived);
  case Origin::computed:
    return tr("worked out");
  case Origin::reading:
    break;
  }
  return tr("reading the file");
}

std::vector<Happening> happenings(const Record& record, const Figures& figures,
                                  const std::vector<Problem>& problems) {
  std::vector<Happening> all;
  addEntries(record, figures.settings.pauseThreshold, all);
  addPauses(figures, all);
  addProblems(record, problems, all);
  std::stable_sort(all.begin(), all.end(), [](const Happening& a, const Happening& b) {
    return a.stretch.begin < b.stretch.begin;
  });
  return all;
}

} // namespace afterbeat::window
