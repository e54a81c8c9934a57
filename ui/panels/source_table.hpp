#pragma once
// The rows of the tables of evidence that an answer rests on, each with a way to it.
#include <string>
#include <vector>

#include "ui/panels/row_table.hpp"

namespace endplate::evidence {
class DataPackage;
}

namespace endplate::ui {

class SourceTable : public RowTable {
  Q_OBJECT

 public:
  explicit SourceTable(QWidget* parent = nullptr);
  // `sources` as answers have them: ids of rows, and names of tables that were used as a whole,
  // which have no row behind them.
  void show_sources(const std::vector<std::string>& sources, const evidence::DataPackage& package);
};

}  // namespace endplate::ui
