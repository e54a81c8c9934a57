#include "ui/app/settings_dialog.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpressionValidator>
#include <QSpinBox>
#include <QVBoxLayout>

namespace endplate::ui {

SettingsDialog::SettingsDialog(const Choices& choices, QWidget* parent)
    : QDialog(parent),
      before_(choices),
      unit_(new QComboBox(this)),
      lightness_(new QComboBox(this)),
      language_(new QComboBox(this)),
      terms_(new QComboBox(this)),
      hand_(new QComboBox(this)),
      samples_(new QSpinBox(this)),
      seed_(new QLineEdit(this)) {
  setWindowTitle(tr("Settings"));
  auto* all = new QVBoxLayout(this);
  auto* form = new QFormLayout;
  unit_->addItems({tr("millimetres"), tr("centimetres")});
  unit_->setCurrentIndex(choices.unit == LengthUnit::cm ? 1 : 0);
  lightness_->addItems({tr("as the system"), tr("light"), tr("dark")});
  lightness_->setCurrentIndex(static_cast<int>(choices.lightness));
  language_->addItem(tr("as the system"), QString());
  language_->addItem("English", "en");
  language_->addItem("Deutsch", "de");
  language_->setCurrentIndex(qMax(0, language_->findData(choices.language)));
  terms_->addItems({tr("as the program"), tr("English"), tr("Latin")});
  terms_->setCurrentIndex(static_cast<int>(choices.terms));
  hand_->addItems({tr("right: panel on the right"), tr("left: panel on the left")});
  hand_->setCurrentIndex(static_cast<int>(choices.hand));
  samples_->setRange(100, 1'000'000);
  samples_->setSingleStep(500);
  samples_->setValue(choices.samples);
  seed_->setText(QString::number(choices.seed));
  seed_->setValidator(new QRegularExpressionValidator(QRegularExpression("[0-9]{1,18}"), this));
  form->addRow(tr("Lengths in &tables"), unit_);
  form->addRow(tr("&Palette"), lightness_);
  form->addRow(tr("&Language (from the next start)"), language_);
  form->addRow(tr("&Names of nerves"), terms_);
  form->addRow(tr("Working &hand"), hand_);
  form->addRow(tr("&Sampled limbs and patients"), samples_);
  form->addRow(tr("S&eed of the random numbers"), seed_);
  all->addLayout(form);
  auto* note = new QLabel(
      tr("The same case, seed, number of samples and day give the same figures. Case files always "
         "hold millimetres."),
      this);
  note->setWordWrap(true);
  all->addWidget(note);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  all->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

Choices SettingsDialog::choices() const {
  Choices now = before_;
  now.unit = unit_->currentIndex() == 1 ? LengthUnit::cm : LengthUnit::mm;
  now.lightness = static_cast<Lightness>(lightness_->currentIndex());
  now.language = language_->currentData().toString();
  now.terms = static_cast<TermLanguage>(terms_->currentIndex());
  now.hand = static_cast<Hand>(hand_->currentIndex());
  now.samples = samples_->value();
  now.seed = seed_->text().toULongLong();
  return now;
}

}  // namespace endplate::ui
