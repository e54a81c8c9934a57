#include "ui/answers/scan_runner.hpp"

#include <nlohmann/json.hpp>
#include <utility>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

ScanRunner::ScanRunner(CaseDocument& document, QObject* parent)
    : QObject(parent), document_(document) {
  pool_.setMaxThreadCount(1);
}

ScanRunner::~ScanRunner() {
  pool_.clear();
  pool_.waitForDone();
}

std::string ScanRunner::limb_text() const {
  const Json* limb = document_.at("/limb");
  return limb == nullptr ? std::string() : limb->dump();
}

bool ScanRunner::is_current() const {
  return asked_limb_ == limb_text();
}

template <class Answer, class Ask, class Take>
void ScanRunner::start(Ask ask, Take take) {
  const int run = ++run_;
  running_ = true;
  error_.reset();
  answer_.reset();
  Q_EMIT changed();
  pool_.clear();
  pool_.start([this, run, ask, take] {
    auto found = [&]() -> std::shared_ptr<Expected<Answer>> {
      try {
        return std::make_shared<Expected<Answer>>(ask());
      } catch (const std::exception& fault) {
        return std::make_shared<Expected<Answer>>(std::unexpected(
            Error::internal({"program", fault.what(), "Please report this with the scan."})));
      }
    }();
    QMetaObject::invokeMethod(
        this,
        [this, run, take, found] {
          if (run != run_) return;
          running_ = false;
          if (*found) {
            take(std::move(**found));
          } else {
            error_ = found->error();
          }
          Q_EMIT changed();
        },
        Qt::QueuedConnection);
  });
}

void ScanRunner::look(const QString& surface) {
  looked_.reset();
  start<scan::ScanLook>([path = plain(surface)] { return scan::look_at_scan(path); },
                        [this](scan::ScanLook look) { looked_ = look; });
}

void ScanRunner::fit(const scan::ScanRequest& request) {
  asked_limb_ = limb_text();
  const auto& read = document_.read();
  if (!read) {
    ++run_;
    running_ = false;
    answer_.reset();
    error_ = read.error();
    Q_EMIT changed();
    return;
  }
  start<scan::ScanAnswer>([tables = document_.shared_tables(), limb = read->limb,
                           request] { return scan::answer_scan(tables->package, limb, request); },
                          [this](scan::ScanAnswer answer) {
                            answer_ = std::make_shared<const scan::ScanAnswer>(std::move(answer));
                          });
}

void ScanRunner::forget() {
  ++run_;
  pool_.clear();
  running_ = false;
  looked_.reset();
  answer_.reset();
  error_.reset();
  Q_EMIT changed();
}

}  // namespace endplate::ui
