// The sampled patients by columns, a block of them at a time.
#include <algorithm>
#include <numeric>

#include "models/recovery/patients.hpp"
#include "models/recovery/word_block.hpp"

namespace endplate::recovery {
namespace {

using Floats = std::span<float>;

// One number a limb, with as many more as a block reads on beyond the last.
template <class Of>
std::vector<float> overlapping(std::size_t limbs, const Of& of) {
  std::vector<float> column(limbs + kBlock);
  for (std::size_t l = 0; l < limbs; ++l) column[l] = static_cast<float>(of(l));
  for (std::size_t l = limbs; l < column.size(); ++l) column[l] = column[l - limbs];
  return column;
}

// A lesion and what is read of the limbs for it.
struct PlacedLesion {
  const LesionModel* model = nullptr;
  std::vector<float> places_mm;
  std::vector<float> own_nerve_mm;
  std::span<const float> nerve_mm;  // length of its nerve
  std::size_t places = 1;
  std::size_t limbs = 1;

  PlacedLesion(const ForecastQuestion& question, const LesionModel& lesion)
      : model(&lesion),
        places(std::max<std::size_t>(1, lesion.places_mm.size())),
        limbs(std::min(question.limbs->size(), question.samples)) {
    places_mm = overlapping(places, [&](std::size_t l) {
      return lesion.places_mm.empty() ? lesion.lesion.at.from_start_mm : lesion.places_mm[l];
    });
    const anatomy::NodeIndex nerve = lesion.lesion.at.nerve;
    if (question.limb_columns != nullptr) {
      nerve_mm = question.limb_columns->length_mm(nerve);
    } else {
      own_nerve_mm =
          overlapping(limbs, [&](std::size_t l) { return question.limb(l).length_mm[nerve]; });
      nerve_mm = own_nerve_mm;
    }
  }
};

// The grade is uniform between 0 and 1: up to the first chance a block, up to the second growth.
struct GradeLimits {
  float block = 0.0F;
  float growth = 0.0F;

  explicit GradeLimits(const LesionModel& model) {
    constexpr float kNone = -1.0F;
    if (model.lesion.preganglionic) {
      block = growth = kNone;
    } else if (model.repaired) {
      block = kNone;
      growth = static_cast<float>(1.0 - model.chance_repair_fails);
    } else {
      block = static_cast<float>(model.chance[0]);
      growth = static_cast<float>(model.chance[0] + model.chance[1]);
    }
  }
  // Without a branch: which side a patient is on cannot be foreseen.
  Component component(float grade) const {
    static_assert(static_cast<int>(Component::block) == 0 &&
                  static_cast<int>(Component::growth) == 1 &&
                  static_cast<int>(Component::none) == 2);
    return static_cast<Component>((grade > block) + (grade > growth));
  }
};

// A parameter at standard normal numbers, in their place.
void at_normals(const Parameter& parameter, Floats z) {
  const auto mean = static_cast<float>(parameter.mean);
  const auto sd = static_cast<float>(parameter.sd);
  if (parameter.family == Family::normal) {
    for (float& value : z) {
      const float delay = mean + sd * value;
      value = delay > 0.0F ? delay : 0.0F;
    }
    return;
  }
  for (float& value : z) value = static_cast<float>(parameter.at(double{value}));
}

class ColumnSampler {
 public:
  ColumnSampler(const ForecastQuestion& question, const Draws& draws)
      : question_(question),
        draws_(draws),
        latency_(question.parameters->find("latency", "any", "none")),
        coaptation_(question.parameters->find("coaptation delay", "any", "operated")),
        block_first_(
            QuantileTable::of(question.parameters->find("block first sign", "any", "any"))),
        block_delay_(
            QuantileTable::of(question.parameters->find("block useful delay", "any", "any"))) {
    const std::size_t n = question.samples;
    for (auto* column :
         {&patients_.rate_z, &patients_.block_first_days, &patients_.block_useful_days}) {
      column->resize(n);
    }
    for (const LesionModel& model : question.lesions) {
      placed_.emplace_back(question, model);
      PatientColumns::Lesion& lesion = patients_.lesions.emplace_back();
      lesion.component.resize(n);
      for (auto* column : {&lesion.from_start_mm, &lesion.ready_days, &lesion.crossing_days}) {
        column->resize(n);
      }
    }
  }

  PatientColumns all() {
    for (begin_ = 0; begin_ < question_.samples; begin_ += kBlock) {
      count_ = std::min(kBlock, question_.samples - begin_);
      std::iota(own_.begin(), own_.end(), static_cast<std::uint32_t>(begin_));
      patients();
      for (std::uint32_t k = 0; k < placed_.size(); ++k) lesions(k);
    }
    return std::move(patients_);
  }

 private:
  // Of the block at hand.
  Floats part(FloatColumn& column) const { return Floats(column).subspan(begin_, count_); }
  std::span<const std::uint32_t> own() const { return std::span(own_).first(count_); }
  std::span<const std::uint32_t> drawn() const {
    return question_.drawn_as.empty() ? own()
                                      : std::span(question_.drawn_as).subspan(begin_, count_);
  }

  void patients() {
    words_.draw(draws_, drawn(), Streams::kPatient);
    const Floats first = part(patients_.block_first_days);
    QuantileTable::normal().fill(words_[0], part(patients_.rate_z));
    block_first_->fill(words_[1], first);
    block_delay_->add(words_[2], first, part(patients_.block_useful_days));
    // Lesions of one limb share this number: one event tore them all, more or less.
    const auto words = words_[3];
    for (std::size_t j = 0; j < count_; ++j) {
      grade_[j] = (static_cast<float>(static_cast<std::int32_t>(words[j] >> 8U)) + 0.5F) * 0x1p-24F;
    }
  }

  void lesions(std::uint32_t k) {
    const LesionModel& model = *placed_[k].model;
    PatientColumns::Lesion& lesion = patients_.lesions[k];
    const GradeLimits limits(model);
    for (std::size_t j = 0; j < count_; ++j) {
      lesion.component[begin_ + j] = limits.component(grade_[j]);
    }
    const std::uint32_t stream = Streams::kLesions + Streams::kOfLesion * k;
    const Floats delay = part(lesion.crossing_days);
    const Parameter& parameter = model.repaired ? coaptation_ : latency_;
    normals(stream, delay);
    at_normals(parameter, delay);
    if (model.repaired && model.coaptations > 1) {
      const Floats second = Floats(spare_).first(count_);
      normals(stream + 1, second);
      at_normals(parameter, second);
      for (std::size_t j = 0; j < count_; ++j) delay[j] += second[j];
    }
    const Floats ready = part(lesion.ready_days);
    const float start = model.repaired ? static_cast<float>(model.operation_days) : 0.0F;
    for (std::size_t j = 0; j < count_; ++j) ready[j] = start + delay[j];
    places(placed_[k], stream + 2, part(lesion.from_start_mm));
  }

  // One number a patient, of a stream that has no other.
  void normals(std::uint32_t stream, Floats into) {
    if (question_.drawn_as.empty()) {
      words_.draw_one(draws_, begin_, count_, stream);
      QuantileTable::normal().fill(words_[0], into);
      return;
    }
    const auto from = drawn();
    for (std::size_t j = 0; j < count_; ++j) {
      into[j] = QuantileTable::normal().at(draws_.word(from[j], stream));
    }
  }

  void places(const PlacedLesion& placed, std::uint32_t stream, Floats into) {
    const auto sd = static_cast<float>(placed.model->lesion.sd_mm);
    if (sd > 0.0F) {
      // A place is the patient's own, whoever the other numbers are taken from.
      words_.draw_one(draws_, begin_, count_, stream);
      QuantileTable::normal().fill(words_[0], into);
    } else {
      std::ranges::fill(into, 0.0F);
    }
    const float* const place = placed.places_mm.data() + begin_ % placed.places;
    const float* const nerve = placed.nerve_mm.data() + begin_ % placed.limbs;
    for (std::size_t j = 0; j < count_; ++j) {
      const float at = place[j] + sd * into[j];
      const float from = at > 0.0F ? at : 0.0F;
      into[j] = nerve[j] < from ? nerve[j] : from;
    }
  }

  const ForecastQuestion& question_;
  const Draws& draws_;
  const Parameter& latency_;
  const Parameter& coaptation_;
  std::shared_ptr<const QuantileTable> block_first_;
  std::shared_ptr<const QuantileTable> block_delay_;
  std::vector<PlacedLesion> placed_;
  PatientColumns patients_;
  std::size_t begin_ = 0;
  std::size_t count_ = 0;
  std::array<std::uint32_t, kBlock> own_{};
  std::array<float, kBlock> grade_{};
  std::array<float, kBlock> spare_{};
  WordBlock words_;
};

}  // namespace

PatientColumns sample_columns(const ForecastQuestion& question, const Draws& draws) {
  return ColumnSampler(question, draws).all();
}

}  // namespace endplate::recovery
