#include "ui/words/model_sentences.hpp"

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

const std::vector<const char*>& model_sentences() {
  static const std::vector<const char*> all = [] {
    std::vector<const char*> joined;
    for (const auto list :
         {rule_steps_sentences(), rule_terms_sentences(), rule_reasons_sentences(),
          course_sentences(), plan_sentences(), deficit_sentences(), movements_sentences(),
          areas_sentences(), transfer_sentences(), transfer_costs_sentences(),
          transfer_conditions_sentences(), transfer_words_sentences(), evidence_sentences(),
          joined_sentences(), problems_sentences()}) {
      joined.insert(joined.end(), list.begin(), list.end());
    }
    return joined;
  }();
  return all;
}

}  // namespace endplate::ui
