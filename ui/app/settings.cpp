#include "ui/app/settings.hpp"

#include <QFileInfo>
#include <QSettings>

namespace endplate::ui {
namespace {

constexpr int kMostRecent = 10;
constexpr int kLeastSamples = 100;
constexpr int kMostSamples = 1'000'000;

}  // namespace

Settings::Settings(QObject* parent) : QObject(parent) {
  const QSettings kept;
  choices_.unit = kept.value("unit") == "cm" ? LengthUnit::cm : LengthUnit::mm;
  const QString lightness = kept.value("palette").toString();
  choices_.lightness = lightness == "dark"    ? Lightness::dark
                       : lightness == "light" ? Lightness::light
                                              : Lightness::system;
  choices_.language = kept.value("language").toString();
  const QString terms = kept.value("terms").toString();
  choices_.terms = terms == "latin"     ? TermLanguage::latin
                   : terms == "english" ? TermLanguage::english
                                        : TermLanguage::program;
  choices_.hand = kept.value("hand") == "left" ? Hand::left : Hand::right;
  choices_.samples =
      qBound(kLeastSamples, kept.value("samples", choices_.samples).toInt(), kMostSamples);
  choices_.seed = kept.value("seed", 1).toULongLong();
  choices_.tour_seen = kept.value("tour_seen").toBool();
}

void Settings::set(const Choices& choices) {
  if (choices == choices_) return;
  choices_ = choices;
  QSettings kept;
  kept.setValue("unit", choices.unit == LengthUnit::cm ? "cm" : "mm");
  kept.setValue("palette", choices.lightness == Lightness::dark    ? "dark"
                           : choices.lightness == Lightness::light ? "light"
                                                                   : "system");
  kept.setValue("language", choices.language);
  kept.setValue("terms", choices.terms == TermLanguage::latin     ? "latin"
                         : choices.terms == TermLanguage::english ? "english"
                                                                  : "program");
  kept.setValue("hand", choices.hand == Hand::left ? "left" : "right");
  kept.setValue("samples", choices.samples);
  kept.setValue("seed", static_cast<qulonglong>(choices.seed));
  kept.setValue("tour_seen", choices.tour_seen);
  Q_EMIT changed();
}

QStringList Settings::recent_files() const {
  QStringList files = QSettings().value("recent").toStringList();
  files.removeIf([](const QString& file) { return !QFileInfo::exists(file); });
  return files;
}

void Settings::add_recent(const QString& path) {
  QStringList files = QSettings().value("recent").toStringList();
  const QString whole = QFileInfo(path).absoluteFilePath();
  files.removeAll(whole);
  files.prepend(whole);
  while (files.size() > kMostRecent) files.removeLast();
  QSettings().setValue("recent", files);
  Q_EMIT recent_changed();
}

QString Settings::length(double mm) const {
  const bool in_cm = choices_.unit == LengthUnit::cm;
  // "-0" would be read as a side.
  const double shown = (in_cm ? mm / 10.0 : mm) + 0.0;
  QString text = QString::number(shown, 'f', in_cm ? 1 : 0);
  if (text == "-0" || text == "-0.0") text.remove(0, 1);
  return text;
}

QString Settings::unit() const {
  return choices_.unit == LengthUnit::cm ? tr("cm") : tr("mm");
}

QByteArray Settings::geometry() const {
  return QSettings().value("geometry").toByteArray();
}

void Settings::keep_geometry(const QByteArray& geometry) {
  QSettings().setValue("geometry", geometry);
}

}  // namespace endplate::ui
