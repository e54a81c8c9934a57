#pragma once
#include <QDialog>
#include <vector>

class QLabel;
class QPushButton;

namespace endplate::ui {

/// One page on one question: what it answers, what it needs, how to read it.
class HelpDialog : public QDialog {
  Q_OBJECT

 public:
  explicit HelpDialog(QWidget* parent = nullptr);
  void show_page(const QString& name, const QString& question);
  /// Plain text; empty for a name without a page.
  static QString page(const QString& name);

 private:
  QLabel* head_;
  QLabel* words_;
};

/// At most five steps for whoever opens the desk for the first time.
class TourDialog : public QDialog {
  Q_OBJECT

 public:
  explicit TourDialog(QWidget* parent = nullptr);
  static std::vector<QString> steps();

 private:
  void show_step(int step);
  int step_ = 0;
  QLabel* words_;
  QPushButton* back_;
  QPushButton* next_;
};

}  // namespace endplate::ui
