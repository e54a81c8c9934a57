#pragma once
// The limb in the middle of the window: it follows the case and its answers, and what is done on it
// becomes an edit of the case or a question.
#include <QWidget>
#include <memory>
#include <optional>
#include <string>

#include "ui/app/desk.hpp"
#include "ui/view/view_types.hpp"

class QAction;
class QLabel;
class QToolBar;
class QToolButton;

namespace endplate::ui {

class LimbView;
class PickCard;
struct Subject;
class RiskBar;
class RiskLayer;
enum class PaletteKind;
enum class Question;
struct IncisionRequest;

class LimbStage : public QWidget {
  Q_OBJECT

 public:
  explicit LimbStage(Desk desk, QWidget* parent = nullptr);

  /// A flat drawing where the screen has no OpenGL; then a line says so.
  LimbView* view() const { return view_; }

  /// The question on the right, by its name in the window: what is laid over the limb.
  void show_question(const QString& name);
  /// The way of a nerve transfer; see Panel::transfer_shown.
  void show_transfer(const QString& donor, double donor_cut_mm, const QString& recipient,
                     double recipient_cut_mm);
  /// What stands out, here and in the card below: nerves and areas by name, muscles by their key.
  void point_out(const QStringList& names);
  /// Lends the picture to a lecture; take_back() brings it and the case's state back.
  LimbView* lend();
  void take_back();

 Q_SIGNALS:
  /// What stands out: a nerve with its branches, muscles (by their key) and areas, or one of those.
  void pointed_at(const QStringList& names);
  /// A line was drawn on the skin.
  void incision_asked();
  void picture_saved(const QString& path);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Build;
  struct Marks;

  void add_tools();
  QLabel* flat_note(const QString& why);
  void note_case();
  void note_answer(Question question);
  void build_limb(const std::string& key);
  void show_built(const Build& built);
  void refresh_marks();
  void show_marks(const Marks& marks);
  void refresh_cut();
  void refresh_risk();
  void move_injury(int mark, const QString& nerve, double arc_mm);
  void ask_drawn(const std::vector<SkinSpot>& marks);
  void note_pick(const Pick& pick);
  void show_subject(const Subject& subject);
  void lend_muscles(bool on);
  void note_measure(const Measurement& measurement);
  void apply_palette();
  void save_picture();

  Desk desk_;
  LimbView* view_ = nullptr;
  QToolBar* tools_ = nullptr;
  QToolBar* hands_ = nullptr;
  RiskBar* risk_bar_ = nullptr;
  RiskLayer* risk_ = nullptr;
  QToolButton* draw_ = nullptr;
  QToolButton* measure_ = nullptr;
  QAction* muscles_ = nullptr;  // of the menu of layers
  bool muscles_are_lent_ =
      false;  // shown for the one that was chosen, not because the reader asked
  PickCard* card_ = nullptr;
  std::optional<std::string> key_;  // of the limb that is shown or being made
  std::string question_;            // in front
  std::vector<Route> ways_;         // of the transfer that is chosen
  int wanted_ = 0;                  // the build that counts
  int marks_wanted_ = 0;
};

}  // namespace endplate::ui
