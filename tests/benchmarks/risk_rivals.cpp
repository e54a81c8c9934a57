#include "tests/benchmarks/risk_rivals.hpp"

#include <CGAL/AABB_segment_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Simple_cartesian.h>
#include <embree3/rtcore.h>
#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <boost/iterator/function_output_iterator.hpp>
#include <cmath>
#include <limits>
#include <nanoflann.hpp>

namespace endplate::benchmarks {
namespace {

using Eigen::Vector3d;
using geometry::Track;
using limb::SampledLine;
using Kernel = CGAL::Simple_cartesian<double>;
using Segments = std::vector<Kernel::Segment_3>;
using Primitive = CGAL::AABB_segment_primitive<Kernel, Segments::const_iterator>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

std::size_t limbs_of(const std::vector<SampledLine>& lines) {
  return lines.front().samples_mm.size() / lines.front().mean_mm.size();
}

Kernel::Point_3 point(const Vector3d& p) {
  return {p.x(), p.y(), p.z()};
}

Segments segments_of(const std::vector<SampledLine>& lines, std::size_t limb) {
  Segments all;
  for (const SampledLine& line : lines) {
    const std::size_t places = line.mean_mm.size();
    for (std::size_t k = 0; k + 1 < places; ++k) {
      all.emplace_back(point(line.samples_mm[limb * places + k]),
                       point(line.samples_mm[limb * places + k + 1]));
    }
  }
  return all;
}

// Counts over limbs. `ask`: by limb, tells of a track's number and distance whether it is within.
template <class Ask>
Counts count(std::size_t limbs, std::size_t tracks, std::size_t distances, const Ask& ask) {
  const Counts none(distances, std::vector<std::uint32_t>(tracks, 0));
  tbb::enumerable_thread_specific<Counts> of_thread(none);
  tbb::parallel_for(std::size_t{0}, limbs, [&](std::size_t limb) { ask(limb, of_thread.local()); });
  Counts total = none;
  for (const Counts& counts : of_thread) {
    for (std::size_t d = 0; d < distances; ++d) {
      for (std::size_t k = 0; k < tracks; ++k) total[d][k] += counts[d][k];
    }
  }
  return total;
}

void count_distance(double squared_mm2, std::span<const double> within_mm, std::size_t track,
                    Counts& counts) {
  for (std::size_t d = 0; d < within_mm.size(); ++d) {
    counts[d][track] += squared_mm2 <= within_mm[d] * within_mm[d] ? 1U : 0U;
  }
}

class CgalTrees : public RiskRival {
 public:
  explicit CgalTrees(const std::vector<SampledLine>& lines) {
    for (std::size_t limb = 0; limb < limbs_of(lines); ++limb) {
      segments_.push_back(segments_of(lines, limb));
    }
    for (const Segments& segments : segments_) {
      trees_.push_back(std::make_unique<Tree>(segments.begin(), segments.end()));
      trees_.back()->build();
    }
  }

 protected:
  std::vector<Segments> segments_;
  std::vector<std::unique_ptr<Tree>> trees_;
};

// The nearest place, begun from the last one found.
class CgalClosest : public CgalTrees {
 public:
  CgalClosest(const std::vector<SampledLine>& lines, bool own_hint)
      : CgalTrees(lines), own_hint_(own_hint) {
    for (const auto& tree : trees_) {
      if (own_hint_) {
        tree->accelerate_distance_queries();
      } else {
        tree->do_not_accelerate_distance_queries();
      }
    }
  }
  std::string name() const override {
    return own_hint_ ? "CGAL closest point (its own hint)" : "CGAL closest point (hint: the last)";
  }
  bool nearest() const override { return true; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(
        trees_.size(), tracks.size(), within_mm.size(), [&](std::size_t limb, Counts& counts) {
          Kernel::Point_3 last = segments_[limb].front().source();
          for (std::size_t k = 0; k < tracks.size(); ++k) {
            const Kernel::Point_3 p = point(tracks[k].from_mm);
            last =
                own_hint_ ? trees_[limb]->closest_point(p) : trees_[limb]->closest_point(p, last);
            count_distance(CGAL::squared_distance(p, last), within_mm, k, counts);
          }
        });
  }

 private:
  bool own_hint_;
};

// Whether a ball about the place meets a nerve: ends with the first that does.
class CgalBall : public CgalTrees {
 public:
  explicit CgalBall(const std::vector<SampledLine>& lines) : CgalTrees(lines) {}
  std::string name() const override { return "CGAL ball meets a segment"; }
  bool nearest() const override { return false; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(
        trees_.size(), tracks.size(), within_mm.size(), [&](std::size_t limb, Counts& counts) {
          for (std::size_t d = 0; d < within_mm.size(); ++d) {
            for (std::size_t k = 0; k < tracks.size(); ++k) {
              const Kernel::Sphere_3 ball(point(tracks[k].from_mm), within_mm[d] * within_mm[d]);
              counts[d][k] += trees_[limb]->do_intersect(ball) ? 1U : 0U;
            }
          }
        });
  }
};

// Balls every half a millimetre of the track; what lies nearer to the track than that by less than
// 0.02 mm (of 2 mm; of 5 mm 0.007 mm) may be missed.
class CgalBallsAlong : public CgalTrees {
 public:
  explicit CgalBallsAlong(const std::vector<SampledLine>& lines) : CgalTrees(lines) {}
  std::string name() const override { return "CGAL balls every 0.5 mm of the track"; }
  bool nearest() const override { return false; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(trees_.size(), tracks.size(), within_mm.size(),
                 [&](std::size_t limb, Counts& counts) {
                   for (std::size_t d = 0; d < within_mm.size(); ++d) {
                     for (std::size_t k = 0; k < tracks.size(); ++k) {
                       counts[d][k] += meets(limb, tracks[k], within_mm[d]) ? 1U : 0U;
                     }
                   }
                 });
  }

 private:
  bool meets(std::size_t limb, const Track& track, double mm) const {
    constexpr double kApart_mm = 0.5;
    const Vector3d way = track.to_mm - track.from_mm;
    const int steps = std::max(1, static_cast<int>(std::ceil(way.norm() / kApart_mm)));
    for (int s = 0; s <= steps; ++s) {
      const Vector3d p = track.from_mm + way * s / steps;
      if (trees_[limb]->do_intersect(Kernel::Sphere_3(point(p), mm * mm))) return true;
    }
    return false;
  }
};

// What meets the box of the track, widened; of those the distance of the segments.
class CgalBox : public CgalTrees {
 public:
  explicit CgalBox(const std::vector<SampledLine>& lines) : CgalTrees(lines) {}
  std::string name() const override { return "CGAL widened box then segment against segment"; }
  bool nearest() const override { return false; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(trees_.size(), tracks.size(), within_mm.size(),
                 [&](std::size_t limb, Counts& counts) {
                   for (std::size_t d = 0; d < within_mm.size(); ++d) {
                     for (std::size_t k = 0; k < tracks.size(); ++k) {
                       counts[d][k] += meets(limb, tracks[k], within_mm[d]) ? 1U : 0U;
                     }
                   }
                 });
  }

 private:
  bool meets(std::size_t limb, const Track& track, double mm) const {
    const Vector3d low = track.from_mm.cwiseMin(track.to_mm).array() - mm;
    const Vector3d high = track.from_mm.cwiseMax(track.to_mm).array() + mm;
    const Kernel::Iso_cuboid_3 box(point(low), point(high));
    const Kernel::Segment_3 way(point(track.from_mm), point(track.to_mm));
    bool near = false;
    trees_[limb]->all_intersected_primitives(
        box, boost::make_function_output_iterator([&](const Primitive::Id& segment) {
          near = near || CGAL::squared_distance(way, *segment) <= mm * mm;
        }));
    return near;
  }
};

// The nearest of one limb's segments to a point, in single precision.
class EmbreePoints : public RiskRival {
 public:
  EmbreePoints(const std::vector<SampledLine>& lines, bool bounded)
      : device_(rtcNewDevice("threads=1")), bounded_(bounded) {
    for (std::size_t limb = 0; limb < limbs_of(lines); ++limb) {
      std::vector<float> ends;
      for (const auto& segment : segments_of(lines, limb)) {
        for (int end = 0; end < 2; ++end) {
          for (int axis = 0; axis < 3; ++axis) {
            ends.push_back(static_cast<float>(segment[end][axis]));
          }
        }
      }
      ends_.push_back(std::move(ends));
    }
    for (std::vector<float>& ends : ends_) {
      RTCScene scene = rtcNewScene(device_);
      rtcSetSceneBuildQuality(scene, RTC_BUILD_QUALITY_HIGH);
      RTCGeometry geometry = rtcNewGeometry(device_, RTC_GEOMETRY_TYPE_USER);
      rtcSetGeometryUserPrimitiveCount(geometry, static_cast<unsigned>(ends.size() / 6));
      rtcSetGeometryUserData(geometry, ends.data());
      rtcSetGeometryBoundsFunction(geometry, bounds, nullptr);
      rtcCommitGeometry(geometry);
      rtcAttachGeometry(scene, geometry);
      rtcReleaseGeometry(geometry);
      rtcCommitScene(scene);
      scenes_.push_back(scene);
    }
  }
  EmbreePoints(const EmbreePoints&) = delete;
  EmbreePoints& operator=(const EmbreePoints&) = delete;
  ~EmbreePoints() override {
    for (RTCScene scene : scenes_) rtcReleaseScene(scene);
    rtcReleaseDevice(device_);
  }
  std::string name() const override {
    return bounded_ ? "Embree point query within the distance" : "Embree point query nearest";
  }
  bool nearest() const override { return !bounded_; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(scenes_.size(), tracks.size(), within_mm.size(),
                 [&](std::size_t limb, Counts& counts) {
                   for (std::size_t k = 0; k < tracks.size(); ++k) {
                     if (!bounded_) {
                       const double mm = ask(limb, tracks[k], std::numeric_limits<float>::max());
                       count_distance(mm * mm, within_mm, k, counts);
                       continue;
                     }
                     for (std::size_t d = 0; d < within_mm.size(); ++d) {
                       const auto mm = static_cast<float>(within_mm[d]);
                       counts[d][k] += ask(limb, tracks[k], mm) < mm ? 1U : 0U;
                     }
                   }
                 });
  }

 private:
  struct Asked {
    const float* ends;
    bool bounded;
  };

  static void bounds(const RTCBoundsFunctionArguments* of) {
    const float* ends = static_cast<const float*>(of->geometryUserPtr) + 6 * of->primID;
    RTCBounds& box = *of->bounds_o;
    box.lower_x = std::min(ends[0], ends[3]);
    box.lower_y = std::min(ends[1], ends[4]);
    box.lower_z = std::min(ends[2], ends[5]);
    box.upper_x = std::max(ends[0], ends[3]);
    box.upper_y = std::max(ends[1], ends[4]);
    box.upper_z = std::max(ends[2], ends[5]);
  }

  static bool look(RTCPointQueryFunctionArguments* of) {
    const Asked& asked = *static_cast<const Asked*>(of->userPtr);
    const float* ends = asked.ends + 6 * of->primID;
    RTCPointQuery& query = *of->query;
    const Eigen::Vector3f p(ends[0], ends[1], ends[2]);
    const Eigen::Vector3f v = Eigen::Vector3f(ends[3], ends[4], ends[5]) - p;
    const Eigen::Vector3f w = Eigen::Vector3f(query.x, query.y, query.z) - p;
    const float share = std::clamp(w.dot(v) / v.squaredNorm(), 0.0F, 1.0F);
    const float mm = (w - share * v).norm();
    if (mm >= query.radius) return false;
    // Within the distance is all that is asked: nothing else needs to be looked at.
    query.radius = asked.bounded ? 0.0F : mm;
    return true;
  }

  double ask(std::size_t limb, const Track& track, float radius_mm) const {
    RTCPointQuery query{};
    query.x = static_cast<float>(track.from_mm.x());
    query.y = static_cast<float>(track.from_mm.y());
    query.z = static_cast<float>(track.from_mm.z());
    query.radius = radius_mm;
    RTCPointQueryContext context;
    rtcInitPointQueryContext(&context);
    Asked asked{ends_[limb].data(), bounded_};
    rtcPointQuery(scenes_[limb], &query, &context, look, &asked);
    return static_cast<double>(query.radius);
  }

  RTCDevice device_;
  bool bounded_;
  std::vector<std::vector<float>> ends_;
  std::vector<RTCScene> scenes_;
};

// Points along the nerves, so close that a nerve 5 mm away is seen 0.025 mm farther at most.
class NanoflannPoints : public RiskRival {
 public:
  explicit NanoflannPoints(const std::vector<SampledLine>& lines) {
    constexpr double kApart_mm = 1.0;
    for (std::size_t limb = 0; limb < limbs_of(lines); ++limb) {
      auto cloud = std::make_unique<Cloud>();
      for (const auto& segment : segments_of(lines, limb)) {
        const double mm = std::sqrt(segment.squared_length());
        const int steps = std::max(1, static_cast<int>(std::ceil(mm / kApart_mm)));
        for (int s = 0; s <= steps; ++s) {
          const auto p = segment.source() + segment.to_vector() * (static_cast<double>(s) / steps);
          cloud->points.emplace_back(p.x(), p.y(), p.z());
        }
      }
      cloud->index =
          std::make_unique<Index>(3, *cloud, nanoflann::KDTreeSingleIndexAdaptorParams(10));
      cloud->index->buildIndex();
      clouds_.push_back(std::move(cloud));
    }
  }
  std::string name() const override { return "nanoflann points every 1 mm"; }
  bool nearest() const override { return true; }
  Counts within(std::span<const Track> tracks, std::span<const double> within_mm) const override {
    return count(clouds_.size(), tracks.size(), within_mm.size(),
                 [&](std::size_t limb, Counts& counts) {
                   for (std::size_t k = 0; k < tracks.size(); ++k) {
                     std::size_t which = 0;
                     double squared = 0.0;
                     nanoflann::KNNResultSet<double> result(1);
                     result.init(&which, &squared);
                     clouds_[limb]->index->findNeighbors(result, tracks[k].from_mm.data(),
                                                         nanoflann::SearchParams());
                     count_distance(squared, within_mm, k, counts);
                   }
                 });
  }

 private:
  struct Cloud;
  using Index =
      nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, Cloud>, Cloud, 3>;
  struct Cloud {
    // NOLINTBEGIN(readability-identifier-naming): nanoflann asks for these names
    std::size_t kdtree_get_point_count() const { return points.size(); }
    double kdtree_get_pt(std::size_t k, std::size_t axis) const {
      return points[k][static_cast<Eigen::Index>(axis)];
    }
    template <class Box>
    bool kdtree_get_bbox(Box& /*box*/) const {
      return false;
    }
    // NOLINTEND(readability-identifier-naming)
    std::vector<Vector3d> points;
    std::unique_ptr<Index> index;
  };
  std::vector<std::unique_ptr<Cloud>> clouds_;
};

}  // namespace

std::vector<std::unique_ptr<RiskRival>> point_rivals(const std::vector<SampledLine>& lines) {
  std::vector<std::unique_ptr<RiskRival>> rivals;
  rivals.push_back(std::make_unique<CgalClosest>(lines, true));
  rivals.push_back(std::make_unique<CgalClosest>(lines, false));
  rivals.push_back(std::make_unique<CgalBall>(lines));
  rivals.push_back(std::make_unique<EmbreePoints>(lines, false));
  rivals.push_back(std::make_unique<EmbreePoints>(lines, true));
  rivals.push_back(std::make_unique<NanoflannPoints>(lines));
  return rivals;
}

std::vector<std::unique_ptr<RiskRival>> track_rivals(const std::vector<SampledLine>& lines) {
  std::vector<std::unique_ptr<RiskRival>> rivals;
  rivals.push_back(std::make_unique<CgalBallsAlong>(lines));
  rivals.push_back(std::make_unique<CgalBox>(lines));
  return rivals;
}

Counts every_stretch(const std::vector<SampledLine>& lines, std::span<const Track> tracks,
                     std::span<const double> within_mm) {
  return count(limbs_of(lines), tracks.size(), within_mm.size(),
               [&](std::size_t limb, Counts& counts) {
                 const Segments segments = segments_of(lines, limb);
                 for (std::size_t k = 0; k < tracks.size(); ++k) {
                   const bool is_point = tracks[k].from_mm == tracks[k].to_mm;
                   const Kernel::Point_3 p = point(tracks[k].from_mm);
                   const Kernel::Segment_3 way(p, point(tracks[k].to_mm));
                   double best = std::numeric_limits<double>::max();
                   for (const Kernel::Segment_3& segment : segments) {
                     best = std::min(best, is_point ? CGAL::squared_distance(p, segment)
                                                    : CGAL::squared_distance(way, segment));
                   }
                   count_distance(best, within_mm, k, counts);
                 }
               });
}

}  // namespace endplate::benchmarks
