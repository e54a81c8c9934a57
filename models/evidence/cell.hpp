#pragma once
// What a cell's text means.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace endplate::evidence {

// The cells of a table in one piece of memory.
class Cells {
 public:
  void push_back(std::string_view cell) {
    text_ += cell;
    ends_.push_back(static_cast<std::uint32_t>(text_.size()));
  }
  // Room for `characters` of text without moving.
  void reserve(std::size_t characters) { text_.reserve(characters); }
  // Takes the cells from `size` on away.
  void shrink(std::size_t size) {
    ends_.resize(size);
    text_.resize(ends_.empty() ? 0 : ends_.back());
  }
  // Valid until the cells change.
  std::string_view operator[](std::size_t i) const {
    const std::size_t begin = i == 0 ? 0 : ends_[i - 1];
    return std::string_view(text_).substr(begin, ends_[i] - begin);
  }
  std::size_t size() const { return ends_.size(); }

 private:
  std::string text_;
  std::vector<std::uint32_t> ends_;
};

// A finite decimal number without blanks, sign "+" or unit; nothing for any other text.
std::optional<double> parse_number(std::string_view cell);

// Items of a list cell; an empty cell has none, "a;;b" has an empty one.
std::vector<std::string_view> split_items(std::string_view cell);

}  // namespace endplate::evidence
