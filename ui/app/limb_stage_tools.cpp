// The two rows of tools above the limb.
#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QToolBar>
#include <QToolButton>

#include "ui/app/limb_stage.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {

void LimbStage::add_tools() {
  tools_ = new QToolBar(this);
  hands_ = new QToolBar(this);
  hands_->setAccessibleName(tr("Picture of the limb: by hand"));
  tools_->setAccessibleName(tr("Picture of the limb: tools"));
  const auto aspect = [this](const QString& text, const QString& tip, Aspect from) {
    QAction* action = tools_->addAction(text);
    action->setToolTip(tip);
    connect(action, &QAction::triggered, this, [this, from] { view_->look_from(from); });
  };
  aspect(tr("Front"), tr("Seen from the front (1)"), Aspect::front);
  aspect(tr("Back"), tr("Seen from the back (2)"), Aspect::back);
  aspect(tr("Lateral"), tr("Seen from the lateral side (3)"), Aspect::lateral);
  aspect(tr("Medial"), tr("Seen from the medial side (4)"), Aspect::medial);
  tools_->addSeparator();

  const auto menu_button = [this](const QString& text, const QString& tip) {
    auto* button = new QToolButton(tools_);
    button->setText(text);
    button->setToolTip(tip);
    button->setPopupMode(QToolButton::InstantPopup);
    button->setMenu(new QMenu(button));
    tools_->addWidget(button);
    return button;
  };
  auto* layers = menu_button(tr("Layers"), tr("What is shown of the limb"));
  const auto layer = [&](const QString& text, Layer which) {
    QAction* action = layers->menu()->addAction(text);
    action->setCheckable(true);
    action->setChecked(view_->layers().testFlag(which));
    connect(action, &QAction::toggled, this,
            [this, which](bool on) { view_->set_layer(which, on); });
    return action;
  };
  layer(tr("Skin"), Layer::skin);
  layer(tr("Bones"), Layer::bones);
  muscles_ = layer(tr("Muscles"), Layer::muscles);
  connect(muscles_, &QAction::triggered, this, [this] { muscles_are_lent_ = false; });
  layer(tr("Nerves and plexus"), Layer::nerves);
  layer(tr("Small nerves"), Layer::small_nerves);
  layer(tr("Nerves of the chest"), Layer::chest_nerves);
  layer(tr("Branch points"), Layer::branch_points);
  layer(tr("Motor entries"), Layer::motor_entries);
  layer(tr("Landmarks"), Layer::landmarks);
  layer(tr("Names"), Layer::labels);

  auto* cut = menu_button(tr("Section"), tr("Cut a part of the limb away"));
  auto* cuts = new QActionGroup(this);
  const auto section = [&](const QString& text, std::optional<ClipPlane> plane) {
    QAction* action = cut->menu()->addAction(text);
    action->setCheckable(true);
    action->setChecked(!plane);
    cuts->addAction(action);
    connect(action, &QAction::triggered, this, [this, plane] { view_->set_clip(plane); });
  };
  section(tr("Whole limb"), std::nullopt);
  section(tr("Front half away"), ClipPlane{ClipAxis::front, 0.5});
  section(tr("Lateral half away"), ClipPlane{ClipAxis::lateral, 0.5});
  section(tr("Upper third away"), ClipPlane{ClipAxis::proximal, 0.33});
  section(tr("Upper two thirds away"), ClipPlane{ClipAxis::proximal, 0.67});

  const auto tool = [this](const QString& text, const QString& tip, Tool which) {
    auto* button = new QToolButton(hands_);
    button->setText(text);
    button->setToolTip(tip);
    button->setCheckable(true);
    hands_->addWidget(button);
    connect(button, &QToolButton::clicked, this,
            [this, which](bool on) { view_->set_tool(on ? which : Tool::look); });
    return button;
  };
  measure_ = tool(tr("Measure"), tr("Two clicks: straight, along the nerve and over the skin"),
                  Tool::measure);
  draw_ = tool(tr("Draw incision"),
               tr("Click along the skin; Return ends the line, Backspace takes a point back"),
               Tool::draw_incision);
  QAction* picture = hands_->addAction(tr("Save picture"));
  picture->setToolTip(tr("The picture as PNG at print resolution"));
  connect(picture, &QAction::triggered, this, &LimbStage::save_picture);
}

}  // namespace endplate::ui
