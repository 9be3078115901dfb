/// The ECG with its compression artefact suppressed, as a track to look at.
#pragma once

#include "app/window/session/load.h"

#include <QObject>
#include <QThreadPool>

#include <memory>

namespace afterbeat::window {

class Session;

/// A channel of our own beside those of the record: for looking only, no figure or hint is made
/// from it.
struct SuppressedEcg {
  /// Index of the channel it was made from.
  std::size_t of = 0;
  Channel channel;
  Wave wave;
};

/// Makes the track of a record where it is wanted, in the background.
class SuppressedEcgMaker final : public QObject {
  Q_OBJECT

public:
  explicit SuppressedEcgMaker(Session& session, QObject* parent = nullptr);
  ~SuppressedEcgMaker() override;
  void setWanted(bool wanted);
  [[nodiscard]] bool wanted() const { return wanted_; }
  /// Null: not wanted, still being made, or the record has no ECG or no compressions.
  [[nodiscard]] const std::shared_ptr<const SuppressedEcg>& track() const { return track_; }
  [[nodiscard]] bool awaited() const { return token_ != nullptr; }

signals:
  void changed();

private:
  void start();

  Session& session_;
  bool wanted_ = false;
  std::shared_ptr<const SuppressedEcg> track_;
  /// Stands for the track that is awaited; others are thrown away.
  std::shared_ptr<const int> token_;
  /// Last: waits for its work while everything else still stands.
  QThreadPool pool_;
};

/// The first ECG of a record that can be drawn, suppressed; null: no such channel, no compressions,
/// or nowhere three of them in a row.
[[nodiscard]] std::shared_ptr<const SuppressedEcg> suppressedEcg(const Record& record);

} // namespace afterbeat::window
