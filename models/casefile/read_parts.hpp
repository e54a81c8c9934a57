#pragma once
// The parts of a case file, one function each. Every one takes its keys from `object` and leaves
// problems and assumptions in the shared Reading.
#include <optional>
#include <string_view>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/casefile/object_reader.hpp"

namespace endplate::casefile {

// A place under `key`. An empty object places nothing, which only a required place may not do.
std::optional<Place> read_place(ObjectReader& object, std::string_view key, bool required);
// `landmark`, `offset_mm` and `toward` of `object` itself.
std::optional<AtLandmark> read_landmark(ObjectReader& object);

Limb read_limb(ObjectReader& object);
std::optional<Injury> read_injury(ObjectReader& object);
Examination read_examination(ObjectReader& object);
// One entry for each part of a muscle that has several.
std::vector<Electrodiagnosis> read_electrodiagnosis(ObjectReader& object);
Operation read_operation(ObjectReader& object);
std::optional<Incision> read_incision(ObjectReader& object);

// What only shows when the parts are seen together: dates out of order, the same injury twice.
void check_coherence(Reading& reading);

}  // namespace endplate::casefile
