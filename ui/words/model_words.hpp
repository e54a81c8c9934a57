#pragma once
// What the models and the tables say, in the language of the program.
#include <QHash>
#include <QSet>
#include <QString>
#include <functional>
#include <optional>
#include <string_view>

namespace endplate::ui {

// Of the interface thread alone. What is not known stays in English, whole.
QString told(std::string_view english);

// Names that stay as they are, in every language.
void keep_names(QSet<QString> names);

// Terms within what is told, in Latin; none: all in English. After keep_names().
void tell_in_latin(const QHash<QString, QString>& terms);

// Hears every sentence that is told, with its text in the other language where there is one, for
// a look at what is missing; nullptr ends it.
using ToldWatch = std::function<void(const QString& english, const std::optional<QString>& told)>;
void watch_told(ToldWatch watch);

}  // namespace endplate::ui
