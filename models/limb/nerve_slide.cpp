#include "models/limb/nerve_slide.hpp"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <cstddef>

namespace endplate::limb {

Slide slide(std::span<const double> rest_mm, std::span<const double> posed_mm,
            std::span<const double> tether_mm) {
  const std::size_t count = rest_mm.size();
  Slide result{std::vector<double>(count, 0.0), std::vector<double>(count > 0 ? count - 1 : 0)};
  if (count < 2) return result;

  std::vector<double> length(count - 1);
  std::vector<double>& strain = result.strain;  // of the bed, until the slide is known
  for (std::size_t i = 0; i + 1 < count; ++i) {
    length[i] = rest_mm[i + 1] - rest_mm[i];
    strain[i] = (posed_mm[i + 1] - posed_mm[i]) / length[i] - 1.0;
  }
  // Unknown are the slides between the fixed ends.
  const auto unknowns = static_cast<Eigen::Index>(count - 2);
  if (unknowns > 0) {
    Eigen::SparseMatrix<double> matrix(unknowns, unknowns);
    matrix.reserve(Eigen::VectorXi::Constant(unknowns, 2));
    Eigen::VectorXd right(unknowns);
    // The lower triangle, column by column.
    for (Eigen::Index k = 0; k < unknowns; ++k) {
      const auto i = static_cast<std::size_t>(k) + 1;
      const double tissue = 0.5 * (length[i - 1] + length[i]) / (tether_mm[i] * tether_mm[i]);
      matrix.insert(k, k) = 1.0 / length[i - 1] + 1.0 / length[i] + tissue;
      if (k + 1 < unknowns) matrix.insert(k + 1, k) = -1.0 / length[i];
      right[k] = strain[i] - strain[i - 1];
    }
    const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower,
                                Eigen::NaturalOrdering<int>>
        solver(matrix);
    const Eigen::VectorXd u = solver.solve(right);
    for (Eigen::Index k = 0; k < unknowns; ++k) {
      result.slide_mm[static_cast<std::size_t>(k) + 1] = u[k];
    }
  }
  for (std::size_t i = 0; i + 1 < count; ++i) {
    strain[i] += (result.slide_mm[i + 1] - result.slide_mm[i]) / length[i];
  }
  return result;
}

}  // namespace endplate::limb
