#include "models/evidence/study_effect.hpp"

#include <algorithm>
#include <cmath>

#include "models/evidence/spread_recovery.hpp"

namespace endplate::evidence {
namespace {

// One set of limbs of a study.
struct Sample {
  std::string sex;
  double mean = 0.0;
  double variance = 0.0;
  double n = 0.0;
  double rows = 1.0;
  SpreadSource source = SpreadSource::printed;
  bool n_assumed = false;
  std::vector<std::string> ids;
};

std::string sex_of(const Measurement& row) {
  const auto begins = [&](std::string_view word) {
    return row.population.starts_with(word) ||
           row.population.find(", " + std::string(word)) != std::string::npos;
  };
  if (begins("female") || row.id.ends_with("-f") || row.id.find("-f-") != std::string::npos) {
    return "female";
  }
  if (begins("male") || row.id.ends_with("-m") || row.id.find("-m-") != std::string::npos) {
    return "male";
  }
  return "";
}

Sample sample_of(const Measurement& row, const Imputation& impute) {
  Sample s;
  s.sex = sex_of(row);
  s.mean = *row.mean_mm;
  const auto spread = row_spread(row);
  const double sd = spread ? spread->sd_mm : impute.sd_mm(std::abs(s.mean));
  s.source = spread ? spread->source : SpreadSource::imputed;
  s.variance = sd * sd;
  s.n = row.n.value_or(impute.n);
  s.n_assumed = !row.n.has_value();
  s.ids = {row.id};
  return s;
}

bool on_other_limbs(const Sample& a, const Sample& b) {
  const bool other_sex = !a.sex.empty() && !b.sex.empty() && a.sex != b.sex;
  return other_sex || a.mean * b.mean < 0.0;
}

void note_sources(Sample& into, const Sample& other) {
  into.source = std::max(into.source, other.source);
  into.n_assumed = into.n_assumed || other.n_assumed;
  into.ids.insert(into.ids.end(), other.ids.begin(), other.ids.end());
}

void add_same_limbs(Sample& into, const Sample& other) {
  into.mean = (into.rows * into.mean + other.mean) / (into.rows + 1.0);
  into.variance = (into.rows * into.variance + other.variance) / (into.rows + 1.0);
  into.n = std::max(into.n, other.n);
  into.rows += 1.0;
  note_sources(into, other);
}

void add_other_limbs(Sample& into, const Sample& other) {
  const double n = into.n + other.n;
  const double apart = into.mean - other.mean;
  into.variance = ((into.n - 1.0) * into.variance + (other.n - 1.0) * other.variance +
                   into.n * other.n / n * apart * apart) /
                  (n - 1.0);
  into.mean = (into.n * into.mean + other.n * other.mean) / n;
  into.n = n;
  note_sources(into, other);
}

}  // namespace

std::optional<RowSpread> row_spread(const Measurement& row) {
  if (row.sd_mm) return RowSpread{*row.sd_mm, SpreadSource::printed};
  if (row.min_mm && row.max_mm && *row.max_mm > *row.min_mm && row.n.value_or(0.0) > 1.0) {
    return RowSpread{sd_from_range(*row.min_mm, *row.max_mm, *row.n), SpreadSource::from_range};
  }
  return std::nullopt;
}

std::vector<StudyEffect> study_effects(const Quantity& quantity, const Imputation& impute) {
  std::vector<std::pair<std::string, std::vector<Sample>>> studies;
  for (const Measurement& row : quantity.rows) {
    if (!row.left_out.empty() || !row.mean_mm) continue;
    auto study = std::ranges::find(studies, row.study, &decltype(studies)::value_type::first);
    if (study == studies.end()) study = studies.insert(studies.end(), {row.study, {}});
    auto& samples = study->second;
    const Sample sample = sample_of(row, impute);
    const auto same =
        std::ranges::find_if(samples, [&](const Sample& s) { return !on_other_limbs(s, sample); });
    if (same == samples.end()) {
      samples.push_back(sample);
    } else {
      add_same_limbs(*same, sample);
    }
  }

  std::vector<StudyEffect> effects;
  for (auto& [study, samples] : studies) {
    Sample whole = samples.front();
    for (std::size_t i = 1; i < samples.size(); ++i) add_other_limbs(whole, samples[i]);
    StudyEffect effect;
    effect.study = study;
    effect.rows = whole.ids;
    effect.mean_mm = whole.mean;
    effect.sd_mm = std::sqrt(whole.variance);
    effect.sd_source = whole.source;
    effect.n = whole.n;
    effect.n_assumed = whole.n_assumed;
    effect.standard_error_mm = effect.sd_mm / std::sqrt(whole.n);
    effects.push_back(std::move(effect));
  }
  return effects;
}

}  // namespace endplate::evidence
