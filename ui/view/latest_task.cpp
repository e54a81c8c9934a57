#include "ui/view/latest_task.hpp"

#include <utility>

namespace endplate::ui {

LatestTask::LatestTask() : thread_([this] { run(); }) {}

LatestTask::~LatestTask() {
  {
    const std::lock_guard lock(mutex_);
    stopping_ = true;
    next_ = nullptr;
  }
  asked_.notify_one();
  thread_.join();
}

void LatestTask::ask(std::function<void()> task) {
  {
    const std::lock_guard lock(mutex_);
    next_ = std::move(task);
  }
  asked_.notify_one();
}

void LatestTask::forget() {
  const std::lock_guard lock(mutex_);
  next_ = nullptr;
}

void LatestTask::run() {
  while (true) {
    std::function<void()> task;
    {
      std::unique_lock lock(mutex_);
      asked_.wait(lock, [&] { return stopping_ || next_; });
      if (stopping_) return;
      task = std::exchange(next_, nullptr);
    }
    task();
  }
}

}  // namespace endplate::ui
