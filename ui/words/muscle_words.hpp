#pragma once
// How a muscle of the tables is named and rooted on screen.
#include <QStringList>

#include "models/anatomy/muscle.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

// "flexor digitorum profundus, ring finger"; a whole muscle by its name alone.
inline QString name_of(const anatomy::Muscle& muscle) {
  return muscle.part == "whole" ? told(muscle.name) : told(muscle.name) + ", " + told(muscle.part);
}

// "C5, C6"
inline QString roots_of(const anatomy::Muscle& muscle) {
  QStringList roots;
  for (const anatomy::RootSupply& root : muscle.roots) roots.push_back(text_of(root.root));
  return roots.join(", ");
}

}  // namespace endplate::ui
