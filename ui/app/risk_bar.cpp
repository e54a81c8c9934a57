#include "ui/app/risk_bar.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSlider>

#include "models/incision/nearby.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr int kDeepest_mm = 40;
constexpr int kUsual = 1;  // of the distances: 5 mm

}  // namespace

RiskBar::RiskBar(QWidget* parent) : QWidget(parent) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(8, 2, 8, 4);
  grid->setVerticalSpacing(4);
  on_ = new QCheckBox(tr("Risk on the skin"), this);
  on_->setToolTip(
      tr("For every place of the skin: the chance that a modelled nerve lies near the track that "
         "goes straight in there"));
  within_ = new QComboBox(this);
  within_->setAccessibleName(tr("How near"));
  for (const double mm : incision::kWithin_mm) {
    within_->addItem(tr("within %1 mm").arg(mm), mm);
  }
  within_->setCurrentIndex(kUsual);
  depth_ = new QSlider(Qt::Horizontal, this);
  depth_->setAccessibleName(tr("How deep"));
  depth_->setRange(0, kDeepest_mm);
  depth_->setPageStep(5);
  depth_words_ = new QLabel(this);
  depth_words_->setMinimumWidth(depth_words_->fontMetrics().horizontalAdvance("00 mm deep"));
  nerve_ = new QComboBox(this);
  nerve_->setAccessibleName(tr("Of which nerve"));
  nerve_->addItem(tr("any nerve"), QString());
  for (const char* name :
       {"musculocutaneous nerve", "axillary nerve", "radial nerve",
        "superficial branch of radial nerve", "deep branch of radial nerve", "median nerve",
        "palmar cutaneous branch of median nerve", "ulnar nerve", "dorsal branch of ulnar nerve"}) {
    nerve_->addItem(text_of(name), text_of(name));
  }
  nerve_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  nerve_->setMinimumContentsLength(10);
  grid->addWidget(on_, 0, 0);
  grid->addWidget(nerve_, 0, 1, 1, 2);
  grid->addWidget(within_, 1, 0);
  grid->addWidget(depth_, 1, 1);
  grid->addWidget(depth_words_, 1, 2);
  grid->setColumnStretch(1, 1);
  connect(on_, &QCheckBox::toggled, this, &RiskBar::changed);
  connect(within_, &QComboBox::activated, this, &RiskBar::changed);
  connect(nerve_, &QComboBox::activated, this, &RiskBar::changed);
  connect(depth_, &QSlider::valueChanged, this, [this] {
    refresh_words();
    Q_EMIT changed();
  });
  refresh_words();
}

void RiskBar::refresh_words() {
  depth_words_->setText(tr("%1 mm deep").arg(depth_->value()));
}

bool RiskBar::is_on() const {
  return on_->isChecked();
}

RiskWish RiskBar::wish() const {
  RiskWish wish;
  wish.within_mm = within_->currentData().toDouble();
  wish.depth_mm = depth_->value();
  wish.nerve = plain(nerve_->currentData().toString());
  return wish;
}

}  // namespace endplate::ui
