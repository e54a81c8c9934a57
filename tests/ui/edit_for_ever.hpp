#pragma once

namespace endplate::ui {

// Edits a case twenty times a second and prints the number of each edit before it is made, until
// the process is killed. Copies go to `folder`.
int edit_for_ever(const char* folder);

}  // namespace endplate::ui
