#include "models/recovery/departures.hpp"

#include <array>

#include "models/recovery/word_block.hpp"

namespace endplate::recovery {
namespace {

using BlockColumn = std::array<float, kBlock>;

// Days for a millimetre at one rate, times what turns the exponentials into millimetres.
class SlownessBlock {
 public:
  SlownessBlock(const Parameter& rate, const SlowingCurve& curve)
      : rate_(&rate),
        scale_(static_cast<float>(double{curve.scale_mm()} / rate.median())),
        log_sd_(static_cast<float>(rate.log_sd())) {}

  const Parameter& rate() const { return *rate_; }
  const BlockColumn& days() const { return days_; }
  void fill(std::span<const float> rate_z) {
    by_fours(rate_z.size(), [&](std::size_t j, std::size_t count) {
      const auto z = load_four<FourFloats>(&rate_z[j], count);
      store_four<FourFloats>(scale_ * quick_exp(-log_sd_ * z), &days_[j], count);
    });
  }

 private:
  const Parameter* rate_;
  float scale_;
  float log_sd_;
  BlockColumn days_{};
};

// One lesion of a block of patients, at all rates.
class DepartureBlock {
 public:
  DepartureBlock(const LesionModel& model, const SlowingCurve& curve)
      : half_gap_(model.repaired ? static_cast<float>(0.5 * model.gap_mm) : 0.0F), curve_(curve) {}

  // `behind_gap_mm` is empty where there is no gap.
  void begin(const PatientColumns::Lesion& lesion, std::size_t begin, std::size_t size,
             std::span<float> behind_gap_mm) {
    // By component: which patient has which cannot be foreseen, so nothing branches on it.
    constexpr std::array<float, 3> kCode{ReachDay::kBlocked, 0.0F, ReachDay::kNever};
    constexpr std::array<float, 3> kGrows{0.0F, 1.0F, 0.0F};
    for (std::size_t j = 0; j < size; ++j) {
      const auto component = static_cast<std::size_t>(lesion.component[begin + j]);
      grows_[j] = kGrows[component];
      sets_out_[j] = kCode[component];
    }
    by_fours(size, [&](std::size_t j, std::size_t count) {
      const auto grows = load_four<FourFloats>(&grows_[j]);
      const auto from = load_four<FourFloats>(&lesion.from_start_mm[begin + j], count);
      const auto ready = load_four<FourFloats>(&lesion.ready_days[begin + j], count);
      const auto code = load_four<FourFloats>(&sets_out_[j]);
      const FourFloats behind = from - half_gap_ * grows;
      if (!behind_gap_mm.empty()) store_four(behind, &behind_gap_mm[j], count);
      store_four(curve_.exponential(-behind), &exponential_[j]);
      store_four(ready * grows + code, &sets_out_[j]);
    });
  }

  void at_rate(const BlockColumn& slowness, std::span<float> start, std::span<float> reach) const {
    by_fours(start.size(), [&](std::size_t j, std::size_t count) {
      const auto four = [&](const BlockColumn& column) {
        return load_four<FourFloats>(&column[j]);
      };
      const FourFloats days = four(slowness) * four(grows_);
      store_four<FourFloats>(four(sets_out_) - days, &start[j], count);
      store_four<FourFloats>(days * four(exponential_), &reach[j], count);
    });
  }

 private:
  float half_gap_;
  SlowingCurve curve_;
  BlockColumn grows_{};
  BlockColumn sets_out_{};
  BlockColumn exponential_{};
};

// The rates that some target asks for.
std::vector<SlownessBlock> slowness_blocks(const std::vector<TargetModel>& models) {
  std::vector<SlownessBlock> blocks;
  for (const TargetModel& model : models) {
    for (const bool operated : {false, true}) {
      const Parameter& rate = model.rate(operated);
      const auto known = [&](const SlownessBlock& block) { return &block.rate() == &rate; };
      if (std::ranges::none_of(blocks, known)) blocks.emplace_back(rate, model.slowing_curve());
    }
  }
  return blocks;
}

}  // namespace

std::vector<Departure> departures(const ForecastQuestion& question, const PatientColumns& patients,
                                  const std::vector<TargetModel>& models) {
  const std::size_t n = patients.size();
  std::vector<Departure> all(question.lesions.size());
  for (std::size_t k = 0; k < all.size(); ++k) {
    all[k].behind_mm = patients.lesions[k].from_start_mm;
    if (question.lesions[k].repaired && question.lesions[k].gap_mm > 0.0) {
      all[k].behind_gap_mm.resize(n);
      all[k].behind_mm = all[k].behind_gap_mm;
    }
    for (const TargetModel& model : models) {
      Departure::AtRate& at = all[k].at_rate[&model.rate(question.lesions[k].repaired)];
      at.start.resize(n);
      at.reach.resize(n);
    }
  }
  if (models.empty()) return all;
  std::vector<SlownessBlock> rates = slowness_blocks(models);
  for (std::size_t begin = 0; begin < n; begin += kBlock) {
    const std::size_t count = std::min(kBlock, n - begin);
    const auto part = [&](auto& column) { return std::span(column).subspan(begin, count); };
    for (SlownessBlock& rate : rates) rate.fill(part(patients.rate_z));
    for (std::size_t k = 0; k < all.size(); ++k) {
      DepartureBlock block(question.lesions[k], models.front().slowing_curve());
      const bool gap = !all[k].behind_gap_mm.empty();
      block.begin(patients.lesions[k], begin, count,
                  gap ? part(all[k].behind_gap_mm) : std::span<float>());
      for (const SlownessBlock& rate : rates) {
        const auto at = all[k].at_rate.find(&rate.rate());
        if (at == all[k].at_rate.end()) continue;
        block.at_rate(rate.days(), part(at->second.start), part(at->second.reach));
      }
    }
  }
  return all;
}

}  // namespace endplate::recovery
