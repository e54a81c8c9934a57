#include "models/recovery/patients.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>
#include <set>
#include <utility>

#include "models/evidence/log_odds.hpp"
#include "models/recovery/mean_chance.hpp"

namespace endplate::recovery {
namespace {

using evidence::from_logit;
using evidence::logit;

constexpr double kDaysAMonth = 365.25 / 12.0;

std::string_view treatment(bool operated) {
  return operated ? "operated" : "none";
}

constexpr double kNinety = evidence::kNinetyPerCentInSd;

bool same_nodes(const Path& a, const Path& b) {
  return a.nodes == b.nodes;
}

// Made once for equal parameters.
std::shared_ptr<const CurveTable> in_time_table(const Parameter& window) {
  constexpr std::size_t kMostKept = 32;
  static std::mutex mutex;
  static std::map<std::pair<double, double>, std::shared_ptr<const CurveTable>> kept;
  const std::pair key{window.mean, window.sd};
  const std::scoped_lock lock(mutex);
  if (const auto found = kept.find(key); found != kept.end()) return found->second;
  if (kept.size() >= kMostKept) kept.clear();
  const LogLogistic curve = log_logistic_from(window.mean, window.sd);
  auto table =
      std::make_shared<const CurveTable>([curve](double days) { return curve.survival(days); });
  return kept.emplace(key, std::move(table)).first->second;
}

}  // namespace

std::vector<Patient> sample_patients(const ForecastQuestion& question, const Draws& draws) {
  const PatientColumns columns = sample_columns(question, draws);
  std::vector<Patient> patients(columns.size());
  for (std::size_t i = 0; i < patients.size(); ++i) {
    Patient& patient = patients[i];
    patient.rate_z = columns.rate_z[i];
    patient.block_first_days = columns.block_first_days[i];
    patient.block_useful_days = columns.block_useful_days[i];
    for (const PatientColumns::Lesion& lesion : columns.lesions) {
      patient.lesions.push_back({lesion.component[i], lesion.from_start_mm[i], lesion.ready_days[i],
                                 lesion.crossing_days[i]});
    }
  }
  return patients;
}

double due_days(Finding::Kind kind, const Course& course) {
  switch (kind) {
    case Finding::Kind::units:
      return course.units;
    case Finding::Kind::sensation:
      return course.useful;
    case Finding::Kind::movement:
      break;
  }
  return course.movement;
}

const Parameter& TargetModel::use(const Parameter& parameter) {
  used_.push_back(parameter.id);
  return parameter;
}

TargetModel::TargetModel(const ForecastQuestion& question, const TargetBelow& below)
    : question_(&question), below_(&below) {
  const Parameters& p = *question.parameters;
  const Target& target = below.target;
  const bool motor = target.kind == TargetKind::motor;
  const std::string kind = motor ? "motor" : "sensory";

  std::set<anatomy::NodeIndex> injured;
  for (const LesionModel& model : question.lesions) injured.insert(model.lesion.at.nerve);
  double delay_months = 0.0;
  double graft_mm = 0.0;
  std::string_view donor;
  bool third = false;
  bool grows_without_repair = false;
  for (const Path& path : target.paths) {
    if (!path.usual) continue;
    const auto first = std::ranges::find_if(
        path.nodes, [&](anatomy::NodeIndex node) { return injured.contains(node); });
    if (first == path.nodes.end()) continue;
    Path way{{first, path.nodes.end()}, true};
    for (const LesionModel& model : question.lesions) {
      if (std::ranges::find(way.nodes, model.lesion.at.nerve) == way.nodes.end()) continue;
      if (model.repaired) {
        operated_ = true;
        if (!model.donor.empty()) donor = model.donor;
        delay_months = std::max(delay_months, model.operation_days / kDaysAMonth);
        if (model.coaptations > 1) graft_mm = std::max(graft_mm, model.gap_mm);
      } else {
        grows_without_repair = grows_without_repair || model.chance[1] > 0.0;
      }
      third = third || (model.partial_growth && !model.repaired);
    }
    if (std::ranges::none_of(ways_, [&](const Path& known) { return same_nodes(known, way); })) {
      ways_.push_back(std::move(way));
    }
  }

  rate_none_ = &p.find("rate", target.nerve, "none");
  rate_operated_ = &p.find("rate", target.nerve, "operated");
  if (operated_) {
    use(*rate_operated_);
    use(p.find("coaptation delay", "any", "operated"));
  }
  if (grows_without_repair) {
    use(*rate_none_);
    use(p.find("latency", "any", "none"));
  }
  slowing_ = {use(p.find("rate reference distance", "any", "any")).mean,
              use(p.find("slowing length", "any", "any")).mean};
  if (motor) {
    units_delay_ = QuantileTable::of(use(p.find("units delay", "any", "any")));
    movement_delay_ = QuantileTable::of(
        use(p.find("movement delay", donor.empty() ? "any" : "transfer", treatment(operated_))));
    in_time_ = in_time_table(use(p.find("motor window", "motor", "any")));
  }
  slowing_curve_ = SlowingCurve(slowing_);
  useful_delay_ = QuantileTable::of(use(p.find("useful delay", kind, treatment(operated_))));

  const std::string who = third && !operated_ ? kind + ", Sunderland 3" : kind;
  useful_ = use(p.find("useful in time", who, treatment(operated_))).mean;
  if (!operated_) return;
  double log_odds = logit(useful_);
  const auto adjust = [&](std::string_view quantity, std::string_view applies_to, double power) {
    const Parameter* odds = p.find_if_any(quantity, applies_to, "operated");
    if (odds != nullptr) log_odds += power * std::log(use(*odds).mean);
  };
  if (question.age_years && *question.age_years < 16.0) adjust("age odds under 16", kind, 1.0);
  if (question.age_years && *question.age_years > 40.0) adjust("age odds over 40", kind, 1.0);
  if (motor) adjust("nerve odds", target.nerve, 1.0);
  if (motor && !donor.empty()) adjust("transfer odds", donor, 1.0);
  adjust("delay odds a month", kind, delay_months);
  if (graft_mm > 0.0) adjust("graft odds 10 mm", kind, graft_mm / 10.0);
  useful_ = from_logit(log_odds);
  if (const Parameter* spread = p.find_if_any("useful spread", kind, "operated")) {
    useful_ = mean_chance(log_odds, use(*spread).mean);
    useful_range_ = {from_logit(log_odds - kNinety * spread->mean),
                     from_logit(log_odds + kNinety * spread->mean)};
  }
}

std::uint32_t TargetModel::stream() const {
  return static_cast<std::uint32_t>(Streams::kTargets + 2 * below_->target.branch +
                                    (motor() ? 0 : 1));
}

Course TargetModel::course(const Patient& patient, std::uint32_t sample,
                           const anatomy::NerveMetrics& limb, const Draws& draws) const {
  std::vector<anatomy::NervePosition> places;
  places.reserve(patient.lesions.size());
  for (std::size_t k = 0; k < patient.lesions.size(); ++k) {
    places.push_back({question_->lesions[k].lesion.at.nerve, patient.lesions[k].from_start_mm});
  }
  const auto lesion = [&](std::size_t k) { return patient.lesions[k]; };
  Course best;
  for (const Path& way : ways_) {
    const auto cuts = cuts_on(way, places, *question_->tree, limb);
    const Course course = along(cuts, patient.rate_z, lesion);
    if (better(course.state, course.arrive, best.state, best.arrive)) best = course;
  }

  if (best.state == Course::State::block) {
    best.units = patient.block_first_days;
    best.movement = patient.block_first_days;
    best.useful = patient.block_useful_days;
  }
  if (best.state != Course::State::growth) return best;
  if (motor()) {
    const auto words = draws.words(sample, stream());
    best.units = best.arrive + units_delay_->at(words[0]);
    best.movement = best.units + movement_delay_->at(words[1]);
    best.useful = best.movement + useful_delay_->at(words[2]);
  } else {
    best.useful = best.arrive + useful_delay_->at(draws.word(sample, stream()));
  }
  return best;
}

double TargetModel::advance_mm(const Course& course, double days) const {
  const double growing = days - (course.arrive - course.transit);
  if (growing <= 0.0) return 0.0;
  return std::min(course.distance_mm, slowing_.advance_mm(growing, course.rate));
}

double TargetModel::in_time(double arrive_days) const {
  return motor() ? double{in_time_->at(static_cast<float>(arrive_days))} : 1.0;
}

}  // namespace endplate::recovery
