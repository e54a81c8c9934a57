#pragma once
// What the program and its tests do before a window stands.
#include <filesystem>

class QApplication;
class QString;

namespace endplate::ui {

// Style, names for the settings, and the language of the settings.
void prepare(QApplication& application);

// The tables beside the installed program, else those of the source tree.
std::filesystem::path default_datasets();

// Where copies of unsaved cases are kept.
QString data_folder();

}  // namespace endplate::ui
