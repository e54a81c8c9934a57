#include "models/recovery/patients.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace endplate::recovery {
namespace {

constexpr double kDaysAMonth = 365.25 / 12.0;

std::string_view treatment(bool operated) {
  return operated ? "operated" : "none";
}

double with_odds(double chance, double factor) {
  const double odds = chance / (1.0 - chance) * factor;
  return odds / (1.0 + odds);
}

// `grade`: uniform between 0 and 1.
Component component_of(const LesionModel& model, double grade) {
  if (model.lesion.preganglionic) return Component::none;
  if (model.repaired) {
    return grade > 1.0 - model.chance_repair_fails ? Component::none : Component::growth;
  }
  if (grade <= model.chance[0]) return Component::block;
  return grade <= model.chance[0] + model.chance[1] ? Component::growth : Component::none;
}

double place_mm(const LesionModel& model, std::size_t patient) {
  return model.places_mm.empty() ? model.lesion.at.from_start_mm
                                 : model.places_mm[patient % model.places_mm.size()];
}

bool same_nodes(const Path& a, const Path& b) {
  return a.nodes == b.nodes;
}

}  // namespace

std::vector<Patient> sample_patients(const ForecastQuestion& question, const Draws& draws) {
  const Parameters& p = *question.parameters;
  const Parameter& latency = p.find("latency", "any", "none");
  const Parameter& coaptation = p.find("coaptation delay", "any", "operated");
  const Parameter& block_first = p.find("block first sign", "any", "any");
  const Parameter& block_delay = p.find("block useful delay", "any", "any");

  std::vector<Patient> patients(question.samples);
  for (std::uint32_t i = 0; i < patients.size(); ++i) {
    Patient& patient = patients[i];
    const std::uint32_t from = question.drawn_as.empty() ? i : question.drawn_as[i];
    patient.rate_z = draws.normals(from, Streams::kRate)[0];
    const auto block = draws.normals(from, Streams::kBlock);
    patient.block_first_days = block_first.at(block[0]);
    patient.block_useful_days = patient.block_first_days + block_delay.at(block[1]);
    for (std::uint32_t k = 0; k < question.lesions.size(); ++k) {
      const LesionModel& model = question.lesions[k];
      PatientLesion lesion;
      // Lesions of one limb share the number: one event tore them all, more or less.
      const double grade = draws.uniform(from, Streams::kLesionGrade);
      lesion.component = component_of(model, grade);
      const auto delay = draws.normals(from, Streams::kLesionDelay + k);
      if (model.repaired) {
        lesion.crossing_days = coaptation.at(delay[0]);
        if (model.coaptations > 1) lesion.crossing_days += coaptation.at(delay[1]);
        lesion.ready_days = model.operation_days + lesion.crossing_days;
      } else {
        lesion.crossing_days = latency.at(delay[0]);
        lesion.ready_days = lesion.crossing_days;
      }
      const double shift = model.lesion.sd_mm * draws.normals(i, Streams::kLesionPlace + k)[0];
      lesion.from_start_mm = std::clamp(place_mm(model, i) + shift, 0.0,
                                        question.limb(i).length_mm[model.lesion.at.nerve]);
      patient.lesions.push_back(lesion);
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
        delay_months = std::max(delay_months, model.operation_days / kDaysAMonth);
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
    units_ = &use(p.find("units delay", "any", "any"));
    movement_ = &use(p.find("movement delay", "any", "any"));
    const Parameter& window = use(p.find("motor window", "motor", "any"));
    window_ = log_logistic_from(window.mean, window.sd);
  }
  useful_delay_ = &use(p.find("useful delay", kind, treatment(operated_)));

  const std::string who = third && !operated_ ? kind + ", Sunderland 3" : kind;
  useful_ = use(p.find("useful in time", who, treatment(operated_))).mean;
  if (!operated_) return;
  const auto adjust = [&](std::string_view quantity, std::string_view applies_to, double power) {
    const Parameter* odds = p.find_if_any(quantity, applies_to, "operated");
    if (odds == nullptr) return;
    useful_ = with_odds(useful_, std::pow(use(*odds).mean, power));
  };
  if (question.age_years && *question.age_years < 16.0) adjust("age odds under 16", kind, 1.0);
  if (question.age_years && *question.age_years > 40.0) adjust("age odds over 40", kind, 1.0);
  if (motor) adjust("nerve odds", target.nerve, 1.0);
  adjust("delay odds a month", kind, delay_months);
}

Course TargetModel::course(const Patient& patient, std::uint32_t sample,
                           const anatomy::NerveMetrics& limb, const Draws& draws) const {
  std::vector<anatomy::NervePosition> places;
  places.reserve(patient.lesions.size());
  for (std::size_t k = 0; k < patient.lesions.size(); ++k) {
    places.push_back({question_->lesions[k].lesion.at.nerve, patient.lesions[k].from_start_mm});
  }

  Course best;
  for (const Path& way : ways_) {
    const auto cuts = cuts_on(way, places, *question_->tree, limb);
    if (cuts.empty()) continue;
    Course course;
    course.state = Course::State::block;
    course.distance_mm = cuts.front().to_target_mm;
    bool leaving = true;  // the axons have not yet set out
    for (const Cut& cut : cuts) {
      const PatientLesion& lesion = patient.lesions[cut.lesion];
      const LesionModel& model = question_->lesions[cut.lesion];
      if (lesion.component == Component::none) {
        course.state = Course::State::none;
        break;
      }
      if (lesion.component == Component::block) continue;
      if (leaving) {
        const Parameter& rate = model.repaired ? *rate_operated_ : *rate_none_;
        course.state = Course::State::growth;
        course.distance_mm = cut.to_target_mm + (model.repaired ? 0.5 * model.gap_mm : 0.0);
        course.rate = rate.at(patient.rate_z);
        course.transit = slowing_.transit_days(course.distance_mm, course.rate);
        course.arrive = lesion.ready_days + course.transit;
        leaving = false;
      } else {
        const double here =
            course.arrive - course.transit +
            slowing_.transit_days(course.distance_mm - cut.to_target_mm, course.rate);
        const double wait = model.repaired ? std::max(0.0, model.operation_days - here) : 0.0;
        course.arrive += wait + lesion.crossing_days;
      }
    }
    const bool better =
        course.state > best.state || (course.state == best.state && course.arrive < best.arrive);
    if (better) best = course;
  }

  if (best.state == Course::State::block) {
    best.units = patient.block_first_days;
    best.movement = patient.block_first_days;
    best.useful = patient.block_useful_days;
  }
  if (best.state != Course::State::growth) return best;
  const Target& target = below_->target;
  const auto stream = static_cast<std::uint32_t>(Streams::kTargets + 2 * target.branch +
                                                 (target.kind == TargetKind::motor ? 0 : 1));
  if (target.kind == TargetKind::motor) {
    const auto first = draws.normals(sample, stream, 0);
    const auto second = draws.normals(sample, stream, 1);
    best.units = best.arrive + units_->at(first[0]);
    best.movement = best.units + movement_->at(first[1]);
    best.useful = best.movement + useful_delay_->at(second[0]);
  } else {
    best.useful = best.arrive + useful_delay_->at(draws.normals(sample, stream, 0)[0]);
  }
  return best;
}

double TargetModel::advance_mm(const Course& course, double days) const {
  const double growing = days - (course.arrive - course.transit);
  if (growing <= 0.0) return 0.0;
  return std::min(course.distance_mm, slowing_.advance_mm(growing, course.rate));
}

double TargetModel::in_time(double arrive_days) const {
  return below_->target.kind == TargetKind::motor ? window_.survival(arrive_days) : 1.0;
}

}  // namespace endplate::recovery
