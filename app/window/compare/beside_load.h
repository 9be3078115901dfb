/// Reading two to eight records that are laid side by side, away from the window's thread.
#pragma once

#include "app/papers/rows.h"
#include "core/compare/moments.h"
#include "core/compare/season.h"
#include "core/measures/figures.h"

#include <QString>
#include <QStringList>

#include <atomic>
#include <memory>
#include <vector>

namespace afterbeat::window {

/// More records at once are not told apart by eye.
inline constexpr std::size_t kMostBeside = 8;

/// A record without its waves, with what is shown of it. Cheap to copy.
struct BesideRecord {
  QString path;
  /// Entries and header; no channels.
  std::shared_ptr<const Record> record;
  std::shared_ptr<const Figures> figures;
  std::shared_ptr<const papers::RowsPicture> rows;
};

/// A file that could not be read, with the sentence that says why.
struct UnreadFile {
  QString path, sentence;
};

/// What is laid side by side, in the order of the records' begins; those without a clock last.
struct Beside {
  std::vector<BesideRecord> records;
  std::vector<UnreadFile> unread;
  /// Records beyond the eighth, which were left out: named by their files.
  QStringList leftOut;
};

/// Common ground of the two threads while files are read.
struct BesideWatch {
  std::atomic<bool> cancelled = false;
  /// Files that were read.
  std::atomic<int> done = 0;
};

/// Reads all files, a file's other records included.
[[nodiscard]] Beside readBeside(const QStringList& paths, const FigureSettings& settings,
                                BesideWatch& watch);

/// The latest record that has an earlier one of its kind and site, with that one first; of files
/// without a stated kind or site those without one are alike. Empty: there is no such pair.
[[nodiscard]] std::vector<std::uint32_t> twoLatest(const Season& season);

/// Figures and rows once more, for other settings.
[[nodiscard]] Beside computeBeside(Beside beside, const FigureSettings& settings);

/// The recording of the same folder and kind, at the same place where the record names one, that
/// was recorded last before this one; empty: there is none. Meant for a worker thread.
[[nodiscard]] QString recordingBefore(const QString& path, const Header& header,
                                      const std::atomic<bool>& cancelled);

} // namespace afterbeat::window
