#pragma once
// How much nerve a cable graft needs and which donors offer it.
//
// Cables = cross-section of the nerve over that of the donor, measured by the same method, rounded
// up. Length = cables x gap x (1 + allowance). Nerve_cross_sections.csv, graft_donors.csv and
// graft_figures.csv hold the figures.
#include "models/casefile/case.hpp"
#include "models/evidence/data_package.hpp"
#include "models/plan/answer.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::plan {

using transfer::Situation;

// Smallest and largest number of cables of `donor` that fill `nerve`. Nothing without areas of one
// method for both.
struct Cables {
  int low = 0;
  int high = 0;
  std::string words;  // how it was reckoned
};
std::optional<Cables> cables_of(const evidence::DataPackage& package, std::string_view nerve,
                                std::string_view donor);

// `nerve` is the injured one, standard term; `plexus` for a root, trunk or cord.
GraftNeed graft_need(const Situation& now, const evidence::DataPackage& package,
                     const std::string& nerve, bool plexus);

// What the ends of a gap can be brought together by, and whether that is enough for the case's gap.
std::vector<std::string> gap_closing(const evidence::DataPackage& package, const std::string& nerve,
                                     std::optional<double> gap_mm);

}  // namespace endplate::plan
