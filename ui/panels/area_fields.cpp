#include "ui/panels/area_fields.hpp"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <cmath>
#include <nlohmann/json.hpp>

#include "models/casefile/words.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/document/findings.hpp"
#include "ui/panels/fields.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

AreaFields::AreaFields(Desk desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  name_ = new QLabel(this);
  name_->setWordWrap(true);
  grade_ = new QComboBox(this);
  grade_->setObjectName("s grade");
  grade_->setAccessibleName(tr("S grade of the area"));
  grade_->addItem(tr("S grade not known"));
  for (const std::string_view grade : casefile::kSensoryGrades) grade_->addItem(text_of(grade));
  grade_->setFocusPolicy(Qt::StrongFocus);
  grade_->installEventFilter(this);
  distance_ = new QLineEdit(this);
  distance_->setObjectName("two points");
  distance_->setAccessibleName(tr("Two-point distance of the area, mm"));
  distance_->setPlaceholderText(tr("two points, mm"));
  distance_->setToolTip(tr("Two-point distance in mm; empty: not examined"));
  distance_->setValidator(number_or_nothing(distance_));
  distance_->setMaximumWidth(130);
  row->addWidget(name_, 1);
  row->addWidget(grade_);
  row->addWidget(distance_);
  connect(grade_, &QComboBox::activated, this, &AreaFields::enter_grade);
  connect(distance_, &QLineEdit::editingFinished, this, &AreaFields::enter_distance);
  show_area({}, {});
}

void AreaFields::show_area(const std::string& visit, const std::string& area) {
  visit_ = visit;
  area_ = area;
  const bool any = !area.empty();
  grade_->setEnabled(any);
  distance_->setEnabled(any);
  name_->setText(any ? tr("Also of the %1:").arg(text_of(area))
                     : tr("Choose a skin area for its S grade and two-point distance."));
  const AreaDetail detail = this->detail();
  // A grade that the list lacks is the file's; the models say what is wrong with it.
  grade_->setCurrentIndex(std::max(0, grade_->findText(text_of(detail.s_grade))));
  if (distance_->text() != text_of(detail.two_point_mm)) {
    distance_->setText(text_of(detail.two_point_mm));
  }
}

// A wheel must not change what was found.
bool AreaFields::eventFilter(QObject*, QEvent* event) {
  return event->type() == QEvent::Wheel;
}

AreaDetail AreaFields::detail() const {
  const Json* visit = area_.empty() ? nullptr : desk_.document.at(visit_);
  if (visit == nullptr) return {};
  const auto all = area_details(*visit, desk_.document.tables().terms);
  const auto found = all.find(area_);
  return found == all.end() ? AreaDetail() : found->second;
}

void AreaFields::enter(const char* key, const Json& value, const QString& what) {
  desk_.document.edit(
      [&](Json& document) {
        Json& visit = document[Json::json_pointer(visit_)];
        if (!visit.is_object()) visit = Json::object();
        set_area_detail(visit, area_, key, value, desk_.document.tables().terms);
      },
      what);
}

void AreaFields::enter_grade(int index) {
  const QString grade = index == 0 ? QString() : grade_->itemText(index);
  if (grade == text_of(detail().s_grade)) return;
  enter("s_grade", grade.isEmpty() ? Json() : Json(plain(grade)),
        tr("S grade of %1").arg(text_of(area_)));
}

void AreaFields::enter_distance() {
  const QString typed = distance_->text();
  if (area_.empty() || typed == text_of(detail().two_point_mm)) return;
  bool is_number = false;
  const double mm = QLocale::c().toDouble(typed, &is_number);
  if (!is_number && !typed.isEmpty()) return;
  const bool whole = mm == std::floor(mm) && std::abs(mm) < 1e9;
  const Json value = !is_number ? Json() : whole ? Json(static_cast<std::int64_t>(mm)) : Json(mm);
  enter("two_point_mm", value, tr("two-point distance of %1").arg(text_of(area_)));
}

}  // namespace endplate::ui
