#include "ui/app/scan_dialog.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// A file of landmarks beside the surface, by its name.
QString landmarks_beside(const QString& surface) {
  const QFileInfo info(surface);
  for (const char* ending : {".csv", "-landmarks.csv", "_landmarks.csv"}) {
    const QString path = info.path() + '/' + info.completeBaseName() + ending;
    if (QFileInfo::exists(path)) return path;
  }
  return {};
}

QString whole(double mm) {
  return QString::number(std::lround(mm));
}

// A size that may be far from an arm's.
QString roughly(double mm) {
  return mm < 10.0 ? QString::number(mm, 'g', 2) : whole(mm);
}

QString tenths(double mm) {
  return QString::number(mm, 'f', 1);
}

// The models name the options of the command line; here they are fields.
std::vector<Problem> by_fields(std::vector<Problem> problems) {
  for (Problem& problem : problems) {
    for (const auto& [option, field] :
         {std::pair<std::string, QString>("--scan-landmarks", ScanDialog::tr("Landmarks")),
          std::pair<std::string, QString>("--scan-unit", ScanDialog::tr("Unit"))}) {
      if (problem.place.starts_with(option)) {
        problem.place.replace(0, option.size(), plain(field));
      }
    }
  }
  return problems;
}

}  // namespace

ScanDialog::ScanDialog(Desk desk, QWidget* parent)
    : QDialog(parent), desk_(desk), runner_(desk.document) {
  setWindowTitle(tr("Fit the limb to a scan"));
  new QVBoxLayout(this);
  add_files();
  add_answer();
  auto* row = new QHBoxLayout;
  enter_ = new QPushButton(tr("&Enter the ticked lengths into the case"), this);
  enter_->setObjectName("enter");
  auto* leave = new QPushButton(tr("Close"), this);
  row->addWidget(enter_);
  row->addStretch(1);
  row->addWidget(leave);
  layout()->addItem(row);
  connect(enter_, &QPushButton::clicked, this, &ScanDialog::enter_lengths);
  connect(leave, &QPushButton::clicked, this, &QDialog::close);
  connect(&runner_, &ScanRunner::changed, this, &ScanDialog::refresh);
  connect(&desk_.document, &CaseDocument::changed, this, &ScanDialog::refresh);
  // What was scanned is one patient's.
  connect(&desk_.document, &CaseDocument::another_opened, this, [this] {
    runner_.forget();
    surface_->clear();
    landmarks_->clear();
    close();
  });
  resize(640, 620);
  refresh();
}

bool ScanDialog::is_surface(const QString& path) {
  const QString ending = QFileInfo(path).suffix().toLower();
  return QStringList{"ply", "obj", "stl", "off"}.contains(ending);
}

void ScanDialog::add_files() {
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  const auto file_row = [&](const QString& label, const QString& name, auto choose) {
    auto* row = new QHBoxLayout;
    auto* line = new QLineEdit(this);
    line->setReadOnly(true);
    line->setAccessibleName(label);
    line->setObjectName(name);
    auto* button = new QPushButton(tr("Choose..."), this);
    button->setAccessibleName(tr("Choose: %1").arg(label));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, choose);
    row->addWidget(line, 1);
    row->addWidget(button);
    form->addRow(label, row);
    return line;
  };
  surface_ = file_row(tr("Surface"), "surface", [this] { choose_surface(); });
  unit_ = new QComboBox(this);
  unit_->setObjectName("unit");
  unit_->setAccessibleName(tr("Unit of the surface"));
  form->addRow(tr("Unit"), unit_);
  landmarks_ = file_row(tr("Landmarks"), "landmarks", [this] { choose_landmarks(); });
  static_cast<QVBoxLayout*>(layout())->addLayout(form);
  layout()->addWidget(paragraph(
      tr("The arm alone, as PLY, OBJ or STL. The landmarks were picked on it: a CSV file that "
         "begins with landmark,x,y,z; four at least, better twelve, from the acromion to the hand "
         "and on all sides. The pose of the case should be that of the scan."),
      this));
  auto* row = new QHBoxLayout;
  fit_ = new QPushButton(tr("&Fit"), this);
  fit_->setObjectName("fit");
  fit_->setDefault(true);
  busy_ = new QProgressBar(this);
  busy_->setRange(0, 0);
  busy_->setTextVisible(false);
  row->addWidget(fit_);
  row->addWidget(busy_, 1);
  row->addStretch(1);
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
  told_ = paragraph({}, this);
  told_->setObjectName("told");
  layout()->addWidget(told_);
  connect(fit_, &QPushButton::clicked, this, &ScanDialog::start);
  connect(unit_, &QComboBox::currentIndexChanged, this, &ScanDialog::refresh);
}

void ScanDialog::add_answer() {
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  answer_ = new QWidget(scroll);
  auto* column = new QVBoxLayout(answer_);
  column->setContentsMargins(0, 0, 0, 0);
  head_ = heading({}, answer_);
  head_->setObjectName("head");
  words_ = paragraph({}, answer_);
  words_->setObjectName("words");
  warnings_ = paragraph({}, answer_);
  warnings_->setObjectName("warnings");
  column->addWidget(head_);
  column->addWidget(words_);
  column->addWidget(warnings_);
  column->addWidget(heading(tr("Lengths on the scan"), answer_));
  lengths_ = new QVBoxLayout;
  column->addLayout(lengths_);
  column->addWidget(paragraph(
      tr("The case takes lengths alone, as exact; the shape of the scan stays outside it."),
      answer_));
  column->addWidget(heading(tr("Landmarks, as picked and as fitted"), answer_));
  residuals_ = new RowTable(tr("Landmarks"), answer_);
  residuals_->set_whole(true);
  column->addWidget(residuals_);
  column->addStretch(1);
  scroll->setWidget(answer_);
  static_cast<QVBoxLayout*>(layout())->addWidget(scroll, 1);
  caution_ = paragraph(caution_words(), this);
  layout()->addWidget(caution_);
}

void ScanDialog::open_surface(const QString& path) {
  surface_->setText(path);
  if (landmarks_->text().isEmpty()) landmarks_->setText(landmarks_beside(path));
  runner_.look(path);
  unit_->clear();
}

void ScanDialog::open_landmarks(const QString& path) {
  landmarks_->setText(path);
  refresh();
}

void ScanDialog::choose_surface() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Open a scan"), {}, tr("Surfaces (*.ply *.obj *.stl);;All files (*)"));
  if (!path.isEmpty()) open_surface(path);
}

void ScanDialog::choose_landmarks() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Open landmarks"), QFileInfo(surface_->text()).path(),
                                   tr("Landmarks (*.csv);;All files (*)"));
  if (!path.isEmpty()) open_landmarks(path);
}

// No file names its unit, so it is chosen by whoever knows the arm; the size in each helps.
void ScanDialog::show_units() {
  if (!runner_.looked() || unit_->count() > 0) return;
  const scan::ScanLook& look = *runner_.looked();
  unit_->addItem(tr("choose: no file says it"));
  for (const geometry::LengthUnit unit : geometry::kLengthUnits) {
    const QString word = text_of(scan::to_string(unit));
    const double across_mm = look.diagonal * geometry::mm_per(unit);
    QString shown = tr("%1: it is %2 mm across").arg(word, roughly(across_mm));
    if (look.likely == unit) shown += tr(", as an arm is");
    unit_->addItem(shown, word);
  }
}

void ScanDialog::start() {
  scan::ScanRequest request;
  request.surface = plain(surface_->text());
  request.unit = scan::unit_from(plain(unit_->currentData().toString()));
  request.landmarks = plain(landmarks_->text());
  entered_ = false;
  runner_.fit(request);
}

void ScanDialog::refresh() {
  show_units();
  const bool running = runner_.is_running();
  busy_->setVisible(running);
  fit_->setEnabled(!running && runner_.looked() && unit_->currentIndex() > 0 &&
                   !landmarks_->text().isEmpty());
  const auto& answer = runner_.answer();
  const bool current = answer != nullptr && runner_.is_current();
  if (answer == nullptr) shown_ = false;
  if (answer != nullptr && !shown_) show_answer(*answer);
  answer_->setVisible(answer != nullptr);
  caution_->setVisible(answer != nullptr);
  answer_->setEnabled(current || entered_);
  enter_->setEnabled(current && !running && std::ranges::any_of(boxes_, [](const QCheckBox* box) {
                       return box != nullptr && box->isChecked();
                     }));
  if (running) {
    told_->setText(runner_.looked() ? tr("Being fitted; this takes some seconds.")
                                    : tr("Being read."));
  } else if (runner_.error()) {
    told_->setText(problem_words(by_fields(runner_.error()->problems)));
  } else if (answer != nullptr && !current) {
    told_->setText(entered_
                       ? tr("The lengths are in the case; one undo takes them back.")
                       : tr("The limb of the case was changed since: fit again for its lengths."));
  } else if (surface_->text().isEmpty()) {
    told_->setText(tr("Choose a surface, or drop one on the window."));
  } else if (answer == nullptr && landmarks_->text().isEmpty()) {
    told_->setText(tr("Choose the file of the landmarks."));
  } else if (answer == nullptr && unit_->currentIndex() <= 0) {
    told_->setText(tr("Choose the unit in which the arm has its size."));
  } else {
    told_->clear();
  }
  told_->setVisible(!told_->text().isEmpty());
}

void ScanDialog::show_answer(const scan::ScanAnswer& answer) {
  shown_ = true;
  head_->setText(answer.side == Side::right ? tr("Scan of the RIGHT limb")
                                            : tr("Scan of the LEFT limb"));
  words_->setText(
      tr("%1 triangles, in %2. 95 in 100 places of the fitted skin lie within %3 mm of the scan "
         "(root mean square %4 mm); %5 % of the skin has a place on it.")
          .arg(answer.triangles)
          .arg(text_of(scan::to_string(answer.unit)), tenths(answer.surface_p95_mm),
               tenths(answer.surface_rms_mm), whole(100.0 * answer.matched_share)));
  QStringList lines;
  for (const std::string& warning : answer.warnings) {
    lines << tr("Warning: %1").arg(text_of(warning));
  }
  for (const std::string& note : answer.notes) lines << tr("Of the file: %1.").arg(text_of(note));
  warnings_->setText(lines.join('\n'));
  warnings_->setVisible(!lines.isEmpty());
  show_lengths(answer);
  std::vector<Cells> rows;
  const Settings& settings = desk_.settings;
  for (const scan::LandmarkResidual& landmark : answer.landmarks) {
    rows.push_back({{text_of(landmark.name)},
                    {settings.length(landmark.after_mm), landmark.after_mm},
                    landmark.left_out_mm
                        ? Cell(settings.length(*landmark.left_out_mm), *landmark.left_out_mm)
                        : Cell(tr("too few"))});
  }
  residuals_->set({{tr("Landmark"), false, true},
                   {tr("Missed by, %1").arg(settings.unit()), true},
                   {tr("Had it not been picked, %1").arg(settings.unit()), true}},
                  std::move(rows));
}

void ScanDialog::show_lengths(const scan::ScanAnswer& answer) {
  boxes_.clear();
  while (QLayoutItem* item = lengths_->takeAt(0)) {
    item->widget()->deleteLater();
    delete item;
  }
  for (const scan::FittedLength& length : answer.lengths) {
    const QString fitted =
        tr("%1: %2 mm, give or take %3 (expected %4, give or take %5)")
            .arg(text_of(length.measure), whole(length.length_mm), whole(length.sd_mm),
                 whole(length.expected_mm), whole(length.expected_sd_mm));
    if (!length.measured) {
      boxes_.push_back(nullptr);
      lengths_->addWidget(paragraph(
          length.given ? tr("%1. The case gives it already.").arg(fitted)
                       : tr("%1. Not shown well by this scan; pick both its ends.").arg(fitted),
          answer_));
      continue;
    }
    auto* box = new QCheckBox(fitted, answer_);
    box->setChecked(true);
    connect(box, &QCheckBox::toggled, this, &ScanDialog::refresh);
    boxes_.push_back(box);
    lengths_->addWidget(box);
  }
}

void ScanDialog::enter_lengths() {
  const auto answer = runner_.answer();
  if (answer == nullptr || !runner_.is_current()) return;
  entered_ = true;
  desk_.document.edit(
      [&](Json& document) {
        for (std::size_t i = 0; i < boxes_.size(); ++i) {
          if (boxes_[i] == nullptr || !boxes_[i]->isChecked()) continue;
          const scan::FittedLength& length = answer->lengths[i];
          put_at(document, "/limb/measured/" + length.measure, std::lround(length.length_mm));
        }
      },
      tr("lengths from a scan"));
}

}  // namespace endplate::ui
