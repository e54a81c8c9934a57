// The window's menus, and what they do with files.
#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QStackedWidget>
#include <QUndoStack>
#include <QUrl>
#include <algorithm>

#include "ui/app/help_dialog.hpp"
#include "ui/app/lecture_room.hpp"
#include "ui/app/main_window.hpp"
#include "ui/app/main_window_parts.hpp"
#include "ui/app/scan_dialog.hpp"
#include "ui/app/settings_dialog.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

void MainWindow::add_menus() {
  QMenu* file = menuBar()->addMenu(tr("&File"));
  file->addAction(tr("&New case"), QKeySequence::New, this, [this] {
    if (!may_leave()) return;
    parts_->lock.reset();
    parts_->document.start_new();
    show_question("patient");
  });
  file->addAction(tr("&Open..."), QKeySequence::Open, this, &MainWindow::choose_file);
  recent_ = file->addMenu(tr("Open &recent"));
  file->addAction(tr("&Fit to a scan..."), this, [this] { show_scan(); });
  file->addSeparator();
  file->addAction(tr("&Save"), QKeySequence::Save, this, [this] { save(); });
  file->addAction(tr("Save &as..."), QKeySequence::SaveAs, this, &MainWindow::save_as);
  file->addAction(tr("Save &table as CSV..."), QKeySequence("Ctrl+T"), this,
                  &MainWindow::save_table);
  file->addSeparator();
  file->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);

  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  QAction* undo = parts_->document.steps().createUndoAction(this, tr("&Undo"));
  undo->setShortcuts(QKeySequence::Undo);
  QAction* redo = parts_->document.steps().createRedoAction(this, tr("&Redo"));
  redo->setShortcuts(QKeySequence::Redo);
  edit->addAction(undo);
  edit->addAction(redo);
  edit->addSeparator();
  edit->addAction(tr("Se&ttings..."), QKeySequence::Preferences, this, &MainWindow::show_settings);

  QMenu* questions = menuBar()->addMenu(tr("&Questions"));
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    const Entry& entry = entries_[i];
    QAction* action = questions->addAction(entry.shown);
    action->setStatusTip(entry.panel->question());
    if (i < 10) {
      action->setShortcut(QKeySequence(QString("Alt+%1").arg((i + 1) % 10)));
    } else {
      action->setShortcut(QKeySequence("Alt+-"));
    }
    connect(action, &QAction::triggered, this, [this, name = entry.name] { show_question(name); });
  }
  QMenu* lecture = menuBar()->addMenu(tr("&Lecture"));
  const QDir lectures(
      QString::fromStdString((parts_->document.tables().folder / "lectures").string()));
  for (const QString& name : lectures.entryList({"*.json"}, QDir::Files)) {
    QString shown = QFileInfo(name).completeBaseName().replace('-', ' ');
    lecture->addAction(opening(shown), this,
                       [this, path = lectures.filePath(name)] { show_lecture(path); });
  }
  lecture->addSeparator();
  lecture->addAction(tr("&Open a lecture..."), this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a lecture"), {}, tr("Lectures (*.json)"));
    if (!path.isEmpty()) show_lecture(path);
  });
  lecture->addAction(tr("&Edit a lecture..."), this, [this] {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Edit a lecture"), lectures_->default_path(), tr("Lectures (*.json)"));
    if (!path.isEmpty()) edit_lecture(path);
  });
  QMenu* help = menuBar()->addMenu(tr("&Help"));
  help->addAction(tr("&Help on this question"), QKeySequence(Qt::Key_F1), this,
                  &MainWindow::show_help);
  help->addAction(tr("&First steps"), this, &MainWindow::show_tour);
  help->addAction(tr("&About Endplate"), this, &MainWindow::show_about);
  connect(&parts_->settings, &Settings::recent_changed, this, &MainWindow::refresh_recent);
  refresh_recent();
}

void MainWindow::refresh_recent() {
  recent_->clear();
  for (const QString& path : parts_->settings.recent_files()) {
    recent_->addAction(QFileInfo(path).fileName(), this, [this, path] {
      if (may_leave()) open_file(path);
    });
  }
  recent_->setEnabled(!recent_->isEmpty());
}

bool MainWindow::open_file(const QString& path) {
  const auto refuse = [&](const Error& error) {
    tell(tr("%1 was not opened.\n%2").arg(path, problem_words(error.problems)));
    return false;
  };
  const auto bytes = read_bytes(path);
  if (!bytes) return refuse(bytes.error());
  auto lock = std::make_unique<CaseLock>(parts_->folder + "/locks", path);
  const bool again = path == parts_->document.path() && parts_->lock && parts_->lock->held();
  const auto opened = parts_->document.open(*bytes, path);
  if (!opened) return refuse(opened.error());
  if (!again) {
    if (!lock->held()) {
      tell(tr("%1 is open on another desk. What you save here replaces what is saved there: save "
              "under another name.")
               .arg(path));
    }
    parts_->lock = std::move(lock);
  }
  parts_->settings.add_recent(path);
  return true;
}

bool MainWindow::save() {
  const QString path = parts_->document.path();
  if (path.isEmpty()) {
    save_as();
    return !parts_->document.is_changed();
  }
  return save_to(path);
}

bool MainWindow::save_to(const QString& path) {
  const auto written = write_bytes(path, parts_->document.text());
  if (!written) {
    tell(problem_words(written.error().problems));
    return false;
  }
  if (path != parts_->document.path()) {
    parts_->lock = std::make_unique<CaseLock>(parts_->folder + "/locks", path);
  }
  parts_->document.saved_as(path);
  parts_->settings.add_recent(path);
  return true;
}

void MainWindow::save_as() {
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save the case"),
      parts_->document.path().isEmpty() ? tr("case.json") : parts_->document.path(),
      tr("Case files (*.json)"));
  if (!path.isEmpty()) save_to(path);
}

void MainWindow::choose_file() {
  if (!may_leave()) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a case"), {},
                                                    tr("Case files (*.json);;All files (*)"));
  if (!path.isEmpty()) open_file(path);
}

bool MainWindow::may_leave() {
  if (!parts_->document.is_changed()) return true;
  const auto answer = QMessageBox::question(
      this, tr("The case was changed"), tr("Save the changes of %1?").arg(parts_->document.label()),
      QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
  if (answer == QMessageBox::Save) return save();
  return answer == QMessageBox::Discard;
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!may_leave()) {
    event->ignore();
    return;
  }
  parts_->settings.keep_geometry(saveGeometry());
  event->accept();
}

// A case, a scanned surface, or a surface and its landmarks.
void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  const bool local = std::ranges::all_of(urls, [](const QUrl& url) { return url.isLocalFile(); });
  if (local && (urls.size() == 1 || urls.size() == 2)) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  QStringList paths;
  for (const QUrl& url : event->mimeData()->urls()) paths << url.toLocalFile();
  event->acceptProposedAction();
  open_dropped(paths);
}

void MainWindow::open_dropped(const QStringList& paths) {
  const auto surface = std::ranges::find_if(paths, ScanDialog::is_surface);
  if (surface != paths.end()) {
    const QString other = paths.size() == 2 ? paths[surface == paths.begin() ? 1 : 0] : QString();
    show_scan(*surface, other);
  } else if (paths.size() == 1) {
    if (may_leave()) open_file(paths.front());
  } else {
    tell(tr("Drop one case, or a scanned surface with its landmarks."));
  }
}

ScanDialog* MainWindow::show_scan(const QString& surface, const QString& landmarks) {
  if (scan_ == nullptr) scan_ = new ScanDialog(desk(), this);
  if (!landmarks.isEmpty()) scan_->open_landmarks(landmarks);
  if (!surface.isEmpty()) scan_->open_surface(surface);
  scan_->show();
  scan_->raise();
  return scan_;
}

void MainWindow::show_settings() {
  SettingsDialog dialog(parts_->settings.choices(), this);
  if (dialog.exec() == QDialog::Accepted) parts_->settings.set(dialog.choices());
}

// The table that has the focus, else the first one that is seen.
void MainWindow::save_table() {
  Panel* panel = entries_[static_cast<std::size_t>(stack_->currentIndex())].panel;
  RowTable* seen = nullptr;
  for (RowTable* table : panel->findChildren<RowTable*>()) {
    if (!table->isVisible()) continue;
    if (seen == nullptr || table->hasFocus()) seen = table;
  }
  if (seen != nullptr) seen->save_csv();
}

Presenter* MainWindow::show_lecture(const QString& path) {
  const auto lecture = lectures_->read(path);
  if (!lecture) {
    tell(tr("%1 was not opened.\n%2").arg(path, problem_words(lecture.error().problems)));
    return nullptr;
  }
  return lectures_->present(*lecture);
}

void MainWindow::edit_lecture(const QString& path) {
  const auto lecture = lectures_->read(path);
  if (!lecture) {
    tell(tr("%1 was not opened.\n%2").arg(path, problem_words(lecture.error().problems)));
    return;
  }
  lectures_->edit(*lecture, path);
}

void MainWindow::show_help() {
  const auto at = static_cast<std::size_t>(stack_->currentIndex());
  if (help_ == nullptr) help_ = new HelpDialog(this);
  help_->show_page(entries_[at].name, entries_[at].panel->question());
}

void MainWindow::show_tour() {
  auto* tour = new TourDialog(this);
  tour->setAttribute(Qt::WA_DeleteOnClose);
  connect(tour, &QDialog::finished, this, [this] {
    Choices choices = parts_->settings.choices();
    choices.tour_seen = true;
    parts_->settings.set(choices);
  });
  tour->open();
}

void MainWindow::show_about() {
  QMessageBox::about(this, tr("About Endplate"),
                     tr("Endplate %1\n\n%2\n\nGPL-3.0-or-later. It is not a medical device.")
                         .arg(ENDPLATE_VERSION, caution_words()));
}

}  // namespace endplate::ui
