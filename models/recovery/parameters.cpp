#include "models/recovery/parameters.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>
#include <optional>
#include <stdexcept>
#include <utility>

namespace endplate::recovery {
namespace {

constexpr std::array<std::pair<std::string_view, Family>, 6> kFamilies{{
    {"fixed", Family::fixed},
    {"normal", Family::normal},
    {"lognormal", Family::lognormal},
    {"log-logistic", Family::log_logistic},
    {"probability", Family::probability},
    {"odds ratio", Family::odds_ratio},
}};

std::optional<Family> family_from(std::string_view text) {
  for (const auto& [name, family] : kFamilies) {
    if (name == text) return family;
  }
  return std::nullopt;
}

// What the forecast cannot do without, for any nerve and treatment.
constexpr std::array<std::array<std::string_view, 3>, 20> kNeeded{{
    {"rate", "any", "none"},
    {"rate", "any", "operated"},
    {"rate reference distance", "any", "any"},
    {"slowing length", "any", "any"},
    {"latency", "any", "none"},
    {"coaptation delay", "any", "operated"},
    {"units delay", "any", "any"},
    {"movement delay", "any", "any"},
    {"useful delay", "motor", "none"},
    {"useful delay", "motor", "operated"},
    {"useful delay", "sensory", "any"},
    {"block first sign", "any", "any"},
    {"block useful delay", "any", "any"},
    {"motor window", "motor", "any"},
    {"useful in time", "motor", "none"},
    {"useful in time", "motor", "operated"},
    {"useful in time", "sensory", "none"},
    {"useful in time", "sensory", "operated"},
    {"finding error", "any", "any"},
    {"chance of neurapraxia", "unknown", "none"},
}};

bool plausible(const Parameter& p) {
  switch (p.family) {
    case Family::fixed:
    case Family::odds_ratio:
      return p.mean > 0.0;
    case Family::probability:
      return p.mean >= 0.0 && p.mean <= 1.0;
    case Family::normal:
    case Family::lognormal:
    case Family::log_logistic:
      return p.mean > 0.0 && p.sd > 0.0;
  }
  return false;
}

}  // namespace

double Parameter::log_sd() const {
  return std::sqrt(std::log1p((sd / mean) * (sd / mean)));
}

double Parameter::median() const {
  const double s = log_sd();
  return mean * std::exp(-0.5 * s * s);
}

double Parameter::at(double z) const {
  switch (family) {
    case Family::normal:
      return std::max(0.0, mean + sd * z);
    case Family::lognormal:
      return median() * std::exp(log_sd() * z);
    default:
      return mean;
  }
}

double LogLogistic::survival(double t) const {
  return t <= 0.0 ? 1.0 : 1.0 / (1.0 + std::pow(t / median, shape));
}

LogLogistic log_logistic_from(double mean, double sd) {
  // With b = pi/shape: mean = median b/sin b and E[x^2]/mean^2 = tan(b)/b, b below pi/2.
  const double wanted = 1.0 + (sd / mean) * (sd / mean);
  const auto miss = [&](double b) { return std::tan(b) / b - wanted; };
  std::uintmax_t steps = 200;
  const auto [low, high] =
      boost::math::tools::toms748_solve(miss, 1e-4, std::numbers::pi / 2.0 - 1e-9,
                                        boost::math::tools::eps_tolerance<double>(48), steps);
  const double b = 0.5 * (low + high);
  return {mean * std::sin(b) / b, std::numbers::pi / b};
}

Expected<Parameters> Parameters::from(const evidence::DataPackage& package) {
  Parameters parameters;
  std::vector<Problem> problems;
  for (const std::string_view table : {"recovery_parameters", "recovery_fitted"}) {
    for (const evidence::Row row : package.table(table)) {
      Parameter p;
      p.id = row.text("id");
      p.quantity = row.text("quantity");
      p.applies_to = row.text("applies_to");
      p.treatment = row.text("treatment");
      p.deficit = row.text("deficit");
      p.family = family_from(row.text("family")).value_or(Family::fixed);
      p.mean = row.number("mean").value_or(0.0);
      p.sd = row.number("sd").value_or(0.0);
      p.rows = row.list("regeneration_rows");
      for (auto& id : row.list("outcome_rows")) p.rows.push_back(std::move(id));
      p.provenance =
          evidence::provenance_from(row.text("provenance")).value_or(evidence::Provenance::assumed);
      p.reason = row.text("reason");
      if (!plausible(p)) {
        problems.push_back({fmt::format("{}.csv, row {}, column mean", table, row.line()),
                            "the mean or the SD is outside what its family allows",
                            "Give a positive mean, a positive SD where the family has one, and a "
                            "probability between 0 and 1."});
      }
      parameters.all_.push_back(std::move(p));
    }
  }
  for (const auto& [quantity, applies_to, treatment] : kNeeded) {
    if (parameters.find_if_any(quantity, applies_to, treatment) != nullptr) continue;
    problems.push_back({"recovery_parameters.csv",
                        fmt::format("no row for {} ({}, {})", quantity, applies_to, treatment),
                        "Add the row with its sources."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return parameters;
}

const Parameter* Parameters::find_if_any(std::string_view quantity, std::string_view applies_to,
                                         std::string_view treatment,
                                         std::string_view deficit) const {
  const auto fits = [](const std::string& cell, std::string_view wanted) {
    return cell == "any" || cell == wanted;
  };
  const Parameter* best = nullptr;
  int best_score = -1;
  for (const Parameter& p : all_) {
    if (p.quantity != quantity || !fits(p.applies_to, applies_to) ||
        !fits(p.treatment, treatment) || !fits(p.deficit, deficit)) {
      continue;
    }
    const int score =
        4 * (p.applies_to != "any") + 2 * (p.treatment != "any") + 1 * (p.deficit != "any");
    if (score > best_score) {
      best = &p;
      best_score = score;
    }
  }
  return best;
}

const Parameter& Parameters::find(std::string_view quantity, std::string_view applies_to,
                                  std::string_view treatment, std::string_view deficit) const {
  const Parameter* found = find_if_any(quantity, applies_to, treatment, deficit);
  if (found == nullptr) {
    throw std::out_of_range(
        fmt::format("no parameter for {} ({}, {}, {})", quantity, applies_to, treatment, deficit));
  }
  return *found;
}

}  // namespace endplate::recovery
