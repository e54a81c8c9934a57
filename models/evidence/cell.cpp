#include "models/evidence/cell.hpp"

#include <charconv>
#include <cmath>

namespace endplate::evidence {

std::optional<double> parse_number(std::string_view cell) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

std::vector<std::string_view> split_items(std::string_view cell) {
  std::vector<std::string_view> items;
  if (cell.empty()) return items;
  std::size_t begin = 0;
  for (std::size_t end = 0; end != std::string_view::npos; begin = end + 1) {
    end = cell.find(';', begin);
    items.push_back(cell.substr(begin, end == std::string_view::npos ? end : end - begin));
  }
  return items;
}

}  // namespace endplate::evidence
