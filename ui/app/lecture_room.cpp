#include "ui/app/lecture_room.hpp"

#include <QFile>
#include <QFileDialog>
#include <QMessageBox>
#include <QSaveFile>
#include <algorithm>
#include <map>
#include <optional>

#include "models/limb/limb_scene.hpp"
#include "models/limb/pose.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/png_file.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/lecture/lecture_editor.hpp"
#include "ui/lecture/presenter.hpp"
#include "ui/lecture/step_facts.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr QSize kFigure{3200, 1800};

Aspect aspect_of(const QString& view) {
  if (view == "back") return Aspect::back;
  if (view == "lateral") return Aspect::lateral;
  return view == "medial" ? Aspect::medial : Aspect::front;
}

Layers layers_of(const QStringList& names) {
  Layers layers = Layer::labels;
  if (names.contains("skin")) layers |= Layer::skin;
  if (names.contains("bones")) layers |= Layer::bones;
  if (names.contains("muscles")) layers |= Layer::muscles;
  if (names.contains("nerves")) layers |= Layers(Layer::nerves) | Layer::small_nerves;
  if (names.contains("landmarks")) layers |= Layer::landmarks;
  return layers;
}

// Around the landmarks of a part of the limb, with so much flesh about them; the hand goes on
// beyond the wrist along the forearm. Nothing for the whole limb, or where a landmark has no place.
std::vector<Eigen::Vector3d> region_places(const limb::LimbScene& scene, const QString& region) {
  constexpr double kFlesh_mm = 60.0;
  constexpr double kHand_mm = 190.0;
  const auto place = [&](std::string_view name) -> std::optional<Eigen::Vector3d> {
    const auto& names = scene.shape->landmarks;
    const auto found = std::ranges::find(names, name);
    if (found == names.end()) return std::nullopt;
    return scene.landmarks_mm[static_cast<std::size_t>(found - names.begin())];
  };
  const auto shoulder = place("acromion, lateral edge");
  const auto elbow = place("lateral epicondyle");
  const auto medial = place("medial epicondyle");
  const auto wrist = place("radial styloid");
  if (!shoulder || !elbow || !medial || !wrist) return {};
  std::vector<Eigen::Vector3d> middle;
  if (region == "shoulder") middle = {*shoulder, *shoulder + (*elbow - *shoulder) / 3.0};
  if (region == "arm") middle = {*shoulder, *elbow};
  if (region == "elbow") middle = {*elbow, *medial};
  if (region == "forearm") middle = {*elbow, *wrist};
  if (region == "hand") {
    middle = {*wrist, *wrist + kHand_mm * (*wrist - *elbow).normalized()};
  }
  std::vector<Eigen::Vector3d> places;
  for (const Eigen::Vector3d& at : middle) {
    places.push_back(at - Eigen::Vector3d::Constant(kFlesh_mm));
    places.push_back(at + Eigen::Vector3d::Constant(kFlesh_mm));
  }
  return places;
}

}  // namespace

LectureRoom::LectureRoom(Desk desk, LimbStage& stage, QWidget* window)
    : QObject(window), desk_(desk), stage_(stage), window_(window) {}

QString LectureRoom::default_path() const {
  return text_of((desk_.document.tables().folder / "lectures" / "five-great-nerves.json").string());
}

LectureVocabulary LectureRoom::vocabulary() const {
  const CaseTables& tables = desk_.document.tables();
  LectureVocabulary words;
  for (const anatomy::NerveNode& node : tables.anatomy.tree().nodes()) {
    words.nerves.push_back(text_of(node.name));
  }
  for (const evidence::Row row : tables.package.table("approaches")) {
    words.rules.push_back(text_of(row.text("id")));
  }
  return words;
}

Expected<Lecture> LectureRoom::read(const QString& path) const {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return std::unexpected(Error::input(
        {plain(path), "cannot be read", "Choose a file that is there and may be read"}));
  }
  return read_lecture(file.readAll(), vocabulary());
}

Presenter* LectureRoom::present(const Lecture& lecture) {
  LimbView* view = stage_.lend();
  PresenterPicture picture;
  picture.side = desk_.document.last_valid() && desk_.document.last_valid()->limb.side == Side::left
                     ? tr("LEFT")
                     : tr("RIGHT");
  picture.widget = view;
  picture.show = [this](const LectureStep& step) { show(step); };
  picture.take = [view](QSize pixels, std::function<void(const QImage&)> taken) {
    view->take_picture(pixels, std::move(taken));
  };
  const CaseTables& tables = desk_.document.tables();
  presenter_ = new Presenter(lecture, picture, [&tables](const LectureStep& step) {
    return step_facts(step, tables.anatomy, tables.package);
  });
  presenter_->setAttribute(Qt::WA_DeleteOnClose);
  presenter_->resize(window_->size());
  connect(presenter_, &Presenter::figure_wanted, this, &LectureRoom::save_figure);
  connect(presenter_, &Presenter::closed, this, [this] {
    presenter_ = nullptr;
    stage_.take_back();
  });
  presenter_->showFullScreen();
  return presenter_;
}

void LectureRoom::show(const LectureStep& step) {
  LimbView* view = stage_.view();
  const CaseTables& tables = desk_.document.tables();
  std::map<std::string, double> pose;
  for (auto at = step.pose_deg.begin(); at != step.pose_deg.end(); ++at) {
    pose[plain(at.key())] = at.value();
  }
  view->set_pose(limb::pose_from(pose));
  view->set_layers(layers_of(step.layers));
  view->highlight(step_foreground(step, tables.anatomy));
  view->look_from(aspect_of(step.view));
  if (const auto scene = view->scene()) view->look_at(region_places(*scene, step.region));
}

void LectureRoom::save_figure() {
  const QString path = QFileDialog::getSaveFileName(
      presenter_, tr("Save this step as a figure"),
      tr("step-%1.png").arg(presenter_->step() + 1, 2, 10, QChar('0')), tr("PNG picture (*.png)"));
  if (path.isEmpty()) return;
  presenter_->take_figure(kFigure, [this, path](const QImage& figure) {
    save_png(this, figure, path, [this, path](bool written) {
      if (written) return;
      QMessageBox::warning(window_, tr("Lecture"), tr("Nothing was written to %1.").arg(path));
    });
  });
}

void LectureRoom::edit(const Lecture& lecture, const QString& path) {
  LectureEditor editor(lecture, vocabulary(), window_);
  if (editor.exec() != QDialog::Accepted) return;
  const QString to = QFileDialog::getSaveFileName(window_, tr("Save lecture"),
                                                  path == default_path() ? QString() : path,
                                                  tr("Lecture (*.json)"));
  if (to.isEmpty()) return;
  QSaveFile file(to);
  const bool written = file.open(QIODevice::WriteOnly) &&
                       file.write(write_lecture(editor.lecture())) >= 0 && file.commit();
  if (!written) {
    QMessageBox::warning(window_, tr("Lecture"), tr("Nothing was written to %1.").arg(to));
  }
}

}  // namespace endplate::ui
