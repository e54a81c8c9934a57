// The nearest place of a curve against CGAL's tree of axis-aligned boxes over a fine polyline.
#include <CGAL/AABB_segment_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Simple_cartesian.h>

#include "../models/limb/course_fixture.hpp"

using namespace endplate;

// CGAL 5.5. The polyline's chords of at most 0.05 mm cut a bend of radius 2 mm by 0.0002 mm.
TEST_CASE("the nearest distance from a landmark to a nerve is the one of CGAL's tree",
          "[published][geometry]") {
  using Kernel = CGAL::Simple_cartesian<double>;
  using Iterator = std::vector<Kernel::Segment_3>::const_iterator;
  using Tree =
      CGAL::AABB_tree<CGAL::AABB_traits<Kernel, CGAL::AABB_segment_primitive<Kernel, Iterator>>>;

  const limb::Atlas& atlas = limb::TestCourse::atlas();
  for (const char* id : {"radial", "deep_radial", "median", "ulnar", "axillary"}) {
    const limb::TestCourse nerve(id);
    const auto us = nerve.samples(0.05);
    std::vector<Kernel::Segment_3> pieces;
    const auto point = [&](double u) {
      const Eigen::Vector3d p = nerve.curve().position(u);
      return Kernel::Point_3(p.x(), p.y(), p.z());
    };
    for (std::size_t i = 0; i + 1 < us.size(); ++i)
      pieces.emplace_back(point(us[i]), point(us[i + 1]));
    Tree tree(pieces.begin(), pieces.end());
    for (const limb::Landmark& landmark : atlas.landmarks().landmarks()) {
      const Eigen::Vector3d p =
          limb::LandmarkSet::position_mm(landmark, limb::TestCourse::frames());
      const double expected =
          std::sqrt(tree.squared_distance(Kernel::Point_3(p.x(), p.y(), p.z())));
      const double u = limb::find_nearest(nerve.curve(), p, nerve.curve().first_knot(),
                                          nerve.curve().last_knot());
      INFO(id << " from " << landmark.name);
      CHECK((nerve.curve().position(u) - p).norm() == Approx(expected).margin(0.001));
    }
  }
}
