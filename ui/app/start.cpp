#include "ui/app/start.hpp"

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>
#include <QStyleFactory>
#include <QTranslator>

#include "models/evidence/datasets_folder.hpp"
#include "ui/app/settings.hpp"

namespace endplate::ui {

void prepare(QApplication& application) {
  QCoreApplication::setOrganizationName("endplate");
  QCoreApplication::setApplicationName("endplate-desk");
  QCoreApplication::setApplicationVersion(ENDPLATE_VERSION);
  // One style on every platform: what was looked at is what is shown.
  QApplication::setStyle(QStyleFactory::create("Fusion"));
  const QString chosen = Settings().choices().language;
  const QLocale locale = chosen.isEmpty() ? QLocale() : QLocale(chosen);
  auto* translator = new QTranslator(&application);
  if (translator->load(locale, "endplate", "_", ":/translations")) {
    QCoreApplication::installTranslator(translator);
  }
}

std::filesystem::path default_datasets() {
  return evidence::datasets_folder(ENDPLATE_INSTALLED_DATASETS, ENDPLATE_SOURCE_DATASETS);
}

QString data_folder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
}

}  // namespace endplate::ui
