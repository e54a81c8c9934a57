#pragma once
#include <QStringList>

namespace endplate::recovery {
struct RecoveryAnswer;
}

namespace endplate::ui {

// What lies where, and what its axons may do: a line for each lesion.
QStringList lesion_words(const recovery::RecoveryAnswer& answer);

}  // namespace endplate::ui
