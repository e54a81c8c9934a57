#pragma once
// Texts that cross between the models and the screen.
#include <QString>
#include <string>
#include <string_view>

namespace endplate::ui {

inline QString text_of(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// With a capital letter in front, for words of the tables that open a line.
inline QString opening(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

inline std::string plain(const QString& text) {
  return text.toStdString();
}

}  // namespace endplate::ui
