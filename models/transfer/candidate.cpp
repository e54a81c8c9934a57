#include "models/transfer/candidate.hpp"

namespace endplate::transfer {

std::string_view to_string(Way way) {
  return way == Way::nerve ? "nerve transfer" : "tendon or muscle transfer";
}

std::string_view to_string(Coaptation coaptation) {
  switch (coaptation) {
    case Coaptation::end_to_end:
      return "end-to-end";
    case Coaptation::end_to_side:
      return "end-to-side";
    case Coaptation::supercharged:
      return "supercharged end-to-side";
    case Coaptation::none:
      break;
  }
  return "none";
}

std::string_view to_string(Synergy synergy) {
  switch (synergy) {
    case Synergy::synergist:
      return "synergist";
    case Synergy::neutral:
      return "neutral";
    case Synergy::antagonist:
      return "antagonist";
    case Synergy::not_known:
      break;
  }
  return "not known";
}

std::string_view to_string(Verdict verdict) {
  switch (verdict) {
    case Verdict::feasible:
      return "feasible";
    case Verdict::marginal:
      return "marginal";
    case Verdict::not_feasible:
      return "not feasible";
    case Verdict::not_judged:
      break;
  }
  return "not judged";
}

}  // namespace endplate::transfer
