/// What the signals say, in the plot: rhythms in the lane, and the ECG without its compressions.
#include "app/window/waves/waves_plot.h"

namespace afterbeat::window {

void WavesPlot::setRhythms(std::shared_ptr<const Rhythms> rhythms,
                           std::shared_ptr<const Derived> hints) {
  const bool sameRoom = rhythms->lines() == scene_.rhythms->lines();
  scene_.rhythms = std::move(rhythms);
  scene_.hints = std::move(hints);
  if (!sameRoom) {
    setMargins();
  }
  replot(rpQueuedReplot);
}

void WavesPlot::setSuppressed(std::shared_ptr<const SuppressedEcg> track) {
  if (track == suppressed_) {
    return;
  }
  suppressed_ = std::move(track);
  showAnew();
}

std::optional<QRect> WavesPlot::suppressedTrack() const {
  for (const TrackFrame& track : scene_.tracks) {
    if (suppressed_ && track.channel == &suppressed_->channel) {
      return track.rect->rect();
    }
  }
  return std::nullopt;
}

void WavesPlot::addSuppressed() {
  addFrame(suppressed_->channel, suppressed_->wave, false);
  TrackFrame& track = scene_.tracks.back();
  track.name = tr("ECG, compressions suppressed");
  track.note = tr("for looking only");
}

} // namespace afterbeat::window
