#pragma once
// Widgets that show one key of the case and change it. An empty field is a key that is not there:
// unknown stays unknown.
#include <QComboBox>
#include <QLineEdit>
#include <QString>
#include <QStringList>
#include <string>
#include <string_view>
#include <vector>

class QValidator;

namespace endplate::ui {

class CaseDocument;

// Which key, and what a change of it is called.
struct Key {
  std::string pointer;
  QString what;
};

// Of a field for a number as a case file writes it; an empty one is complete.
QValidator* number_or_nothing(QObject* parent);

// A number with its unit behind it.
class NumberField : public QLineEdit {
  Q_OBJECT

 public:
  NumberField(CaseDocument& document, Key key, const QString& unit, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);
  void refresh();

 private:
  void commit();
  CaseDocument& document_;
  Key key_;
};

class TextField : public QLineEdit {
  Q_OBJECT

 public:
  TextField(CaseDocument& document, Key key, const QString& hint, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);
  void refresh();

 private:
  void commit();
  CaseDocument& document_;
  Key key_;
};

// A day of the calendar, "2026-06-01".
class DateField : public TextField {
  Q_OBJECT

 public:
  DateField(CaseDocument& document, Key key, QWidget* parent = nullptr);
};

// One of a few words, or "not known".
struct Choice {
  QString shown;
  std::string json;  // the value as it stands in a case file: "\"left\"", "true"
};

class ChoiceField : public QComboBox {
  Q_OBJECT

 public:
  ChoiceField(CaseDocument& document, Key key, std::vector<Choice> choices,
              QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);
  void refresh();

 protected:
  void wheelEvent(QWheelEvent* event) override;

 private:
  void commit(int index);
  CaseDocument& document_;
  Key key_;
  std::vector<Choice> choices_;
};

// A name of the tables, typed with completion; what the tables do not know is said by the models.
class TermField : public QComboBox {
  Q_OBJECT

 public:
  TermField(CaseDocument& document, Key key, const QStringList& names, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);
  void set_names(const QStringList& names);
  void refresh();

 protected:
  void wheelEvent(QWheelEvent* event) override;

 private:
  void commit();
  CaseDocument& document_;
  Key key_;
  QStringList names_;
};

// An editable combo box with completion by any part of a name.
void make_completing(QComboBox& box, const QStringList& names);
QStringList names_of(const std::vector<std::string>& names);

// A word of a case file.
Choice word(const QString& shown, std::string_view word);
std::vector<Choice> yes_or_no();

}  // namespace endplate::ui
