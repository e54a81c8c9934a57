#include "models/transfer/reach_search.hpp"

#include <Eigen/Core>
#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>
#include <cmath>
#include <random>
#include <vector>

namespace endplate::transfer {
namespace {

constexpr double kGrid_mm = 0.5;

// Every pair of cuts on a grid, the best by the same wish: most distal recipient, shortest donor.
std::optional<Cuts> by_grid(const FreedEnd& donor, const FreedEnd& recipient, double gap_mm) {
  std::optional<Cuts> best;
  const auto steps = [](const FreedEnd& end) {
    return static_cast<int>(std::floor((end.most_cut_mm - end.least_cut_mm) / kGrid_mm));
  };
  for (int d = 0; d <= steps(donor); ++d) {
    const double donor_mm = donor.most_cut_mm - d * kGrid_mm;
    for (int r = 0; r <= steps(recipient); ++r) {
      const double recipient_mm = recipient.least_cut_mm + r * kGrid_mm;
      if (donor_mm - donor.pivot_mm + recipient.pivot_mm - recipient_mm < gap_mm) continue;
      if (!best || recipient_mm > best->recipient_mm ||
          (recipient_mm == best->recipient_mm && donor_mm < best->donor_mm)) {
        best = Cuts{donor_mm, recipient_mm};
      }
    }
  }
  return best;
}

struct Pair {
  FreedEnd donor;
  FreedEnd recipient;
  double gap_mm = 0.0;
};

std::vector<Pair> random_pairs(int count) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> share(0.0, 1.0);
  std::vector<Pair> pairs;
  for (int i = 0; i < count; ++i) {
    const double donor_mm = 10.0 + 140.0 * share(random);
    const double pivot_mm = 10.0 + 90.0 * share(random);
    Pair pair{{-40.0 * share(random), 0.0, donor_mm},
              {pivot_mm, -100.0 * share(random), pivot_mm - 5.0 * share(random)},
              0.0};
    const double longest_mm =
        donor_mm - pair.donor.pivot_mm + pivot_mm - pair.recipient.least_cut_mm;
    pair.gap_mm = 1.2 * longest_mm * share(random);
    pairs.push_back(pair);
  }
  return pairs;
}

using Line = std::vector<Eigen::Vector3d>;  // vertices 1 mm apart

Line random_line(std::mt19937& random, int length_mm) {
  std::normal_distribution<double> normal;
  Line line{40.0 * Eigen::Vector3d(normal(random), normal(random), normal(random))};
  Eigen::Vector3d ahead = Eigen::Vector3d::UnitX();
  for (int k = 0; k < length_mm; ++k) {
    ahead = (ahead + 0.2 * Eigen::Vector3d(normal(random), normal(random), normal(random)))
                .normalized();
    line.push_back(line.back() + ahead);
  }
  return line;
}

}  // namespace

TEST_CASE("Cuts equal those of a grid over both nerves", "[transfer]") {
  int met = 0;
  for (const Pair& pair : random_pairs(100)) {
    const auto exact = best_cuts(pair.donor, pair.recipient, pair.gap_mm);
    const auto grid = by_grid(pair.donor, pair.recipient, pair.gap_mm);
    REQUIRE(exact.has_value() == (slack_mm(pair.donor, pair.recipient, pair.gap_mm) >= 0.0));
    REQUIRE(exact.has_value() == grid.has_value());
    if (!exact) continue;
    ++met;
    CHECK(std::abs(exact->recipient_mm - grid->recipient_mm) <= kGrid_mm);
    CHECK(exact->donor_mm >= pair.donor.least_cut_mm);
    CHECK(exact->donor_mm <= pair.donor.most_cut_mm);
    CHECK(exact->recipient_mm <= pair.recipient.most_cut_mm);
    // The ends meet: nothing is missing, and what is over could not have been used.
    const double over_mm = exact->donor_mm - pair.donor.pivot_mm + pair.recipient.pivot_mm -
                           exact->recipient_mm - pair.gap_mm;
    CHECK(over_mm >= -1e-9);
    CHECK((over_mm < 1e-9 || exact->donor_mm == pair.donor.least_cut_mm));
    // A grid that cuts the recipient up to a step too far up has that much donor too many.
    CHECK(std::abs(exact->donor_mm - grid->donor_mm) <= 2.0 * kGrid_mm);
  }
  CHECK(met > 50);
}

TEST_CASE("The search is at least 50 times as fast as the grid", "[transfer]") {
  const auto pairs = random_pairs(100);
  const auto seconds = [&](const auto& search) {
    const auto from = std::chrono::steady_clock::now();
    double sum = 0.0;
    for (const Pair& pair : pairs) {
      const auto cuts = search(pair.donor, pair.recipient, pair.gap_mm);
      sum += cuts ? cuts->recipient_mm : 0.0;
    }
    const auto to = std::chrono::steady_clock::now();
    REQUIRE(std::isfinite(sum));
    return std::chrono::duration<double>(to - from).count();
  };
  const double grid = seconds(by_grid);
  const double exact = seconds(best_cuts);
  CHECK(grid > 50.0 * exact);
}

TEST_CASE("A nearer pivot never reaches where the farthest does not", "[transfer]") {
  // All cuts and all pivots of two winding nerves, against the farthest pivots alone.
  std::mt19937 random(11);
  for (int trial = 0; trial < 20; ++trial) {
    const Line donor = random_line(random, 40);
    const Line recipient = random_line(random, 40);
    const double gap_mm = (donor.front() - recipient.back()).norm();
    const auto best = best_cuts({0.0, 0.0, 40.0}, {40.0, 0.0, 40.0}, gap_mm);
    int most = -1;
    for (int cut = 0; cut <= 40; ++cut) {
      for (int end = 0; end <= 40; ++end) {
        for (int from = 0; from <= cut; ++from) {
          for (int to = end; to <= 40; ++to) {
            if ((donor[static_cast<std::size_t>(from)] - recipient[static_cast<std::size_t>(to)])
                    .norm() <= cut - from + to - end) {
              most = std::max(most, end);
            }
          }
        }
      }
    }
    CHECK(best.has_value() == (most >= 0));
    if (best) CHECK(std::abs(best->recipient_mm - most) < 1.0);
  }
}

}  // namespace endplate::transfer
