#include "app/window/signals/suppressed_ecg.h"

#include "app/window/session/session.h"
#include "core/signal/ecg/artefact_filter.h"
#include "core/signal/signal_view.h"

#include <QMetaObject>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

std::vector<Time> compressionsOf(const Record& record) {
  std::vector<Time> all;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Compression>()) {
      all.push_back(entry.t);
    }
  }
  std::sort(all.begin(), all.end());
  return all;
}

/// Back to the raw values of the channel, as far as they reach.
std::int16_t rawOf(double value, double factor, const Channel& channel) {
  if (std::isnan(value)) {
    return kMissingSample;
  }
  constexpr double kMost = std::numeric_limits<std::int16_t>::max();
  const double raw = (value / factor - channel.offset) / channel.scale;
  return static_cast<std::int16_t>(std::lround(std::clamp(raw, -kMost, kMost)));
}

} // namespace

std::shared_ptr<const SuppressedEcg> suppressedEcg(const Record& record) {
  const auto ecg =
      std::find_if(record.channels.begin(), record.channels.end(), [](const Channel& channel) {
        return channel.quantity == "ecg" && channel.drawable && !channel.blocks.empty() &&
               channel.scale != 0 && factorToUsual(channel.quantity, channel.unit);
      });
  const std::vector<Time> deepest = compressionsOf(record);
  if (ecg == record.channels.end() || deepest.empty()) {
    return nullptr;
  }
  auto made = std::make_shared<SuppressedEcg>();
  made->of = static_cast<std::size_t>(ecg - record.channels.begin());
  made->channel = *ecg;
  const double factor = *factorToUsual(ecg->quantity, ecg->unit);
  std::vector<double> values;
  bool any = false;
  for (const SampleBlock& block : ecg->blocks) {
    readValues(*ecg, block, 0, block.count, factor, values);
    const FilteredEcg filtered = suppressCompressions({block.t, ecg->rateHz, values}, deepest);
    any |= !filtered.filtered.empty();
    for (std::size_t i = 0; i < filtered.values.size(); ++i) {
      made->channel.samples[block.first + i] = rawOf(filtered.values[i], factor, *ecg);
    }
  }
  if (!any) {
    return nullptr;
  }
  made->wave.pyramid = MinMaxPyramid(made->channel.samples);
  made->wave.usual = usualRange(made->channel, made->wave.pyramid);
  return made;
}

SuppressedEcgMaker::SuppressedEcgMaker(Session& session, QObject* parent)
    : QObject(parent), session_(session) {
  pool_.setMaxThreadCount(1);
  connect(&session_, &Session::recordChanged, this, &SuppressedEcgMaker::start);
  connect(&session_, &Session::stateChanged, this, [this] {
    if (!session_.hasRecord()) {
      track_.reset();
      token_.reset();
    }
  });
}

SuppressedEcgMaker::~SuppressedEcgMaker() {
  pool_.waitForDone();
}

void SuppressedEcgMaker::setWanted(bool wanted) {
  if (wanted != wanted_) {
    wanted_ = wanted;
    start();
  }
}

void SuppressedEcgMaker::start() {
  track_.reset();
  token_.reset();
  if (wanted_ && session_.hasRecord()) {
    token_ = std::make_shared<const int>(0);
    pool_.start(
        [this, token = token_, file = session_.loaded().file, shown = session_.loaded().shown] {
          const auto track = suppressedEcg(file->records[shown].record);
          QMetaObject::invokeMethod(
              this,
              [this, token, track] {
                if (token == token_) {
                  track_ = track;
                  token_.reset();
                  emit changed();
                }
              },
              Qt::QueuedConnection);
        });
  }
  emit changed();
}

} // namespace afterbeat::window
