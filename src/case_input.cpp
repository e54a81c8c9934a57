#include "case_input.hpp"

#include <fmt/format.h>

#include <fstream>
#include <iostream>

#include "models/anatomy/nerve_tree.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/json_text.hpp"
#include "models/casefile/read.hpp"

namespace endplate::cli {
namespace {

const std::string kNoCase = "no case was given; a standard adult limb, right side";

// One byte more than a case file may have is enough to see that it is too large.
std::string read_all(std::istream& in) {
  std::string text(casefile::kLargestFile_bytes + 1, '\0');
  in.read(text.data(), static_cast<std::streamsize>(text.size()));
  text.resize(static_cast<std::size_t>(in.gcount()));
  return text;
}

Expected<std::string> read_input(const std::string& path) {
  if (path == "-") return read_all(std::cin);
  std::error_code failed;
  const auto status = std::filesystem::status(path, failed);
  const auto refuse = [&](std::string what, std::string mend) {
    return std::unexpected(Error::input({path, std::move(what), std::move(mend)}));
  };
  if (!std::filesystem::exists(status)) {
    return refuse("there is no such file",
                  "Check the name and the folder, or write - to read standard input.");
  }
  if (std::filesystem::is_directory(status)) {
    return refuse("this is a folder", "Name the case file in it.");
  }
  std::ifstream in(path, std::ios::binary);
  if (!in) return refuse("the file cannot be opened", "Check that you may read it.");
  return read_all(in);
}

}  // namespace

Expected<casefile::Case> load_case(const CommonOptions& options,
                                   const evidence::DataPackage& package) {
  if (options.case_path.empty()) {
    casefile::Case standard;
    standard.assumptions.push_back(kNoCase);
    return standard;
  }
  const auto text = read_input(options.case_path);
  if (!text) return std::unexpected(text.error());
  const auto terms = anatomy::Terms::from(package);
  if (!terms) return std::unexpected(terms.error());
  const auto tree = anatomy::NerveTree::from(package);
  if (!tree) return std::unexpected(tree.error());

  casefile::ReadRules rules{casefile::pose_limits(package), &*tree, std::nullopt};
  if (options.today_given) rules.today = options.today;
  return casefile::read_patient(*text, *terms, rules);
}

}  // namespace endplate::cli
