/// Jobs done by several threads, their results taken by one.
#pragma once

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace afterbeat::archive {

/// Starts at once; the destructor lets each thread finish the job it is at. Results come in the
/// order they are done. Few wait at a time, so that memory stays small however slow the taker is.
template <typename Job, typename Result>
class Workers {
public:
  /// `threads` 0: one for each processor. No job is begun once `cancel` is set.
  Workers(std::vector<Job> jobs, std::function<Result(Job)> work, unsigned threads,
          const std::atomic<bool>* cancel)
      : jobs_(std::move(jobs)), work_(std::move(work)), cancel_(cancel) {
    const std::size_t wanted = threads == 0 ? std::thread::hardware_concurrency() : threads;
    const std::size_t count = std::min(std::max<std::size_t>(wanted, 1), jobs_.size());
    running_ = count;
    for (std::size_t i = 0; i < count; ++i) {
      threads_.emplace_back([this] { run(); });
    }
  }
  ~Workers() {
    {
      const std::scoped_lock lock(mutex_);
      stop_ = true;
    }
    room_.notify_all();
    for (std::thread& thread : threads_) {
      thread.join();
    }
  }
  Workers(const Workers&) = delete;
  Workers& operator=(const Workers&) = delete;

  /// Waits for a result; empty: there will be no more.
  std::optional<Result> next() {
    std::unique_lock lock(mutex_);
    done_.wait(lock, [this] { return !results_.empty() || running_ == 0; });
    if (results_.empty()) {
      return std::nullopt;
    }
    std::optional<Result> first(std::move(results_.front()));
    results_.pop_front();
    lock.unlock();
    room_.notify_one();
    return first;
  }

private:
  static constexpr std::size_t kMostWaiting = 64;

  std::optional<Job> nextJob() {
    const std::scoped_lock lock(mutex_);
    if (stop_ || at_ == jobs_.size() || (cancel_ != nullptr && *cancel_)) {
      return std::nullopt;
    }
    return std::move(jobs_[at_++]);
  }

  void run() {
    while (auto job = nextJob()) {
      Result result = work_(std::move(*job));
      std::unique_lock lock(mutex_);
      room_.wait(lock, [this] { return stop_ || results_.size() < kMostWaiting; });
      results_.push_back(std::move(result));
      lock.unlock();
      done_.notify_one();
    }
    {
      const std::scoped_lock lock(mutex_);
      --running_;
    }
    done_.notify_one();
  }

  std::vector<Job> jobs_;
  std::function<Result(Job)> work_;
  const std::atomic<bool>* cancel_;
  std::mutex mutex_;
  std::condition_variable done_, room_;
  std::deque<Result> results_;
  std::size_t at_ = 0, running_ = 0;
  bool stop_ = false;
  std::vector<std::thread> threads_;
};

} // namespace afterbeat::archive
