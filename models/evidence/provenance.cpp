#include "models/evidence/provenance.hpp"

#include <array>
#include <utility>

namespace endplate::evidence {
namespace {
constexpr std::array<std::pair<Provenance, std::string_view>, 4> kNames{{
    {Provenance::read, "read"},
    {Provenance::recalled, "recalled"},
    {Provenance::common_practice, "common practice"},
    {Provenance::assumed, "assumed"},
}};
}  // namespace

std::string_view to_string(Provenance provenance) {
  for (const auto& [value, name] : kNames) {
    if (value == provenance) return name;
  }
  return "";
}

std::optional<Provenance> provenance_from(std::string_view text) {
  for (const auto& [value, name] : kNames) {
    if (name == text) return value;
  }
  return std::nullopt;
}

}  // namespace endplate::evidence
