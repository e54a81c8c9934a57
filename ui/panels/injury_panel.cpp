#include "ui/panels/injury_panel.hpp"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "models/casefile/words.hpp"
#include "models/examination/case_check.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/place_editor.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

InjuryPanel::InjuryPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What is injured, where and how?"), Kind::entry, Body::scrolls,
            {Question::check}, parent) {
  add_flags();
  add_list();
  add_form();
  problems_ = paragraph({}, this);
  problems_->setObjectName("problems");
  body()->addWidget(problems_);
  body()->addStretch(1);
}

void InjuryPanel::add_flags() {
  body()->addWidget(heading(tr("Red flags: what cannot wait"), this));
  auto* grid = new QGridLayout;
  int at = 0;
  for (const std::string_view flag : casefile::kRedFlags) {
    auto* box = new QCheckBox(red_flag_words(flag), this);
    grid->addWidget(box, at / 2, at % 2);
    ++at;
    const std::string name(flag);
    connect(box, &QCheckBox::clicked, this, [this, name](bool on) { set_flag(name, on); });
    flags_.emplace(name, box);
  }
  body()->addLayout(grid);
}

void InjuryPanel::add_list() {
  body()->addWidget(heading(tr("Injuries"), this));
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Injuries"));
  list_->setWordWrap(true);
  list_->setMaximumHeight(74);
  auto* buttons = new QHBoxLayout;
  auto* add = new QPushButton(tr("Add an injury"), this);
  auto* take = new QPushButton(tr("Remove this injury"), this);
  add->setObjectName("add injury");
  buttons->addWidget(add);
  buttons->addWidget(take);
  buttons->addStretch(1);
  body()->addWidget(list_);
  body()->addLayout(buttons);
  connect(list_, &QListWidget::currentRowChanged, this, &InjuryPanel::show_injury);
  connect(add, &QPushButton::clicked, this, [this] {
    const std::size_t count = desk_.document.count("/injuries");
    // What is known of the last injury is often true of the next: the day and how it came about.
    Json injury = Json::object();
    if (count > 0) {
      const Json* last = desk_.document.at("/injuries/" + std::to_string(count - 1));
      for (const char* key : {"mechanism", "date"}) {
        if (last->contains(key)) injury[key] = last->at(key);
      }
    }
    desk_.document.set("/injuries/" + std::to_string(count), injury, tr("add an injury"));
    list_->setCurrentRow(static_cast<int>(count));
    nerve_->setFocus();
  });
  connect(take, &QPushButton::clicked, this, [this] {
    if (shown_ >= 0) {
      desk_.document.remove("/injuries/" + std::to_string(shown_), tr("remove an injury"));
    }
  });
}

void InjuryPanel::add_form() {
  CaseDocument& document = desk_.document;
  form_ = new QWidget(this);
  auto* form = new QFormLayout(form_);
  form->setContentsMargins(0, 4, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
  const std::string first = "/injuries/0";
  nerve_ = new TermField(document, {first + "/nerve", tr("nerve")},
                         names_of(document.tables().terms.names(anatomy::TermKind::nerve)), this);
  place_ = new PlaceEditor(desk_, first + "/at", true, this);
  echo_ = paragraph({}, this);
  echo_->setObjectName("echo");
  echo_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
  mechanism_ =
      new ChoiceField(document, {first + "/mechanism", tr("mechanism")}, mechanism_choices(), this);
  grade_ = new ChoiceField(document, {first + "/grade", tr("grade")}, grade_choices(), this);
  extent_ = new ChoiceField(document, {first + "/complete", tr("complete or partial")},
                            extent_choices(), this);
  seen_ = new ChoiceField(document, {first + "/nerve_seen", tr("nerve seen")}, yes_or_no(), this);
  date_ = new DateField(document, {first + "/date", tr("date of injury")}, this);
  form->addRow(tr("Nerve"), nerve_);
  form->addRow(tr("Place"), place_);
  form->addRow(tr("In words"), echo_);
  form->addRow(tr("Mechanism"), mechanism_);
  form->addRow(tr("Grade"), grade_);
  form->addRow(tr("Palsy"), extent_);
  form->addRow(tr("Nerve seen"), seen_);
  form->addRow(tr("Date of injury"), date_);
  body()->addWidget(form_);
}

void InjuryPanel::set_flag(const std::string& flag, bool on) {
  desk_.document.edit(
      [&](Json& document) {
        Json flags = document.value("red_flags", Json::array());
        if (on) {
          flags.push_back(flag);
        } else {
          std::erase_if(flags.get_ref<Json::array_t&>(),
                        [&](const Json& one) { return one == flag; });
        }
        if (flags.empty()) {
          document.erase("red_flags");
        } else {
          document["red_flags"] = flags;
        }
      },
      tr("red flag"));
}

void InjuryPanel::show_injury(int index) {
  form_->setVisible(index >= 0);
  shown_ = index;
  if (index < 0) return;
  const std::string at = "/injuries/" + std::to_string(index);
  nerve_->set_pointer(at + "/nerve");
  place_->set_pointer(at + "/at");
  mechanism_->set_pointer(at + "/mechanism");
  grade_->set_pointer(at + "/grade");
  extent_->set_pointer(at + "/complete");
  seen_->set_pointer(at + "/nerve_seen");
  date_->set_pointer(at + "/date");
  show_answers();
}

void InjuryPanel::show_case() {
  for (const auto& [flag, box] : flags_) box->setChecked(false);
  for (std::size_t i = 0; i < desk_.document.count("/red_flags"); ++i) {
    const auto box = flags_.find(plain(desk_.document.text_at("/red_flags/" + std::to_string(i))));
    if (box != flags_.end()) box->second->setChecked(true);
  }
  const int count = static_cast<int>(desk_.document.count("/injuries"));
  const int row = std::min(std::max(shown_, 0), count - 1);
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (int i = 0; i < count; ++i) {
      const std::string at = "/injuries/" + std::to_string(i);
      QString name = desk_.document.text_at(at + "/nerve");
      for (const char* key : {"root", "trunk", "cord", "branch"}) {
        const QString value = desk_.document.text_at(at + "/at/" + key);
        if (value.isEmpty()) continue;
        name = std::string_view(key) == "branch" ? value : value + ' ' + key;
      }
      const QString date = desk_.document.text_at(at + "/date");
      list_->addItem(tr("%1. %2, %3")
                         .arg(i + 1)
                         .arg(name.isEmpty() ? tr("nerve not named") : name,
                              date.isEmpty() ? tr("date not known") : date));
    }
    list_->setCurrentRow(row);
  }
  show_injury(row);
  problems_->clear();
}

void InjuryPanel::show_answers() {
  const auto& held = desk_.answers.check();
  echo_->setText(QString());
  if (held.error) {
    problems_->setText(problem_words(held.error->problems));
    return;
  }
  const auto index = static_cast<std::size_t>(std::max(shown_, 0));
  if (held.answer == nullptr || held.stale || index >= held.answer->injuries.size()) return;
  const examination::PlacedInjury& injury = held.answer->injuries[index];
  echo_->setText(told(injury.what) + ", " + told(injury.words));
  QStringList warnings;
  for (const std::string& warning : held.answer->warnings) {
    warnings << tr("Warning: ") + told(warning);
  }
  if (desk_.document.read()) problems_->setText(warnings.join('\n'));
}

}  // namespace endplate::ui
