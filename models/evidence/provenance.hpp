#pragma once
#include <optional>
#include <string_view>

namespace endplate::evidence {

// How a figure came into the tables.
enum class Provenance {
  read,             // seen in the text of its source
  recalled,         // from memory of its source, not seen
  common_practice,  // a fact of the trade
  assumed           // no source supports it; the row says why it was chosen
};

std::string_view to_string(Provenance provenance);
std::optional<Provenance> provenance_from(std::string_view text);

}  // namespace endplate::evidence
