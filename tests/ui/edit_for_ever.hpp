#pragma once
#include <QString>

namespace endplate::ui {

// Edits a case twenty times a second and saves it now and then, until the process is killed. Copies
// go to `folder`/recovery, the case to `folder`/case.json; `seed` decides when. Says on standard
// output, each before it is done:
//   edit NUMBER MS    MS: by monotonic_ms
//   save NUMBER       the case as edit NUMBER left it
// and "saved NUMBER" when that is over.
int edit_for_ever(int argc, char** argv, const QString& folder, unsigned seed);
// The same in a whole desk with its window, which takes a second or two to start.
int edit_a_desk_for_ever(int argc, char** argv, const QString& folder, unsigned seed);

// The label that edit `number` gives; long, so that a save takes its time.
QString label_of_edit(int number);
// The number in such a label; 0 when it is not whole.
int edit_of_label(const QString& label);

// A clock that all processes share.
qint64 monotonic_ms();

}  // namespace endplate::ui
