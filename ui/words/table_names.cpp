#include "ui/words/table_names.hpp"

#include "ui/words/words.hpp"

namespace endplate::ui {

QSet<QString> table_names(const anatomy::Anatomy& anatomy, const anatomy::Terms& terms) {
  QSet<QString> names;
  using enum anatomy::TermKind;
  for (const auto kind : {nerve, muscle, landmark, graft_donor}) {
    for (const std::string& name : terms.names(kind)) names.insert(text_of(name));
  }
  for (const anatomy::NerveNode& node : anatomy.tree().nodes()) names.insert(text_of(node.name));
  for (const anatomy::Muscle& muscle : anatomy.muscles()) names.insert(text_of(muscle.name));
  return names;
}

}  // namespace endplate::ui
