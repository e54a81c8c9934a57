#pragma once
// A made-up adult arm for tests: branches in their anatomical order at round distances, so that a
// test of deficits does not hang on the fitted limb.
#include <string>

#include "models/anatomy/anatomy.hpp"
#include "models/anatomy/nerve_metrics.hpp"
#include "models/examination/deficit.hpp"

namespace endplate::test {

// The shipped tables, read once. Fails the test when they do not read.
const anatomy::Anatomy& shipped_anatomy();
const evidence::DataPackage& shipped_package();

// Lengths of the made-up arm on the shipped tree.
const anatomy::NerveMetrics& hand_limb();

// A complete injury `from_start_mm` along the nerve, known exactly unless said.
examination::TreeInjury injury(const std::string& nerve, double from_start_mm, double sd_mm = 0.0);
// The root torn from the cord.
examination::TreeInjury avulsion(const std::string& root);

// The answer for the made-up arm.
examination::DeficitAnswer deficit_of(const std::vector<examination::TreeInjury>& injuries,
                                      const std::vector<std::string>& variants = {});

// "denervated" and so on, by abbreviation or area name.
std::string state_of(const examination::DeficitAnswer& answer, const std::string& target);

}  // namespace endplate::test
