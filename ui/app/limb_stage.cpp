#include "ui/app/limb_stage.hpp"

#include <QEvent>
#include <QFileDialog>
#include <QFutureWatcher>
#include <QLabel>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <QtConcurrentRun>
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "models/examination/case_injuries.hpp"
#include "models/incision/incision.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/limb_scene.hpp"
#include "models/limb/pose.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/pick_card.hpp"
#include "ui/app/png_file.hpp"
#include "ui/app/risk_bar.hpp"
#include "ui/app/risk_layer.hpp"
#include "ui/app/settings.hpp"
#include "ui/charts/colours.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// A picture for print: the width of a page at 300 dots an inch.
constexpr int kPrintWidth = 2400;

// More limbs change the map by less than its colours show.
constexpr int kRiskLimbs = 1000;

// What shapes the limb; the pose and the injuries do not.
std::string limb_key(const Json& document) {
  std::string key;
  if (const Json* limb = value_at(document, "/limb")) {
    Json shape = *limb;
    shape.erase("pose");
    key = shape.dump();
  }
  if (const Json* operations = value_at(document, "/operations")) key += operations->dump();
  return key;
}

}  // namespace

struct LimbStage::Build {
  int number = 0;
  Expected<std::shared_ptr<const limb::SceneLimb>> limb;
};

struct LimbStage::Marks {
  int number = 0;
  std::vector<LesionMark> places;  // in the order of the case's injuries
};

LimbStage::LimbStage(Desk desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setMinimumWidth(320);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  risk_ = new RiskLayer(desk_.document.shared_tables(), this);
  risk_bar_ = new RiskBar(this);
  risk_bar_->hide();
  view_ = new LimbView(this);
  view_->setAccessibleName(tr("Picture of the limb"));
  view_->set_namer([](const QString& name) { return told(plain(name)); });
  add_tools();
  column->addWidget(tools_);
  column->addWidget(hands_);
  column->addWidget(risk_bar_);
  if (QString why; !LimbView::opengl_available(&why)) column->addWidget(flat_note(why));
  column->addWidget(view_, 1);
  card_ = new PickCard(desk_.document.tables(), this);
  column->addWidget(card_);
  connect(card_, &PickCard::closed, this, [this] { point_out({}); });

  connect(&desk_.document, &CaseDocument::changed, this, &LimbStage::note_case);
  connect(&desk_.answers, &AnswerRunner::answered, this, &LimbStage::note_answer);
  connect(&desk_.settings, &Settings::changed, this, &LimbStage::apply_palette);
  connect(risk_bar_, &RiskBar::changed, this, &LimbStage::refresh_risk);
  connect(view_, &LimbView::pose_shown, this, [this](bool held) {
    if (held) refresh_risk();
  });
  connect(risk_, &RiskLayer::ready, this,
          [this](const std::vector<float>& chances, const RiskWish& wish) {
            const auto scene = view_->scene();
            if (!scene || chances.size() != scene->skin_mm.size()) return;
            view_->set_skin_values(
                chances,
                {tr("Nerve within %1 mm, %2 mm deep").arg(wish.within_mm).arg(wish.depth_mm),
                 tr("under 5 %"), tr("over 95 %"), 0.0, 1.0});
          });
  connect(risk_, &RiskLayer::failed, card_, &PickCard::say);
  connect(view_, &LimbView::picked, this, &LimbStage::note_pick);
  connect(view_, &LimbView::measured, this, &LimbStage::note_measure);
  connect(view_, &LimbView::lesion_dragged, this, [this](int, const QString& nerve, double arc_mm) {
    card_->say(tr("%1, %2 mm from where it begins")
                   .arg(opening(told(plain(nerve))))
                   .arg(std::lround(arc_mm)));
  });
  connect(view_, &LimbView::lesion_dropped, this, &LimbStage::move_injury);
  connect(view_, &LimbView::incision_drawn, this,
          [this](const std::vector<SkinSpot>& marks, const std::vector<SkinSpot>&) {
            ask_drawn(marks);
          });
  connect(view_, &LimbView::tool_changed, this, [this](Tool tool) {
    measure_->setChecked(tool == Tool::measure);
    draw_->setChecked(tool == Tool::draw_incision);
    // A line is judged in the pose of the case, so it is drawn in that pose: a named approach may
    // have left the limb in its own.
    const auto patient = desk_.document.last_valid();
    if (tool == Tool::draw_incision && patient) {
      view_->set_routes({});
      view_->set_pose(limb::pose_from(patient->limb.pose_deg));
    }
  });
  apply_palette();
  note_case();
}

QLabel* LimbStage::flat_note(const QString& why) {
  auto* note = new QLabel(tr("%1 The limb is drawn flat; everything else works.").arg(why), this);
  note->setWordWrap(true);
  note->setMargin(6);
  return note;
}

void LimbStage::note_case() {
  const auto patient = desk_.document.last_valid();
  if (!patient) return;
  refresh_marks();
  const std::string key = limb_key(desk_.document.json());
  if (key != key_) {
    build_limb(key);
    return;
  }
  if (question_ != "incision") view_->set_pose(limb::pose_from(patient->limb.pose_deg));
}

void LimbStage::build_limb(const std::string& key) {
  key_ = key;
  const int number = ++wanted_;
  auto* watcher = new QFutureWatcher<std::shared_ptr<Build>>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher] {
    watcher->deleteLater();
    show_built(*watcher->result());
  });
  watcher->setFuture(QtConcurrent::run([number, tables = desk_.document.shared_tables(),
                                        patient = desk_.document.last_valid()] {
    auto made =
        limb::SceneLimb::from(tables->package, tables->anatomy, patient->limb, patient->operations);
    if (!made) {
      return std::make_shared<Build>(Build{number, std::unexpected(std::move(made.error()))});
    }
    return std::make_shared<Build>(
        Build{number, std::make_shared<const limb::SceneLimb>(std::move(*made))});
  }));
}

void LimbStage::show_built(const Build& built) {
  if (built.number != wanted_) return;
  if (!built.limb) {
    card_->say(tr("The limb of this case cannot be drawn: %1")
                   .arg(told(built.limb.error().problems.front().what)));
    return;
  }
  const auto patient = desk_.document.last_valid();
  view_->show_limb(*built.limb, limb::pose_from(patient->limb.pose_deg));
  refresh_cut();
}

void LimbStage::note_answer(Question question) {
  if (question == Question::incision) refresh_cut();
}

// Where the models have the injuries of the case: what the reader sees is what is reckoned with.
void LimbStage::refresh_marks() {
  const int number = ++marks_wanted_;
  auto* watcher = new QFutureWatcher<std::shared_ptr<Marks>>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher] {
    watcher->deleteLater();
    show_marks(*watcher->result());
  });
  watcher->setFuture(QtConcurrent::run(
      [number, tables = desk_.document.shared_tables(), patient = desk_.document.last_valid()] {
        auto marks = std::make_shared<Marks>();
        marks->number = number;
        const auto& anatomy = tables->anatomy;
        const auto limb = limb::CaseLimb::from(tables->package, anatomy.tree(), patient->limb);
        if (!limb) return marks;
        const auto injuries = examination::case_injuries(*patient, anatomy, *limb);
        if (!injuries) return marks;  // the panels say why
        for (const examination::TreeInjury& injury : injuries->injuries) {
          marks->places.push_back({text_of(anatomy.tree().node(injury.lesion.at.nerve).name),
                                   injury.lesion.at.from_start_mm, QString()});
        }
        return marks;
      }));
}

void LimbStage::show_marks(const Marks& marks) {
  if (marks.number != marks_wanted_) return;
  std::vector<LesionMark> shown = marks.places;
  for (std::size_t i = 0; i < shown.size(); ++i) {
    shown[i].label = shown.size() > 1 ? tr("injury %1").arg(i + 1) : tr("injury");
  }
  view_->set_lesion_marks(std::move(shown));
}

void LimbStage::move_injury(int mark, const QString& nerve, double arc_mm) {
  // Marks stand in the order of the case's injuries.
  const std::string at = "/injuries/" + std::to_string(mark) + "/at";
  desk_.document.set(at, Json{{"branch", plain(nerve)}, {"from_origin_mm", std::round(arc_mm)}},
                     tr("Move the injury"));
}

void LimbStage::refresh_cut() {
  const auto& held = desk_.answers.incision();
  if (question_ != "incision" || !held.answer) {
    view_->set_routes(question_ == "transfer" ? ways_ : std::vector<Route>());
    return;
  }
  view_->set_pose(limb::pose_from(held.answer->pose_deg));
  Route line;
  line.label = text_of(held.answer->label);
  std::vector<Eigen::Vector3d> skin;
  for (const incision::Station& station : held.answer->cut.stations) {
    skin.push_back(station.skin.position_mm);
  }
  if (skin.size() > 1) line.lines_mm.push_back(std::move(skin));
  if (held.answer->cut.stations.size() == 1) {
    const geometry::Track& track = held.answer->cut.stations.front().track;
    line.lines_mm.push_back({track.from_mm, track.to_mm});
  }
  std::vector<Route> routes{std::move(line)};
  const auto& corridor = held.answer->corridor;
  if (corridor && corridor->moved) {
    Route least;
    least.label = tr("least risk");
    least.colour = Colours(palette()).whole;
    std::vector<Eigen::Vector3d> places;
    for (const incision::Station& station : corridor->line.stations) {
      places.push_back(station.skin.position_mm);
    }
    least.lines_mm.push_back(std::move(places));
    routes.push_back(std::move(least));
  }
  view_->set_routes(std::move(routes));
}

// In the pose on the screen; the map of another pose would lie about this one.
void LimbStage::refresh_risk() {
  if (question_ != "incision" || !risk_bar_->is_on()) {
    risk_->forget();
    view_->clear_skin_values();
    return;
  }
  const auto patient = desk_.document.last_valid();
  if (!patient) return;
  const auto& held = desk_.answers.incision();
  RiskWish wish = risk_bar_->wish();
  wish.samples = std::min(desk_.settings.choices().samples, kRiskLimbs);
  wish.seed = desk_.settings.choices().seed;
  risk_->ask(patient, held.answer ? held.answer->pose_deg : patient->limb.pose_deg, view_->scene(),
             wish);
}

void LimbStage::ask_drawn(const std::vector<SkinSpot>& marks) {
  const auto scene = view_->scene();
  if (!scene || marks.size() < 2) return;
  // Another cut; whether a corridor is wanted beside it stays.
  IncisionRequest request;
  request.corridor_mm = desk_.answers.incision_request().corridor_mm;
  request.corridor_within_mm = desk_.answers.incision_request().corridor_within_mm;
  for (const SkinSpot& spot : marks) {
    Eigen::Vector3d place = Eigen::Vector3d::Zero();
    for (std::size_t k = 0; k < 3; ++k) {
      place += spot.weights[k] * scene->skin_mm[scene->shape->skin[spot.triangle][k]];
    }
    request.picked_mm.push_back({place.x(), place.y(), place.z()});
  }
  desk_.answers.set_incision(request);
  view_->set_tool(Tool::look);
  Q_EMIT incision_asked();
}

void LimbStage::note_pick(const Pick& pick) {
  if (pick.kind == PickKind::nothing) return point_out({});
  show_subject(card_->show_pick(pick));
}

void LimbStage::show_subject(const Subject& subject) {
  view_->highlight(subject.names + subject.way);
  Q_EMIT pointed_at(subject.names);
}

// A muscle that was chosen in a table is seen although the muscles are not shown otherwise.
void LimbStage::lend_muscles(bool on) {
  if (on == muscles_->isChecked() || (!on && !muscles_are_lent_)) return;
  muscles_->setChecked(on);
  muscles_are_lent_ = on;
}

void LimbStage::note_measure(const Measurement& measurement) {
  QStringList words{
      tr("straight %1 %2")
          .arg(desk_.settings.length(measurement.straight_mm), desk_.settings.unit())};
  if (measurement.along_nerve_mm) {
    words.push_back(
        tr("along the nerve %1 %2")
            .arg(desk_.settings.length(*measurement.along_nerve_mm), desk_.settings.unit()));
  }
  if (measurement.over_skin_mm) {
    words.push_back(
        tr("over the skin %1 %2")
            .arg(desk_.settings.length(*measurement.over_skin_mm), desk_.settings.unit()));
  } else if (!measurement.over_skin_absent.isEmpty()) {
    words.push_back(measurement.over_skin_absent);
  }
  card_->say(words.join(", ") + tr(" (this limb, as drawn)"));
}

// A cut in the parent (negative) has no place on the branch itself: it is drawn from its origin.
void LimbStage::show_transfer(const QString& donor, double donor_cut_mm, const QString& recipient,
                              double recipient_cut_mm) {
  ways_.clear();
  const auto scene = view_->scene();
  const auto length = [&](const QString& nerve) {
    const auto at = scene ? scene->shape->find_nerve(plain(nerve)) : std::nullopt;
    return at ? std::optional(scene->shape->nerves[*at].length_mm) : std::nullopt;
  };
  if (const auto mm = length(donor)) {
    ways_.push_back({tr("donor"), {}, {{donor, 0.0, std::clamp(donor_cut_mm, 0.0, *mm)}}, {}});
  }
  if (const auto mm = length(recipient)) {
    ways_.push_back(
        {tr("recipient"), {}, {{recipient, std::clamp(recipient_cut_mm, 0.0, *mm), *mm}}, {}});
  }
  refresh_cut();
}

void LimbStage::point_out(const QStringList& names) {
  const auto& muscles = desk_.document.tables().anatomy.muscles();
  lend_muscles(names.size() == 1 && std::ranges::any_of(muscles, [&](const auto& muscle) {
                 return text_of(muscle.id) == names.front();
               }));
  show_subject(card_->show_names(names));
}

void LimbStage::show_question(const QString& name) {
  question_ = plain(name);
  const auto patient = desk_.document.last_valid();
  if (question_ != "incision" && patient) {
    view_->set_pose(limb::pose_from(patient->limb.pose_deg));
  }
  refresh_cut();
  risk_bar_->setVisible(question_ == "incision");
  refresh_risk();
}

LimbView* LimbStage::lend() {
  ++marks_wanted_;
  view_->set_lesion_marks({});
  view_->set_routes({});
  view_->clear_skin_values();
  return view_;
}

void LimbStage::take_back() {
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->insertWidget(column->indexOf(card_), view_, 1);
  view_->show();
  view_->set_layers(kUsualLayers);
  view_->highlight({});
  view_->look_from(Aspect::front);
  view_->reset_view();
  apply_palette();
  key_.reset();
  note_case();
}

void LimbStage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) apply_palette();
}

void LimbStage::apply_palette() {
  view_->set_palette_kind(Colours(palette()).dark ? PaletteKind::dark : PaletteKind::light);
}

void LimbStage::save_picture() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save picture"), tr("limb.png"),
                                                    tr("PNG picture (*.png)"));
  if (path.isEmpty()) return;
  const QSize shown = view_->size();
  const QSize pixels(kPrintWidth, kPrintWidth * shown.height() / std::max(1, shown.width()));
  view_->take_picture(pixels, [this, path](const QImage& picture) {
    save_png(this, picture, path, [this, path](bool written) {
      card_->say(written ? tr("Picture saved to %1").arg(path)
                         : tr("The picture could not be written to %1").arg(path));
      if (written) Q_EMIT picture_saved(path);
    });
  });
}

}  // namespace endplate::ui
