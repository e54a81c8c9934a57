// Fits the limb to the published distances and the chances of recovery to the published counts, and
// writes the fitted tables and the pages that show it.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <optional>
#include <sstream>
#include <string_view>

#include "calibrate/approach_page.hpp"
#include "calibrate/motion_page.hpp"
#include "calibrate/pages.hpp"
#include "calibrate/recovery_page.hpp"
#include "calibrate/tables.hpp"
#include "output/errors.hpp"
#include "paths.hpp"

namespace {

using namespace endplate;

// Another processor's arithmetic moves the last digits.
constexpr double kNoise_mm = 0.05;
constexpr double kChanceNoise = 0.002;

// Whether two tables say the same: equal text, numbers equal but for noise; of numbers above 100
// (days) that share of them.
bool same_table(std::string_view one, std::string_view other, double noise) {
  const auto number = [](std::string_view& text) -> std::optional<double> {
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc()) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return value;
  };
  while (!one.empty() && !other.empty()) {
    const auto a = number(one);
    const auto b = number(other);
    if (a.has_value() != b.has_value()) return false;
    if (a && std::abs(*a - *b) > noise * (noise == kChanceNoise && *a > 100.0 ? *a : 1.0))
      return false;
    if (a) continue;
    if (one.front() != other.front()) return false;
    one.remove_prefix(1);
    other.remove_prefix(1);
  }
  return one.empty() && other.empty();
}

// Writes the table, or with `check` compares it with what stands there. False when they differ.
bool deliver(const std::filesystem::path& path, const std::string& text, bool check,
             double noise = kNoise_mm) {
  if (!check) {
    std::ofstream(path, std::ios::binary) << text;
    return true;
  }
  std::ifstream in(path, std::ios::binary);
  std::ostringstream present;
  present << in.rdbuf();
  if (same_table(present.str(), text, noise)) return true;
  std::cerr << fmt::format("error: {}: differs from a fresh fit. Run endplate-calibrate.\n",
                           path.string());
  return false;
}

// The claim of docs/limb-fit.md: 90 % intervals cover between 85 and 95 % of what the fit never
// saw.
bool covers(const calibration::CrossValidation& validation) {
  const auto n = static_cast<double>(validation.held_out.size());
  double means = 0.0;
  double limbs = 0.0;
  for (const calibration::HeldOut& h : validation.held_out) {
    means += h.mean_covered() ? 1.0 : 0.0;
    limbs += h.limbs_covered;
  }
  std::cout << fmt::format("{} left-out means: {:.1f} % covered, {:.1f} % of limbs\n", n,
                           100.0 * means / n, 100.0 * limbs / n);
  const auto honest = [&](double covered) { return covered >= 0.85 * n && covered <= 0.95 * n; };
  return n >= 100.0 && honest(means) && honest(limbs);
}

// The beds run along the fitted courses.
Expected<calibration::MotionFit> fit_motion(const evidence::DataPackage& package,
                                            const limb::Atlas& fitted) {
  const auto joints = limb::LimbJoints::from(package);
  if (!joints) return std::unexpected(joints.error());
  const auto envelope = limb::BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(envelope.error());
  const auto plans = limb::bed_plans(package, fitted);
  if (!plans) return std::unexpected(plans.error());
  const auto measures = limb::motion_measures(package);
  if (!measures) return std::unexpected(measures.error());
  const auto parameters = limb::MotionParameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const limb::MotionModel model(fitted, *joints, *envelope, *plans, limb::SegmentFrames());
  return calibration::fit_motion(model, *measures, *parameters);
}

// Fits the chances of recovery and writes their table and page. False when a shipped table differs
// or the claim of the page does not hold.
Expected<bool> run_recovery(const evidence::DataPackage& package,
                            const std::filesystem::path& datasets,
                            const std::filesystem::path& docs, bool check) {
  const auto parameters = recovery::Parameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto series = calibration::recovery_series(package, *parameters);
  if (!series) return std::unexpected(series.error());
  const auto fit = calibration::fit_recovery(series->rows);
  if (!fit) return std::unexpected(fit.error());
  const bool same = deliver(datasets / "recovery_fitted.csv",
                            calibrate::fitted_chances(*fit, series->rows), check, kChanceNoise);
  if (!check)
    deliver(docs / "recovery-fractions.md", calibrate::recovery_page(*fit, *series), false);
  const calibrate::RecoveryShares shares = calibrate::recovery_shares(*fit);
  std::cout << fmt::format(
      "{} published fractions, each predicted without its study: {} in their own 95 % interval, "
      "{} counts in the predicted one\n",
      shares.rows, shares.inside, shares.covered);
  // The claim of docs/recovery.md: about seven in ten, and 95 % intervals that cover 90 to 99 %.
  return same && 3 * shares.inside >= 2 * shares.rows && 10 * shares.covered >= 9 * shares.rows &&
         100 * shares.covered <= 99 * shares.rows;
}

// The published distances at incisions, each by the fit without its study. Writes their table and
// page; with `check` false when the table differs.
Expected<bool> run_approaches(const evidence::DataPackage& package, const limb::Atlas& unfitted,
                              const calibration::FitState& start,
                              const std::filesystem::path& datasets,
                              const std::filesystem::path& docs, bool check) {
  const auto shipped = limb::Atlas::fitted(package);
  if (!shipped) return std::unexpected(shipped.error());
  const auto measures = incision::approach_measures(package, *shipped);
  if (!measures) return std::unexpected(measures.error());
  const auto rules = incision::approach_rules(package);
  if (!rules) return std::unexpected(rules.error());
  auto predictions = calibration::predict_with_shipped_fit(package, *measures);
  if (!predictions) return std::unexpected(predictions.error());
  if (const auto error =
          calibration::predict_without_studies(package, unfitted, start, *measures, *predictions)) {
    return std::unexpected(*error);
  }
  const bool same = deliver(datasets / "approach_predicted.csv",
                            calibrate::approach_table(*measures, *predictions), check);
  if (!check) {
    deliver(docs / "incision-rows.md",
            calibrate::approach_page(package, *measures, *predictions, *rules), false);
  }
  const auto shares = calibration::approach_shares(*measures, *predictions, false);
  std::cout << fmt::format(
      "{} distances at incisions predicted without their study: {} of {} within, {} of {} "
      "covered\n",
      shares.predicted, shares.within, shares.scored, shares.covered, shares.with_mean);
  return same;
}

// Its page alone, from the shipped table and fit.
std::optional<Error> write_approach_page(const evidence::DataPackage& package,
                                         const std::filesystem::path& docs) {
  const auto shipped = limb::Atlas::fitted(package);
  if (!shipped) return shipped.error();
  const auto measures = incision::approach_measures(package, *shipped);
  if (!measures) return measures.error();
  const auto rules = incision::approach_rules(package);
  if (!rules) return rules.error();
  auto predictions = calibration::predict_with_shipped_fit(package, *measures);
  if (!predictions) return predictions.error();
  const auto of_table = calibration::shipped_predictions(package, *measures);
  for (std::size_t i = 0; i < measures->size(); ++i) {
    if (!(*measures)[i].fit_study.empty()) (*predictions)[i].without = of_table[i].without;
  }
  deliver(docs / "incision-rows.md",
          calibrate::approach_page(package, *measures, *predictions, *rules), false);
  return std::nullopt;
}

int run(const std::filesystem::path& datasets, const std::filesystem::path& docs, bool validate,
        bool approaches, bool approach_page_only, bool check, bool recovery_only) {
  const auto fail = [](const Error& error) {
    cli::print_error(error, std::cerr);
    return 1;
  };
  const auto package = evidence::DataPackage::read(datasets);
  if (!package) return fail(package.error());
  if (approach_page_only) {
    const auto error = write_approach_page(*package, docs);
    return error ? fail(*error) : 0;
  }
  const auto chances = run_recovery(*package, datasets, docs, check);
  if (!chances) return fail(chances.error());
  if (recovery_only) return *chances ? 0 : 1;
  const auto atlas = limb::Atlas::unfitted(*package);
  if (!atlas) return fail(atlas.error());

  const evidence::Table& distances = package->table("landmark_distances");
  const auto spread = evidence::SpreadModel::estimate(evidence::quantities(distances));
  const auto observed = calibration::observations(*atlas, distances, spread);
  const calibration::FitOptions options{spread.between_studies(),
                                        spread.study_intraclass_correlation()};
  const auto fit = calibration::fit(*atlas, observed, options, calibration::start_of(*atlas));
  if (!fit) return fail(fit.error());
  const limb::Atlas fitted = calibration::apply(*atlas, fit->state);
  const auto reproduced =
      calibration::reproduction(*atlas, observed, *fit, spread.between_studies());
  const double inflation = calibration::inflation_of(*fit, *atlas, observed);

  bool same = *chances;
  const auto write = [&](const std::filesystem::path& path, const std::string& text) {
    same = deliver(path, text, check) && same;
  };
  write(datasets / "fitted_waypoints.csv", calibrate::fitted_waypoints(fitted));
  write(datasets / "fitted_points.csv", calibrate::fitted_points(fitted, *fit));
  write(datasets / "fitted_measures.csv", calibrate::fitted_measures(fitted, reproduced));
  write(datasets / "fit_summary.csv", calibrate::fit_summary(spread, inflation));
  const auto moved = fit_motion(*package, fitted);
  if (!moved) return fail(moved.error());
  write(datasets / "fitted_motion.csv", calibrate::fitted_motion(moved->parameters));
  if (!check) write(docs / "nerve-motion-table.md", calibrate::motion_page(*moved));
  const calibrate::MotionShares motion = calibrate::motion_shares(*moved);
  std::cout << fmt::format(
      "{} movements of nerves, {} in the right direction; {} judged, {} within\n", motion.rows,
      motion.right_direction, motion.judged, motion.within);
  if (!check) write(docs / "limb-fit-residuals.md", calibrate::residual_page(*atlas, reproduced));

  const calibration::Shares shares = calibration::shares_of(reproduced, std::nullopt);
  std::cout << fmt::format(
      "{} quantities, {} tested: {} within one SD between limbs, {} within two; inflation {:.3f}\n",
      reproduced.size(), shares.count, shares.within_one, shares.within_two, inflation);
  if (approaches) {
    const auto kept = run_approaches(*package, *atlas, fit->state, datasets, docs, check);
    if (!kept) return fail(kept.error());
    same = *kept && same;
  }
  if (validate) {
    const auto validation = calibration::leave_one_study_out(*atlas, distances, fit->state);
    if (!validation) return fail(validation.error());
    if (!check) {
      write(docs / "limb-fit-validation.md", calibrate::validation_page(*atlas, *validation));
    }
    same = covers(*validation) && same;
  }
  return same ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Fits the limb to the published distances.", "endplate-calibrate");
  std::filesystem::path datasets = cli::default_datasets();
  std::filesystem::path docs = datasets.parent_path() / "docs";
  bool validate = false;
  bool approaches = false;
  bool approach_page_only = false;
  bool check = false;
  bool recovery_only = false;
  app.add_option("--datasets", datasets, "folder of the tables, read and written");
  app.add_option("--docs", docs, "folder of the pages, written");
  app.add_flag("--validate", validate, "also leave out each study (minutes)");
  app.add_flag("--approaches", approaches,
               "also predict each published distance at an incision without its study (minutes)");
  app.add_flag("--approach-page", approach_page_only,
               "write only the page of these distances, from their shipped table (seconds)");
  app.add_flag("--recovery", recovery_only, "fit the chances of recovery alone (seconds)");
  app.add_flag("--check", check, "write nothing; fail when a table differs from a fresh fit");
  CLI11_PARSE(app, argc, argv);
  return run(datasets, docs, validate, approaches, approach_page_only, check, recovery_only);
}
