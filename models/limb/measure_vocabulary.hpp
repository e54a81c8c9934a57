#pragma once
// The names under which a length, breadth or girth of the limb may be given or asked for.
#include <Eigen/Core>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"

namespace endplate::limb {

enum class ShownAs { not_shown, segment, breadth, girth };

// A measure is a weighted sum of the modelled measures of limb_size.csv.
struct Measure {
  std::string name;
  Eigen::VectorXd weights;
  std::string definition;
  ShownAs shown_as = ShownAs::not_shown;
  std::string label;  // short name for a table
  evidence::Provenance provenance = evidence::Provenance::read;
  std::string reason;  // of an assumed conversion
};

class MeasureVocabulary {
 public:
  // Reads limb_measures.csv. `modelled`: the modelled measures in the order of the weights. An
  // alias that stands for two measures is refused.
  static Expected<MeasureVocabulary> from(const evidence::DataPackage& package,
                                          const std::vector<std::string>& modelled);

  const std::vector<Measure>& measures() const { return measures_; }
  // By name or alias, without regard to case and blanks.
  const Measure* find(std::string_view text) const;
  // By exact name; throws std::out_of_range.
  const Measure& at(std::string_view name) const;
  // Up to three names or aliases that are spelt most like `text`, nearest first.
  std::vector<std::string> nearest(std::string_view text) const;

 private:
  std::vector<Measure> measures_;
  std::map<std::string, std::size_t, std::less<>> index_of_;  // by lower-case name and alias
};

}  // namespace endplate::limb
