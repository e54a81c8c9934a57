#pragma once
// The names of the tables, which every language of the program keeps.
#include <QSet>
#include <QString>

#include "models/anatomy/anatomy.hpp"
#include "models/anatomy/terms.hpp"

namespace endplate::ui {

QSet<QString> table_names(const anatomy::Anatomy& anatomy, const anatomy::Terms& terms);

}  // namespace endplate::ui
