#pragma once
// A scanned surface of the limb: which file, which unit, which landmarks; how well the standard
// limb fits it; and the lengths that it shows, for the case.
#include <QDialog>
#include <QString>
#include <vector>

#include "ui/answers/scan_runner.hpp"
#include "ui/app/desk.hpp"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace endplate::ui {

class RowTable;

class ScanDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ScanDialog(Desk desk, QWidget* parent = nullptr);

  // Whether a name is that of a surface; what cannot be read of these is told when it is opened.
  static bool is_surface(const QString& path);

  void open_surface(const QString& path);
  void open_landmarks(const QString& path);

 private:
  void add_files();
  void add_answer();
  void choose_surface();
  void choose_landmarks();
  void start();
  void refresh();
  void show_units();
  void show_answer(const scan::ScanAnswer& answer);
  void show_lengths(const scan::ScanAnswer& answer);
  void enter_lengths();

  Desk desk_;
  ScanRunner runner_;
  bool entered_ = false;
  bool shown_ = false;  // the answer that the runner holds

  QLineEdit* surface_ = nullptr;
  QComboBox* unit_ = nullptr;
  QLineEdit* landmarks_ = nullptr;
  QPushButton* fit_ = nullptr;
  QProgressBar* busy_ = nullptr;
  QLabel* told_ = nullptr;
  QWidget* answer_ = nullptr;
  QLabel* head_ = nullptr;
  QLabel* words_ = nullptr;
  QLabel* warnings_ = nullptr;
  RowTable* residuals_ = nullptr;
  QVBoxLayout* lengths_ = nullptr;
  std::vector<QCheckBox*> boxes_;  // one a length of the answer; null where it cannot be entered
  QLabel* caution_ = nullptr;
  QPushButton* enter_ = nullptr;
};

}  // namespace endplate::ui
