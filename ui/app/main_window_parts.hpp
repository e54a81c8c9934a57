#pragma once
// What the window owns beside its widgets.
#include <QString>
#include <memory>
#include <vector>

#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/document/recovery_store.hpp"

namespace endplate::ui {

struct MainWindow::Parts {
  Parts(std::shared_ptr<const CaseTables> tables, casefile::Date today, const QString& data_folder)
      : folder(data_folder),
        document(std::move(tables), today),
        answers(document),
        store(document, data_folder + "/recovery") {}

  QString folder;
  Settings settings;
  CaseDocument document;
  AnswerRunner answers;
  RecoveryStore store;
  std::unique_ptr<CaseLock> lock;
  std::vector<LostCase> lost;
};

}  // namespace endplate::ui
