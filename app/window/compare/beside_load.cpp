#include "app/window/compare/beside_load.h"

#include "app/window/session/folder.h"
#include "app/window/session/load.h"

#include <QDateTime>
#include <QFileInfo>

#include <algorithm>
#include <map>

namespace afterbeat::window {

namespace {

/// All that side by side shows, and none of the samples.
BesideRecord withoutWaves(const QString& path, const Record& record, const Figures& figures) {
  auto lean = std::make_shared<Record>();
  lean->header = record.header;
  lean->entries = record.entries;
  lean->seal = record.seal;
  lean->lastTime = record.lastTime;
  lean->otherRecordsInFile = record.otherRecordsInFile;
  lean->lostLines = record.lostLines;
  return {path, std::move(lean), std::make_shared<const Figures>(figures),
          std::make_shared<const papers::RowsPicture>(record, figures, papers::inOwnLanguage)};
}

void sortByBegin(std::vector<BesideRecord>& records) {
  std::stable_sort(records.begin(), records.end(),
                   [](const BesideRecord& a, const BesideRecord& b) {
                     const auto one = wallTimeAt(*a.record, Time{});
                     const auto other = wallTimeAt(*b.record, Time{});
                     return one && (!other || one->utc < other->utc);
                   });
}

QString sentenceOf(const Refused& refused) {
  return refused.next.isEmpty() ? refused.happened
                                : refused.happened + QLatin1Char(' ') + refused.next;
}

void readOne(const QString& path, const FigureSettings& settings, BesideWatch& watch,
             Beside& beside) {
  LoadWatch inner;
  const auto loaded = load({path, std::nullopt, settings, DeriveMode::automatic, 0}, inner);
  if (!loaded) {
    beside.unread.push_back({path, sentenceOf(loaded.error())});
    return;
  }
  for (const LogRecord& read : loaded->file->records) {
    if (beside.records.size() == kMostBeside) {
      beside.leftOut << QFileInfo(path).fileName();
    } else if (!watch.cancelled) {
      beside.records.push_back(
          withoutWaves(path, read.record, computeFigures(read.record, settings)));
    }
  }
}

} // namespace

Beside readBeside(const QStringList& paths, const FigureSettings& settings, BesideWatch& watch) {
  Beside beside;
  for (const QString& path : paths) {
    if (watch.cancelled) {
      break;
    }
    if (beside.records.size() == kMostBeside) {
      beside.leftOut << QFileInfo(path).fileName();
    } else {
      readOne(path, settings, watch, beside);
    }
    ++watch.done;
  }
  sortByBegin(beside.records);
  return beside;
}

std::vector<std::uint32_t> twoLatest(const Season& season) {
  using Kin = std::pair<std::optional<RecordKind>, std::string>;
  // The latest two of each kind and site, the later one first.
  std::map<Kin, std::vector<std::uint32_t>> latest;
  const auto& records = season.records;
  const auto later = [&](std::uint32_t a, std::uint32_t b) {
    return records[a].day != records[b].day ? records[a].day > records[b].day : a > b;
  };
  for (std::uint32_t place = 0; place < records.size(); ++place) {
    if (records[place].day) {
      auto& two = latest[{records[place].kind, records[place].site}];
      two.insert(std::upper_bound(two.begin(), two.end(), place, later), place);
      two.resize(std::min<std::size_t>(two.size(), 2));
    }
  }
  std::vector<std::uint32_t> best;
  for (const auto& [kin, two] : latest) {
    if (two.size() == 2 && (best.empty() || later(two[0], best[0]))) {
      best = two;
    }
  }
  std::reverse(best.begin(), best.end());
  return best;
}

Beside computeBeside(Beside beside, const FigureSettings& settings) {
  for (BesideRecord& one : beside.records) {
    one = withoutWaves(one.path, *one.record, computeFigures(*one.record, settings));
  }
  return beside;
}

QString recordingBefore(const QString& path, const Header& header,
                        const std::atomic<bool>& cancelled) {
  const QFileInfo here(path);
  const FoundRecordings found = findRecordings(here.absolutePath(), cancelled);
  const auto own = std::find_if(
      found.recordings.begin(), found.recordings.end(), [&](const FoundRecording& recording) {
        return QFileInfo(recording.path).absoluteFilePath() == here.absoluteFilePath();
      });
  if (own == found.recordings.end() || !own->whenFromRecord) {
    return {};
  }
  // Newest first: the first that fits is the last one before.
  const auto before =
      std::find_if(own + 1, found.recordings.end(), [&](const FoundRecording& other) {
        return other.header && other.whenFromRecord && other.when < own->when &&
               other.header->kind == header.kind &&
               (header.site.empty() || other.header->site == header.site);
      });
  return before == found.recordings.end() ? QString() : before->path;
}

} // namespace afterbeat::window
