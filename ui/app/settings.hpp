#pragma once
// What the desk remembers between two days: nothing of a patient, and nothing that a clinical
// screen asks for.
#include <QObject>
#include <QString>
#include <QStringList>
#include <cstdint>

namespace endplate::ui {

enum class LengthUnit { mm, cm };
enum class TermLanguage { program, english, latin };  // of the names of nerves
enum class Hand { right, left };                      // that works on the panel
enum class Lightness { system, light, dark };

struct Choices {
  LengthUnit unit = LengthUnit::mm;
  Lightness lightness = Lightness::system;
  QString language;  // "en", "de"; empty: the system's
  TermLanguage terms = TermLanguage::program;
  Hand hand = Hand::right;
  int samples = 2000;
  std::uint64_t seed = 1;
  bool tour_seen = false;
  bool operator==(const Choices&) const = default;
};

class Settings : public QObject {
  Q_OBJECT

 public:
  explicit Settings(QObject* parent = nullptr);

  const Choices& choices() const { return choices_; }
  void set(const Choices& choices);

  // The newest first; files that are gone are left out.
  QStringList recent_files() const;
  void add_recent(const QString& path);

  // A length for a table whose head holds unit().
  QString length(double mm) const;
  QString unit() const;

  QByteArray geometry() const;
  void keep_geometry(const QByteArray& geometry);

 Q_SIGNALS:
  void changed();
  void recent_changed();

 private:
  Choices choices_;
};

}  // namespace endplate::ui
