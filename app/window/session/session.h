/// The one open file of a window: what was read, its figures, and what they are computed with.
#pragma once

#include "app/window/session/load.h"

#include <QObject>
#include <QThreadPool>

namespace afterbeat::window {

/// Reads and computes in worker threads; every change is told by a signal in the window's thread.
class Session final : public QObject {
  Q_OBJECT

public:
  enum class State { empty, loading, refused, ready };

  explicit Session(QObject* parent = nullptr);
  ~Session() override;

  [[nodiscard]] State state() const { return state_; }
  /// Meaningful while `ready` (and while another file loads over a ready one).
  [[nodiscard]] const Loaded& loaded() const { return loaded_; }
  [[nodiscard]] bool hasRecord() const { return loaded_.file != nullptr; }
  [[nodiscard]] const Record& record() const { return loaded_.record(); }
  [[nodiscard]] const Figures& figures() const { return *loaded_.figures; }
  [[nodiscard]] const Refused& refused() const { return refused_; }
  /// The file that is shown, is being read or was refused.
  [[nodiscard]] const QString& path() const { return path_; }
  [[nodiscard]] const FigureSettings& settings() const { return settings_; }
  /// Whether what the signals say is used.
  [[nodiscard]] DeriveMode deriveMode() const { return deriveMode_; }
  /// What the ECG of the record shown says about its rhythm; null: not asked for, no ECG, or still
  /// being made.
  [[nodiscard]] const std::shared_ptr<const Derived>& hints() const { return hints_; }
  /// Hints are being made.
  [[nodiscard]] bool hintsAwaited() const { return hintsToken_ != nullptr; }
  /// Share of the file that was read, 0 to 1.
  [[nodiscard]] double progress() const;

  /// Reads a file and shows its first record. Stops the reading of another.
  void open(const QString& path, std::optional<RecordKind> madeUpHeader = std::nullopt);
  /// Reads the open file once more where the mode is another.
  void setDeriveMode(DeriveMode mode);
  /// Begins to make the hints that are awaited: to be called when the record is in view, so that
  /// its picture does not wait for them.
  void makeHints();
  /// Stops reading; a record that was open before is shown again.
  void cancel();
  void close();
  /// Shows another record of the same file.
  void showRecord(std::size_t index);
  /// Everything is computed again.
  void setSettings(const FigureSettings& settings);

signals:
  void stateChanged();
  /// Another record is shown.
  void recordChanged();
  /// The figures changed: another record, or other settings.
  void figuresChanged();
  void settingsChanged();
  void deriveModeChanged();
  /// The hints of the record shown were made, or those of another were taken away.
  void hintsChanged();

private:
  using Result = tl::expected<Loaded, Refused>;
  void start(std::function<Result(LoadWatch&)> work);
  void finish(const std::shared_ptr<LoadWatch>& watch, const Result& result);
  void setState(State state);
  void read(const QString& path, std::size_t shown);
  void forgetHints();
  void awaitHints();

  State state_ = State::empty;
  Loaded loaded_;
  Refused refused_;
  QString path_;
  std::optional<RecordKind> madeUpHeader_;
  FigureSettings settings_;
  DeriveMode deriveMode_ = DeriveMode::automatic;
  std::shared_ptr<const Derived> hints_;
  /// Stands for the hints that are awaited; others are thrown away.
  std::shared_ptr<const DeriveWhat> hintsToken_;
  bool hintsBegun_ = false;
  /// The work whose result is awaited; the results of others are thrown away.
  std::shared_ptr<LoadWatch> watch_;
  /// Last, so that their destructors wait for the workers while everything else still stands.
  QThreadPool pool_, hintsPool_;
};

} // namespace afterbeat::window
