#include "ui/panels/evidence_panel.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>
#include <cmath>

#include "models/evidence/evidence_answer.hpp"
#include "models/evidence/proportion.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/charts/forest_chart.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using namespace endplate::evidence;
constexpr double k90_sd = 1.645;  // half of a 90 per cent interval of a normal distribution
constexpr std::size_t kMostRows = 400;

QString round_text(double value, int digits = 0) {
  const double scale = std::pow(10.0, digits);
  return QString::number(std::round(value * scale) / scale + 0.0, 'f', digits);
}

QString range_words(const Interval& interval) {
  return EvidencePanel::tr("%1 to %2").arg(round_text(interval.low), round_text(interval.high));
}

// Shown in the direction of the pooled mean, so that a distal distance is positive.
struct Facing {
  double sign = 1.0;
  QString unit = "mm";
  Interval turned(const Interval& i) const { return sign < 0.0 ? Interval{-i.high, -i.low} : i; }
};

Facing facing(const QuantityAnswer& answer) {
  Facing result;
  const double mean = answer.pooled ? answer.pooled->estimate.mean : 0.0;
  const auto axis = answer.quantity.axis;
  const bool has_sign = axis == Axis::axial || axis == Axis::transverse || axis == Axis::sagittal;
  if (has_sign && mean < 0.0) result.sign = -1.0;
  const auto direction = direction_word(axis, mean);
  if (!direction.empty()) result.unit += ' ' + told(direction);
  return result;
}

}  // namespace

EvidencePanel::EvidencePanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What stands behind a number?"), Kind::result, Body::fills,
            {Question::evidence}, parent) {
  auto* row = new QHBoxLayout;
  words_ = new QLineEdit(this);
  words_->setAccessibleName(tr("Words or the id of a row"));
  words_->setPlaceholderText(tr("words, such as posterior interosseous, or the id of a row"));
  table_ = new QComboBox(this);
  table_->setAccessibleName(tr("Table"));
  table_->addItem(tr("all tables"), QString());
  for (const auto& [name, table] : desk_.document.tables().package.tables()) {
    if (table.has_column("id") && table.has_column("provenance")) {
      table_->addItem(text_of(name), text_of(name));
    }
  }
  auto* search = new QPushButton(tr("Search"), this);
  row->addWidget(words_, 1);
  row->addWidget(table_);
  row->addWidget(search);
  body()->addLayout(row);
  count_ = paragraph({}, this);
  body()->addWidget(count_);
  split_ = new QSplitter(Qt::Vertical, this);
  split_->setChildrenCollapsible(false);
  quantities_ = new RowTable(tr("Quantities"), split_);
  split_->addWidget(quantities_);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 4, 4, 0);
  pooled_ = paragraph({}, page);
  forest_ = new ForestChart(page);
  rows_ = new RowTable(tr("Published rows"), page);
  rows_->set_whole(true);
  layout->addWidget(pooled_);
  layout->addWidget(forest_);
  layout->addWidget(rows_);
  layout->addStretch(1);
  auto* scroll = new QScrollArea(split_);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(page);
  split_->addWidget(scroll);
  split_->setStretchFactor(0, 1);
  split_->setStretchFactor(1, 2);
  body()->addWidget(split_, 1);
  connect(search, &QPushButton::clicked, this, &EvidencePanel::ask);
  connect(words_, &QLineEdit::returnPressed, this, &EvidencePanel::ask);
  connect(table_, &QComboBox::activated, this, &EvidencePanel::ask);
  connect(quantities_, &RowTable::chosen_changed, this, &EvidencePanel::show_quantity);
}

void EvidencePanel::ask() {
  EvidenceRequest request;
  request.words = plain(words_->text().trimmed());
  request.table = plain(table_->currentData().toString());
  desk_.answers.set_evidence(request);
}

void EvidencePanel::ask_row(const QString& id) {
  words_->setText(id);
  EvidenceRequest request;
  request.id = plain(id);
  desk_.answers.set_evidence(request);
}

void EvidencePanel::show_answers() {
  const auto& held = desk_.answers.evidence();
  split_->setVisible(held.answer != nullptr);
  if (held.answer == nullptr) {
    count_->clear();
    return;
  }
  const EvidenceAnswer& answer = *held.answer;
  std::vector<Cells> list;
  for (const QuantityAnswer& one : answer.distances) {
    const Facing face = facing(one);
    list.push_back(
        {{text_of(one.quantity.name())},
         {one.pooled ? QString::number(one.pooled->studies.size()) : "0",
          one.pooled ? static_cast<int>(one.pooled->studies.size()) : 0},
         {one.pooled ? round_text(face.sign * one.pooled->estimate.mean) + ' ' + face.unit
                     : tr("not pooled")},
         {one.pooled ? range_words(face.turned(one.pooled->limb_interval(kEvidenceLevel)))
                     : QString(),
          {},
          tr("A single limb, 90 in 100")}});
  }
  for (const ShareAnswer& one : answer.shares) {
    const Interval none;
    const Interval& interval = one.pooled ? one.pooled->pooled.new_study_interval : none;
    list.push_back(
        {{text_of(one.quantity.name)},
         {one.pooled ? QString::number(one.pooled->counts.size()) : "0",
          one.pooled ? static_cast<int>(one.pooled->counts.size()) : 0},
         {one.pooled ? round_text(100.0 * one.pooled->pooled.share) + " %" : tr("not pooled")},
         {one.pooled ? range_words({100.0 * interval.low, 100.0 * interval.high}) + " %"
                     : QString(),
          {},
          tr("A new study, 90 in 100")}});
  }
  for (const TableRow& one : answer.rows) {
    if (list.size() > kMostRows) break;
    list.push_back(
        {{text_of(one.table) + ": " + text_of(one.cell("id")) + "  " + text_of(one.cell("study"))},
         {"", 0},
         {tr("a row as it stands")},
         {}});
  }
  count_->setText(
      tr("Either side: published figures hold for both. %1 quantities, %2 rows of tables "
         "that are not pooled. Intervals: 90 in 100.")
          .arg(answer.distances.size() + answer.shares.size())
          .arg(answer.rows.size()));
  quantities_->set({{tr("Quantity"), false, true},
                    {tr("Studies"), true},
                    {tr("Pooled"), true},
                    {tr("Range"), true, false, tr("A single limb, or a new study")}},
                   std::move(list));
  if (quantities_->rows().rowCount() > 0) quantities_->choose(0);
  show_quantity(quantities_->chosen());
}

void EvidencePanel::show_quantity(int row) {
  const auto& held = desk_.answers.evidence();
  pooled_->clear();
  forest_->hide();
  rows_->hide();
  if (held.answer == nullptr || row < 0) return;
  auto at = static_cast<std::size_t>(row);
  const EvidenceAnswer& answer = *held.answer;
  if (at < answer.distances.size()) return show_distance(at);
  at -= answer.distances.size();
  if (at < answer.shares.size()) return show_share(at);
  at -= answer.shares.size();
  if (at < answer.rows.size()) show_table_row(at);
}

void EvidencePanel::show_distance(std::size_t at) {
  const QuantityAnswer& one = desk_.answers.evidence().answer->distances[at];
  const Facing face = facing(one);
  std::vector<Cells> rows;
  for (const Measurement& row : one.quantity.rows) {
    const auto figure = [](const std::optional<double>& value, double sign, int digits) {
      return value ? Cell(round_text(sign * *value, digits), sign * *value) : Cell("", -1e9);
    };
    rows.push_back({{text_of(row.id)},
                    {text_of(row.study)},
                    figure(row.n, 1.0, 0),
                    figure(row.mean_mm, face.sign, 1),
                    figure(row.sd_mm, 1.0, 1),
                    {told(to_string(row.provenance))},
                    {told(row.left_out)}});
  }
  rows_->show();
  rows_->set({{tr("Row"), false, true},
              {tr("Study"), false, true},
              {tr("n"), true},
              {tr("Mean, mm"), true},
              {tr("SD, mm"), true},
              {tr("Known by")},
              {tr("Not pooled because"), false, true}},
             std::move(rows));
  if (!one.pooled) {
    pooled_->setText(tr("Nothing can be pooled."));
    return;
  }
  const PooledQuantity& pooled = *one.pooled;
  std::vector<ForestRow> lines;
  for (std::size_t i = 0; i < pooled.studies.size(); ++i) {
    const StudyEffect& study = pooled.studies[i];
    const double mean = face.sign * study.mean_mm;
    const double half = k90_sd * study.standard_error_mm;
    lines.push_back({ForestRow::Kind::study, text_of(study.study), mean, mean - half, mean + half,
                     pooled.weights[i],
                     tr("%1, %2 %").arg(round_text(mean), round_text(100.0 * pooled.weights[i]))});
  }
  const auto add = [&](ForestRow::Kind kind, const QString& label, const Interval& interval) {
    const Interval turned = face.turned(interval);
    lines.push_back({kind, label, face.sign * pooled.mixture.mean(), turned.low, turned.high, 0.0,
                     range_words(turned)});
  };
  add(ForestRow::Kind::pooled, tr("pooled mean"), pooled.mixture.mean_interval(kEvidenceLevel));
  add(ForestRow::Kind::spread, tr("mean of a new study"),
      pooled.mixture.new_study_interval(kEvidenceLevel));
  add(ForestRow::Kind::spread, tr("a single limb"), pooled.limb_interval(kEvidenceLevel));
  forest_->show();
  forest_->set(std::move(lines), face.unit);
  pooled_->setText(
      tr("%1: pooled mean %2 %3; 90 in 100 single limbs %4. Spread between studies %5 mm, between "
         "limbs %6 mm; I%7 %8 %.")
          .arg(text_of(one.quantity.name()), round_text(face.sign * pooled.estimate.mean, 1),
               face.unit, range_words(face.turned(pooled.limb_interval(kEvidenceLevel))),
               round_text(pooled.estimate.between_study_sd, 1),
               round_text(pooled.estimate.between_limb_sd, 1), QString::fromUtf8("\u00b2"),
               round_text(100.0 * pooled.reml.i_squared)));
}

void EvidencePanel::show_share(std::size_t at) {
  const ShareAnswer& one = desk_.answers.evidence().answer->shares[at];
  std::vector<Cells> rows;
  for (const ShareRow& row : one.quantity.rows) {
    rows.push_back(
        {{text_of(row.id)},
         {text_of(row.study)},
         {row.count ? round_text(row.count->events) : QString(),
          row.count ? row.count->events : -1.0},
         {row.n ? round_text(*row.n) : QString(), row.n.value_or(-1.0)},
         {row.share ? round_text(100.0 * *row.share, 1) : QString(), row.share.value_or(-1.0)},
         {told(to_string(row.provenance))},
         {told(row.left_out)}});
  }
  rows_->show();
  rows_->set({{tr("Row"), false, true},
              {tr("Study"), false, true},
              {tr("Events"), true},
              {tr("n"), true},
              {tr("Share, %"), true},
              {tr("Known by")},
              {tr("Not pooled because"), false, true}},
             std::move(rows));
  if (!one.pooled) {
    pooled_->setText(tr("Nothing can be pooled."));
    return;
  }
  const PooledShare& pooled = *one.pooled;
  double total = 0.0;
  for (const Count& count : pooled.counts) total += count.n;
  std::vector<ForestRow> lines;
  for (std::size_t i = 0; i < pooled.counts.size(); ++i) {
    const std::vector<Count> alone{pooled.counts[i]};
    const PooledProportion own = pool_proportions(alone, 0.0, kEvidenceLevel);
    lines.push_back(
        {ForestRow::Kind::study, text_of(pooled.studies[i]), 100.0 * own.share,
         100.0 * own.mean_interval.low, 100.0 * own.mean_interval.high, pooled.counts[i].n / total,
         tr("%1 of %2").arg(round_text(pooled.counts[i].events), round_text(pooled.counts[i].n))});
  }
  const auto add = [&](ForestRow::Kind kind, const QString& label, const Interval& interval) {
    const Interval shares{100.0 * interval.low, 100.0 * interval.high};
    lines.push_back({kind, label, 100.0 * pooled.pooled.share, shares.low, shares.high, 0.0,
                     range_words(shares)});
  };
  add(ForestRow::Kind::pooled, tr("pooled"), pooled.pooled.mean_interval);
  add(ForestRow::Kind::spread, tr("a new study"), pooled.pooled.new_study_interval);
  forest_->show();
  forest_->set(std::move(lines), "%");
  pooled_->setText(tr("%1: %2 % of a typical study; 90 in 100 new studies %3 %.")
                       .arg(text_of(one.quantity.name), round_text(100.0 * pooled.pooled.share, 1),
                            range_words({100.0 * pooled.pooled.new_study_interval.low,
                                         100.0 * pooled.pooled.new_study_interval.high})));
}

void EvidencePanel::show_table_row(std::size_t at) {
  const TableRow& row = desk_.answers.evidence().answer->rows[at];
  std::vector<Cells> cells;
  for (const auto& [column, cell] : row.cells)
    cells.push_back({{text_of(column)}, {text_of(cell)}});
  pooled_->setText(tr("A row of %1 as it stands.").arg(text_of(row.table)));
  rows_->show();
  rows_->set({{tr("Column")}, {tr("Cell"), false, true}}, std::move(cells));
}

}  // namespace endplate::ui
