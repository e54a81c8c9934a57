#include <fmt/format.h>
#include <cmath>
#include <iostream>
#include "models/calibration/fit.hpp"
using namespace endplate;
int main(int, char** argv) {
  auto package = evidence::DataPackage::read(argv[1]);
  if (!package) { for (auto& p : package.error().problems) std::cerr << p.place << ": " << p.what << "\n"; return 1; }
  auto atlas = limb::Atlas::unfitted(*package);
  if (!atlas) { for (auto& p : atlas.error().problems) std::cerr << p.place << ": " << p.what << "\n"; return 1; }
  const auto qs = evidence::quantities(package->table("landmark_distances"));
  const auto spread = evidence::SpreadModel::estimate(qs);
  fmt::print("between studies {} {} scatter {} | between limbs {} {} icc {}\n", spread.between_studies().at_zero, spread.between_studies().slope, spread.between_studies().log_scatter, spread.between_limbs().at_zero, spread.between_limbs().slope, spread.study_intraclass_correlation());
  auto obs = calibration::observations(*atlas, package->table("landmark_distances"), spread);
  fmt::print("{} observations\n", obs.size());
  calibration::FitOptions options{spread.between_studies(), spread.study_intraclass_correlation()};
  auto r = calibration::fit(*atlas, obs, options, calibration::start_of(*atlas));
  if (!r) { for (auto& q: r.error().problems) std::cerr << q.place << ": " << q.what << "\n"; return 1; }
  fmt::print("cost {} iterations {}\n", r->cost, r->iterations);
  std::vector<std::pair<double,std::string>> lines;
  int in1=0,in2=0,n=0;
  std::vector<double> err;
  for (auto& o : obs) {
    double e = r->predicted_mm[o.measure] - o.effect.mean_mm; double z = std::abs(e)/std::max(o.effect.sd_mm,1e-9);
    n++; in1+= z<=1; in2+= z<=2; err.push_back(std::abs(e));
    lines.push_back({z, fmt::format("{:5.2f} {:60s} {:20s} obs {:7.1f} mod {:7.1f} sd {:5.1f}{} n {:.0f} f {:.3f} psd {:.1f}", z, atlas->measures()[o.measure].id, o.effect.study.substr(0,20), o.effect.mean_mm, r->predicted_mm[o.measure], o.effect.sd_mm, o.effect.sd_source!=evidence::SpreadSource::imputed?"":"i", o.effect.n, std::exp(r->state.log_factor[o.effect.study]), r->predicted_sd_mm[o.measure])});
  }
  std::sort(lines.rbegin(), lines.rend());
  for (auto& [z,l] : lines) std::cout << l << "\n";
  std::sort(err.begin(), err.end());
  fmt::print("obs {} within1 {:.3f} within2 {:.3f} median {:.2f}\n", n, double(in1)/n, double(in2)/n, err[err.size()/2]);
}
