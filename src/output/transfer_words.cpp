#include "output/transfer_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace endplate::cli {

std::string left_out_words(const transfer::LeftOut& left) {
  const std::string beside =
      left.beside.empty() ? "" : fmt::format(" (beside {})", fmt::join(left.beside, ", "));
  switch (left.by) {
    case transfer::LeftOutBy::serves_nothing_asked:
      return "restores nothing that is asked for";
    case transfer::LeftOutBy::rule_alone:
      return fmt::format("breaks the rule {} by itself", left.cause);
    case transfer::LeftOutBy::donor_used:
      return fmt::format("its donor {} is used{}", left.cause, beside);
    case transfer::LeftOutBy::place_taken:
      return fmt::format("{} already receives{}", left.cause, beside);
    case transfer::LeftOutBy::forbidden_pair:
      return fmt::format("not to be done together: {}{}", left.cause, beside);
    case transfer::LeftOutBy::rule:
      return fmt::format("would break the rule {}{}", left.cause, beside);
    case transfer::LeftOutBy::already_served:
      return fmt::format("{} has what it needs{}", left.cause, beside);
    case transfer::LeftOutBy::falls_short:
      break;
  }
  return fmt::format("{} would stay without, even with it", left.cause);
}

}  // namespace endplate::cli
