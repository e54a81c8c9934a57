// Is this case file valid; every problem at once, each with its place and its mend.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <iterator>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/remarks.hpp"
#include "models/casefile/words.hpp"
#include "models/limb/case_limb.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

struct PlacedInjury {
  std::string what;   // the nerve, root, trunk or cord
  std::string words;  // where, or that it is not known
  std::string mechanism;
};

struct CheckAnswer {
  casefile::Case read;
  std::vector<PlacedInjury> injuries;
  std::vector<casefile::Remark> worth_giving;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;
};

// Every injury that names a place must lie on this limb; all that do not are reported.
Expected<CheckAnswer> check_case(const CommonOptions& options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  auto read = load_case(options, *package);
  if (!read) return std::unexpected(read.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  const auto limb = limb::CaseLimb::from(*package, *tree, read->limb);
  if (!limb) return std::unexpected(limb.error());

  CheckAnswer answer;
  std::vector<Problem> problems;
  Fault fault = Fault::input;
  for (std::size_t i = 0; i < read->injuries.size(); ++i) {
    const casefile::Injury& injury = read->injuries[i];
    PlacedInjury& placed = answer.injuries.emplace_back();
    placed.what =
        injury.nerve.empty() ? casefile::plexus_element(*injury.at).value_or("") : injury.nerve;
    placed.mechanism = casefile::to_string(injury.mechanism);
    placed.words = "place not given";
    if (!injury.at) continue;
    auto lesion = limb->place_injury(injury, i);
    if (lesion) {
      placed.words = lesion->words;
      continue;
    }
    fault = lesion.error().fault;
    std::ranges::move(lesion.error().problems, std::back_inserter(problems));
  }
  if (!problems.empty()) return std::unexpected(Error{fault, std::move(problems)});
  answer.assumptions = read->assumptions;
  answer.warnings = limb->warnings();
  answer.worth_giving = casefile::worth_giving(*read);
  answer.read = std::move(*read);
  return answer;
}

Json document_of(const CheckAnswer& answer, const CommonOptions& options) {
  Json document =
      envelope("check", options, answer.read.limb.side, answer.assumptions, {}, answer.warnings);
  document["valid"] = true;
  document["problems"] = Json::array();
  document["injuries"] = Json::array();
  for (const PlacedInjury& injury : answer.injuries) {
    document["injuries"].push_back(
        {{"nerve", injury.what}, {"place", injury.words}, {"mechanism", injury.mechanism}});
  }
  document["worth_giving"] = Json::array();
  for (const casefile::Remark& remark : answer.worth_giving) {
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
  if (!answer.injuries.empty()) {
    TextTable table({{"Injured", TextTable::Align::left, 30},
                     {"Place", TextTable::Align::left, 40},
                     {"Mechanism", TextTable::Align::left, 24}});
    for (const PlacedInjury& injury : answer.injuries) {
      table.add_row({injury.what, injury.words, injury.mechanism});
    }
    text += '\n' + table.to_string();
  }
  append_list(text, "Outside what was published", answer.warnings);
  append_list(text, "How the file was read", answer.assumptions);
  if (!options.quiet) {
    std::vector<std::string> remarks;
    for (const casefile::Remark& remark : answer.worth_giving) {
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
  const auto answer = check_case(options);
  if (!answer) return std::unexpected(answer.error());
  return Answer{document_of(*answer, options), text_of(*answer, options)};
}

}  // namespace

void register_check(Registry& registry) {
  registry.add_command(
      "check", "is this case file valid: every problem with its place and its mend", true, run);
}

}  // namespace endplate::cli
