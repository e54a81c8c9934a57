#pragma once
// How a name is brought to a form in which two ways of writing it are the same text.
#include <string>
#include <string_view>
#include <vector>

namespace endplate::anatomy {

enum class TermKind { nerve, muscle, area, landmark, variant, movement, graft_donor, measure };

// "Musculocutaneous N." -> {"musculocutaneous", "nerve"}. Lower case; hyphens, dashes and
// punctuation become blanks; abbreviated "nerve", "muscle" and "branch" are written out; American
// spelling; 1st to 5th as words. Bytes outside ASCII stay as they are.
std::vector<std::string> term_words(TermKind kind, std::string_view name);

// Without the words that may be left out in a name of this kind ("of", "nerve", "muscle").
std::vector<std::string> meaningful_words(TermKind kind, const std::vector<std::string>& words);

// The words joined by `between`, in their order.
std::string join_words(const std::vector<std::string>& words, std::string_view between = " ");

}  // namespace endplate::anatomy
