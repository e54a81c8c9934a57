#pragma once
// Standard normal numbers of one sampled limb, the same whatever was drawn for the others.
#include <Random123/philox.h>

#include <Random123/boxmuller.hpp>
#include <cstddef>
#include <cstdint>

namespace endplate::limb {

// Standard normal numbers of limb i, by their place in its sequence.
class LimbNormals {
 public:
  LimbNormals(std::uint64_t seed, std::uint64_t stream, int limb)
      : key_{{seed, stream}}, limb_(limb) {}

  double next() {
    if (used_ == 4) {
      const auto words = philox_({{static_cast<std::uint64_t>(limb_), block_++, 0, 0}}, key_);
      const auto first = r123::boxmuller(words[0], words[1]);
      const auto second = r123::boxmuller(words[2], words[3]);
      normals_[0] = first.x;
      normals_[1] = first.y;
      normals_[2] = second.x;
      normals_[3] = second.y;
      used_ = 0;
    }
    return normals_[used_++];
  }

 private:
  r123::Philox4x64 philox_;
  r123::Philox4x64::key_type key_;
  int limb_;
  std::uint64_t block_ = 0;
  std::size_t used_ = 4;
  double normals_[4] = {};
};

}  // namespace endplate::limb
