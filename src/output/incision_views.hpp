#pragma once
#include <string>

#include "command.hpp"
#include "models/incision/incision.hpp"

namespace endplate::cli {

Json incision_json(const CommonOptions& common, const incision::IncisionAnswer& answer);
std::string incision_text(const incision::IncisionAnswer& answer);

}  // namespace endplate::cli
