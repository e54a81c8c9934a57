#pragma once
// Where each nerve of the tree leaves its parents and how far it goes, as nerve_routes.csv and
// nerve_route_places.csv tell it.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// A place on a course: a point of it, or its "start" or "end"; or part of the way from there to
// another one; or so many mm distal of that, on the ledger limb.
struct RoutePlace {
  std::string at;
  std::string toward;
  double fraction = 0.0;
  double offset_mm = 0.0;
};

struct Departure {
  std::optional<RoutePlace> place;  // on the parent's course
  double share = 0.0;               // else this share of the parent's own length, 0 to 1
  std::vector<std::string> rows;    // of the tables of published rows
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
};

// A landmark that a nerve off the courses passes.
struct PassedLandmark {
  std::string landmark;
  double share = 0.0;  // of the nerve's length, 0 to 1
  double sd_mm = 0.0;  // how closely it is found along the nerve
};

struct NerveRoute {
  std::string follows;             // id of the course that it follows itself; empty off the courses
  std::optional<RoutePlace> ends;  // on that course, else on the parent's, beside which it runs
  double length_mm = 0.0;          // on the ledger limb, where `ends` says nothing; then > 0
  std::optional<double> length_sd_mm;      // between limbs, as printed
  Segment scales_with = Segment::humerus;  // of a length off the courses
  std::vector<Departure> departures;       // by parent, in the order of NerveNode::parents
  std::vector<PassedLandmark> passes;      // of a nerve off the courses
  std::vector<std::string> rows;           // of a root, which has no departure
};

// By node of the tree. A fault of the tables (an edge without a row or with two, a nerve without an
// end) is Fault::internal, with its line.
Expected<std::vector<NerveRoute>> read_nerve_routes(const evidence::DataPackage& package,
                                                    const anatomy::NerveTree& tree);

}  // namespace endplate::limb
