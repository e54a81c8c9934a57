#include "models/followup/tinel_series.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "models/casefile/words.hpp"
#include "models/recovery/decision.hpp"

namespace endplate::followup {
namespace {

using anatomy::NerveMetrics;
using anatomy::NodeIndex;
using recovery::ForecastQuestion;

constexpr double kStandardErrors = 3.0;  // further off than this is a slip and not an error
// Limbs from which the spread of ways between limbs is taken.
constexpr int kLimbs = 200;

struct Tapped {
  std::string pointer;
  casefile::Date date{};
  const casefile::TinelFinding* finding = nullptr;
  anatomy::Lesion at;
};

// From the lesion that cuts the way to the tapped point; nothing where none does.
struct Way {
  std::size_t lesion = 0;
  double advance_mm = 0.0;
};

std::vector<anatomy::NervePosition> lesion_places(const ForecastQuestion& question,
                                                  std::optional<std::size_t> limb) {
  std::vector<anatomy::NervePosition> places;
  for (const recovery::LesionModel& model : question.lesions) {
    places.push_back(model.lesion.at);
    if (limb && !model.places_mm.empty()) {
      places.back().from_start_mm = model.places_mm[*limb % model.places_mm.size()];
    }
  }
  return places;
}

std::optional<Way> way_to(const recovery::Path& path, anatomy::NervePosition point,
                          const std::vector<anatomy::NervePosition>& lesions,
                          const ForecastQuestion& question, const NerveMetrics& metrics) {
  const auto end = std::ranges::find(path.nodes, point.nerve);
  if (end == path.nodes.end()) return std::nullopt;
  const recovery::Path to_point{{path.nodes.begin(), end + 1}, path.usual};
  const auto cuts = recovery::cuts_on(to_point, lesions, *question.tree, metrics);
  if (cuts.empty()) return std::nullopt;
  const double beyond = metrics.length_mm[point.nerve] - point.from_start_mm;
  return Way{cuts.front().lesion, cuts.front().to_target_mm - beyond};
}

class Reader {
 public:
  Reader(const casefile::Case& patient, casefile::Date day_zero, const ForecastQuestion& question,
         const limb::CaseLimb& limb, const FollowupParameters& parameters)
      : patient_(patient),
        day_zero_(day_zero),
        question_(question),
        limb_(limb),
        parameters_(parameters) {}

  Expected<TinelReading> read() {
    if (patient_.examination) collect(*patient_.examination, "/examination");
    for (std::size_t k = 0; k < patient_.observations.size(); ++k) {
      collect(patient_.observations[k], fmt::format("/observations/{}", k));
    }
    std::ranges::stable_sort(tapped_, {}, [](const Tapped& t) { return sys_days(t.date); });
    for (const Tapped& tapped : tapped_) add(tapped);
    if (!problems_.empty()) return std::unexpected(Error{Fault::input, std::move(problems_)});
    for (auto& [lesion, series] : series_) {
      if (const auto done = spread(series, used_.at(lesion)); !done) {
        return std::unexpected(done.error());
      }
      check_order(series);
      result_.series.push_back(std::move(series));
    }
    return std::move(result_);
  }

 private:
  static std::chrono::sys_days sys_days(casefile::Date date) { return date; }

  void collect(const casefile::Examination& examination, const std::string& pointer) {
    for (std::size_t k = 0; k < examination.tinel.size(); ++k) {
      const casefile::TinelFinding& finding = examination.tinel[k];
      const std::string here = fmt::format("{}/tinel/{}", pointer, k);
      auto at = limb_.place(finding.nerve, finding.at);
      if (!at) {
        for (const Problem& problem : at.error().problems) {
          problems_.push_back({here + "/" + problem.place, problem.what, problem.mend});
        }
      } else if (!examination.date) {
        result_.remarks.push_back(
            fmt::format("{}: the Tinel point has no date and was not used", here));
      } else {
        tapped_.push_back({here, *examination.date, &finding, std::move(*at)});
      }
    }
  }

  // The farthest skin area whose way passes the point, with that way.
  struct Found {
    std::size_t target = 0;
    const recovery::Path* path = nullptr;
    double whole_mm = -1.0;
  };
  Found farthest_area(NodeIndex nerve) const {
    const auto lesions = lesion_places(question_, std::nullopt);
    Found best;
    for (std::size_t t = 0; t < question_.targets.size(); ++t) {
      const recovery::Target& target = question_.targets[t].target;
      if (target.kind != recovery::TargetKind::sensory) continue;
      for (const recovery::Path& path : target.paths) {
        if (!path.usual || std::ranges::find(path.nodes, nerve) == path.nodes.end()) continue;
        const auto cuts = recovery::cuts_on(path, lesions, *question_.tree, limb_.metrics());
        if (cuts.empty() || cuts.front().to_target_mm <= best.whole_mm) continue;
        best = {t, &path, cuts.front().to_target_mm};
      }
    }
    return best;
  }

  void add(const Tapped& tapped) {
    const Found area = farthest_area(tapped.at.at.nerve);
    if (area.path == nullptr) {
      result_.remarks.push_back(
          fmt::format("{}: no skin fibres that the lesion cut run in the {}, so tapping it says "
                      "nothing of this lesion; the point was not used",
                      tapped.pointer, tapped.finding->nerve));
      return;
    }
    const auto lesions = lesion_places(question_, std::nullopt);
    const auto way = way_to(*area.path, tapped.at.at, lesions, question_, limb_.metrics());
    const double error = parameters_.tinel_error_mm;
    const double allowed =
        way ? kStandardErrors * std::hypot(error, parameters_.tinel_place_error_mm,
                                           question_.lesions[way->lesion].lesion.sd_mm) +
                  0.5 * question_.lesions[way->lesion].gap_mm
            : 0.0;
    if (!way || way->advance_mm < -allowed) {
      problems_.push_back(
          {tapped.pointer + "/at",
           way ? fmt::format("the point lies {:.0f} mm proximal to the lesion", -way->advance_mm)
               : "the point lies proximal to the lesion",
           "Axons grow away from the body: correct the point, or the place of the injury if the "
           "nerve tingles above it."});
      return;
    }
    const recovery::LesionModel& model = question_.lesions[way->lesion];
    const double days = recovery::days_between(day_zero_, tapped.date);
    if (model.repaired && days < model.operation_days) {
      result_.remarks.push_back(
          fmt::format("{}: found before the nerve was repaired, from when growth starts anew; the "
                      "point was not used",
                      tapped.pointer));
      return;
    }
    TinelSeries& series = series_[way->lesion];
    auto& used = used_[way->lesion];
    series.lesion = way->lesion;
    TinelPoint point{tapped.date,     days, tapped.finding->nerve, tapped.at.words,
                     way->advance_mm, error};
    if (!series.points.empty() && series.points.back().date == tapped.date) {
      result_.remarks.push_back(
          fmt::format("{}: the farthest of several Tinel points of one day is taken as the front",
                      tapped.pointer));
      if (series.points.back().advance_mm >= way->advance_mm) return;
      series.points.back() = std::move(point);
      used.back() = {&tapped, area.path};
    } else {
      series.points.push_back(std::move(point));
      used.push_back({&tapped, area.path});
    }
    if (area.whole_mm > longest_[way->lesion]) {
      longest_[way->lesion] = area.whole_mm;
      series.target = area.target;
    }
  }

  using Used = std::vector<std::pair<const Tapped*, const recovery::Path*>>;

  // Covariance of the ways: the observer's error, where the axons set out, and how the ways differ
  // between limbs of this size. Points by one landmark share most of the last.
  std::expected<void, Error> spread(TinelSeries& series, const Used& used) const {
    const auto n = static_cast<Eigen::Index>(series.points.size());
    const int limbs = std::min(kLimbs, static_cast<int>(question_.limbs->size()));
    Eigen::MatrixXd ways(limbs, n);
    for (Eigen::Index k = 0; k < n; ++k) {
      const auto& [tapped, path] = used[static_cast<std::size_t>(k)];
      const auto places = limb_.sample_places_mm(tapped->finding->nerve, tapped->finding->at, limbs,
                                                 question_.seed);
      if (!places) return std::unexpected(places.error());
      for (int i = 0; i < limbs; ++i) {
        const auto limb = static_cast<std::size_t>(i);
        const auto way =
            way_to(*path, {tapped->at.at.nerve, (*places)[limb]}, lesion_places(question_, limb),
                   question_, (*question_.limbs)[limb]);
        ways(i, k) = way ? way->advance_mm : series.points[static_cast<std::size_t>(k)].advance_mm;
      }
    }
    const Eigen::MatrixXd centred = ways.rowwise() - ways.colwise().mean();
    const double shared =
        std::hypot(parameters_.tinel_place_error_mm, question_.lesions[series.lesion].lesion.sd_mm);
    series.covariance = centred.transpose() * centred / std::max(1, limbs - 1);
    series.covariance.array() += shared * shared;
    for (Eigen::Index k = 0; k < n; ++k) {
      const double error = series.points[static_cast<std::size_t>(k)].error_mm;
      series.covariance(k, k) += error * error;
    }
    return {};
  }

  void check_order(TinelSeries& series) {
    for (std::size_t k = 1; k < series.points.size(); ++k) {
      const TinelPoint& before = series.points[k - 1];
      const TinelPoint& point = series.points[k];
      const double allowed = kStandardErrors * std::hypot(before.error_mm, point.error_mm);
      if (point.advance_mm >= before.advance_mm - allowed) continue;
      series.went_back = true;
      result_.remarks.push_back(
          fmt::format("the Tinel point of {} lies {:.0f} mm proximal to that of {}: a front does "
                      "not go back, so one of the two is wrong; the series was not used",
                      casefile::to_string(point.date), before.advance_mm - point.advance_mm,
                      casefile::to_string(before.date)));
    }
  }

  const casefile::Case& patient_;
  const casefile::Date day_zero_;
  const ForecastQuestion& question_;
  const limb::CaseLimb& limb_;
  const FollowupParameters& parameters_;
  TinelReading result_;
  std::vector<Problem> problems_;
  std::vector<Tapped> tapped_;
  std::map<std::size_t, TinelSeries> series_;  // by lesion
  std::map<std::size_t, Used> used_;
  std::map<std::size_t, double> longest_;
};

}  // namespace

TinelEvidence TinelSeries::evidence() const {
  TinelEvidence evidence;
  for (const TinelPoint& point : points) {
    evidence.days.push_back(point.days);
    evidence.advance_mm.push_back(point.advance_mm);
  }
  evidence.covariance = covariance;
  return evidence;
}

Expected<TinelReading> read_tinel(const casefile::Case& patient, casefile::Date day_zero,
                                  const ForecastQuestion& question, const limb::CaseLimb& limb,
                                  const FollowupParameters& parameters) {
  return Reader(patient, day_zero, question, limb, parameters).read();
}

}  // namespace endplate::followup
