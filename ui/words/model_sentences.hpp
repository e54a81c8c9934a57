#pragma once
// The English of what the models and the tables say, with places as in SentenceBook. Their other
// languages stand in ui/translations, context "models".
#include <vector>

namespace endplate::ui {

const std::vector<const char*>& model_sentences();

}  // namespace endplate::ui
