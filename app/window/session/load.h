/// Reading a file for the window: everything the places show, made away from the window's thread.
#pragma once

#include "app/papers/rows.h"
#include "core/measures/derived_use.h"
#include "core/measures/figures.h"
#include "core/resuslog/read_log.h"
#include "core/signal/derive/derive.h"
#include "core/signal/trace.h"

#include <QString>

#include <atomic>
#include <memory>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat::window {

/// What a wave track needs beside the channel itself.
struct Wave {
  MinMaxPyramid pyramid;
  ValueRange usual;
};

/// What the figures of a record took from its signals.
struct FigureOrigin {
  DerivedUse use;
  /// What was derived while reading; empty: nothing, or by the program that wrote the file.
  std::optional<SignalCoverage> compressions, ventilations;
};

/// A file that was read, with the record that is shown and its figures. Cheap to copy.
struct Loaded {
  QString path;
  /// Made by an importer, not read from an event log.
  bool imported = false;
  /// At least one record.
  std::shared_ptr<const LogFile> file;
  /// Compressions and breaths read off the signals, which the records hold already; one for each
  /// record of the file.
  std::shared_ptr<const std::vector<Derived>> derived;
  /// How it was decided what to derive.
  DeriveMode deriveMode = DeriveMode::automatic;
  /// Which record of the file is shown.
  std::size_t shown = 0;
  /// One for each channel of the record.
  std::shared_ptr<const std::vector<Wave>> waves;
  std::shared_ptr<const Figures> figures;
  FigureOrigin origin;
  /// The rows of these figures.
  std::shared_ptr<const papers::RowsPicture> rows;

  [[nodiscard]] const Record& record() const { return file->records[shown].record; }
};

/// Why there is nothing to show, for a person.
struct Refused {
  /// What happened, what became of the file, what to do next: each a sentence or two.
  QString happened, kept, next;
  /// The file can be tried under a made-up header.
  bool mayMakeUpHeader = false;
  /// The user stopped the reading.
  bool cancelled = false;
};

/// What is to be read.
struct LoadOrder {
  QString path;
  std::optional<RecordKind> madeUpHeader;
  FigureSettings settings;
  DeriveMode deriveMode = DeriveMode::automatic;
  /// The record to show; the first where there are fewer.
  std::size_t shown = 0;
};

/// The two threads' common ground while a file is read.
struct LoadWatch {
  std::atomic<bool> cancelled = false;
  /// Share of the file's bytes that were read, 0 to 1.
  std::atomic<double> progress = 0;
};

/// Reads a log, or anything an importer knows. Needs no event loop; meant for a worker thread.
[[nodiscard]] tl::expected<Loaded, Refused> load(const LoadOrder& order, LoadWatch& watch);

/// Figures and rows of the record shown, for these settings.
void computeWith(const FigureSettings& settings, Loaded& loaded);

/// Another record of the same file.
[[nodiscard]] Loaded showRecord(Loaded from, std::size_t index, const FigureSettings& settings);

} // namespace afterbeat::window
