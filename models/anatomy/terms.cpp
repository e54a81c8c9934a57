#include "models/anatomy/terms.hpp"

#include <algorithm>
#include <cctype>

#include "models/core/edit_distance.hpp"

namespace endplate::anatomy {
namespace {

std::string sorted_join(std::vector<std::string> words) {
  std::ranges::sort(words);
  return join_words(words);
}

bool has_digit(std::string_view word) {
  return std::ranges::any_of(word, [](char c) { return c >= '0' && c <= '9'; });
}

// Letters that may be wrong in one word; a short word is an abbreviation and must be right.
std::size_t allowed_slip(std::string_view word) {
  if (word.size() < 5 || has_digit(word)) return 0;
  return word.size() < 8 ? 1 : 2;
}

// 0 for the same text, 1 for nothing in common: the better of letters and whole words.
double dissimilarity(const std::vector<std::string>& typed, const std::vector<std::string>& key) {
  const std::string a = join_words(typed);
  const std::string b = join_words(key);
  const auto longer = static_cast<double>(std::max<std::size_t>({a.size(), b.size(), 1}));
  const double by_letters = static_cast<double>(edit_distance(a, b)) / longer;
  std::size_t shared = 0;
  for (const std::string& word : typed) {
    shared += std::ranges::find(key, word) != key.end() ? 1U : 0U;
  }
  const auto all =
      static_cast<double>(std::max<std::size_t>(typed.size() + key.size() - shared, 1));
  // A shared word counts a little less than shared letters, so that a slip comes first.
  return std::min(by_letters, 1.0 - 0.8 * static_cast<double>(shared) / all);
}

}  // namespace

void Terms::add(TermKind kind, std::string_view written, Names names) {
  Vocabulary& vocabulary = of(kind);
  const std::vector<std::string> words = term_words(kind, written);
  const std::vector<std::string> meaningful = meaningful_words(kind, words);
  vocabulary.exact_case[std::string(written)].insert(names);
  vocabulary.phrase[join_words(words)].insert(names);
  if (!meaningful.empty()) vocabulary.bag[sorted_join(meaningful)].insert(names);
  vocabulary.compact[join_words(words, "")].insert(names);
  known_words_.insert(words.begin(), words.end());
  vocabulary.keys.push_back({meaningful, std::move(names)});
}

std::expected<TermReading, UnknownTerm> Terms::resolve(TermKind kind,
                                                       std::string_view typed) const {
  static const Vocabulary kNone;
  const auto found = vocabularies_.find(kind);
  const Vocabulary& vocabulary = found == vocabularies_.end() ? kNone : found->second;
  const std::vector<std::string> words = term_words(kind, typed);
  const std::vector<std::string> meaningful = meaningful_words(kind, words);

  // From the strictest comparison to the most tolerant. The first that knows the text decides;
  // where it knows two meanings, a more tolerant one would only guess.
  const auto look_up = [](const Index& index, std::string_view text) -> const std::set<Names>* {
    const auto at = index.find(text);
    return at == index.end() || text.empty() ? nullptr : &at->second;
  };
  for (const std::set<Names>* meanings :
       {look_up(vocabulary.exact_case, typed), look_up(vocabulary.phrase, join_words(words)),
        look_up(vocabulary.bag, sorted_join(meaningful)),
        look_up(vocabulary.compact, join_words(words, ""))}) {
    if (meanings == nullptr) continue;
    if (meanings->size() == 1) return TermReading{*meanings->begin(), false};
    UnknownTerm ambiguous;
    for (const Names& names : *meanings) {
      for (const std::string& name : names) ambiguous.nearest.push_back(full_name(kind, name));
    }
    return std::unexpected(ambiguous);
  }
  const std::set<Names> slips = read_slip(vocabulary, meaningful);
  if (slips.size() == 1) return TermReading{*slips.begin(), true};
  return std::unexpected(unknown(kind, meaningful.empty() ? words : meaningful));
}

std::set<Terms::Names> Terms::read_slip(const Vocabulary& vocabulary,
                                        const std::vector<std::string>& words) const {
  constexpr std::size_t kMostSlips = 2;
  std::set<Names> readings;
  for (const Key& key : vocabulary.keys) {
    if (key.words.size() != words.size()) continue;
    std::size_t slips = 0;
    for (std::size_t i = 0; i < words.size() && slips <= kMostSlips; ++i) {
      if (words[i] == key.words[i]) continue;
      const std::size_t distance = edit_distance(words[i], key.words[i]);
      const bool misspelt = !known_words_.contains(words[i]) && !has_digit(key.words[i]) &&
                            distance <= allowed_slip(words[i]) && key.words[i].size() >= 5;
      slips += misspelt ? distance : kMostSlips + 1;
    }
    if (slips > 0 && slips <= kMostSlips) readings.insert(key.names);
  }
  return readings;
}

UnknownTerm Terms::unknown(TermKind kind, const std::vector<std::string>& words) const {
  // There are few graft donors, so all of them are offered.
  const std::size_t most_suggestions = kind == TermKind::graft_donor ? 8 : 4;
  UnknownTerm answer;
  const auto found = vocabularies_.find(kind);
  if (found == vocabularies_.end()) return answer;
  std::vector<std::pair<double, const Names*>> scored;
  for (const Key& key : found->second.keys) {
    scored.emplace_back(dissimilarity(words, key.words), &key.names);
  }
  std::ranges::stable_sort(scored, {}, [](const auto& item) { return item.first; });
  for (const auto& [score, names] : scored) {
    for (const std::string& name : *names) {
      if (answer.nearest.size() == most_suggestions) return answer;
      const std::string shown = full_name(kind, name);
      if (std::ranges::find(answer.nearest, shown) == answer.nearest.end()) {
        answer.nearest.push_back(shown);
      }
    }
  }
  return answer;
}

std::string Terms::full_name(TermKind kind, std::string_view standard) const {
  const auto found = vocabularies_.find(kind);
  if (found != vocabularies_.end()) {
    const auto full = found->second.full_names.find(standard);
    if (full != found->second.full_names.end()) return full->second;
  }
  return std::string(standard);
}

const std::vector<std::string>& Terms::names(TermKind kind) const {
  static const Names kNone;
  const auto found = vocabularies_.find(kind);
  return found == vocabularies_.end() ? kNone : found->second.standard;
}

}  // namespace endplate::anatomy
