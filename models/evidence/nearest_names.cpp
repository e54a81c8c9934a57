#include "models/evidence/nearest_names.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <sstream>
#include <tuple>

namespace endplate::evidence {
namespace {

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return result;
}

std::size_t slips(const std::string& a, const std::string& b) {
  std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  }
  return d[a.size()][b.size()];
}

std::vector<std::string> words_of(const std::string& text) {
  std::istringstream stream(text);
  return {std::istream_iterator<std::string>(stream), std::istream_iterator<std::string>()};
}

// Slips of each typed word to the nearest word of the name: "radail" is near "radial nerve".
std::size_t word_slips(const std::string& typed, const std::string& name) {
  std::size_t sum = 0;
  for (const std::string& word : words_of(typed)) {
    std::size_t best = word.size();
    for (const std::string& other : words_of(name)) best = std::min(best, slips(word, other));
    sum += best;
  }
  return sum;
}

}  // namespace

bool same_name(std::string_view a, std::string_view b) {
  return lower(a) == lower(b);
}

bool contains_words(std::string_view text, std::string_view words) {
  const std::string in = lower(text);
  std::istringstream stream(lower(words));
  for (std::string word; stream >> word;) {
    if (in.find(word) == std::string::npos) return false;
  }
  return true;
}

std::vector<std::string> nearest_names(std::string_view typed, std::span<const std::string> names,
                                       std::size_t how_many) {
  const std::string wanted = lower(typed);
  std::set<std::tuple<bool, std::size_t, std::size_t, std::string>> ranked;
  for (const std::string& name : names) {
    const std::string other = lower(name);
    ranked.emplace(!contains_words(name, wanted), word_slips(wanted, other), slips(wanted, other),
                   name);
  }
  std::vector<std::string> result;
  for (const auto& [misses, by_word, whole, name] : ranked) {
    if (result.size() == how_many) break;
    result.push_back(name);
  }
  return result;
}

}  // namespace endplate::evidence
