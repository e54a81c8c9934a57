#include "models/anatomy/muscle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/anatomy/table_names.hpp"

namespace endplate::anatomy {
namespace {

constexpr std::string_view kFile = "muscles.csv";

// By root, the muscles that a myotome row names as weak.
std::set<std::pair<std::string, std::string>> key_muscles(const evidence::Table& myotomes) {
  std::set<std::pair<std::string, std::string>> result;
  for (const evidence::Row row : myotomes) {
    const std::string_view movement = row.text("key_movement");
    if (movement.starts_with("EMG pattern, form") || movement.starts_with("anatomical fibres") ||
        movement.starts_with("all muscles")) {
      continue;
    }
    for (const std::string& muscle : row.list("muscles")) {
      result.emplace(std::string(row.text("root")), muscle);
    }
  }
  return result;
}

}  // namespace

Expected<std::vector<Muscle>> read_muscles(const evidence::DataPackage& package,
                                           const NerveTree& tree) {
  const auto key = key_muscles(package.table("myotomes"));
  std::vector<Muscle> muscles;
  std::vector<Problem> problems;
  std::set<std::string> seen;
  for (const evidence::Row row : package.table("muscles")) {
    Muscle muscle;
    muscle.id = row.text("abbreviation");
    muscle.name = row.text("muscle");
    muscle.part = row.text("part");
    muscle.compartment = row.text("compartment");
    muscle.action = row.text("action");
    muscle.clinical_test = row.text("clinical_test");
    muscle.source = row.text("source");
    muscle.provenance = *evidence::provenance_from(row.text("provenance"));
    if (!seen.insert(muscle.id).second) {
      problems.push_back({cell_place(kFile, row, "abbreviation"),
                          fmt::format("'{}' is used twice", muscle.id),
                          "Give every muscle its own abbreviation."});
    }
    for (std::string root : row.list("roots")) {
      const bool dominant = root.ends_with('*');
      if (dominant) root.pop_back();
      muscle.roots.push_back({root, dominant, key.contains({root, muscle.id})});
    }
    const auto nerve = named_node(tree, kFile, row, "nerve", problems);
    const auto branch = named_node(tree, kFile, row, "branch", problems);
    if (nerve && branch) {
      muscle.nerve = *nerve;
      muscle.branch = *branch;
      if (!descends_from(tree, *branch, *nerve)) {
        problems.push_back(
            {cell_place(kFile, row, "branch"),
             fmt::format("'{}' does not descend from '{}'", row.text("branch"), row.text("nerve")),
             "Correct the nerve, the branch or the nerve tree."});
      }
    }
    muscles.push_back(std::move(muscle));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return muscles;
}

}  // namespace endplate::anatomy
