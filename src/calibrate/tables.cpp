#include "calibrate/tables.hpp"

#include <fmt/format.h>

namespace endplate::calibrate {
namespace {

// A cell as RFC 4180 wants it.
std::string quoted(const std::string& text) {
  if (text.find_first_of(",\"\n") == std::string::npos) return text;
  std::string out = "\"";
  for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
  return out + '"';
}

}  // namespace

std::string fitted_waypoints(const limb::Atlas& fitted) {
  std::string out =
      "course,order,from_point,segment,fraction,x_mm,z_mm,structure,prior_sd_mm,knot,provenance,"
      "reason\n";
  for (const limb::Course& course : fitted.courses()) {
    const std::size_t first = course.is_branch() ? 1 : 0;
    for (std::size_t i = 0; i < course.waypoints.size(); ++i) {
      const limb::Waypoint& w = course.waypoints[i];
      out += fmt::format(
          "{},{},{},{},{:.5f},{:.2f},{:.2f},{},{:.1f},{:.3f},assumed,"
          "start of course_waypoints.csv moved by the fit\n",
          course.id, i + 1, course.from_point, to_string(w.segment), w.place.fraction, w.place.x_mm,
          w.place.z_mm, quoted(w.structure), w.prior_sd_mm, course.knots[i + first]);
    }
  }
  return out;
}

std::string fitted_points(const limb::Atlas& fitted, const calibration::FitResult& fit) {
  std::string out = "point,course,segment,fraction,after,knot,knot_sd_mm\n";
  const limb::SegmentFrames ledger_limb;
  for (std::size_t c = 0; c < fitted.courses().size(); ++c) {
    const limb::Course& course = fitted.courses()[c];
    const geometry::CubicSpline curve = fitted.curve(c, ledger_limb);
    for (std::size_t p = 0; p < course.points.size(); ++p) {
      const limb::CoursePoint& point = course.points[p];
      const double fraction =
          ledger_limb.from_limb(point.segment, curve.position(point.knot)).fraction;
      out += fmt::format("{},{},{},{:.5f},{},{:.3f},{:.2f}\n", point.id, course.id,
                         to_string(point.segment), fraction, fmt::join(point.after, ";"),
                         point.knot, fit.knot_sd_mm[c][p]);
    }
  }
  return out;
}

std::string fitted_measures(const limb::Atlas& fitted,
                            const std::vector<calibration::Reproduced>& reproduced) {
  std::string out =
      "measure,model_mm,model_sd_mm,support,studies,pooled_mm,pooled_se_mm,limb_sd_mm,limb_sd_"
      "source\n";
  for (const calibration::Reproduced& r : reproduced) {
    out += fmt::format("{},{:.2f},{:.2f},{},{},{:.2f},{:.2f},{:.2f},{}\n",
                       quoted(fitted.measures()[r.measure].id), r.model_mm, r.model_sd_mm,
                       r.support == calibration::Support::tested ? "tested" : "free point",
                       r.studies.size(), r.pooled_mm, r.pooled_se_mm, r.limb_sd_mm,
                       r.sd_printed ? "printed" : "imputed");
  }
  return out;
}

std::string fitted_motion(const limb::MotionParameters& parameters) {
  constexpr const char* kReason =
      "fitted to published excursions and strains; no study measured it";
  std::string out = "parameter,value,unit,provenance,reason\n";
  const auto tether = [&](const char* name, double value_mm) {
    out += fmt::format("{},{:.1f},mm,assumed,{}\n", name, value_mm, kReason);
  };
  tether("tether length of arm and forearm", parameters.tether_mm);
  tether("tether length of the ulnar nerve about the elbow", parameters.cubital_tether_mm);
  tether("tether length of the hand", parameters.hand_tether_mm);
  out += fmt::format(
      "scatter,{:.3f},1,assumed,root mean square of the log of published excursions against the "
      "model fitted without their study\n",
      parameters.scatter);
  return out;
}

std::string fit_summary(const evidence::SpreadModel& spread, double inflation) {
  return fmt::format(
      "name,value,unit,reason\n"
      "inflation,{:.4f},ratio,by how much errors of left-out studies exceed the stated spread\n"
      "between studies at zero,{:.4f},mm,spread between studies of a very short distance\n"
      "between studies slope,{:.5f},mm/mm,its growth with the distance\n"
      "between limbs at zero,{:.4f},mm,spread between limbs of a very short distance\n"
      "between limbs slope,{:.5f},mm/mm,its growth with the distance\n"
      "shared by study,{:.4f},fraction,share of the variance between studies that one study's "
      "distances have in common\n",
      inflation, spread.between_studies().at_zero, spread.between_studies().slope,
      spread.between_limbs().at_zero, spread.between_limbs().slope,
      spread.study_intraclass_correlation());
}

}  // namespace endplate::calibrate
