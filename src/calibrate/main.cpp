// Fits the limb to the published distances and writes the fitted tables and the pages that show it.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include "calibrate/pages.hpp"
#include "calibrate/tables.hpp"
#include "output/errors.hpp"
#include "paths.hpp"

namespace {

using namespace endplate;

// Writes the file, or with `check` compares it with what stands there. False when they differ.
bool deliver(const std::filesystem::path& path, const std::string& text, bool check) {
  if (!check) {
    std::ofstream(path, std::ios::binary) << text;
    return true;
  }
  std::ifstream in(path, std::ios::binary);
  std::ostringstream present;
  present << in.rdbuf();
  if (present.str() == text) return true;
  std::cerr << fmt::format("error: {}: differs from a fresh fit. Run endplate-calibrate.\n",
                           path.string());
  return false;
}

int run(const std::filesystem::path& datasets, const std::filesystem::path& docs, bool validate,
        bool check) {
  const auto fail = [](const Error& error) {
    cli::print_error(error, std::cerr);
    return 1;
  };
  const auto package = evidence::DataPackage::read(datasets);
  if (!package) return fail(package.error());
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
  const auto reproduced = calibration::reproduction(*atlas, observed, *fit, spread.between_studies());
  const double inflation = calibration::inflation_of(*fit, *atlas, observed);

  bool same = true;
  const auto write = [&](const std::filesystem::path& path, const std::string& text) {
    same = deliver(path, text, check) && same;
  };
  write(datasets / "fitted_waypoints.csv", calibrate::fitted_waypoints(fitted));
  write(datasets / "fitted_points.csv", calibrate::fitted_points(fitted, *fit));
  write(datasets / "fitted_measures.csv", calibrate::fitted_measures(fitted, reproduced));
  write(datasets / "fit_summary.csv", calibrate::fit_summary(spread, inflation));
  write(docs / "limb-fit-residuals.md", calibrate::residual_page(*atlas, reproduced));

  const calibration::Shares shares = calibration::shares_of(reproduced, std::nullopt);
  std::cout << fmt::format(
      "{} quantities, {} tested: {} within one SD between limbs, {} within two; inflation {:.3f}\n",
      reproduced.size(), shares.count, shares.within_one, shares.within_two, inflation);
  if (validate) {
    const auto validation = calibration::leave_one_study_out(*atlas, distances, fit->state);
    if (!validation) return fail(validation.error());
    write(docs / "limb-fit-validation.md", calibrate::validation_page(*atlas, *validation));
  }
  return same ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Fits the limb to the published distances.", "endplate-calibrate");
  std::filesystem::path datasets = cli::default_datasets();
  std::filesystem::path docs = datasets.parent_path() / "docs";
  bool validate = false;
  bool check = false;
  app.add_option("--datasets", datasets, "folder of the tables, read and written");
  app.add_option("--docs", docs, "folder of the pages, written");
  app.add_flag("--validate", validate, "also leave out each study (minutes)");
  app.add_flag("--check", check, "write nothing; fail when a file differs from a fresh fit");
  CLI11_PARSE(app, argc, argv);
  return run(datasets, docs, validate, check);
}
