/// Jobs done by several threads, their results taken by one.
#pragma once

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

namespace afterbeat::archive {

/// Starts at once; the destructor lets each thread finish the job it is at. Results come in the
/// order of the jobs, whichever is done first. Few wait at a time, so that memory stays small
/// however slow the taker, or one job, is.
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
    done_.wait(lock, [this] { return results_.contains(taken_) || running_ == 0; });
    auto first = results_.extract(taken_);
    if (!first) {
      return std::nullopt;
    }
    ++taken_;
    lock.unlock();
    room_.notify_all();
    return std::move(first.mapped());
  }

private:
  static constexpr std::size_t kMostWaiting = 64;

  /// The job's place, and the job.
  std::optional<std::pair<std::size_t, Job>> nextJob() {
    const std::scoped_lock lock(mutex_);
    if (stop_ || at_ == jobs_.size() || (cancel_ != nullptr && *cancel_)) {
      return std::nullopt;
    }
    const std::size_t place = at_++;
    return std::pair(place, std::move(jobs_[place]));
  }

  void run() {
    while (auto job = nextJob()) {
      const std::size_t place = job->first;
      Result result = work_(std::move(job->second));
      std::unique_lock lock(mutex_);
      // The one that is waited for always finds room.
      room_.wait(lock, [&] { return stop_ || place < taken_ + kMostWaiting; });
      results_.emplace(place, std::move(result));
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
  /// By the place of their job.
  std::map<std::size_t, Result> results_;
  std::size_t at_ = 0, taken_ = 0, running_ = 0;
  bool stop_ = false;
  std::vector<std::thread> threads_;
};

} // namespace afterbeat::archive
