#include "models/plan/answer.hpp"

namespace endplate::plan {

std::string_view to_string(OptionState state) {
  switch (state) {
    case OptionState::open:
      return "open";
    case OptionState::later:
      return "later";
    case OptionState::not_judged:
      return "not judged";
    case OptionState::unlikely:
      return "unlikely";
    case OptionState::closed:
      break;
  }
  return "not an option";
}

}  // namespace endplate::plan
