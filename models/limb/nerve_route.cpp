#include "models/limb/nerve_route.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace endplate::limb {
namespace {

class RouteReader {
 public:
  RouteReader(const evidence::DataPackage& package, const anatomy::NerveTree& tree)
      : package_(package), tree_(tree), routes_(tree.size()), read_(tree.size()) {
    for (anatomy::NodeIndex i = 0; i < tree.size(); ++i) {
      // A root has one row as well, without a parent.
      const std::size_t edges = std::max<std::size_t>(1, tree.node(i).parents.size());
      routes_[i].departures.resize(tree.node(i).parents.size());
      read_[i].resize(edges, false);
    }
  }

  Expected<std::vector<NerveRoute>> read() {
    for (const evidence::Row row : package_.table("nerve_routes")) read_row(row);
    for (const evidence::Row row : package_.table("nerve_route_places")) read_passed(row);
    for (anatomy::NodeIndex i = 0; i < tree_.size(); ++i) {
      for (std::size_t k = 0; k < read_[i].size(); ++k) {
        if (read_[i][k]) continue;
        const auto& parents = tree_.node(i).parents;
        problems_.push_back(
            {"nerve_routes.csv",
             fmt::format("no row says where '{}' leaves '{}'", tree_.node(i).name,
                         parents.empty() ? "the cord" : tree_.node(parents[k]).name),
             "Add the row, assumed with a reason where nothing is published."});
      }
    }
    if (!problems_.empty()) return std::unexpected(Error{Fault::internal, std::move(problems_)});
    return std::move(routes_);
  }

 private:
  void wrong(const evidence::Row& row, std::string what, std::string mend) {
    problems_.push_back(
        {fmt::format("nerve_routes.csv, row {}", row.line()), std::move(what), std::move(mend)});
  }

  void read_row(const evidence::Row& row) {
    const auto node = tree_.find(row.text("node"));
    if (!node) return;  // its foreign key was checked when the table was read
    const auto& parents = tree_.node(*node).parents;
    std::size_t edge = 0;
    if (!parents.empty()) {
      const auto parent = tree_.find(row.text("parent"));
      const auto found = parent ? std::ranges::find(parents, *parent) : parents.end();
      if (found == parents.end()) {
        wrong(row, fmt::format("'{}' is no branch of '{}'", row.text("node"), row.text("parent")),
              "Name a parent that nerve_tree.csv gives it.");
        return;
      }
      edge = static_cast<std::size_t>(found - parents.begin());
    }
    if (read_[*node][edge]) {
      wrong(row, "the same edge has another row", "Keep one of them.");
      return;
    }
    read_[*node][edge] = true;
    if (edge == 0) read_course_of(row, routes_[*node]);
    if (parents.empty()) {
      routes_[*node].rows = row.list("rows");
    } else {
      routes_[*node].departures[edge] = departure(row);
    }
  }

  void read_passed(const evidence::Row& row) {
    const auto nerve = tree_.find(row.text("nerve"));
    if (!nerve) return;  // its foreign key was checked when the table was read
    if (!routes_[*nerve].follows.empty()) {
      problems_.push_back(
          {fmt::format("nerve_route_places.csv, row {}", row.line()),
           fmt::format("'{}' follows a course", row.text("nerve")),
           "Place the landmark in limb_landmarks.csv; the course finds its level."});
      return;
    }
    routes_[*nerve].passes.push_back({std::string(row.text("landmark")),
                                      row.number("share").value_or(0.0),
                                      row.number("sd_mm").value_or(0.0)});
  }

  // The usual parent's row also says how far the nerve goes.
  void read_course_of(const evidence::Row& row, NerveRoute& route) {
    route.follows = row.text("follows");
    route.length_sd_mm = row.number("length_sd_mm");
    const auto length = row.number("length_mm");
    if (!row.text("ends_at").empty()) {
      route.ends =
          RoutePlace{std::string(row.text("ends_at")), std::string(row.text("ends_toward")),
                     row.number("ends_fraction").value_or(0.0), 0.0};
    }
    if (route.ends.has_value() == length.has_value()) {
      wrong(row, "a nerve has either a point where it ends or a length", "Give one of the two.");
    }
    if (!length) return;
    route.length_mm = *length;
    const auto segment = row.text("scales_with");
    if (segment.empty()) wrong(row, "a length without a segment", "Say with what it grows.");
    route.scales_with = segment == "arm"       ? Segment::humerus
                        : segment == "forearm" ? Segment::forearm
                                               : Segment::hand;
  }

  Departure departure(const evidence::Row& row) {
    Departure result;
    const auto fraction = row.number("leaves_fraction");
    if (!row.text("leaves_at").empty()) {
      result.place =
          RoutePlace{std::string(row.text("leaves_at")), std::string(row.text("leaves_toward")),
                     fraction.value_or(0.0), row.number("leaves_offset_mm").value_or(0.0)};
    } else if (fraction) {
      result.share = *fraction;
    } else {
      wrong(row, "nothing says where it leaves its parent", "Give leaves_at or leaves_fraction.");
    }
    result.rows = row.list("rows");
    result.provenance =
        evidence::provenance_from(row.text("provenance")).value_or(evidence::Provenance::assumed);
    result.reason = row.text("reason");
    if (result.provenance == evidence::Provenance::assumed && result.reason.empty()) {
      wrong(row, "assumed without a reason", "Say why the figure was chosen.");
    }
    return result;
  }

  const evidence::DataPackage& package_;
  const anatomy::NerveTree& tree_;
  std::vector<NerveRoute> routes_;
  std::vector<std::vector<bool>> read_;
  std::vector<Problem> problems_;
};

}  // namespace

Expected<std::vector<NerveRoute>> read_nerve_routes(const evidence::DataPackage& package,
                                                    const anatomy::NerveTree& tree) {
  return RouteReader(package, tree).read();
}

}  // namespace endplate::limb
