#include <fmt/format.h>
#include <cmath>
#include <iostream>
#include <map>
#include <algorithm>
#include "models/calibration/cross_validation.hpp"
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

  const auto support = calibration::support_of(*atlas, obs);
  struct Q { double w=0, sum=0, n=0, var=0; bool printed=false; int k=0; };
  std::map<size_t,Q> qsm;
  for (size_t i=0;i<obs.size();++i){ auto& o=obs[i]; auto& q=qsm[o.measure]; double w=1/std::pow(r->observations[i].sigma_mm,2); q.w+=w; q.sum+=w*o.effect.mean_mm; q.n+=o.effect.n; q.var+=o.effect.n*o.effect.sd_mm*o.effect.sd_mm; q.printed|= o.effect.sd_source!=evidence::SpreadSource::imputed; q.k++; }
  int n[2]={0,0},i1[2]={0,0},i2[2]={0,0}, sat=0; std::vector<double> err;
  std::vector<std::pair<double,std::string>> lines;
  for (auto& [m,q]: qsm){ double e=r->predicted_mm[m]-q.sum/q.w, sd=std::sqrt(q.var/q.n), z=std::abs(e)/sd;
    if (support[m]==calibration::Support::free_point){ ++sat; continue; }
    n[q.printed]++; i1[q.printed]+= z<=1; i2[q.printed]+= z<=2; err.push_back(std::abs(e));
    lines.push_back({z, fmt::format("{:5.2f} {:60s} pooled {:7.1f} mod {:7.1f} sd {:5.1f}{} k {} psd {:.1f}", z, atlas->measures()[m].id, q.sum/q.w, r->predicted_mm[m], sd, q.printed?"":"i", q.k, r->predicted_sd_mm[m])}); }
  std::sort(lines.rbegin(), lines.rend());
  for (auto& [z,l] : lines) if (z>1) std::cout << l << "\n";
  std::sort(err.begin(), err.end());
  int N=n[0]+n[1];
  fmt::print("quantities {} saturated {} tested {} within1 {:.3f} within2 {:.3f}; printed {}: {:.3f} {:.3f}; imputed {}: {:.3f} {:.3f}; median {:.2f}\n", qsm.size(), sat, N, double(i1[0]+i1[1])/N, double(i2[0]+i2[1])/N, n[1], double(i1[1])/n[1], double(i2[1])/n[1], n[0], double(i1[0])/n[0], double(i2[0])/n[0], err[err.size()/2]);
  fmt::print("inflation {}\n", calibration::inflation_of(*r, *atlas, obs));
  auto cv = calibration::leave_one_study_out(*atlas, package->table("landmark_distances"), r->state);
  if (!cv) { std::cerr << cv.error().problems[0].what; return 1; }
  int cov=0; double limbs=0; std::vector<double> e2, em, ep, infl, wid; std::vector<std::pair<double,std::string>> worst;
  for (auto& h: cv->held_out){ cov+=h.mean_covered(); limbs+=h.limbs_covered; double e=std::abs(h.predicted_mm-h.observation.effect.mean_mm); e2.push_back(e); wid.push_back(h.limb_high_mm-h.limb_low_mm); infl.push_back(h.inflation); if(!std::isnan(h.pooled_mm)){em.push_back(e); ep.push_back(std::abs(h.pooled_mm-h.observation.effect.mean_mm));}
   worst.push_back({e,fmt::format("{:5.1f} {:55s} {:15s} obs {:6.1f} pred {:6.1f} [{:.0f},{:.0f}] {}", e, atlas->measures()[h.observation.measure].id, h.observation.effect.study.substr(0,15), h.observation.effect.mean_mm,h.predicted_mm,h.mean_low_mm,h.mean_high_mm,h.mean_covered())}); }
  std::sort(worst.rbegin(),worst.rend()); for(size_t i=0;i<20;++i) std::cout<<worst[i].second<<"\n";
  auto med=[](std::vector<double> v){std::sort(v.begin(),v.end());return v.empty()?0:v[v.size()/2];};
  fmt::print("LOSO n {} studies {} notpred {} cov mean {:.3f} limbs {:.3f} median err {:.2f}; with peers {}: model {:.2f} pooled {:.2f}; inflation {:.2f} width {:.1f}\n", cv->held_out.size(), cv->studies, cv->not_predicted, double(cov)/double(cv->held_out.size()), limbs/double(cv->held_out.size()), med(e2), em.size(), med(em), med(ep), med(infl), med(wid));
}
