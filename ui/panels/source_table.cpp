#include "ui/panels/source_table.hpp"

#include <map>
#include <optional>

#include "models/evidence/data_package.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QString cell_of(const evidence::Table& table, const evidence::Row& row, std::string_view column) {
  return table.has_column(column) ? text_of(row.text(column)) : QString();
}

}  // namespace

SourceTable::SourceTable(QWidget* parent) : RowTable(tr("Rows behind this answer"), parent) {
  setToolTip(tr("Double click or Return: the row as it was published"));
}

void SourceTable::show_sources(const std::vector<std::string>& sources,
                               const evidence::DataPackage& package) {
  std::map<std::string_view, std::optional<Line>> lines;
  for (const std::string& source : sources) lines.emplace(source, std::nullopt);
  for (const auto& [name, table] : package.tables()) {
    if (!table.has_column("id")) continue;
    for (const evidence::Row row : table) {
      const auto wanted = lines.find(row.text("id"));
      if (wanted == lines.end() || wanted->second) continue;
      const QString study = cell_of(table, row, "study");
      const QString id = text_of(wanted->first);
      wanted->second = Line{{{id},
                             {text_of(name)},
                             {study.isEmpty() ? cell_of(table, row, "source") : study},
                             {cell_of(table, row, "provenance")}},
                            {},
                            {id}};
    }
  }
  std::vector<Line> shown;
  for (auto& [source, line] : lines) {
    shown.push_back(line ? std::move(*line)
                         : Line{{{text_of(source)}, {tr("the whole table")}}, {}, {}});
  }
  set({{tr("Row"), false, true, {}, 150},
       {tr("Table"), false, true},
       {tr("Study"), false, true, {}, 180},
       {tr("Known by")}},
      std::move(shown));
}

}  // namespace endplate::ui
