#include "app/window/session/session.h"

#include <QMetaObject>

#include <utility>

namespace afterbeat::window {

Session::Session(QObject* parent) : QObject(parent) {}

Session::~Session() {
  if (watch_) {
    watch_->cancelled = true;
  }
  pool_.waitForDone();
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
  path_ = path;
  const LoadOrder order{path, madeUpHeader, settings_};
  start([order](LoadWatch& watch) { return load(order, watch); });
  setState(State::loading);
}

void Session::cancel() {
  if (state_ != State::loading) {
    return;
  }
  watch_->cancelled = true;
  watch_.reset();
  path_ = loaded_.path;
  setState(hasRecord() ? State::ready : State::empty);
}

void Session::close() {
  if (watch_) {
    watch_->cancelled = true;
    watch_.reset();
  }
  loaded_ = {};
  path_.clear();
  setState(State::empty);
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
    return;
  }
  const bool sameRecord = loaded_.file == result->file && loaded_.shown == result->shown;
  loaded_ = *result;
  path_ = loaded_.path;
  if (!sameRecord) {
    emit recordChanged();
  }
  emit figuresChanged();
  setState(State::ready);
  const FigureSettings& used = figures().settings;
  if (used.pauseThreshold != settings_.pauseThreshold || used.windowEnd != settings_.windowEnd ||
      used.profile.id != settings_.profile.id) {
    setSettings(FigureSettings(settings_));
  }
}

void Session::setState(State state) {
  state_ = state;
  emit stateChanged();
}

} // namespace afterbeat::window
