/// Work away from the window's thread of which only the newest result matters.
#pragma once

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>

#include <memory>

namespace afterbeat::window {

/// Asked again, what was asked before is not delivered any more. Belongs to the window's thread.
class LatestWork {
public:
  /// `home` lives in the window's thread and outlives this.
  explicit LatestWork(QObject& home) : home_(home) { pool_.setMaxThreadCount(1); }
  ~LatestWork() {
    token_.reset();
    pool_.clear();
    pool_.waitForDone();
  }
  LatestWork(const LatestWork&) = delete;
  LatestWork& operator=(const LatestWork&) = delete;

  /// Runs `work` on a worker and hands what it gives to `deliver` in the window's thread.
  template <typename Work, typename Deliver>
  void ask(Work work, Deliver deliver) {
    token_ = std::make_shared<int>();
    // What has not begun would be thrown away.
    pool_.clear();
    pool_.start([this, work = std::move(work), deliver = std::move(deliver),
                 token = std::weak_ptr<int>(token_)] {
      using Result = decltype(work());
      auto result = std::make_shared<Result>(work());
      QMetaObject::invokeMethod(
          &home_,
          [this, result, deliver, token] {
            if (!token.expired() && token.lock() == token_) {
              token_.reset();
              deliver(std::move(*result));
            }
          },
          Qt::QueuedConnection);
    });
  }
  /// What was asked is not delivered.
  void forget() { token_.reset(); }
  [[nodiscard]] bool busy() const { return token_ != nullptr; }

private:
  QObject& home_;
  std::shared_ptr<int> token_;
  QThreadPool pool_;
};

} // namespace afterbeat::window
