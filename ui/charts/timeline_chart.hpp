#pragma once
// When each muscle and skin area may return: an interval and its middle for every target, against
// months from the injury, with the days that matter drawn through.
#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/summary.hpp"

namespace endplate::ui {

struct TimelineRow {
  QString label;
  QString chance;                // of a useful result, as shown at the right
  std::optional<Summary> first;  // first movement, days from the injury
  std::optional<Summary> useful;
};

struct TimelineMark {
  double days = 0.0;
  QString label;
  bool today = false;
};

class TimelineChart : public QWidget {
  Q_OBJECT

 public:
  explicit TimelineChart(QWidget* parent = nullptr);
  void set(std::vector<TimelineRow> rows, std::vector<TimelineMark> marks,
           std::optional<casefile::Date> injury);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  int row_height() const;
  int head_height() const;
  double last_day() const;

  std::vector<TimelineRow> rows_;
  std::vector<TimelineMark> marks_;
  std::optional<casefile::Date> injury_;
};

}  // namespace endplate::ui
