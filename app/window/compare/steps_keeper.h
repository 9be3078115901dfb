/// The days from which on something was new, of the season that is open: those that a group keeps
/// in its archive, and the user's own.
#pragma once

#include "app/archive/marked_steps.h"

#include <QObject>
#include <QString>
#include <QThreadPool>

#include <functional>
#include <optional>
#include <vector>

namespace afterbeat::window {

/// An archive that the user may write keeps new marks; else they are remembered in the settings,
/// for the user alone. Belongs to the window's thread, and asks the archive on a worker, one
/// thing after the other.
class StepsKeeper final : public QObject {
  Q_OBJECT

public:
  enum class Kept { own, shared };

  explicit StepsKeeper(QObject* parent = nullptr);
  /// Waits for what is being written.
  ~StepsKeeper() override;

  /// Another season, or the same once more. `key` names it in the settings; `place` is its archive,
  /// empty for files.
  void open(const QString& key, const std::optional<archive::ArchivePlace>& place);
  /// Others may have marked something meanwhile. Says `changed` only if so.
  void lookAgain();
  /// By day; none is there twice.
  [[nodiscard]] const std::vector<MarkedStep>& steps() const { return steps_; }
  /// The archive has answered; until then its marks are missing.
  [[nodiscard]] bool known() const { return known_; }
  /// Of the season that is open there is an archive.
  [[nodiscard]] bool hasArchive() const { return place_.has_value(); }
  /// Where a new mark is kept.
  [[nodiscard]] Kept keptNew() const { return mayWrite_ ? Kept::shared : Kept::own; }
  /// Where this one is kept.
  [[nodiscard]] Kept kept(const MarkedStep& step) const;
  /// Not one that the archive keeps and this user may not change.
  [[nodiscard]] bool mayTake(const MarkedStep& step) const;
  /// A mark that the archive does not take is kept as the user's own.
  void put(const MarkedStep& step, Kept where);
  /// Wherever it is kept.
  void take(const MarkedStep& step);

signals:
  /// Other marks, or `known`.
  void changed();
  /// Something could not be read or written, and what became of it.
  void failed(const QString& sentence);

private:
  struct Change {
    MarkedStep step;
    bool adds = true;
  };
  using Marks = archive::Expected<std::vector<MarkedStep>>;
  struct Answer {
    Marks marks;
    bool mayWrite = false;
  };
  void ask();
  void write(const Change& change);
  void written(const Change& change, const Marks& marks, const QString& key);
  void answered(const Answer& answer);
  void onWorker(std::function<std::function<void()>()> work);
  void show();

  QString key_;
  std::optional<archive::ArchivePlace> place_;
  bool known_ = true, mayWrite_ = false;
  /// What the archive said last, and what it was not told yet.
  std::vector<MarkedStep> shared_;
  std::vector<Change> underWay_;
  std::vector<MarkedStep> own_, steps_;
  /// Counts seasons: answers for others are not meant.
  int season_ = 0;
  QThreadPool pool_;
};

} // namespace afterbeat::window
