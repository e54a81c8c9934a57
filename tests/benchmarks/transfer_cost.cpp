// What a comparison of transfers costs, against the sampled limbs and against the candidates.
// usage: endplate-bench-transfer DATASETS CASE...
// Prints comma-separated lines for transfer_cost.py.
#include <fmt/format.h>
#include <tbb/global_control.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <iostream>
#include <random>
#include <sstream>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"
#include "models/evidence/data_package.hpp"
#include "models/transfer/reach.hpp"
#include "models/transfer/transfers.hpp"
#include "tests/benchmarks/bench.hpp"

namespace {

using namespace endplate;
using benchmarks::need;
using benchmarks::processor_seconds;

// The shortest of three runs, ms.
template <class Work>
double milliseconds_of(const Work& work) {
  double best = 1e9;
  for (int k = 0; k < 3; ++k) {
    const double begin = processor_seconds();
    work();
    best = std::min(best, processor_seconds() - begin);
  }
  return 1e3 * best;
}

// Every pair of a donor and a recipient that a published transfer names and the tree holds.
std::vector<transfer::ReachQuestion> published_pairs(const evidence::DataPackage& package,
                                                     const anatomy::NerveTree& tree) {
  std::vector<transfer::ReachQuestion> pairs;
  for (const auto row : package.table("transfers")) {
    for (const std::string& donor : row.list("donor_node")) {
      for (const std::string& recipient : row.list("recipient_node")) {
        const auto from = tree.find(donor);
        const auto to = tree.find(recipient);
        if (from && to && *from != *to) pairs.push_back({*from, *to});
      }
    }
  }
  // Mixed, so that the first of them are like all: the table has kinds of transfers together.
  std::ranges::shuffle(pairs, std::mt19937(1));
  return pairs;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 3) {
    std::cerr << "usage: endplate-bench-transfer DATASETS CASE...\n";
    return 2;
  }
  const tbb::global_control one(tbb::global_control::max_allowed_parallelism, 1);
  const auto package = need(evidence::DataPackage::read(argv[1]));
  const auto anatomy = need(anatomy::Anatomy::from(package));
  const auto pairs = published_pairs(package, anatomy.tree());
  const auto all_reaches = [&](const transfer::ReachModel& model, std::size_t count) {
    for (std::size_t k = 0; k < count; ++k) need(model.reach(pairs[k]));
  };

  fmt::print("what,limbs,candidates,ms\n");
  for (const int limbs : {250, 500, 1000, 2000, 4000, 8000, 16000}) {
    const auto ms = milliseconds_of([&] {
      const auto model =
          need(transfer::ReachModel::from(package, anatomy.tree(), {}, limbs, std::uint64_t{1}));
      all_reaches(model, pairs.size());
    });
    fmt::print("limbs,{},{},{:.2f}\n", limbs, pairs.size(), ms);
  }
  constexpr int kLimbs = 1000;
  const auto model =
      need(transfer::ReachModel::from(package, anatomy.tree(), {}, kLimbs, std::uint64_t{1}));
  for (std::size_t count = 5; count <= pairs.size(); count += 5) {
    fmt::print("candidates,{},{},{:.2f}\n", kLimbs, count,
               milliseconds_of([&] { all_reaches(model, count); }));
  }
  const auto terms = need(anatomy::Terms::from(package));
  const casefile::ReadRules rules{casefile::pose_limits(package), &anatomy.tree(), {}};
  for (int a = 2; a < argc; ++a) {
    std::ifstream file(argv[a]);
    std::ostringstream text;
    text << file.rdbuf();
    const auto patient = need(casefile::read_case(text.str(), terms, rules));
    fmt::print("case,{},{},{:.2f}\n", kLimbs, argv[a], milliseconds_of([&] {
                 need(transfer::transfers(patient, package, {kLimbs, 1, {}}));
               }));
  }
  return 0;
}
