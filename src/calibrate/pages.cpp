#include "calibrate/pages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace endplate::calibrate {
namespace {

using calibration::CrossValidation;
using calibration::HeldOut;
using calibration::Reproduced;

double percent(std::size_t part, std::size_t whole) {
  return 100.0 * static_cast<double>(part) / static_cast<double>(whole);
}

double median(std::vector<double> values) {
  if (values.empty()) return std::nan("");
  std::ranges::sort(values);
  return values[values.size() / 2];
}

double root_mean_square(const std::vector<double>& values) {
  double sum = 0.0;
  for (const double v : values) sum += v * v;
  return std::sqrt(sum / static_cast<double>(values.size()));
}

std::string share_line(std::string_view name, const calibration::Shares& s) {
  return fmt::format("| {} | {} | {} ({:.1f} %) | {} ({:.1f} %) |\n", name, s.count, s.within_one,
                     percent(s.within_one, s.count), s.within_two, percent(s.within_two, s.count));
}

}  // namespace

std::string residual_page(const limb::Atlas& atlas, const std::vector<Reproduced>& reproduced) {
  std::vector<Reproduced> tested;
  std::vector<Reproduced> free;
  for (const Reproduced& r : reproduced) {
    (r.support == calibration::Support::tested ? tested : free).push_back(r);
  }
  const auto worst_first = [](const Reproduced& a, const Reproduced& b) {
    return a.standard_deviations() > b.standard_deviations();
  };
  std::ranges::sort(tested, worst_first);

  std::string out =
      "# Residuals of the limb fit\n"
      "Written by `endplate-calibrate`; do not edit. What the columns mean and what the fit is "
      "worth "
      "stands in [limb-fit.md](limb-fit.md).\n\n";
  out += fmt::format(
      "{} published quantities enter the fit. {} of them are also held by others and so test the "
      "model; {} are reproduced by their own free point alone and test nothing.\n\n",
      reproduced.size(), tested.size(), free.size());
  out +=
      "| tested quantities | number | within one SD between limbs | within two |\n"
      "| --- | ---: | ---: | ---: |\n";
  out += share_line("all", shares_of(reproduced, std::nullopt));
  out += share_line("printed SD", shares_of(reproduced, true));
  out += share_line("imputed SD", shares_of(reproduced, false));

  const auto table = [&](const std::vector<Reproduced>& rows) {
    out +=
        "\n| quantity | published, mm | model, mm | SD between limbs, mm | off by, SD | studies | "
        "remark |\n| --- | ---: | ---: | ---: | ---: | --- | --- |\n";
    for (const Reproduced& r : rows) {
      const limb::NerveMeasure& measure = atlas.measures()[r.measure];
      out += fmt::format("| {} | {:.1f} | {:.1f} | {:.1f}{} | {:.2f} | {} | {} |\n", measure.id,
                         r.pooled_mm, r.model_mm, r.limb_sd_mm, r.sd_printed ? "" : " (imputed)",
                         r.standard_deviations(), fmt::join(r.studies, ", "), measure.note);
    }
  };
  out += "\n## Quantities that test the model\n";
  table(tested);
  out += "\n## Quantities that only their own point reproduces\n";
  table(free);
  return out;
}

std::string validation_page(const limb::Atlas& atlas, const CrossValidation& validation) {
  const auto& held = validation.held_out;
  std::size_t means = 0;
  double limbs = 0.0;
  std::vector<double> errors;
  std::vector<double> with_peer;
  std::vector<double> peer;
  std::vector<double> inflations;
  std::vector<double> widths;
  for (const HeldOut& h : held) {
    const double error = std::abs(h.predicted_mm - h.observation.effect.mean_mm);
    means += h.mean_covered() ? 1 : 0;
    limbs += h.limbs_covered;
    errors.push_back(error);
    inflations.push_back(h.inflation);
    widths.push_back(h.limb_high_mm - h.limb_low_mm);
    if (std::isnan(h.pooled_mm)) continue;
    with_peer.push_back(error);
    peer.push_back(std::abs(h.pooled_mm - h.observation.effect.mean_mm));
  }
  const auto n = held.size();
  std::string out =
      "# The limb fit with each study left out\n"
      "Written by `endplate-calibrate --validate`; do not edit. The method stands in "
      "[limb-fit.md](limb-fit.md).\n\n";
  out += fmt::format(
      "{} studies were left out one by one, and everything refitted without them: the spread "
      "models, the courses, and the factor that covers what the model cannot know. {} study means "
      "have a quantity that the rest still predicts; {} have not (only their own study holds the "
      "point).\n\n",
      validation.studies, n, validation.not_predicted);
  out += "| measure | value |\n| --- | ---: |\n";
  out += fmt::format("| left-out means inside their 90 % interval | {} of {} ({:.1f} %) |\n", means,
                     n, percent(means, n));
  out += fmt::format("| single limbs inside theirs | {:.1f} % |\n",
                     100.0 * limbs / static_cast<double>(n));
  out += fmt::format("| median error | {:.1f} mm |\n", median(errors));
  out += fmt::format("| root mean square error | {:.1f} mm |\n", root_mean_square(errors));
  out += fmt::format("| median width of the interval for one limb | {:.0f} mm |\n", median(widths));
  out +=
      fmt::format("| factor on the spread, median over the folds | {:.2f} |\n", median(inflations));
  out += fmt::format(
      "\nThe peer is the plain pooled mean of the other studies of the same quantity; it exists "
      "for "
      "{} means. There the median error is {:.1f} mm for the model and {:.1f} mm for the pooled "
      "mean (root mean square {:.1f} and {:.1f} mm).\n",
      peer.size(), median(with_peer), median(peer), root_mean_square(with_peer),
      root_mean_square(peer));

  std::vector<HeldOut> worst = held;
  std::ranges::sort(worst, [](const HeldOut& a, const HeldOut& b) {
    return std::abs(a.predicted_mm - a.observation.effect.mean_mm) >
           std::abs(b.predicted_mm - b.observation.effect.mean_mm);
  });
  out +=
      "\n## Every left-out mean, the worst first\n"
      "| quantity | study | published, mm | predicted, mm | 90 % interval, mm | covered | others "
      "pooled, mm | remark |\n| --- | --- | ---: | ---: | --- | --- | ---: | --- |\n";
  for (const HeldOut& h : worst) {
    const limb::NerveMeasure& measure = atlas.measures()[h.observation.measure];
    out += fmt::format(
        "| {} | {} | {:.1f} | {:.1f} | {:.0f} to {:.0f} | {} | {} | {} |\n", measure.id,
        h.observation.effect.study, h.observation.effect.mean_mm, h.predicted_mm, h.mean_low_mm,
        h.mean_high_mm, h.mean_covered() ? "yes" : "no",
        std::isnan(h.pooled_mm) ? "" : fmt::format("{:.1f}", h.pooled_mm), measure.note);
  }
  return out;
}

}  // namespace endplate::calibrate
