#pragma once
// Fits a scanned surface off the interface thread. The latest request counts; what an older one
// brings is thrown away.
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <memory>
#include <optional>
#include <string>

#include "models/core/error.hpp"
#include "models/scan/scan_answer.hpp"
#include "models/scan/scan_surface.hpp"

namespace endplate::ui {

class CaseDocument;

class ScanRunner : public QObject {
  Q_OBJECT

 public:
  explicit ScanRunner(CaseDocument& document, QObject* parent = nullptr);
  ~ScanRunner() override;
  Q_DISABLE_COPY_MOVE(ScanRunner)

  // How big a surface is, before its unit is confirmed.
  void look(const QString& surface);
  // The standard anatomy on the surface, for the limb of the case as it stands.
  void fit(const scan::ScanRequest& request);
  // Throws away what was found and what is being looked for.
  void forget();

  bool is_running() const { return running_; }
  const std::optional<scan::ScanLook>& looked() const { return looked_; }
  const std::shared_ptr<const scan::ScanAnswer>& answer() const { return answer_; }
  const std::optional<Error>& error() const { return error_; }  // of the last request
  // The limb of the case is still the one that the answer stands on.
  bool is_current() const;

 Q_SIGNALS:
  void changed();

 private:
  template <class Answer, class Ask, class Take>
  void start(Ask ask, Take take);
  std::string limb_text() const;

  CaseDocument& document_;
  std::optional<scan::ScanLook> looked_;
  std::shared_ptr<const scan::ScanAnswer> answer_;
  std::optional<Error> error_;
  std::string asked_limb_;
  int run_ = 0;  // the number of the one that counts
  bool running_ = false;
  QThreadPool pool_;
};

}  // namespace endplate::ui
