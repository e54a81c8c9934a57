#include "ui/view/picture_thread.hpp"

namespace endplate::ui {

PictureThread::PictureThread(Hooks hooks) : hooks_(std::move(hooks)), thread_([this] { run(); }) {}

PictureThread::~PictureThread() {
  {
    const std::lock_guard lock(mutex_);
    stopping_ = true;
  }
  ordered_.notify_one();
  thread_.join();
}

void PictureThread::order(PictureOrder order) {
  {
    const std::lock_guard lock(mutex_);
    next_ = std::move(order);
  }
  ordered_.notify_one();
}

void PictureThread::take(PictureOrder order, std::function<void(Picture)> taken) {
  {
    const std::lock_guard lock(mutex_);
    asides_.emplace_back(std::move(order), std::move(taken));
  }
  ordered_.notify_one();
}

void PictureThread::run() {
  std::unique_ptr<PictureMaker> maker;
  while (true) {
    std::optional<PictureOrder> order;
    std::function<void(Picture)> taken;
    {
      std::unique_lock lock(mutex_);
      ordered_.wait(lock, [&] { return stopping_ || next_ || !asides_.empty(); });
      if (stopping_) return;
      if (next_) {
        order = std::exchange(next_, std::nullopt);
      } else {
        order = std::move(asides_.front().first);
        taken = std::move(asides_.front().second);
        asides_.pop_front();
      }
    }
    if (!maker) maker = hooks_.make();
    if (!taken) hooks_.begun();
    Picture picture = maker->draw(*order);
    taken ? taken(std::move(picture)) : hooks_.drawn(std::move(picture));
  }
}

}  // namespace endplate::ui
