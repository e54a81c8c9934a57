#include "ui/panels/corridor_page.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "models/incision/incision.hpp"
#include "ui/answers/answers.hpp"
#include "ui/app/settings.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"

namespace endplate::ui {
namespace {

using incision::Corridor;
using incision::CorridorPlace;

constexpr int kWidest_mm = static_cast<int>(incision::kWidest_mm);
constexpr int kUsual_mm = 20;
constexpr int kFarthest_mm = 20;
constexpr int kNear_mm = 5;
constexpr double kShown_mm = 10.0;  // rows stand so far apart

// Of the cut, as one looks along it from outside: this holds in every pose of the limb.
QString side_words(double offset_mm) {
  return offset_mm > 0.0 ? CorridorPage::tr("to its right") : CorridorPage::tr("to its left");
}

}  // namespace

CorridorPage::CorridorPage(Desk desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 6, 0, 0);
  auto* row = new QHBoxLayout;
  on_ = new QCheckBox(tr("Look for the line of least risk"), this);
  const auto spin = [&](const QString& before, const QString& name, int least, int most,
                        int usual) {
    auto* box = new QSpinBox(this);
    box->setPrefix(before + ' ');
    box->setSuffix(tr(" mm"));
    box->setRange(least, most);
    box->setValue(usual);
    box->setAccessibleName(name);
    box->setEnabled(false);
    box->setKeyboardTracking(false);
    connect(on_, &QCheckBox::toggled, box, &QSpinBox::setEnabled);
    connect(box, &QSpinBox::valueChanged, this, &CorridorPage::changed);
    return box;
  };
  beside_ =
      spin(tr("beside the cut by"), tr("How far beside the cut, mm"), 1, kWidest_mm, kUsual_mm);
  within_ = spin(tr("nerve within"), tr("How near a nerve counts, mm"), 1, kFarthest_mm, kNear_mm);
  row->addWidget(on_);
  row->addWidget(beside_);
  row->addWidget(within_);
  row->addStretch(1);
  all->addLayout(row);
  words_ = paragraph({}, this);
  words_->setObjectName("corridor");
  all->addWidget(words_);
  places_ = new RowTable(tr("Line of least risk"), this);
  all->addWidget(places_, 1);
  connect(on_, &QCheckBox::toggled, this, &CorridorPage::changed);
}

void CorridorPage::write(IncisionRequest& request) const {
  if (!on_->isChecked()) return;
  request.corridor_mm = beside_->value();
  request.corridor_within_mm = within_->value();
}

void CorridorPage::forget() {
  const QSignalBlocker quiet(this);
  on_->setChecked(false);
  beside_->setValue(kUsual_mm);
  within_->setValue(kNear_mm);
}

QString CorridorPage::words(const incision::IncisionAnswer& answer) const {
  const Corridor& corridor = *answer.corridor;
  const Settings& settings = desk_.settings;
  QString words = tr("A modelled nerve within %1 mm anywhere along the cut: %2.")
                      .arg(answer.corridor_within_mm)
                      .arg(chance_words(corridor.wanted_chance));
  words += ' ';
  if (!corridor.moved) return words + tr("No line beside it has less.");
  const auto most = std::ranges::max_element(
      corridor.places, {}, [](const CorridorPlace& place) { return std::abs(place.offset_mm); });
  const auto at = static_cast<std::size_t>(most - corridor.places.begin());
  return words + tr("On the line of least risk: %1. It leaves the cut by up to %2 %3 %4, %5 %3 "
                    "along, and ends where the cut ends.")
                     .arg(chance_words(corridor.chance), settings.length(std::abs(most->offset_mm)),
                          settings.unit(), side_words(most->offset_mm),
                          settings.length(corridor.line.stations[at].along_mm));
}

void CorridorPage::show_answer(const incision::IncisionAnswer* answer) {
  const bool any = answer != nullptr && answer->corridor.has_value();
  places_->setVisible(any);
  if (!any) {
    const bool track = answer != nullptr && answer->kind != casefile::CutKind::line;
    words_->setText(on_->isChecked() && track ? tr("Nothing but a line over the skin has one.")
                                              : QString());
    return;
  }
  const Corridor& corridor = *answer->corridor;
  words_->setText(words(*answer) + '\n' +
                  tr("Length, scar, tension and what has to be reached are not weighed, nor what "
                     "is not in the model. The least of many chances is a little too low."));
  const Settings& settings = desk_.settings;
  const auto room = [&](const incision::Room& to) {
    const QString mm = settings.length(to.mm);
    return Cell(to.to_edge ? tr("%1 or more").arg(mm) : mm, to.mm);
  };
  std::vector<Cells> rows;
  double next_mm = 0.0;
  for (std::size_t k = 0; k < corridor.places.size(); ++k) {
    const CorridorPlace& place = corridor.places[k];
    const double along_mm = corridor.line.stations[k].along_mm;
    if (along_mm < next_mm && k + 1 < corridor.places.size()) continue;
    next_mm = along_mm + kShown_mm;
    const bool off = place.offset_mm != 0.0;
    rows.push_back({{settings.length(along_mm), along_mm},
                    {off ? tr("%1 %2").arg(settings.length(std::abs(place.offset_mm)),
                                           side_words(place.offset_mm))
                         : tr("on the cut"),
                     std::abs(place.offset_mm)},
                    {chance_words(place.chance), place.chance},
                    room(place.to_left),
                    room(place.to_right)});
  }
  places_->set({{tr("Along, %1").arg(settings.unit()), true},
                {tr("Beside the cut, %1").arg(settings.unit()), false, true},
                {tr("Nerve near"), true, false, tr("Chance of a nerve near this place alone")},
                {tr("Room left, %1").arg(settings.unit()), true, false,
                 tr("As one looks along the cut: so far it may move before a nerve is near in more "
                    "than one limb of twenty")},
                {tr("Room right, %1").arg(settings.unit()), true, false,
                 tr("As one looks along the cut: so far it may move before a nerve is near in more "
                    "than one limb of twenty")}},
               std::move(rows));
}

}  // namespace endplate::ui
