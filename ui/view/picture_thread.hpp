#pragma once
// A thread that draws pictures one after another, so that nobody has to wait for one.
//
// Of those ordered for the screen the latest counts; those ordered by take() are all drawn, when
// the screen has its own.
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

#include "ui/view/picture.hpp"

namespace endplate::ui {

class PictureThread {
 public:
  // All three are called on the thread: `begun` as it takes an order of the screen up, `drawn`
  // with its picture, `make` once, before the first one. What `make` returns ends on the thread.
  struct Hooks {
    std::function<std::unique_ptr<PictureMaker>()> make;
    std::function<void()> begun;
    std::function<void(Picture)> drawn;
  };

  explicit PictureThread(Hooks hooks);
  ~PictureThread();  // waits for the picture under way
  PictureThread(const PictureThread&) = delete;
  PictureThread& operator=(const PictureThread&) = delete;

  void order(PictureOrder order);
  void take(PictureOrder order, std::function<void(Picture)> taken);

 private:
  void run();

  Hooks hooks_;
  std::mutex mutex_;
  std::condition_variable ordered_;
  std::optional<PictureOrder> next_;
  std::deque<std::pair<PictureOrder, std::function<void(Picture)>>> asides_;
  bool stopping_ = false;
  std::thread thread_;
};

}  // namespace endplate::ui
