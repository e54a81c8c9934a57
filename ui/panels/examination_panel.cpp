#include "ui/panels/examination_panel.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "models/casefile/words.hpp"
#include "models/examination/case_deficit.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/area_fields.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/finding_table.hpp"
#include "ui/panels/item_list.hpp"
#include "ui/panels/place_editor.hpp"
#include "ui/panels/test_editors.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QString expected_words(examination::MuscleState state) {
  switch (state) {
    case examination::MuscleState::intact:
      return ExaminationPanel::tr("intact");
    case examination::MuscleState::may_be_weak:
      return ExaminationPanel::tr("may be weak");
    case examination::MuscleState::partial:
      return ExaminationPanel::tr("partial");
    case examination::MuscleState::denervated:
      return ExaminationPanel::tr("denervated");
  }
  return {};
}

QString expected_words(examination::AreaState state) {
  switch (state) {
    case examination::AreaState::intact:
      return ExaminationPanel::tr("intact");
    case examination::AreaState::reduced:
      return ExaminationPanel::tr("reduced");
    case examination::AreaState::absent:
      return ExaminationPanel::tr("absent");
  }
  return {};
}

// What stands beside the state of an area; a grade may itself be what was found.
QString more_words(const FindingRow& row, const AreaDetail& detail) {
  QStringList parts;
  const QString grade = text_of(detail.s_grade);
  const QString distance = text_of(detail.two_point_mm);
  if (!grade.isEmpty() && grade != row.found) parts << grade;
  if (!distance.isEmpty() && distance + " mm" != row.found) {
    parts << ExaminationPanel::tr("%1 mm").arg(distance);
  }
  return parts.join(", ");
}

}  // namespace

ExaminationPanel::ExaminationPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What was found?"), Kind::entry, Body::fills, {Question::deficit}, parent) {
  connect(&desk_.document, &CaseDocument::another_opened, this,
          [this] { visit_ = "/examination"; });
  add_visits();
  auto* keys = paragraph(
      tr("Keys: muscle 0 to 5, then + or - for 4+ and 4-; area N normal, R reduced, A absent, "
         "H hyperaesthetic; sign P present, A absent; Delete: not examined; Space: next."),
      this);
  auto* tabs = new QTabWidget(this);
  tabs->setDocumentMode(true);
  auto* page = new QWidget(tabs);
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(keys);
  table_ = new FindingTable(page);
  layout->addWidget(table_, 1);
  tabs->addTab(page, tr("Power, feeling and signs"));
  body()->addWidget(tabs, 1);
  connect(table_, &FindingTable::subject_chosen, this, &Panel::subject_chosen);
  connect(table_, &FindingTable::entered, this,
          [this](FindingKind kind, const std::string& name, const QString& value) {
            desk_.document.edit(
                [&](Json& document) {
                  Json& visit = document[Json::json_pointer(visit_)];
                  if (!visit.is_object()) visit = Json::object();
                  set_finding(visit, kind, name, plain(value), desk_.document.tables().terms);
                },
                tr("finding of %1").arg(text_of(name)));
          });
  area_ = new AreaFields(desk_, page);
  layout->addWidget(area_);
  connect(table_, &FindingTable::row_changed, this, &ExaminationPanel::show_area);
  summary_ = paragraph({}, this);
  layout->addWidget(summary_);
  tabs->addTab(add_tinel(), tr("Tinel sign"));
  ranges_ = new RangeEditor(desk_, this);
  tabs->addTab(ranges_, tr("Movement"));
  studies_ = new StudyEditor(desk_, this);
  tabs->addTab(studies_, tr("EMG"));
}

void ExaminationPanel::add_visits() {
  auto* row = new QHBoxLayout;
  visits_ = new QComboBox(this);
  visits_->setAccessibleName(tr("Visit"));
  date_ = new DateField(desk_.document, {visit_ + "/date", tr("date of the visit")}, this);
  auto* add = new QPushButton(tr("Add a visit"), this);
  all_ = new QCheckBox(tr("all muscles and areas"), this);
  row->addWidget(visits_);
  row->addWidget(date_);
  row->addWidget(add);
  row->addStretch(1);
  row->addWidget(all_);
  body()->addLayout(row);
  connect(all_, &QCheckBox::toggled, this, [this] { show_visit(); });
  connect(visits_, &QComboBox::activated, this, [this](int index) {
    visit_ = index == 0 ? "/examination" : "/observations/" + std::to_string(index - 1);
    show_visit();
  });
  connect(add, &QPushButton::clicked, this, [this] {
    const auto count = desk_.document.count("/observations");
    visit_ = "/observations/" + std::to_string(count);
    desk_.document.set(visit_, Json::object(), tr("add a visit"));
    date_->setFocus();
  });
}

QWidget* ExaminationPanel::add_tinel() {
  auto* page = new QWidget(this);
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(heading(tr("Tinel sign at this visit"), page));
  tinel_ = new ItemList(
      desk_, visit_ + "/tinel", tr("Tinel point"),
      [this](const std::string& at) {
        const QString nerve = desk_.document.text_at(at + "/nerve");
        const QString offset = desk_.document.text_at(at + "/at/offset_mm");
        return tr("%1, %2 mm %3 to the %4")
            .arg(nerve.isEmpty() ? tr("nerve not named") : nerve, offset.isEmpty() ? "0" : offset,
                 desk_.document.text_at(at + "/at/toward"),
                 desk_.document.text_at(at + "/at/landmark"));
      },
      "{}", this);
  layout->addWidget(tinel_);
  tinel_form_ = new QWidget(this);
  auto* form = new QFormLayout(tinel_form_);
  form->setContentsMargins(0, 0, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  const std::string at = visit_ + "/tinel/0";
  tinel_nerve_ =
      new TermField(desk_.document, {at + "/nerve", tr("nerve of the Tinel sign")},
                    names_of(desk_.document.tables().terms.names(anatomy::TermKind::nerve)), this);
  tinel_place_ = new PlaceEditor(desk_, at + "/at", false, this);
  form->addRow(tr("Nerve"), tinel_nerve_);
  form->addRow(tr("Place"), tinel_place_);
  layout->addWidget(tinel_form_);
  layout->addStretch(1);
  connect(tinel_, &ItemList::chosen_changed, this, [this] {
    const std::string chosen = tinel_->chosen_pointer();
    tinel_form_->setVisible(!chosen.empty());
    if (chosen.empty()) return;
    tinel_nerve_->set_pointer(chosen + "/nerve");
    tinel_place_->set_pointer(chosen + "/at");
  });
  return page;
}

// What the injury touches and what was examined at any visit; the rest on request.
std::vector<FindingRow> ExaminationPanel::rows() const {
  const CaseTables& tables = desk_.document.tables();
  const Json* visit = desk_.document.at(visit_);
  const Json nothing = Json::object();
  const Json& now = visit == nullptr ? nothing : *visit;
  const auto& deficit = desk_.answers.deficit();
  std::map<std::string, QString> expected;
  std::map<std::string, bool> touched;
  if (deficit.answer != nullptr) {
    for (const auto& muscle : deficit.answer->answer.muscles) {
      const std::string& id = tables.anatomy.muscles()[muscle.muscle].id;
      expected[id] = expected_words(muscle.state);
      touched[id] = muscle.state != examination::MuscleState::intact;
    }
    for (const auto& area : deficit.answer->answer.areas) {
      const std::string& name = tables.anatomy.areas()[area.area].name;
      expected[name] = expected_words(area.state);
      touched[name] = area.state != examination::AreaState::intact;
    }
  }
  // Without an injury nothing is known to be touched, and everything may matter.
  const bool touches = deficit.answer != nullptr;
  std::map<std::string, bool> examined;
  const auto note = [&](const Json* of) {
    if (of == nullptr) return;
    for (const FindingKind kind : {FindingKind::muscle, FindingKind::area, FindingKind::sign}) {
      for (const auto& [name, value] : findings(*of, kind, tables.terms)) examined[name] = true;
    }
  };
  note(desk_.document.at("/examination"));
  for (std::size_t i = 0; i < desk_.document.count("/observations"); ++i) {
    note(desk_.document.at("/observations/" + std::to_string(i)));
  }

  auto details = area_details(now, tables.terms);
  std::vector<FindingRow> list;
  const auto add = [&](FindingKind kind, const std::string& name, const QString& shown,
                       const std::map<std::string, std::string>& found, bool always) {
    if (!always && !all_->isChecked() && touches && !touched[name] && !examined.contains(name))
      return;
    const auto at = found.find(name);
    list.push_back({false, kind, name, shown, expected[name],
                    at == found.end() ? QString() : text_of(at->second)});
    if (kind == FindingKind::area) list.back().more = more_words(list.back(), details[name]);
  };
  list.push_back({true, FindingKind::muscle, {}, tr("Muscles: power, M0 to M5"), {}, {}});
  const auto muscles = findings(now, FindingKind::muscle, tables.terms);
  for (const anatomy::Muscle& muscle : tables.anatomy.muscles()) {
    const QString part = muscle.part == "whole" ? QString() : ", " + told(muscle.part);
    add(FindingKind::muscle, muscle.id, text_of(muscle.id) + "  " + told(muscle.name) + part,
        muscles, false);
  }
  list.push_back({true, FindingKind::area, {}, tr("Skin: feeling"), {}, {}});
  const auto areas = findings(now, FindingKind::area, tables.terms);
  for (const anatomy::SkinArea& area : tables.anatomy.areas()) {
    const QString star = area.autonomous_zone.empty() ? QString() : " *";
    add(FindingKind::area, area.name, told(area.name) + star, areas, false);
  }
  list.push_back({true, FindingKind::sign, {}, tr("Signs"), {}, {}});
  const auto signs = findings(now, FindingKind::sign, tables.terms);
  for (const std::string_view sign : casefile::kSigns) {
    add(FindingKind::sign, std::string(sign), told(sign), signs, true);
  }
  return list;
}

void ExaminationPanel::show_visit() {
  std::vector<FindingRow> list = rows();
  int seen = 0;
  int open = 0;
  for (const FindingRow& row : list) {
    if (row.head || row.kind == FindingKind::sign) continue;
    ++(row.found.isEmpty() ? open : seen);
  }
  table_->set(std::move(list));
  show_area();
  summary_->setText(
      tr("%1 muscles and areas of this list examined, %2 not examined. Not examined is not taken "
         "as normal. * area with an autonomous zone.")
          .arg(seen)
          .arg(open));
  date_->set_pointer(visit_ + "/date");
  tinel_->set_pointer(visit_ + "/tinel");
  tinel_->refresh();
  ranges_->set_visit(visit_);
  studies_->refresh();
}

void ExaminationPanel::show_area() {
  const int at = table_->currentRow();
  const auto& list = table_->rows();
  const bool any = at >= 0 && static_cast<std::size_t>(at) < list.size();
  const FindingRow none;
  const FindingRow& row = any ? list[static_cast<std::size_t>(at)] : none;
  const bool area = !row.head && row.kind == FindingKind::area;
  area_->show_area(visit_, area ? row.name : std::string());
}

void ExaminationPanel::show_case() {
  const auto count = desk_.document.count("/observations");
  if (visit_ != "/examination" && desk_.document.at(visit_) == nullptr) visit_ = "/examination";
  visits_->clear();
  const auto dated = [&](const QString& words, const std::string& at) {
    const QString date = desk_.document.text_at(at + "/date");
    return date.isEmpty() ? words : words + ", " + date;
  };
  visits_->addItem(dated(tr("First examination"), "/examination"));
  for (std::size_t i = 0; i < count; ++i) {
    visits_->addItem(dated(tr("Later visit %1").arg(i + 1), "/observations/" + std::to_string(i)));
    if (visit_ == "/observations/" + std::to_string(i)) {
      visits_->setCurrentIndex(static_cast<int>(i) + 1);
    }
  }
  show_visit();
}

void ExaminationPanel::point_out(const QStringList& names) {
  table_->point_out(names);
}

void ExaminationPanel::show_answers() {
  show_visit();
}

}  // namespace endplate::ui
