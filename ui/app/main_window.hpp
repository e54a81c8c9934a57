#pragma once

#include <QMainWindow>
#include <memory>
#include <optional>
#include <vector>

#include "models/casefile/case.hpp"
#include "ui/app/desk.hpp"

class QFrame;
class QLabel;
class QListWidget;
class QMenu;
class QProgressBar;
class QPushButton;
class QSplitter;
class QStackedWidget;

namespace endplate::ui {

class CaseLock;
class EvidencePanel;
class HelpDialog;
class LectureRoom;
class LimbStage;
class Panel;
class Presenter;
class RecoveryStore;
class ScanDialog;
struct CaseTables;

/// The one window of the desk: the questions on the left, the limb in the middle, the panel of the
/// question on the right.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  /// `folder`: where copies of unsaved cases and locks are kept.
  MainWindow(std::shared_ptr<const CaseTables> tables, casefile::Date today, const QString& folder,
             QWidget* parent = nullptr);
  ~MainWindow() override;
  Q_DISABLE_COPY_MOVE(MainWindow)

  /// The case, its answers and the settings.
  Desk desk();
  /// The limb in the middle.
  LimbStage& stage() const { return *stage_; }

  /// Opens a case file; says so in a bar when it cannot be opened.
  bool open_file(const QString& path);
  /// Writes the case to the file it has, or asks for one. False when nothing was written.
  bool save();
  bool save_to(const QString& path);

  /// Names of the questions in their order: "decision", "patient", ...
  std::vector<QString> questions() const;
  void show_question(const QString& name);
  Panel* panel(const QString& name) const;

  /// A lecture on the whole screen; nothing when the file is no lecture, which a bar says.
  Presenter* show_lecture(const QString& path);

  /// Fits the limb to a scanned surface; without one the dialog asks for it. An empty `landmarks`
  /// is looked for beside the surface.
  ScanDialog* show_scan(const QString& surface = {}, const QString& landmarks = {});

  /// The first steps, for whoever opens the desk for the first time.
  void show_tour();

 protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  struct Entry {
    QString name;
    QString shown;
    Panel* panel;
  };

  void add_panels();
  void add_panel(const QString& name, const QString& shown, Panel* panel);
  void add_menus();
  void add_status();
  void add_bar();
  void tell(const QString& words);
  void offer_lost();
  void refresh_title();
  void refresh_recent();
  void refresh_progress();
  void apply_palette();
  void apply_terms();
  void apply_hand();
  bool may_leave();
  void save_as();
  void choose_file();
  void edit_lecture(const QString& path);
  void show_settings();
  void save_table();
  void open_dropped(const QStringList& paths);
  void show_help();
  void show_about();

  struct Parts;
  std::unique_ptr<Parts> parts_;
  std::vector<Entry> entries_;
  QListWidget* list_ = nullptr;
  QSplitter* split_ = nullptr;
  LimbStage* stage_ = nullptr;
  LectureRoom* lectures_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  QMenu* recent_ = nullptr;
  QFrame* bar_ = nullptr;
  QLabel* bar_words_ = nullptr;
  QPushButton* bar_yes_ = nullptr;
  QPushButton* bar_no_ = nullptr;
  QLabel* working_ = nullptr;
  QProgressBar* busy_ = nullptr;
  QPushButton* cancel_ = nullptr;
  QLabel* copied_ = nullptr;
  HelpDialog* help_ = nullptr;
  ScanDialog* scan_ = nullptr;
};

}  // namespace endplate::ui
