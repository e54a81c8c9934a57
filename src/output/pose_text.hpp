#pragma once
#include <map>
#include <string>

namespace endplate::cli {

// "elbow flexion 90, wrist extension -30 degrees", joints at 0 left out.
std::string pose_in_words(const std::map<std::string, double>& pose_deg);

}  // namespace endplate::cli
