#pragma once
// Words, lines and numbers of a text, with the number of the line for messages.
#include <charconv>
#include <cstddef>
#include <optional>
#include <string_view>

namespace endplate::geometry {

class TextScanner {
 public:
  explicit TextScanner(std::string_view text) : text_(text) {}

  // The next word, whatever line it stands on; empty at the end of the text.
  std::string_view word() {
    while (at_ < text_.size() && blank(text_[at_])) {
      if (text_[at_] == '\n') ++line_;
      ++at_;
    }
    return word_from_here();
  }

  // The next word of this line; empty at its end.
  std::string_view word_of_line() {
    while (at_ < text_.size() && blank(text_[at_]) && text_[at_] != '\n') ++at_;
    return word_from_here();
  }

  // What is left of this line, without its end (LF or CR LF); goes on to the next line.
  std::string_view rest_of_line() {
    const std::size_t end = text_.find('\n', at_);
    std::string_view rest =
        text_.substr(at_, end == std::string_view::npos ? std::string_view::npos : end - at_);
    if (rest.ends_with('\r')) rest.remove_suffix(1);
    at_ = end == std::string_view::npos ? text_.size() : end + 1;
    if (end != std::string_view::npos) ++line_;
    return rest;
  }

  bool at_end() const { return at_ >= text_.size(); }
  std::size_t line() const { return line_; }  // from 1
  std::size_t offset() const { return at_; }

 private:
  static bool blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\v' || c == '\f';
  }
  std::string_view word_from_here() {
    const std::size_t begin = at_;
    while (at_ < text_.size() && !blank(text_[at_])) ++at_;
    return text_.substr(begin, at_ - begin);
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
};

// The whole word as a number, whatever the locale; nothing when it is no number or out of range.
// "nan" and "inf" are numbers here.
template <class Number>
std::optional<Number> number_of(std::string_view word) {
  if (word.starts_with('+')) word.remove_prefix(1);
  Number value{};
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (error != std::errc{} || end != word.data() + word.size() || word.empty()) return {};
  return value;
}

}  // namespace endplate::geometry
