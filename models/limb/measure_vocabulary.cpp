#include "models/limb/measure_vocabulary.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <numeric>
#include <stdexcept>

namespace endplate::limb {
namespace {

std::string plain(std::string_view text) {
  std::string result;
  bool blank = false;
  for (const char c : text) {
    if (std::isspace(static_cast<unsigned char>(c)) != 0) {
      blank = !result.empty();
      continue;
    }
    if (blank) result += ' ';
    blank = false;
    result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return result;
}

// Levenshtein's distance: insertions, deletions and replacements.
std::size_t edits_between(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), 0U);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t above = row[j];
      const std::size_t replaced = diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U);
      row[j] = std::min({above + 1, row[j - 1] + 1, replaced});
      diagonal = above;
    }
  }
  return row.back();
}

ShownAs shown_as_from(std::string_view word) {
  if (word == "segment") return ShownAs::segment;
  if (word == "breadth") return ShownAs::breadth;
  return word == "girth" ? ShownAs::girth : ShownAs::not_shown;
}

}  // namespace

Expected<MeasureVocabulary> MeasureVocabulary::from(const evidence::DataPackage& package,
                                                    const std::vector<std::string>& modelled) {
  MeasureVocabulary vocabulary;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("limb_measures")) {
    Measure measure;
    measure.name = row.text("name");
    measure.weights = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(modelled.size()));
    for (const std::string& part : row.list("parts")) {
      const auto index = std::ranges::find(modelled, part) - modelled.begin();
      measure.weights[index] += row.number("ratio").value();
    }
    measure.definition = row.text("definition");
    measure.shown_as = shown_as_from(row.text("shown_as"));
    measure.label = row.text("label");
    measure.provenance = evidence::provenance_from(row.text("provenance")).value();
    measure.reason = row.text("reason");

    std::vector<std::string> names = row.list("aliases");
    names.push_back(measure.name);
    for (const std::string& name : names) {
      const auto [found, added] =
          vocabulary.index_of_.emplace(plain(name), vocabulary.measures_.size());
      if (added) continue;
      problems.push_back({fmt::format("limb_measures.csv, row {}, column aliases", row.line()),
                          fmt::format("'{}' stands for two measures", name),
                          "Keep it at one of them."});
    }
    vocabulary.measures_.push_back(std::move(measure));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return vocabulary;
}

const Measure* MeasureVocabulary::find(std::string_view text) const {
  const auto found = index_of_.find(plain(text));
  return found == index_of_.end() ? nullptr : &measures_[found->second];
}

const Measure& MeasureVocabulary::at(std::string_view name) const {
  const auto found = std::ranges::find(measures_, name, &Measure::name);
  if (found == measures_.end()) throw std::out_of_range("no measure " + std::string(name));
  return *found;
}

std::vector<std::string> MeasureVocabulary::nearest(std::string_view text) const {
  const std::string wanted = plain(text);
  std::vector<std::pair<std::size_t, std::string>> by_distance;
  for (const auto& [name, index] : index_of_) {
    by_distance.emplace_back(edits_between(wanted, name), name);
  }
  const std::size_t count = std::min<std::size_t>(3, by_distance.size());
  std::ranges::partial_sort(by_distance, by_distance.begin() + static_cast<std::ptrdiff_t>(count));
  std::vector<std::string> names;
  for (std::size_t i = 0; i < count; ++i) names.push_back(by_distance[i].second);
  return names;
}

}  // namespace endplate::limb
