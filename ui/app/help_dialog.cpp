#include "ui/app/help_dialog.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/panels/panel.hpp"

namespace endplate::ui {

HelpDialog::HelpDialog(QWidget* parent)
    : QDialog(parent), head_(heading({}, this)), words_(paragraph({}, this)) {
  setWindowTitle(tr("Help"));
  auto* all = new QVBoxLayout(this);
  all->addWidget(head_);
  all->addWidget(words_, 1);
  auto* close = new QPushButton(tr("Close"), this);
  all->addWidget(close, 0, Qt::AlignRight);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  resize(520, 340);
}

void HelpDialog::show_page(const QString& name, const QString& question) {
  head_->setText(question);
  words_->setText(page(name));
  show();
  raise();
}

QString HelpDialog::page(const QString& name) {
  if (name == "decision") {
    return tr(
        "The next step by the published rules of decision: red flags first, then how the "
        "injury came about, then what was found. Below it: by when, unless what, and why.\n\n"
        "Dates can be saved as a calendar; only the label goes into it. What no longer stands of a "
        "saved one can be taken back.\n\n"
        "'What would change this' names each single input that would lead to another step. "
        "'Not known yet' lists what the case leaves open.");
  }
  if (name == "patient") {
    return tr(
        "Side, sex, age and stature size the limb; every length that is measured on the "
        "patient counts more than any table.\n\nThe sliders move the joints within the "
        "largest published range. A joint that was not moved is not in the case.\n\n"
        "The table tells how big such a limb is and how far limbs like it differ.\n\n"
        "Measures of the other, sound arm say how long this one was. A point of a nerve that "
        "ultrasound found moves that nerve and its neighbours.");
  }
  if (name == "injury") {
    return tr(
        "Tick a red flag first: it outweighs everything else.\n\nEach injury has a nerve, a "
        "place and a mechanism. The place is given by a landmark and a distance along the "
        "limb, or as a root, trunk, cord or branch; 'In words' says how it was understood. "
        "A place outside its nerve is refused with the range that would do.\n\nLeave open "
        "what is not known: nothing is filled in silently.");
  }
  if (name == "examination") {
    return tr(
        "The list holds what this injury touches and what was examined before. Type: 0 to 5 "
        "for power, then + or - for 4+ and 4-; N, R, A or H for feeling; P or A for a sign. "
        "Delete takes a finding back to 'not examined'.\n\nA muscle that is not listed counts "
        "as not examined, never as normal. Later visits are kept apart, each with its date.\n\n"
        "S grade and two-point distance of the area that is chosen are entered below the list.");
  }
  if (name == "operations") {
    return tr(
        "What was done or is planned, step by step. A repair or graft starts the clock of "
        "regrowth anew on its date.\n\nWhat the patient needs most steers which transfers are "
        "combined; what is not available is never offered.");
  }
  if (name == "deficit") {
    return tr(
        "What such an injury paralyses and numbs, from the nerve tree alone, beside what was "
        "found. Movements that others keep up can hide a dead muscle.\n\nVariants to test for "
        "are those that would change this answer.");
  }
  if (name == "recovery") {
    return tr(
        "For every target the way, the time and the chance. A bar holds 90 in 100 of those "
        "whose axons grow; the chances count everyone.\n\nThe closing window shows how the "
        "chance of a useful result falls with the date of the operation. The Tinel sign is "
        "expected where the table says, if axons grow. Axons at a muscle are not movement.");
  }
  if (name == "transfer") {
    return tr(
        "Published transfers for what is lost, each with its donor's state, its reach and its "
        "verdict. A donor that was not examined is 'not judged', never feasible.\n\n'Together' "
        "holds the best set that can be done at once; 'Rejected' one reason for each of the "
        "others. Choose a row to see all of its reasons.");
  }
  if (name == "incision") {
    return tr(
        "Choose a standard approach, a cut of the case, or write marks of your own. The table "
        "gives for each nerve how near the cut comes and with what chance.\n\nPublished rules "
        "are quoted; each holds on its own side and in its own pose. Vessels and tendons are "
        "not in the model.\n\n'Corridor' looks for the line beside a cut with the least risk. "
        "'Of this case' holds the incisions that are saved with it.");
  }
  if (name == "plan") {
    return tr(
        "The options side by side: the first step, then the order of the trade. Published "
        "series let in different patients, so options are not ranked by their figures.\n\n"
        "Choose an option to see what it needs, brings and costs.");
  }
  if (name == "evidence") {
    return tr(
        "Search by words, by table or by the id of a row. For a quantity: the studies, their "
        "weights, what they say together, and every row behind it with how it was come by: "
        "read, recalled, common practice or assumed.");
  }
  return {};
}

std::vector<QString> TourDialog::steps() {
  return {tr("The questions stand on the left. Alt and a number opens one of them."),
          tr("Start with the patient and the injury. What you do not know you leave open."),
          tr("Enter the examination with one key for each muscle. Not examined is not normal."),
          tr("The decision says what next, by when, unless what. While it is being reckoned anew "
             "the last one stays, marked as not current."),
          tr("Every edit can be undone, and a safety copy is written every few seconds. F1 opens "
             "the help of the question in front of you.")};
}

TourDialog::TourDialog(QWidget* parent)
    : QDialog(parent),
      words_(paragraph({}, this)),
      back_(new QPushButton(tr("Back"), this)),
      next_(new QPushButton(this)) {
  setWindowTitle(tr("First steps"));
  auto* all = new QVBoxLayout(this);
  all->addWidget(words_, 1);
  auto* row = new QHBoxLayout;
  auto* leave = new QPushButton(tr("Leave"), this);
  row->addWidget(leave);
  row->addStretch(1);
  row->addWidget(back_);
  row->addWidget(next_);
  all->addLayout(row);
  next_->setDefault(true);
  connect(leave, &QPushButton::clicked, this, &QDialog::reject);
  connect(back_, &QPushButton::clicked, this, [this] { show_step(step_ - 1); });
  connect(next_, &QPushButton::clicked, this, [this] {
    if (step_ + 1 == static_cast<int>(steps().size())) return accept();
    show_step(step_ + 1);
  });
  resize(440, 170);
  show_step(0);
}

void TourDialog::show_step(int step) {
  const auto all = steps();
  step_ = qBound(0, step, static_cast<int>(all.size()) - 1);
  words_->setText(QString("%1 / %2\n\n%3")
                      .arg(step_ + 1)
                      .arg(all.size())
                      .arg(all[static_cast<std::size_t>(step_)]));
  back_->setEnabled(step_ > 0);
  next_->setText(step_ + 1 == static_cast<int>(all.size()) ? tr("Begin") : tr("Next"));
}

}  // namespace endplate::ui
