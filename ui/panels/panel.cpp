#include "ui/panels/panel.hpp"

#include <QCoreApplication>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <string>

#include "models/core/caution.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/charts/colours.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/place_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

// Lies over an answer that is not current, and lets every click through.
class Veil : public QWidget {
 public:
  explicit Veil(QWidget* over) : QWidget(over) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    over->installEventFilter(this);
    hide();
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Resize) setGeometry(parentWidget()->rect());
    return false;
  }
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    QColor colour = palette().color(QPalette::Window);
    colour.setAlphaF(0.55F);
    painter.fillRect(rect(), colour);
  }
};

namespace {

// For the files of translations: the words of models/core/caution.cpp, which a test holds it to.
[[maybe_unused]] constexpr auto kCaution = QT_TRANSLATE_NOOP(
    "endplate::ui",
    "A computed estimate for a typical limb, to inform and not to replace surgical judgement, "
    "local protocols and licensed practice. Check it against the patient.");

}  // namespace

QString caution_words() {
  return QCoreApplication::translate("endplate::ui", std::string(standing_caution()).c_str());
}

QLabel* paragraph(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  return label;
}

QLabel* heading(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  label->setContentsMargins(0, 8, 0, 0);
  return label;
}

Panel::Panel(Desk desk, const QString& question, Kind kind, Body body, std::vector<Question> asked,
             QWidget* parent)
    : QWidget(parent), desk_(desk), question_(question), kind_(kind), asked_(std::move(asked)) {
  setAccessibleName(question);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(12, 10, 12, 8);
  all->setSpacing(6);

  auto* head = new QHBoxLayout;
  side_ = new QLabel(this);
  side_->setObjectName("side");
  side_->setAlignment(Qt::AlignCenter);
  side_->setContentsMargins(10, 4, 10, 4);
  side_->setAutoFillBackground(true);
  QFont strong = font();
  strong.setBold(true);
  strong.setPointSizeF(strong.pointSizeF() * 1.15);
  side_->setFont(strong);
  title_ = new QLabel(question, this);
  title_->setWordWrap(true);
  QFont large = strong;
  large.setPointSizeF(large.pointSizeF() * 1.15);
  title_->setFont(large);
  head->addWidget(side_);
  head->addSpacing(8);
  head->addWidget(title_, 1);
  all->addLayout(head);
  dates_ = paragraph({}, this);
  dates_->setObjectName("dates");
  all->addWidget(dates_);

  notice_ = new QFrame(this);
  notice_->setAutoFillBackground(true);
  auto* notice = new QHBoxLayout(notice_);
  notice->setContentsMargins(8, 5, 8, 5);
  notice_text_ = paragraph({}, notice_);
  notice_text_->setObjectName("notice");
  again_ = new QPushButton(tr("Reckon again"), notice_);
  notice->addWidget(notice_text_, 1);
  notice->addWidget(again_, 0, Qt::AlignTop);
  all->addWidget(notice_);
  notice_->hide();
  connect(again_, &QPushButton::clicked, this, [this] { desk_.answers.resume(); });

  auto* content = new QWidget;
  body_ = new QVBoxLayout(content);
  body_->setContentsMargins(0, 0, 4, 0);
  body_->setSpacing(6);
  if (body == Body::scrolls) {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(content);
    scroll->setFocusPolicy(Qt::NoFocus);
    all->addWidget(scroll, 1);
  } else {
    all->addWidget(content, 1);
  }
  if (kind_ == Kind::result) {
    veil_ = new Veil(content);
    auto* caution = paragraph(caution_words(), this);
    caution->setObjectName("caution");
    QFont small = caution->font();
    small.setPointSizeF(small.pointSizeF() * 0.9);
    caution->setFont(small);
    all->addWidget(caution);
  }

  connect(&desk_.document, &CaseDocument::changed, this, &Panel::refresh);
  connect(&desk_.settings, &Settings::changed, this, &Panel::refresh);
  connect(&desk_.answers, &AnswerRunner::answered, this, [this](Question answered) {
    if (std::ranges::find(asked_, answered) == asked_.end() || !isVisible()) return;
    refresh_notice();
    if (!desk_.answers.state(answered).stale) show_answers();
  });
}

void Panel::come_forward() {
  desk_.answers.want(asked_);
  refresh_head();
  show_case();
  show_answers();
  refresh_notice();
}

void Panel::refresh() {
  if (!isVisible()) return;
  refresh_head();
  show_case();
  show_answers();
  refresh_notice();
}

void Panel::point_out(const QStringList& names) {
  for (auto* table : findChildren<RowTable*>()) table->point_out(names);
}

void Panel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

QString Panel::head_text() const {
  return side_->text() + '\n' + dates_->text();
}

QString Panel::notice_text() const {
  return notice_->isHidden() ? QString() : notice_text_->text();
}

void Panel::refresh_head() {
  const auto patient = desk_.document.last_valid();
  const bool left = desk_.document.text_at("/limb/side") == "left";
  const bool given = desk_.document.at("/limb/side") != nullptr;
  side_->setText(given ? (left ? tr("LEFT LIMB") : tr("RIGHT LIMB")) : tr("SIDE NOT GIVEN"));
  side_->setToolTip(given ? QString() : tr("Shown as a right limb until the side is given."));
  const Colours colours(palette());
  QPalette chip = side_->palette();
  chip.setColor(QPalette::Window, given ? colours.ink : colours.alert);
  chip.setColor(QPalette::WindowText, given ? colours.paper : colours.on_alert);
  side_->setPalette(chip);

  const casefile::Date today = desk_.document.today();
  QStringList parts{tr("Reckoned on %1").arg(date_words(today))};
  if (patient != nullptr) {
    for (const casefile::Injury& injury : patient->injuries) {
      const QString words =
          injury.date
              ? tr("injury %1 (%2)").arg(date_words(*injury.date), age_words(*injury.date, today))
              : tr("date of injury not known");
      if (!parts.contains(words)) parts << words;
    }
    std::optional<casefile::Date> seen;
    if (patient->examination) seen = patient->examination->date;
    for (const casefile::Examination& visit : patient->observations) {
      if (visit.date && (!seen || *seen < *visit.date)) seen = visit.date;
    }
    const bool any = patient->examination || !patient->observations.empty();
    parts << (seen  ? tr("last examined %1 (%2)").arg(date_words(*seen), age_words(*seen, today))
              : any ? tr("date of examination not known")
                    : tr("not examined"));
  }
  dates_->setText(parts.join(QString::fromUtf8(" \u00b7 ")));
}

void Panel::refresh_notice() {
  QString words;
  bool again = false;
  bool stale = false;
  const bool readable = desk_.document.read().has_value();
  if (kind_ == Kind::result && !readable) {
    words = tr("NOT CURRENT: the case cannot be read.\n%1")
                .arg(problem_words(desk_.document.read().error().problems));
    stale = true;
  } else if (!readable) {
    words = problem_words(desk_.document.read().error().problems);
  } else if (kind_ == Kind::result) {
    for (const Question question : asked_) {
      const HeldState& state = desk_.answers.state(question);
      if (state.error) {
        words = state.error->fault == Fault::outside_model && desk_.document.count("/injuries") == 0
                    ? tr("No injury is given yet: enter it under Injury (Alt+3).")
                    : problem_words(state.error->problems);
        break;
      }
      if (!state.stale) continue;
      stale = true;
      const bool stopped = state.progress == Progress::cancelled;
      again = stopped;
      if (state.revision < 0) {
        words = stopped ? tr("Stopped. Nothing has been reckoned yet.") : tr("Being reckoned ...");
        break;
      }
      const QStringList since = desk_.document.changes_since(state.revision);
      words = stopped ? tr("NOT CURRENT, stopped.") : tr("NOT CURRENT: being reckoned anew.");
      words += ' ';
      words += since.isEmpty() ? tr("What is shown was made at %1 with other settings.")
                                     .arg(state.at.toString("HH:mm:ss"))
                               : tr("What is shown was made at %1, from the case before: %2.")
                                     .arg(state.at.toString("HH:mm:ss"), since.join("; "));
      break;
    }
  }
  const Colours colours(palette());
  QPalette bar = notice_->palette();
  bar.setColor(QPalette::Window, colours.alert);
  bar.setColor(QPalette::WindowText, colours.on_alert);
  notice_->setPalette(bar);
  notice_text_->setText(words);
  again_->setVisible(again);
  notice_->setVisible(!words.isEmpty());
  if (veil_ != nullptr) {
    veil_->setVisible(stale);
    veil_->setGeometry(veil_->parentWidget()->rect());
    veil_->raise();
  }
}

}  // namespace endplate::ui
