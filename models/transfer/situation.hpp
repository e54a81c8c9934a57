#pragma once
// What is lost and what works in the case: the deficit of its injuries and the examination.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/casefile/case.hpp"
#include "models/examination/case_injuries.hpp"
#include "models/examination/deficit.hpp"
#include "models/limb/case_limb.hpp"
#include "models/transfer/donor_state.hpp"

namespace endplate::transfer {

class Situation {
 public:
  // `limbs` are sampled ones, for the spread of branch points.
  static Expected<Situation> of(const casefile::Case& patient, const anatomy::Anatomy& anatomy,
                                const limb::CaseLimb& limb,
                                const std::vector<anatomy::NerveMetrics>& limbs);

  const casefile::Case& patient() const { return *patient_; }
  const anatomy::Anatomy& anatomy() const { return *anatomy_; }
  const std::vector<examination::TreeInjury>& injuries() const { return injuries_; }  // as the case
  const anatomy::NerveMetrics& lengths() const { return lengths_; }  // of the limb of the case

  // Examined at M1 or better though not at M3, or with some voluntary units on EMG.
  bool muscle_recovers_in_part(std::size_t muscle) const;
  // Examined below M3, or denervated by the injury and not examined.
  bool muscle_lost(std::size_t muscle) const;
  // Untouched by the injury, or examined at M3 or better.
  bool muscle_kept(std::size_t muscle) const;
  bool area_lost(std::size_t area) const;
  bool area_kept(std::size_t area) const;

  // Strong: examined at M4 or better. Not examined: dead where the injury denervates it, else not
  // judged. `why` gets the reason in words.
  DonorState donor(std::size_t muscle, std::string& why) const;
  DonorState donor_area(std::size_t area, std::string& why) const;
  // By EMG with normal units or by stimulation, for a muscle that cannot be graded alone.
  DonorState donor_by_emg(std::size_t muscle, std::string& why) const;
  // What an EMG of the muscle says against it as a donor; empty where nothing does.
  std::string doubt_by_emg(std::size_t muscle) const;
  bool sign_present(std::string_view sign) const;
  bool unavailable(std::string_view name) const;

  // Muscles and areas that hang on a nerve or branch.
  std::vector<std::size_t> muscles_below(anatomy::NodeIndex node) const;
  std::vector<std::size_t> areas_below(anatomy::NodeIndex node) const;
  // Where the branch to a muscle, or what it hangs on, leaves a nerve above it, mm from the nerve's
  // beginning; nothing where the muscle does not hang on that nerve.
  std::optional<double> branch_leaves_mm(anatomy::NodeIndex nerve, std::size_t muscle) const;
  bool injured_at_or_below(anatomy::NodeIndex node) const;
  // "flexor carpi ulnaris", with the part where the row is one
  std::string muscle_name(std::size_t muscle) const;

 private:
  const casefile::Case* patient_ = nullptr;
  const anatomy::Anatomy* anatomy_ = nullptr;
  std::vector<examination::TreeInjury> injuries_;
  anatomy::NerveMetrics lengths_;
  std::vector<std::optional<examination::MuscleState>> muscles_;  // empty: absent
  std::vector<examination::AreaState> areas_;
  examination::Examined examined_;
};

}  // namespace endplate::transfer
