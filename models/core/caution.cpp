#include "models/core/caution.hpp"

namespace endplate {

std::string_view standing_caution() {
  return "A computed estimate for a typical limb, to inform and not to replace surgical judgement, "
         "local protocols and licensed practice. Check it against the patient.";
}

}  // namespace endplate
