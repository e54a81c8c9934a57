#pragma once
// A chance against a quantity: the closing window of an operation, the risk along a cut.
#include <QPointF>
#include <QString>
#include <QWidget>
#include <vector>

namespace endplate::ui {

struct CurveMark {
  double at = 0.0;
  QString label;
  bool strong = false;
};

class CurveChart : public QWidget {
  Q_OBJECT

 public:
  explicit CurveChart(const QString& name, QWidget* parent = nullptr);

  // `points`: x in `unit`, y a chance of 0 to 1. `shade_from`: beyond it the ground is hatched.
  void set(std::vector<QPointF> points, const QString& unit, std::vector<CurveMark> marks,
           double shade_from);
  QSize sizeHint() const override { return {520, 240}; }
  QSize minimumSizeHint() const override { return {360, 200}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<QPointF> points_;
  QString unit_;
  std::vector<CurveMark> marks_;
  double shade_from_ = 0.0;
};

}  // namespace endplate::ui
