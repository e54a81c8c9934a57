#include "models/anatomy/term_key.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace endplate::anatomy {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

// Dashes and blanks of typeset text, and the typographic apostrophe.
constexpr std::array<Pair, 9> kTypeset{{{"\u2010", "-"},
                                        {"\u2011", "-"},
                                        {"\u2012", "-"},
                                        {"\u2013", "-"},
                                        {"\u2014", "-"},
                                        {"\u2212", "-"},
                                        {"\u00a0", " "},
                                        {"\u2019", "'"},
                                        {"'s ", " "}}};

// Whole words. Only pairs that mean the same in every name of the tables.
constexpr std::array<Pair, 12> kWords{{{"1st", "first"},
                                       {"2nd", "second"},
                                       {"3rd", "third"},
                                       {"4th", "fourth"},
                                       {"5th", "fifth"},
                                       {"nn", "nerve"},
                                       {"nerves", "nerve"},
                                       {"br", "branch"},
                                       {"branches", "branch"},
                                       {"pinky", "little"},
                                       {"centre", "center"},
                                       {"fibres", "fibers"}}};

constexpr std::array<std::string_view, 9> kSmallWords{"of", "the", "to", "for", "and",
                                                      "on", "at",  "in", "with"};

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at)) {
    text.replace(at, from.size(), to);
    at += to.size();
  }
}

std::string standard_word(TermKind kind, std::string word) {
  for (const auto& [from, to] : kWords) {
    if (word == from) return std::string(to);
  }
  if (kind == TermKind::nerve || kind == TermKind::graft_donor) {
    if (word == "n") return "nerve";
  }
  // British digraphs; both the tables' names and the typed one pass through here.
  replace_all(word, "ae", "e");
  replace_all(word, "oe", "e");
  replace_all(word, "our", "or");
  return word;
}

bool carries_meaning(TermKind kind, std::string_view word) {
  if (std::ranges::find(kSmallWords, word) != kSmallWords.end()) return false;
  switch (kind) {
    case TermKind::nerve:
    case TermKind::graft_donor:
      return word != "nerve";
    case TermKind::muscle:
      return word != "muscle" && word != "m" && word != "part" && word != "head" &&
             word != "finger" && word != "brachii" && word != "portion";
    case TermKind::area:
      return word != "finger" && word != "skin";
    default:
      return true;
  }
}

}  // namespace

std::vector<std::string> term_words(TermKind kind, std::string_view name) {
  std::string text(name);
  text += ' ';  // so that a possessive at the end is found as well
  std::ranges::transform(text, text.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
  });
  for (const auto& [from, to] : kTypeset) replace_all(text, from, to);
  for (char& c : text) {
    const bool keep = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c & 0x80) != 0;
    if (!keep) c = ' ';
  }
  replace_all(text, "small finger", "little finger");
  replace_all(text, "long finger", "middle finger");

  std::vector<std::string> words;
  std::string word;
  for (const char c : text) {
    if (c != ' ') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(standard_word(kind, std::move(word)));
      word.clear();
    }
  }
  return words;
}

std::vector<std::string> meaningful_words(TermKind kind, const std::vector<std::string>& words) {
  std::vector<std::string> kept;
  for (const std::string& word : words) {
    if (carries_meaning(kind, word)) kept.push_back(word);
  }
  return kept;
}

std::string join_words(const std::vector<std::string>& words, std::string_view between) {
  std::string text;
  for (const std::string& word : words) {
    if (!text.empty()) text += between;
    text += word;
  }
  return text;
}

}  // namespace endplate::anatomy
