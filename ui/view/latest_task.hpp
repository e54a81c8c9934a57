#pragma once
// A thread that does the latest thing asked of it: what was asked before and not begun is dropped.
#include <condition_variable>
#include <functional>
#include <mutex>
#include <thread>

namespace endplate::ui {

class LatestTask {
 public:
  LatestTask();
  ~LatestTask();  // waits for what has begun
  LatestTask(const LatestTask&) = delete;
  LatestTask& operator=(const LatestTask&) = delete;

  void ask(std::function<void()> task);
  // Drops what was asked and not begun.
  void forget();

 private:
  void run();

  std::mutex mutex_;
  std::condition_variable asked_;
  std::function<void()> next_;
  bool stopping_ = false;
  std::thread thread_;
};

}  // namespace endplate::ui
