#include "ui/view/picture_thread.hpp"

#include <atomic>
#include <catch2/catch.hpp>
#include <chrono>
#include <future>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace endplate::ui {
namespace {

// Draws nothing, and only when it is let.
class Waiting : public PictureMaker {
 public:
  explicit Waiting(std::shared_future<void> gate) : gate_(std::move(gate)) {}
  Picture draw(const PictureOrder& order) override {
    gate_.wait();
    Picture picture;
    picture.number = order.number;
    return picture;
  }

 private:
  std::shared_future<void> gate_;
};

PictureOrder numbered(quint64 number) {
  PictureOrder order;
  order.number = number;
  return order;
}

}  // namespace

TEST_CASE("Of the pictures for the screen the latest is drawn, of those aside each one", "[view]") {
  std::promise<void> open;
  const std::shared_future<void> gate = open.get_future().share();
  std::mutex mutex;
  std::vector<quint64> drawn;
  std::vector<quint64> taken;
  std::atomic<int> begun = 0;
  std::atomic<int> done = 0;
  const auto thread_here = std::this_thread::get_id();
  {
    PictureThread pictures({[&] {
                              CHECK(std::this_thread::get_id() != thread_here);
                              return std::make_unique<Waiting>(gate);
                            },
                            [&] { ++begun; },
                            [&](const Picture& made) {
                              const std::lock_guard lock(mutex);
                              drawn.push_back(made.number);
                              ++done;
                            }});
    pictures.order(numbered(1));
    while (begun == 0) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    for (quint64 number = 2; number <= 5; ++number) {
      pictures.order(numbered(number));
      pictures.take(numbered(10 * number), [&](const Picture& made) {
        const std::lock_guard lock(mutex);
        taken.push_back(made.number);
        ++done;
      });
    }
    open.set_value();
    while (done < 6) std::this_thread::sleep_for(std::chrono::milliseconds(1));
  }
  CHECK(drawn == std::vector<quint64>{1, 5});
  CHECK(taken == std::vector<quint64>{20, 30, 40, 50});
  CHECK(begun == 2);
}

}  // namespace endplate::ui
