#include "models/calibration/fit.hpp"

#include <ceres/ceres.h>

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <span>
#include <utility>

#include "models/calibration/costs.hpp"

namespace endplate::calibration {

using limb::Atlas;

FitState start_of(const Atlas& atlas) {
  FitState state;
  for (const Course& course : atlas.courses()) {
    state.offsets_mm.push_back(
        Eigen::MatrixX3d::Zero(static_cast<Eigen::Index>(course.waypoints.size()), 3));
    std::vector<double> knots;
    for (const limb::CoursePoint& point : course.points) knots.push_back(point.knot);
    state.knots.push_back(std::move(knots));
  }
  return state;
}

namespace {

// The unknowns in the layout that Ceres wants, and back.
struct Unknowns {
  std::vector<std::vector<double>> offsets;  // by course
  std::vector<std::vector<double>> knots;    // by course, by point
  std::map<std::string, double> log_factor;

  explicit Unknowns(const FitState& state) : knots(state.knots) {
    for (const Eigen::MatrixX3d& course : state.offsets_mm) {
      std::vector<double> flat;
      for (Eigen::Index i = 0; i < course.rows(); ++i) {
        for (int axis = 0; axis < kOffsets; ++axis) flat.push_back(course(i, axis));
      }
      offsets.push_back(std::move(flat));
    }
  }
  FitState state() const {
    FitState result;
    result.knots = knots;
    result.log_factor = log_factor;
    for (const auto& flat : offsets) {
      Eigen::MatrixX3d course(static_cast<Eigen::Index>(flat.size()) / kOffsets, kOffsets);
      for (Eigen::Index i = 0; i < course.size(); ++i) {
        course(i / kOffsets, i % kOffsets) = flat[static_cast<std::size_t>(i)];
      }
      result.offsets_mm.push_back(std::move(course));
    }
    return result;
  }
};

Eigen::MatrixXd to_dense(const ceres::CRSMatrix& sparse) {
  Eigen::MatrixXd dense = Eigen::MatrixXd::Zero(sparse.num_rows, sparse.num_cols);
  for (int row = 0; row < sparse.num_rows; ++row) {
    for (int k = sparse.rows[static_cast<std::size_t>(row)];
         k < sparse.rows[static_cast<std::size_t>(row) + 1]; ++k) {
      dense(row, sparse.cols[static_cast<std::size_t>(k)]) =
          sparse.values[static_cast<std::size_t>(k)];
    }
  }
  return dense;
}

}  // namespace

Expected<FitResult> fit(const Atlas& atlas, const std::vector<Observation>& observations,
                        const FitOptions& options, const FitState& start) {
  const limb::SegmentFrames frames;
  std::vector<CourseBase> bases;
  for (const Course& course : atlas.courses()) bases.push_back(base_of(course));
  std::vector<std::optional<limb::PointRef>> leaves(bases.size());
  for (std::size_t c = 0; c < bases.size(); ++c) {
    leaves[c] = atlas.find_point(atlas.courses()[c].from_point);
    if (leaves[c]) bases[c].parent = &bases[leaves[c]->course];
  }
  Unknowns unknowns(start);
  for (const Observation& o : observations) {
    const auto known = start.log_factor.find(o.effect.study);
    unknowns.log_factor[o.effect.study] = known == start.log_factor.end() ? 0.0 : known->second;
  }

  ceres::Problem problem;
  const auto measure_cost = [&](const limb::NerveMeasure& measure, double observed, double sigma,
                                double* factor) {
    CourseBase& base = bases[measure.course];
    auto& knots = unknowns.knots[measure.course];
    std::vector<int> sizes{static_cast<int>(unknowns.offsets[measure.course].size())};
    std::vector<double*> blocks{unknowns.offsets[measure.course].data()};
    const auto add = [&](double* block) {
      sizes.push_back(1);
      blocks.push_back(block);
    };
    if (const auto& leave = leaves[measure.course]) {
      auto& trunk = unknowns.offsets[leave->course];
      sizes.push_back(static_cast<int>(trunk.size()));
      blocks.push_back(trunk.data());
      add(&unknowns.knots[leave->course][leave->point]);
    }
    if (measure.point) add(&knots[*measure.point]);
    if (measure.other) add(&knots[*measure.other]);
    if (factor != nullptr) add(factor);
    MeasureCost cost{&base,
                     atlas.geometry_of(measure, frames),
                     observed,
                     sigma,
                     measure.point.has_value(),
                     measure.other.has_value(),
                     factor != nullptr};
    return std::pair(dynamic_cost(std::move(cost), sizes, 1), blocks);
  };

  std::vector<Problem> missing;
  std::vector<double> sigmas;
  for (const Observation& o : observations) {
    const limb::NerveMeasure& measure = atlas.measures()[o.measure];
    const limb::SegmentFrames ledger_limb;
    const geometry::CubicSpline curve = atlas.curve(measure.course, ledger_limb);
    const auto& points = atlas.courses()[measure.course].points;
    const auto taken =
        limb::take_measure<double>(atlas.geometry_of(measure, ledger_limb), curve, curve,
                                   measure.point ? points[*measure.point].knot : 0.0,
                                   measure.other ? points[*measure.other].knot : 0.0);
    if (!taken) {
      missing.push_back({"course_measures.csv, " + measure.id,
                         "the course does not cross its plane before the fit",
                         "Move the course's waypoints or choose another definition."});
    }
    const double tau = std::sqrt(1.0 - options.shared_by_study) *
                       options.between_studies.at(std::abs(o.effect.mean_mm));
    const double sigma = std::hypot(tau, o.effect.standard_error_mm);
    sigmas.push_back(sigma);
    auto [cost, blocks] =
        measure_cost(measure, o.effect.mean_mm, sigma, &unknowns.log_factor.at(o.effect.study));
    problem.AddResidualBlock(cost, new ceres::HuberLoss(options.huber), blocks);
  }
  if (!missing.empty()) return std::unexpected(Error{Fault::internal, std::move(missing)});
  for (std::size_t c = 0; c < bases.size(); ++c) {
    ShapeCost shape{&bases[c]};
    const auto residuals = static_cast<int>(shape.residuals());
    problem.AddResidualBlock(
        dynamic_cost(shape, {static_cast<int>(unknowns.offsets[c].size())}, residuals), nullptr,
        unknowns.offsets[c].data());
    const Course& course = atlas.courses()[c];
    for (std::size_t p = 0; p < course.points.size(); ++p) {
      problem.AddResidualBlock(new ceres::AutoDiffCostFunction<PointPriorCost, 1, 1>(
                                   new PointPriorCost{course.points[p].knot}),
                               nullptr, &unknowns.knots[c][p]);
      for (const std::string& proximal : course.points[p].after) {
        const auto ref = atlas.find_point(proximal);
        problem.AddResidualBlock(new ceres::AutoDiffCostFunction<OrderCost, 1, 1, 1>(new OrderCost),
                                 nullptr, &unknowns.knots[ref->course][ref->point],
                                 &unknowns.knots[c][p]);
      }
    }
  }
  const double factor_sd = std::sqrt(options.shared_by_study) * options.between_studies.slope;
  for (auto& [study, log_factor] : unknowns.log_factor) {
    problem.AddResidualBlock(
        new ceres::AutoDiffCostFunction<FactorPriorCost, 1, 1>(new FactorPriorCost{factor_sd}),
        nullptr, &log_factor);
  }

  ceres::Solver::Options solver;
  solver.linear_solver_type = ceres::SPARSE_NORMAL_CHOLESKY;
  solver.max_num_iterations = 100;
  solver.function_tolerance = 1e-8;
  solver.parameter_tolerance = 1e-7;
  solver.logging_type = ceres::SILENT;
  ceres::Solver::Summary summary;
  ceres::Solve(solver, &problem, &summary);
  if (!summary.IsSolutionUsable()) {
    return std::unexpected(Error::internal(
        {"limb fit", summary.message, "Look for a measure whose crossing does not exist."}));
  }

  FitResult result;
  result.cost = summary.final_cost;
  result.iterations = static_cast<int>(summary.iterations.size());
  result.state = unknowns.state();

  // Covariance by the inverse of the Gauss-Newton matrix, with the robust weights in place.
  std::vector<double*> blocks;
  problem.GetParameterBlocks(&blocks);
  std::map<double*, int> column_of;
  int columns = 0;
  for (double* block : blocks) {
    column_of[block] = columns;
    columns += problem.ParameterBlockSize(block);
  }
  ceres::Problem::EvaluateOptions evaluate;
  evaluate.parameter_blocks = blocks;
  std::vector<double> residuals;
  ceres::CRSMatrix sparse;
  problem.Evaluate(evaluate, nullptr, &residuals, nullptr, &sparse);
  const Eigen::MatrixXd jacobian = to_dense(sparse);
  const Eigen::MatrixXd information = jacobian.transpose() * jacobian;
  result.covariance = information.ldlt().solve(Eigen::MatrixXd::Identity(columns, columns));
  // Residuals come in the order in which their blocks were added: the observations first.
  const auto count = static_cast<Eigen::Index>(observations.size());
  result.observation_rows = jacobian.topRows(count);
  evaluate.apply_loss_function = false;
  std::vector<double> plain;
  problem.Evaluate(evaluate, nullptr, &plain, nullptr, nullptr);
  for (std::size_t i = 0; i < observations.size(); ++i) {
    const double size = std::abs(plain[i]);
    const double weight = size > options.huber ? options.huber / size : 1.0;
    result.observations.push_back({sigmas[i], plain[i], weight});
  }

  const std::size_t measures = atlas.measures().size();
  result.predicted_mm.assign(measures, std::numeric_limits<double>::quiet_NaN());
  result.predicted_sd_mm.assign(measures, std::numeric_limits<double>::quiet_NaN());
  for (std::size_t m = 0; m < measures; ++m) {
    auto [cost, own_blocks] = measure_cost(atlas.measures()[m], 0.0, 1.0, nullptr);
    const std::unique_ptr<ceres::CostFunction> owner(cost);
    std::vector<std::vector<double>> rows;
    std::vector<double*> row_pointers;
    for (const int size : cost->parameter_block_sizes()) {
      rows.emplace_back(static_cast<std::size_t>(size));
    }
    for (auto& row : rows) row_pointers.push_back(row.data());
    double predicted = 0.0;
    if (!cost->Evaluate(own_blocks.data(), &predicted, row_pointers.data())) continue;
    Eigen::RowVectorXd gradient = Eigen::RowVectorXd::Zero(columns);
    for (std::size_t b = 0; b < rows.size(); ++b) {
      const int first = column_of.at(own_blocks[b]);
      for (std::size_t k = 0; k < rows[b].size(); ++k) {
        gradient(first + static_cast<int>(k)) += rows[b][k];
      }
    }
    result.predicted_mm[m] = predicted;
    result.predicted_sd_mm[m] =
        std::sqrt((gradient * result.covariance * gradient.transpose()).value());
  }
  for (auto& course : unknowns.knots) {
    auto& sds = result.knot_sd_mm.emplace_back();
    for (double& knot : course) {
      const int column = column_of.at(&knot);
      sds.push_back(std::sqrt(result.covariance(column, column)));
    }
  }
  return result;
}

Atlas apply(const Atlas& atlas, const FitState& state) {
  const limb::SegmentFrames frames;
  std::vector<Course> courses = atlas.courses();
  for (std::size_t c = 0; c < courses.size(); ++c) {
    for (std::size_t i = 0; i < courses[c].waypoints.size(); ++i) {
      const auto row = static_cast<Eigen::Index>(i);
      limb::Waypoint& waypoint = courses[c].waypoints[i];
      waypoint.place.x_mm += state.offsets_mm[c](row, 0);
      waypoint.place.fraction +=
          frames.fraction_per_mm(waypoint.segment) * state.offsets_mm[c](row, 1);
      waypoint.place.z_mm += state.offsets_mm[c](row, 2);
    }
    for (std::size_t p = 0; p < courses[c].points.size(); ++p) {
      courses[c].points[p].knot = state.knots[c][p];
    }
  }
  return atlas.with_courses(std::move(courses));
}

}  // namespace endplate::calibration
