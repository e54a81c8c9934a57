#include "models/casefile/words.hpp"

#include <fmt/format.h>

namespace endplate::casefile {
namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

}  // namespace

std::optional<MrcGrade> mrc_grade(std::string_view text) {
  if (text.starts_with('M')) text.remove_prefix(1);
  if (text.empty() || text.size() > 2 || text[0] < '0' || text[0] > '5') return std::nullopt;
  const int whole = text[0] - '0';
  double value = whole;
  if (text.size() == 2) {
    const char step = text[1];
    if (whole == 0 || (step != '-' && step != '+') || (whole == 5 && step == '+')) {
      return std::nullopt;
    }
    value += step == '+' ? 1.0 / 3.0 : -1.0 / 3.0;
  }
  return MrcGrade{value, std::string(text)};
}

std::optional<Date> date_from(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto number = [&](std::size_t from, std::size_t count) -> int {
    int value = 0;
    for (const char c : text.substr(from, count)) {
      if (!is_digit(c)) return -1;
      value = 10 * value + (c - '0');
    }
    return value;
  };
  const int year = number(0, 4);
  const int month = number(5, 2);
  const int day = number(8, 2);
  if (year < 1900 || year > 2199 || month < 1 || day < 1) return std::nullopt;
  const Date date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                  std::chrono::day(static_cast<unsigned>(day))};
  if (!date.ok()) return std::nullopt;
  return date;
}

std::string to_string(Date date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

}  // namespace endplate::casefile
