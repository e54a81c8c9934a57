#include "models/core/edit_distance.hpp"

#include <algorithm>
#include <utility>

namespace endplate {
namespace {

std::string lower(std::string_view text) {
  std::string out(text);
  std::ranges::transform(out, out.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
  });
  return out;
}

}  // namespace

std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before_last(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> now(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    now[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, last[j - 1] + change});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
        now[j] = std::min(now[j], before_last[j - 2] + 1);
      }
    }
    std::swap(before_last, last);
    std::swap(last, now);
  }
  return last[b.size()];
}

std::vector<std::string> nearest(std::string_view typed,
                                 std::span<const std::string_view> candidates, std::size_t count) {
  const std::string wanted = lower(typed);
  std::vector<std::pair<std::size_t, std::string_view>> scored;
  for (const std::string_view candidate : candidates) {
    const std::string name = lower(candidate);
    // A beginning is nearer than any slip: "age" means "age_years" before "side".
    const bool begins = wanted.size() >= 3 && name.starts_with(wanted);
    scored.emplace_back(begins ? 1 : edit_distance(wanted, name), candidate);
  }
  std::ranges::stable_sort(scored, {}, [](const auto& item) { return item.first; });
  std::vector<std::string> names;
  for (const auto& [distance, name] : scored) {
    if (names.size() == count) break;
    names.emplace_back(name);
  }
  return names;
}

}  // namespace endplate
