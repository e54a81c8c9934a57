#include "models/casefile/json_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

namespace endplate::casefile {
namespace {

using nlohmann::json;

// Follows the parser through the document, so that every event has its JSON Pointer.
class Tracker {
 public:
  explicit Tracker(std::vector<Problem>& duplicates) : duplicates_(duplicates) {}

  // Thrown to leave the parser.
  struct TooDeep {
    std::string pointer;
  };

  bool operator()(int, json::parse_event_t event, json& parsed) {
    using enum json::parse_event_t;
    switch (event) {
      case object_start:
      case array_start:
        if (frames_.size() >= kDeepestNesting) throw TooDeep{pointer()};
        frames_.push_back({event == object_start, {}, {}, 0});
        break;
      case key:
        enter_key(parsed.get<std::string>());
        break;
      case object_end:
      case array_end:
        frames_.pop_back();
        next_item();
        break;
      case value:
        next_item();
        break;
    }
    return true;
  }

 private:
  struct Frame {
    bool is_object;
    std::set<std::string> keys;
    std::string key;
    std::size_t index;
  };

  void enter_key(std::string name) {
    Frame& frame = frames_.back();
    frame.key = std::move(name);
    if (frame.keys.insert(frame.key).second) return;
    duplicates_.push_back({pointer(),
                           fmt::format("the key {} stands twice here", in_quotes(frame.key)),
                           "Keep the one that is right and delete the other."});
  }

  void next_item() {
    if (!frames_.empty() && !frames_.back().is_object) ++frames_.back().index;
  }

  std::string pointer() const {
    std::string place;
    for (const Frame& frame : frames_) {
      place =
          frame.is_object ? pointer_to(place, frame.key) : fmt::format("{}/{}", place, frame.index);
    }
    return place;
  }

  std::vector<Problem>& duplicates_;
  std::vector<Frame> frames_;
};

bool starts_character(char c) {
  return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
}

std::string line_and_column(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte > 0 ? byte - 1 : 0, text.size()));
  const auto line = 1 + std::ranges::count(before, '\n');
  const std::size_t last_break = before.rfind('\n');
  const std::string_view row =
      last_break == std::string_view::npos ? before : before.substr(last_break + 1);
  return fmt::format("line {}, column {}", line, 1 + std::ranges::count_if(row, starts_character));
}

// The parser's own words without its code and position.
std::string reason(std::string_view message) {
  const std::size_t dash = message.find(" - ");
  if (dash != std::string_view::npos) message = message.substr(dash + 3);
  const std::size_t last_read = message.find("; last read");
  if (last_read != std::string_view::npos) message = message.substr(0, last_read);
  return std::string(message);
}

Problem syntax_problem(std::string_view text, const json::parse_error& error) {
  const std::string_view message = error.what();
  const std::string place = line_and_column(text, error.byte);
  if (message.find("UTF-8") != std::string_view::npos) {
    return {place, "the text is not valid UTF-8", "Save the file with the encoding UTF-8."};
  }
  const std::string_view read = text.substr(0, std::min(error.byte, text.size()));
  const auto ends_with_start_of = [&](std::string_view word) {
    for (std::size_t length = word.size(); length >= 1; --length) {
      if (read.ends_with(word.substr(0, length))) return true;
    }
    return false;
  };
  if (message.find("invalid literal") != std::string_view::npos &&
      (ends_with_start_of("NaN") || ends_with_start_of("Infinity") ||
       ends_with_start_of("-Infinity"))) {
    return {place, "this is not a JSON value",
            "Write a number, true, false or a text in quotes; NaN and Infinity are not values, so "
            "leave an unknown key out."};
  }
  return {place, fmt::format("this is not valid JSON: {}", reason(message)),
          "Look for a missing quote, comma or bracket just before this place."};
}

// The parser names the number that it could not hold in quotes, but not its position.
std::string place_of_number(std::string_view text, std::string_view message) {
  const std::size_t open = message.find('\'');
  const std::size_t close = message.rfind('\'');
  if (open == std::string_view::npos || close <= open) return "case file";
  const std::size_t at = text.find(message.substr(open + 1, close - open - 1));
  return at == std::string_view::npos ? "case file" : line_and_column(text, at + 1);
}

}  // namespace

Expected<json> parse_json_text(std::string_view text, std::vector<Problem>& duplicates) {
  if (text.size() > kLargestFile_bytes) {
    return std::unexpected(Error::input(
        {"case file",
         fmt::format("the file has {} bytes, more than {}", text.size(), kLargestFile_bytes),
         "Check that this is a case file; one case takes a few thousand bytes."}));
  }
  try {
    Tracker tracker(duplicates);
    return json::parse(text, [&](int depth, json::parse_event_t event, json& parsed) {
      return tracker(depth, event, parsed);
    });
  } catch (const json::parse_error& error) {
    return std::unexpected(Error::input(syntax_problem(text, error)));
  } catch (const json::out_of_range& error) {
    return std::unexpected(
        Error::input({place_of_number(text, error.what()), "a number here is too large to hold",
                      "Write it in the unit that the key names, or leave the key out."}));
  } catch (const Tracker::TooDeep& deep) {
    return std::unexpected(Error::input(
        {deep.pointer, fmt::format("the file is nested deeper than {} levels", kDeepestNesting),
         "Remove the extra brackets."}));
  }
}

std::string pointer_to(const std::string& parent, std::string_view key) {
  constexpr std::size_t kLongest = 80;
  std::string token;
  std::size_t characters = 0;
  for (const char c : key) {
    if (starts_character(c) && ++characters > kLongest) break;
    if (c == '~') {
      token += "~0";
    } else if (c == '/') {
      token += "~1";
    } else {
      token += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? '?' : c;
    }
  }
  return parent + '/' + token;
}

std::string in_quotes(std::string_view text) {
  constexpr std::size_t kLongest = 60;
  std::string shown = "\"";
  std::size_t characters = 0;
  for (const char c : text) {
    if (starts_character(c) && ++characters > kLongest) {
      shown += "...";
      break;
    }
    shown += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? '?' : c;
  }
  return shown + '"';
}

}  // namespace endplate::casefile
