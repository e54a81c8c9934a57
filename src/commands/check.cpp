// Is this case file valid; every problem at once, each with its place and its mend.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <utility>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/examination/case_check.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

struct CheckAnswer {
  casefile::Case read;
  examination::CaseCheck checked;
};

Expected<CheckAnswer> check_file(const CommonOptions& options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  auto read = load_case(options, *package);
  if (!read) return std::unexpected(read.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  auto checked = examination::check_case(*read, *package, *tree);
  if (!checked) return std::unexpected(checked.error());
  return CheckAnswer{std::move(*read), std::move(*checked)};
}

Json document_of(const CheckAnswer& answer, const CommonOptions& options) {
  Json document = envelope("check", options, answer.read.limb.side, answer.checked.assumptions, {},
                           answer.checked.warnings);
  document["valid"] = true;
  document["problems"] = Json::array();
  document["injuries"] = Json::array();
  for (const examination::PlacedInjury& injury : answer.checked.injuries) {
    document["injuries"].push_back(
        {{"nerve", injury.what}, {"place", injury.words}, {"mechanism", injury.mechanism}});
  }
  document["worth_giving"] = Json::array();
  for (const casefile::Remark& remark : answer.checked.worth_giving) {
    document["worth_giving"].push_back({{"place", remark.place}, {"why", remark.why}});
  }
  return document;
}

std::string upper(std::string_view text) {
  std::string out(text);
  for (char& c : out) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return out;
}

void append_list(std::string& text, std::string_view title, const std::vector<std::string>& items) {
  if (items.empty()) return;
  text += fmt::format("\n{}\n", title);
  for (const std::string& item : items) {
    std::string_view mark = "- ";
    for (const std::string& line : wrap(item, 96)) {
      text += fmt::format("  {}{}\n", mark, line);
      mark = "  ";
    }
  }
}

std::string text_of(const CheckAnswer& answer, const CommonOptions& options) {
  std::string text = fmt::format("{} upper limb: the case file is valid\n",
                                 upper(to_string(answer.read.limb.side)));
  if (!answer.checked.injuries.empty()) {
    TextTable table({{"Injured", TextTable::Align::left, 30},
                     {"Place", TextTable::Align::left, 40},
                     {"Mechanism", TextTable::Align::left, 24}});
    for (const examination::PlacedInjury& injury : answer.checked.injuries) {
      table.add_row({injury.what, injury.words, injury.mechanism});
    }
    text += '\n' + table.to_string();
  }
  append_list(text, "Outside what was published", answer.checked.warnings);
  append_list(text, "How the file was read", answer.checked.assumptions);
  if (!options.quiet) {
    std::vector<std::string> remarks;
    for (const casefile::Remark& remark : answer.checked.worth_giving) {
      remarks.push_back(fmt::format("{}: {}", remark.place, remark.why));
    }
    append_list(text, "Worth giving", remarks);
  }
  text += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), 100)) text += line + '\n';
  return text;
}

Expected<Answer> run(const CommonOptions& options) {
  if (options.case_path.empty()) {
    return std::unexpected(Error::input(
        {"CASE", "no case file was named", "Name one, or write - to read standard input."}));
  }
  const auto answer = check_file(options);
  if (!answer) return std::unexpected(answer.error());
  return Answer{document_of(*answer, options), text_of(*answer, options)};
}

}  // namespace

void register_check(Registry& registry) {
  registry.add_command(
      "check", "is this case file valid: every problem with its place and its mend", true, run);
}

}  // namespace endplate::cli
