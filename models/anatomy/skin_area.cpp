#include "models/anatomy/skin_area.hpp"

#include <fmt/format.h>

#include "models/anatomy/table_names.hpp"

namespace endplate::anatomy {
namespace {
constexpr std::string_view kFile = "skin_areas.csv";
}

Expected<std::vector<SkinArea>> read_skin_areas(const evidence::DataPackage& package,
                                                const NerveTree& tree) {
  std::vector<SkinArea> areas;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("skin_areas")) {
    const auto nerve = named_node(tree, kFile, row, "nerve", problems);
    std::vector<NodeIndex> branches;
    for (const std::string& name : row.list("branch")) {
      const std::string place = cell_place(kFile, row, "branch");
      const auto branch = named_node(tree, name, place, problems);
      if (!branch || !nerve) continue;
      if (!descends_from(tree, *branch, *nerve)) {
        problems.push_back({place,
                            fmt::format("'{}' does not descend from '{}'", name, row.text("nerve")),
                            "Correct the nerve, the branch or the nerve tree."});
      }
      branches.push_back(*branch);
    }
    if (row.text("side") == "none" || !nerve) continue;
    SkinArea area;
    area.name = row.text("area");
    area.side = row.text("side");
    area.nerve = *nerve;
    area.branches = std::move(branches);
    area.roots = row.list("roots");
    const std::string_view zone = row.text("autonomous_zone");
    if (zone.starts_with("yes, ")) {
      area.autonomous_zone = zone.substr(5);
    } else if (zone != "no") {
      problems.push_back({cell_place(kFile, row, "autonomous_zone"),
                          fmt::format("'{}' does not say yes or no", zone),
                          "Write 'no', or 'yes, ' and where it lies."});
    }
    area.former_name = row.text("former_name");
    area.source = row.text("source");
    area.provenance = *evidence::provenance_from(row.text("provenance"));
    areas.push_back(std::move(area));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return areas;
}

}  // namespace endplate::anatomy
