#pragma once
// Published results and verdicts as a table shows them.
#include <QString>
#include <string>
#include <vector>

#include "models/transfer/candidate.hpp"
#include "ui/panels/row_table.hpp"

namespace endplate::ui {

QString joined_words(const std::vector<std::string>& parts, const char* between);
// "81 of 88 M3", "68 % own scale", "none found"
QString published_words(const transfer::PublishedResult& result);
Cell verdict_cell(transfer::Verdict verdict);

}  // namespace endplate::ui
