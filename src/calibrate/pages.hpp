#pragma once
// Pages under docs/ that show the fit and how far it can be trusted, in Markdown.
#include <string>
#include <vector>

#include "models/calibration/reproduction.hpp"

namespace endplate::calibrate {

// Every quantity of the fit with its residual, the worst first.
std::string residual_page(const limb::Atlas& atlas,
                          const std::vector<calibration::Reproduced>& reproduced);

// Every study predicted without itself.
std::string validation_page(const limb::Atlas& atlas,
                            const calibration::CrossValidation& validation);

}  // namespace endplate::calibrate
