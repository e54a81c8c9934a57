#pragma once
// How big limbs are before anything of this one was measured: the joint distribution of stature and
// the modelled measures, by sex and age.
//
// Adults: US Army 2010-2012 (Gordon et al., NATICK/TR-15/007, 2014), 17 to 58 years. A measure is
// normal about its regression on stature; what stature leaves over is correlated as in
// limb_size_correlations.csv. Children: means by age from Snyder et al. (UM-HSRI-77-17, 1977) and
// Fryar et al. (Vital Health Stat 3(50), 2025), 1 month to 17 years, linear between the ages and up
// to the adult of 18; body length at birth and the spread of stature from the growth curves of the
// World Health Organization (2006, 2007); adult correlations (assumed), other spreads in proportion
// to the child's spread of forearm-hand length. Lengths in mm.
#include <array>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/gaussian.hpp"

namespace endplate::limb {

class SizePrior {
 public:
  static constexpr double kAdult_years = 18.0;
  static constexpr double kOldestSurveyed_years = 58.0;

  // A pair of measures without its correlation, or correlations that no population can have, is an
  // error of the data files.
  static Expected<SizePrior> from(const evidence::DataPackage& package);

  // In the order of the variables; "stature" is the first.
  const std::vector<std::string>& measures() const { return measures_; }
  Eigen::Index index_of(std::string_view measure) const;

  const Gaussian& adult(casefile::Sex sex) const { return adults_[position(sex)]; }
  // `age_years` >= 0 and below kAdult_years, where it meets the adult without a step. Younger than
  // its first row a measure shrinks with the length of the body.
  Gaussian child(casefile::Sex sex, double age_years) const;
  // The first age at which lengths of the limb were measured.
  double youngest_years() const { return youngest_years_; }
  // Whether the spread of a measure between people of one sex and age was published; else it is
  // assumed from other measures.
  bool spread_is_published(Eigen::Index measure, bool child) const;
  // Adults as they are spread, moved in proportion so that the mean of both sexes is the ledger
  // limb; measures that the ledger limb does not state stay.
  Gaussian ledger(casefile::Sex sex) const;

  // Weights that turn the measures into the breadth of a limb against the ledger limb: the mean of
  // elbow, wrist and hand breadth, each against the mean of both sexes (assumed: the dissection
  // series hold both).
  const Eigen::VectorXd& breadth_weights() const { return breadth_weights_; }

  // Ids of anthropometry.csv behind a prior.
  std::vector<std::string> sources(casefile::Sex sex, bool child) const;
  // Of the adult spread of one measure.
  const std::vector<std::string>& adult_sources(casefile::Sex sex, Eigen::Index measure) const {
    return measure_sources_[position(sex)].at(measure);
  }

 private:
  struct GrowthPoint {
    double age_years = 0.0;
    double mean_mm = 0.0;
    double sd_mm = 0.0;  // 0 where the source gives none
  };
  struct Follows {
    Eigen::Index from = -1;
    Eigen::Index less = -1;
  };

  static std::size_t position(casefile::Sex sex) { return sex == casefile::Sex::male ? 0 : 1; }
  using Growth = std::map<Eigen::Index, std::vector<GrowthPoint>>;
  // The rows of a table of growth below kAdult_years, in order of age.
  Growth read_ages(const evidence::DataPackage& package, std::string_view table, casefile::Sex sex);
  void read_growth(const evidence::DataPackage& package);
  Expected<void> read_adults(const evidence::DataPackage& package);
  void set_breadth_weights();
  double child_mean_mm(casefile::Sex sex, Eigen::Index measure, double age_years) const;

  std::vector<std::string> measures_;
  std::vector<Follows> follows_;
  std::vector<double> ledger_mm_;  // 0 where the ledger limb states none
  std::array<Gaussian, 2> adults_;
  std::array<Growth, 2> growth_;
  std::array<Growth, 2> spreads_;  // points with a spread, which may be of other people
  std::array<std::map<Eigen::Index, std::vector<std::string>>, 2> measure_sources_;
  std::vector<bool> spread_is_assumed_;  // of adults
  std::array<std::set<std::string>, 2> adult_sources_;
  std::array<std::set<std::string>, 2> child_sources_;
  Eigen::VectorXd breadth_weights_;
  double youngest_years_ = 0.0;
};

}  // namespace endplate::limb
