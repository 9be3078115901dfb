#include "app/window/session/session.h"

#include <QMetaObject>

#include <algorithm>
#include <utility>

namespace afterbeat::window {

Session::Session(QObject* parent) : QObject(parent) {
  hintsPool_.setMaxThreadCount(1);
}

Session::~Session() {
  if (watch_) {
    watch_->cancelled = true;
  }
  pool_.waitForDone();
  hintsPool_.waitForDone();
}

double Session::progress() const {
  return watch_ ? watch_->progress.load() : 0;
}

void Session::start(std::function<Result(LoadWatch&)> work) {
  if (watch_) {
    watch_->cancelled = true;
  }
  watch_ = std::make_shared<LoadWatch>();
  pool_.start([this, work = std::move(work), watch = watch_] {
    auto result = std::make_shared<const Result>(work(*watch));
    QMetaObject::invokeMethod(
        this, [this, watch, result] { finish(watch, *result); }, Qt::QueuedConnection);
  });
}

void Session::open(const QString& path, std::optional<RecordKind> madeUpHeader) {
  madeUpHeader_ = madeUpHeader;
  read(path, 0);
}

void Session::read(const QString& path, std::size_t shown) {
  path_ = path;
  const LoadOrder order{path, madeUpHeader_, settings_, deriveMode_, shown};
  start([order](LoadWatch& watch) { return load(order, watch); });
  setState(State::loading);
}

void Session::setDeriveMode(DeriveMode mode) {
  if (mode == deriveMode_) {
    return;
  }
  deriveMode_ = mode;
  emit deriveModeChanged();
  if (state_ == State::loading) {
    read(path_, 0);
  } else if (hasRecord()) {
    read(path_, loaded_.shown);
  }
}

void Session::cancel() {
  if (state_ != State::loading) {
    return;
  }
  watch_->cancelled = true;
  watch_.reset();
  path_ = loaded_.path;
  setState(hasRecord() ? State::ready : State::empty);
  if (hasRecord() && loaded_.deriveMode != deriveMode_) {
    // What is shown again was read with the mode before.
    deriveMode_ = loaded_.deriveMode;
    emit deriveModeChanged();
  }
}

void Session::close() {
  if (watch_) {
    watch_->cancelled = true;
    watch_.reset();
  }
  loaded_ = {};
  path_.clear();
  setState(State::empty);
  forgetHints();
}

void Session::showRecord(std::size_t index) {
  if (!hasRecord() || index >= loaded_.file->records.size() || state_ == State::loading) {
    return;
  }
  start([from = loaded_, index, settings = settings_](LoadWatch&) -> Result {
    return window::showRecord(from, index, settings);
  });
}

void Session::setSettings(const FigureSettings& settings) {
  settings_ = settings;
  emit settingsChanged();
  if (state_ == State::loading) {
    // What is being read would come with the old settings: `finish` computes once more.
    return;
  }
  if (hasRecord()) {
    start([from = loaded_, settings](LoadWatch&) mutable -> Result {
      computeWith(settings, from);
      return from;
    });
  }
}

void Session::finish(const std::shared_ptr<LoadWatch>& watch, const Result& result) {
  if (watch != watch_) {
    return;
  }
  watch_.reset();
  if (!result) {
    refused_ = result.error();
    loaded_ = {};
    setState(State::refused);
    forgetHints();
    return;
  }
  const bool sameRecord = loaded_.file == result->file && loaded_.shown == result->shown;
  loaded_ = *result;
  path_ = loaded_.path;
  if (!sameRecord) {
    awaitHints();
    emit recordChanged();
  }
  emit figuresChanged();
  setState(State::ready);
  if (!sameRecord) {
    emit hintsChanged();
  }
  const FigureSettings& used = figures().settings;
  if (used.pauseThreshold != settings_.pauseThreshold || used.windowEnd != settings_.windowEnd ||
      used.profile.id != settings_.profile.id) {
    setSettings(FigureSettings(settings_));
  }
}

void Session::forgetHints() {
  hints_.reset();
  hintsToken_.reset();
  emit hintsChanged();
}

/// Before anybody sees the new record: the hints of the old one are gone.
void Session::awaitHints() {
  const auto& channels = record().channels;
  const bool ecg = std::any_of(channels.begin(), channels.end(), [](const Channel& channel) {
    return channel.quantity == "ecg" && channel.drawable && !channel.blocks.empty();
  });
  const bool wanted = ecg && whatToDerive(record(), loaded_.deriveMode).rhythm;
  hints_.reset();
  hintsBegun_ = false;
  hintsToken_ =
      wanted ? std::make_shared<const DeriveWhat>(DeriveWhat{false, false, true}) : nullptr;
}

void Session::makeHints() {
  if (!hintsToken_ || hintsBegun_ || state_ != State::ready) {
    return;
  }
  hintsBegun_ = true;
  hintsPool_.start([this, file = loaded_.file, shown = loaded_.shown, token = hintsToken_] {
    auto hints = std::make_shared<const Derived>(derive(file->records[shown].record, *token));
    QMetaObject::invokeMethod(
        this,
        [this, token, hints] {
          if (token == hintsToken_) {
            hints_ = hints;
            hintsToken_.reset();
            emit hintsChanged();
          }
        },
        Qt::QueuedConnection);
  });
}

void Session::setState(State state) {
  state_ = state;
  emit stateChanged();
}

} // namespace afterbeat::window
