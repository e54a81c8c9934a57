#include "ui/panels/fields.hpp"

#include <QCompleter>
#include <QDoubleValidator>
#include <QLocale>
#include <QWheelEvent>
#include <cmath>
#include <nlohmann/json.hpp>
#include <utility>

#include "ui/document/case_document.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// Qt's own takes nothing for a number that is not finished, and the field is never left.
class NumberOrNothing : public QDoubleValidator {
 public:
  explicit NumberOrNothing(QObject* parent) : QDoubleValidator(parent) {
    setLocale(QLocale::c());
    setNotation(StandardNotation);
  }
  State validate(QString& text, int& at) const override {
    return text.isEmpty() ? Acceptable : QDoubleValidator::validate(text, at);
  }
};

}  // namespace

QValidator* number_or_nothing(QObject* parent) {
  return new NumberOrNothing(parent);
}

NumberField::NumberField(CaseDocument& document, Key key, const QString& unit, QWidget* parent)
    : QLineEdit(parent), document_(document), key_(std::move(key)) {
  setPlaceholderText(unit.isEmpty() ? tr("not known") : tr("not known, %1").arg(unit));
  setAccessibleName(unit.isEmpty() ? key_.what : key_.what + ", " + unit);
  setObjectName(text_of(key_.pointer));
  setValidator(number_or_nothing(this));
  setMaximumWidth(170);
  connect(this, &QLineEdit::editingFinished, this, &NumberField::commit);
  connect(&document_, &CaseDocument::changed, this, &NumberField::refresh);
  refresh();
}

void NumberField::set_pointer(const std::string& pointer) {
  key_.pointer = pointer;
  setObjectName(text_of(pointer));
  refresh();
}

void NumberField::refresh() {
  const QString now = document_.text_at(key_.pointer);
  if (now != text()) setText(now);
}

void NumberField::commit() {
  if (text() == document_.text_at(key_.pointer)) return;
  bool is_number = false;
  const double value = QLocale::c().toDouble(text(), &is_number);
  if (text().isEmpty()) {
    document_.remove(key_.pointer, key_.what);
  } else if (is_number) {
    const bool whole = value == std::floor(value) && std::abs(value) < 1e9;
    document_.set(key_.pointer, whole ? Json(static_cast<std::int64_t>(value)) : Json(value),
                  key_.what);
  }
  refresh();
}

TextField::TextField(CaseDocument& document, Key key, const QString& hint, QWidget* parent)
    : QLineEdit(parent), document_(document), key_(std::move(key)) {
  setPlaceholderText(hint);
  setAccessibleName(key_.what);
  setObjectName(text_of(key_.pointer));
  connect(this, &QLineEdit::editingFinished, this, &TextField::commit);
  connect(&document_, &CaseDocument::changed, this, &TextField::refresh);
  refresh();
}

void TextField::set_pointer(const std::string& pointer) {
  key_.pointer = pointer;
  setObjectName(text_of(pointer));
  refresh();
}

void TextField::refresh() {
  const QString now = document_.text_at(key_.pointer);
  if (now == text()) return;
  setText(now);
  setCursorPosition(0);
}

void TextField::commit() {
  const QString now = text().trimmed();
  if (now == document_.text_at(key_.pointer)) return;
  if (now.isEmpty()) {
    document_.remove(key_.pointer, key_.what);
  } else {
    document_.set(key_.pointer, plain(now), key_.what);
  }
}

DateField::DateField(CaseDocument& document, Key key, QWidget* parent)
    : TextField(document, std::move(key), tr("not known, YYYY-MM-DD"), parent) {
  setMinimumWidth(176);
  setMaximumWidth(190);
}

ChoiceField::ChoiceField(CaseDocument& document, Key key, std::vector<Choice> choices,
                         QWidget* parent)
    : QComboBox(parent), document_(document), key_(std::move(key)), choices_(std::move(choices)) {
  setAccessibleName(key_.what);
  setObjectName(text_of(key_.pointer));
  addItem(tr("not known"));
  for (const Choice& choice : choices_) addItem(choice.shown);
  setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  connect(this, &QComboBox::activated, this, &ChoiceField::commit);
  connect(&document_, &CaseDocument::changed, this, &ChoiceField::refresh);
  refresh();
}

void ChoiceField::set_pointer(const std::string& pointer) {
  key_.pointer = pointer;
  setObjectName(text_of(pointer));
  refresh();
}

void ChoiceField::refresh() {
  const Json* now = document_.at(key_.pointer);
  int index = 0;
  for (std::size_t i = 0; now != nullptr && i < choices_.size(); ++i) {
    if (choices_[i].json == now->dump()) index = static_cast<int>(i) + 1;
  }
  setCurrentIndex(index);
}

void ChoiceField::commit(int index) {
  if (index == 0) {
    document_.remove(key_.pointer, key_.what);
  } else {
    const Choice& choice = choices_[static_cast<std::size_t>(index - 1)];
    document_.set(key_.pointer, Json::parse(choice.json), key_.what);
  }
}

// A wheel that scrolls the page must not change what was found.
void ChoiceField::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

void make_completing(QComboBox& box, const QStringList& names) {
  box.setEditable(true);
  box.setInsertPolicy(QComboBox::NoInsert);
  box.addItems(names);
  box.setMinimumContentsLength(24);
  box.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box.setFocusPolicy(Qt::StrongFocus);
  box.completer()->setCompletionMode(QCompleter::PopupCompletion);
  box.completer()->setFilterMode(Qt::MatchContains);
  box.completer()->setCaseSensitivity(Qt::CaseInsensitive);
}

QStringList names_of(const std::vector<std::string>& names) {
  QStringList list;
  for (const std::string& name : names) list << text_of(name);
  return list;
}

TermField::TermField(CaseDocument& document, Key key, const QStringList& names, QWidget* parent)
    : QComboBox(parent), document_(document), key_(std::move(key)), names_(names) {
  make_completing(*this, names);
  setAccessibleName(key_.what);
  setObjectName(text_of(key_.pointer));
  lineEdit()->setPlaceholderText(tr("not known"));
  connect(this, &QComboBox::activated, this, &TermField::commit);
  connect(lineEdit(), &QLineEdit::editingFinished, this, &TermField::commit);
  connect(&document_, &CaseDocument::changed, this, &TermField::refresh);
  refresh();
}

void TermField::set_pointer(const std::string& pointer) {
  key_.pointer = pointer;
  setObjectName(text_of(pointer));
  refresh();
}

void TermField::set_names(const QStringList& names) {
  if (names == names_) return;
  names_ = names;
  clear();
  addItems(names_);
  setEditText(document_.text_at(key_.pointer));
  lineEdit()->setCursorPosition(0);
}

void TermField::refresh() {
  const QString now = document_.text_at(key_.pointer);
  if (now == currentText()) return;
  setEditText(now);
  lineEdit()->setCursorPosition(0);
}

void TermField::commit() {
  const QString now = currentText().trimmed();
  if (now == document_.text_at(key_.pointer)) return;
  if (now.isEmpty()) {
    document_.remove(key_.pointer, key_.what);
  } else {
    document_.set(key_.pointer, plain(now), key_.what);
  }
}

void TermField::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

Choice word(const QString& shown, std::string_view word) {
  return {shown, Json(std::string(word)).dump()};
}

std::vector<Choice> yes_or_no() {
  return {{ChoiceField::tr("no"), "false"}, {ChoiceField::tr("yes"), "true"}};
}

}  // namespace endplate::ui
