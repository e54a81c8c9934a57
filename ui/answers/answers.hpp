#pragma once
// The answers of the models as the desk holds them: the models' own structs, and what each stands
// on.
#include <QDateTime>
#include <QString>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"

namespace endplate::recovery {
struct RecoveryAnswer;
}
namespace endplate::schedule {
struct Schedule;
}
namespace endplate::followup {
struct FollowupAnswer;
}
namespace endplate::plan {
struct PlanAnswer;
}
namespace endplate::transfer {
struct TransferAnswer;
}
namespace endplate::incision {
struct IncisionAnswer;
}
namespace endplate::limb {
struct LimbAnswer;
}
namespace endplate::evidence {
struct EvidenceAnswer;
}
namespace endplate::examination {
struct CaseCheck;
struct CaseDeficit;
}  // namespace endplate::examination

namespace endplate::ui {

enum class Question {
  check,
  deficit,
  recovery,
  followup,
  plan,
  transfer,
  incision,
  limb,
  evidence
};
inline constexpr std::size_t kQuestions = 9;

// A forecast and the days that follow from it.
struct RecoveryView {
  std::shared_ptr<const recovery::RecoveryAnswer> answer;
  std::shared_ptr<const schedule::Schedule> schedule;
};

// The same after what later visits showed.
struct FollowupView {
  std::shared_ptr<const followup::FollowupAnswer> answer;
  std::shared_ptr<const schedule::Schedule> schedule;
};

// What a run was asked beside the case itself.
struct Asked {
  int samples = 2000;
  std::uint64_t seed = 1;
  casefile::Date today{};
  bool unpublished = false;  // of transfers
  bool operator==(const Asked&) const = default;
};

// Which cut is judged.
struct IncisionRequest {
  std::string approach;       // by name; empty: one of the case or one's own
  std::size_t of_case = 0;    // index into the case's incisions, where `approach` is empty
  std::string marks;          // one's own, as models/incision/mark_text.hpp reads them
  std::string kind = "line";  // of one's own
  // Drawn on the limb: places in its frame, in the pose of the case, mm. They go before the rest.
  std::vector<std::array<double, 3>> picked_mm{};
  std::optional<double> depth_mm{};  // of any of them
  // Of a line: also the one of least risk beside it, so far aside at most, mm. Absent: not asked.
  std::optional<double> corridor_mm{};
  double corridor_within_mm = 5.0;  // a nerve nearer than this counts
  bool operator==(const IncisionRequest&) const = default;
};

struct EvidenceRequest {
  std::string words;
  std::string table;
  std::string id;
  bool operator==(const EvidenceRequest&) const = default;
};

enum class Progress { idle, waiting, running, cancelled };

// One question's last answer. While a new one is made it stays, and `stale` is set.
struct HeldState {
  std::optional<Error> error;  // the last run had no answer; then `answer` is empty
  Progress progress = Progress::idle;
  bool stale = true;
  int revision = -1;  // of the case that the answer stands on
  QDateTime at;       // when it was made
};

template <class T>
struct Held : HeldState {
  std::shared_ptr<const T> answer;
};

}  // namespace endplate::ui
