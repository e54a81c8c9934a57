#pragma once
// Studies one below the other with their intervals, then what they say together.
#include <QString>
#include <QWidget>
#include <vector>

namespace endplate::ui {

struct ForestRow {
  enum class Kind { study, pooled, spread } kind = Kind::study;
  QString label;
  double centre = 0.0;
  double low = 0.0;
  double high = 0.0;
  double weight = 0.0;  // of a study, 0 to 1
  QString figures;      // at the right
};

class ForestChart : public QWidget {
  Q_OBJECT

 public:
  explicit ForestChart(QWidget* parent = nullptr);
  void set(std::vector<ForestRow> rows, const QString& unit);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {420, sizeHint().height()}; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  int row_height() const { return fontMetrics().height() + 8; }
  std::vector<ForestRow> rows_;
  QString unit_;
};

}  // namespace endplate::ui
