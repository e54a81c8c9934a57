#include "ui/app/lecture_room.hpp"

#include <QFile>
#include <QFileDialog>
#include <QMessageBox>
#include <QSaveFile>
#include <map>

#include "models/limb/limb_scene.hpp"
#include "models/limb/pose.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/words.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/lecture/lecture_editor.hpp"
#include "ui/lecture/presenter.hpp"
#include "ui/lecture/step_facts.hpp"
#include "ui/view/limb_view.hpp"

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

}  // namespace

LectureRoom::LectureRoom(Desk desk, LimbStage& stage, QWidget* window)
    : QObject(window), desk_(desk), stage_(stage), window_(window) {}

LectureRoom::~LectureRoom() = default;

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
  if (view != nullptr) {
    picture.widget = view;
    picture.show = [this](const LectureStep& step) { show(step); };
    picture.image = [view](QSize pixels) { return view->picture(pixels); };
  }
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
}

void LectureRoom::save_figure() {
  const QString path = QFileDialog::getSaveFileName(
      presenter_, tr("Save this step as a figure"),
      tr("step-%1.png").arg(presenter_->step() + 1, 2, 10, QChar('0')), tr("PNG picture (*.png)"));
  if (path.isEmpty()) return;
  if (!presenter_->figure(kFigure).save(path, "PNG")) {
    QMessageBox::warning(presenter_, tr("Lecture"), tr("Nothing was written to %1.").arg(path));
  }
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
