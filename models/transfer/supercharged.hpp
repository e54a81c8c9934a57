#pragma once
// For which lesions a supercharged end-to-side transfer is thought of: the recipient stays whole,
// since its own axons may still come (transfer_supercharged.csv).
#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

struct SuperchargedFor {
  // Unknown: it would be with a repair, or with signs that axons may come, which the case lacks.
  Condition::Found found = Condition::Found::fails;
  std::string words;                 // what holds, what is asked for, or why not
  std::vector<std::string> said;     // what the studies found
  std::vector<std::string> sources;  // rows
};

// `below` are the muscles below the recipient.
SuperchargedFor supercharged_for(std::string_view transfer, const std::vector<std::size_t>& below,
                                 const evidence::DataPackage& package, const Situation& now);

}  // namespace endplate::transfer
