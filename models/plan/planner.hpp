#pragma once
// Inside models/plan only: one case on its way to its options. The members stand in plan.cpp, in
// plan_on_nerve.cpp (what is done to the injured nerve itself) and in plan_groups.cpp (transfers
// and salvage).
#include <functional>
#include <set>

#include "models/plan/option_rows.hpp"
#include "models/plan/plan.hpp"
#include "models/plan/transfers.hpp"

namespace endplate::plan {

// As the curve of operation dates: less than one chance in five is unlikely.
inline constexpr double kUnlikely = 0.2;

bool is_plexus(const anatomy::NerveTree& tree, const std::string& nerve);
// Whether an action potential crossed at an operation that is done, as it was written down.
std::optional<std::string> action_potential(const casefile::Case& patient);

class Planner {
 public:
  Planner(const casefile::Case& patient, const evidence::DataPackage& package,
          const recovery::RecoveryOptions& options, const anatomy::Anatomy& anatomy,
          const recovery::Parameters& parameters, recovery::RecoveryAnswer base);

  // Without a forecast: what the decision says, the entry conditions, and no chance.
  PlanAnswer without_model();
  Expected<PlanAnswer> with_model();
  void ask_what_if(const recovery::DecisionRules& rules);

 private:
  using Takes = std::function<bool(const FunctionGroup&, const Candidate&)>;

  std::optional<Error> add(OptionRow& row);

  // Explore, observe, neurolysis, repair and graft: what is done to the injured nerve itself.
  std::optional<Error> add_nerve_option(OptionRow& row);
  std::string done_or(const std::string& kind) const;
  bool partial() const;
  std::optional<double> gap_mm() const;
  std::optional<Error> run(Option& option, const std::string& procedure);
  void by_action_potential(OptionRow& row) const;
  void mention_torn_roots(OptionRow& row) const;
  static void mark_unlikely(Option& option);
  void add_grafts(Option& option) const;
  void add_groups(const OptionRow& row, const Transfers& transfers, const Takes& takes);
  void finish_group(const OptionRow& row, const FunctionGroup& group, Option& option);

  // The largest series among the ways that may be done as far as they were examined, or among all.
  static std::vector<PublishedResult> of_candidates(const std::vector<Candidate>& candidates);
  void add_fusion(const OptionRow& row);
  void push(Option option);
  PlanAnswer finish();

  // What the operation itself would show is no fact of the rules before it.
  void ask_at_operation();

  const casefile::Case& patient_;
  const evidence::DataPackage& package_;
  const recovery::RecoveryOptions& options_;
  const anatomy::Anatomy& anatomy_;
  const recovery::Parameters& parameters_;
  PlanAnswer answer_;
  const Situation* now_ = nullptr;
  Transfers nerve_;
  Transfers tendon_;
  std::set<std::string> nerves_;  // injured, and "plexus"
  std::set<std::string, std::less<>> mechanisms_;
  std::vector<std::string> torn_;         // roots
  std::vector<std::string> whole_roots_;  // injured nerves that can be joined
  double today_days_ = 0.0;
};

}  // namespace endplate::plan
