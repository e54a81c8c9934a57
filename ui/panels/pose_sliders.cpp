#include "ui/panels/pose_sliders.hpp"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QSpinBox>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/joint_slider.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// From the shoulder to the hand; the other keys of the tables follow in their own order.
constexpr std::array kOrder{"shoulder_abduction_deg",         "shoulder_flexion_deg",
                            "shoulder_external_rotation_deg", "elbow_flexion_deg",
                            "forearm_pronation_deg",          "wrist_extension_deg",
                            "wrist_ulnar_deviation_deg",      "fingers_flexion_deg"};

std::string pointer_to(const std::string& key) {
  return "/limb/pose/" + key;
}

}  // namespace

PoseSliders::PoseSliders(Desk desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(3);
  grid->setColumnStretch(1, 1);
  const casefile::PoseLimits& limits = desk_.document.tables().pose;
  const auto add = [&](const std::string& key, const casefile::PoseLimit& limit) {
    const int row = static_cast<int>(joints_.size());
    Joint joint{key, joint_words(key), new JointSlider(this), new QSpinBox(this)};
    auto* label = new QLabel(joint.words, this);
    label->setBuddy(joint.figure);
    const QString tip =
        tr("%1 to %2 degrees: %3.").arg(limit.low_deg).arg(limit.high_deg).arg(told(limit.meaning));
    label->setToolTip(tip);
    joint.slider->setToolTip(tip);
    joint.slider->setAccessibleName(joint.words);
    joint.slider->setObjectName(text_of(key));
    joint.slider->setFocusPolicy(Qt::StrongFocus);
    joint.slider->setRange(static_cast<int>(std::ceil(limit.low_deg)),
                           static_cast<int>(std::floor(limit.high_deg)));
    joint.slider->setPageStep(10);
    joint.figure->setRange(joint.slider->minimum(), joint.slider->maximum());
    joint.figure->setSuffix(QString::fromUtf8("\u00b0"));
    joint.figure->setAccessibleName(tr("%1, degrees").arg(joint.words));
    joint.figure->setKeyboardTracking(false);
    grid->addWidget(label, row, 0);
    grid->addWidget(joint.slider, row, 1);
    grid->addWidget(joint.figure, row, 2);
    joints_.push_back(joint);
    // Everything between a press and a release is one step; keys make steps of their own.
    connect(joint.slider, &QSlider::sliderPressed, this, [this] { ++gesture_; });
    connect(joint.slider, &QSlider::valueChanged, this, [this, joint](int degrees) {
      if (!joint.slider->isSliderDown()) ++gesture_;
      set(joint, degrees);
    });
    connect(joint.figure, &QSpinBox::valueChanged, this, [this, joint](int degrees) {
      ++gesture_;
      set(joint, degrees);
    });
  };
  for (const char* key : kOrder) {
    if (const auto limit = limits.find(key); limit != limits.end()) add(key, limit->second);
  }
  large_ = joints_.size();
  for (const auto& [key, limit] : limits) {
    if (std::ranges::find(kOrder, key) == kOrder.end()) add(key, limit);
  }
  // The small joints one by one are rarely wanted, and fill a page.
  small_ = new QCheckBox(tr("thumb and fingers joint by joint"), this);
  grid->addWidget(small_, static_cast<int>(joints_.size()), 0);
  const auto show_small = [this, grid](bool on) {
    for (std::size_t row = large_; row < joints_.size(); ++row) {
      for (int column = 0; column < 3; ++column) {
        grid->itemAtPosition(static_cast<int>(row), column)->widget()->setVisible(on);
      }
    }
  };
  connect(small_, &QCheckBox::toggled, this, show_small);
  show_small(false);
  auto* rest = new QPushButton(tr("Back to the anatomical position"), this);
  grid->addWidget(rest, static_cast<int>(joints_.size()), 1, 1, 2, Qt::AlignRight);
  connect(rest, &QPushButton::clicked, this,
          [this] { desk_.document.remove("/limb/pose", tr("anatomical position")); });
  connect(&desk_.document, &CaseDocument::changed, this, &PoseSliders::refresh);
  refresh();
}

QSlider* PoseSliders::slider(const std::string& key) const {
  for (const Joint& joint : joints_) {
    if (joint.key == key) return joint.slider;
  }
  return nullptr;
}

void PoseSliders::set(const Joint& joint, int degrees) {
  const auto now = desk_.document.number_at(pointer_to(joint.key));
  if (!now && degrees == 0) return;
  desk_.document.set(pointer_to(joint.key), degrees, joint.words, gesture_);
}

void PoseSliders::refresh() {
  for (const Joint& joint : joints_) {
    const int degrees = static_cast<int>(
        std::lround(desk_.document.number_at(pointer_to(joint.key)).value_or(0.0)));
    const QSignalBlocker quiet_slider(joint.slider);
    const QSignalBlocker quiet_figure(joint.figure);
    joint.slider->setValue(degrees);
    joint.figure->setValue(degrees);
  }
  for (std::size_t row = large_; row < joints_.size(); ++row) {
    if (desk_.document.at(pointer_to(joints_[row].key)) != nullptr) small_->setChecked(true);
  }
}

}  // namespace endplate::ui
