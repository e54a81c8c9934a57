#pragma once
// Made-up tasks of any size for the tests of the combination: shared donors and places, forbidden
// pairs, balance rules, several tiers, few ranks so that ties are common.
#include <random>
#include <string>

#include "models/transfer/combination.hpp"

namespace transfer_tests {

using namespace endplate::transfer;

class RandomTasks {
 public:
  explicit RandomTasks(unsigned seed) : engine_(seed) {}

  int below(int end) { return static_cast<int>(engine_() % static_cast<unsigned>(end)); }
  bool chance(int per_cent) { return below(100) < per_cent; }

  // A donor, or one of its two parts.
  std::string donor(int donors) {
    const std::string whole = "donor" + std::to_string(below(donors));
    return chance(70) ? whole : whole + (chance(50) ? "/a" : "/b");
  }

  CombinationTask task(int options) {
    const int donors = 3 + below(options + 2);
    const int places = 3 + below(options + 2);
    const int targets = 1 + below(4 + options / 4);
    CombinationTask task;
    for (int k = 0; k < options; ++k) {
      CombinationOption option;
      // Neither in the order of the ids nor with ids of one length.
      option.id = "way" + std::to_string((k * 7 + 5) % (options * 7 + 6));
      option.kind = chance(50) ? OperationKind::nerve : OperationKind::tendon;
      const int spends = below(10) == 0 ? 0 : 1 + below(2);
      for (int n = 0; n < spends; ++n) {
        (chance(80) ? option.spends : option.shares).push_back(donor(donors));
      }
      if (chance(60)) option.receives.push_back("place" + std::to_string(below(places)));
      const int serves = 1 + below(3);
      for (int n = 0; n < serves; ++n) {
        option.serves.push_back(
            {"target" + std::to_string(below(targets + 1)), chance(20) ? 2 : 1});
      }
      option.rank = 1 + below(3);
      task.options.push_back(option);
    }
    const int pairs = below(options / 2 + 1);
    for (int n = 0; n < pairs; ++n) {
      const auto& a = task.options[static_cast<std::size_t>(below(options))].id;
      const auto& b = task.options[static_cast<std::size_t>(below(options))].id;
      if (a != b) task.forbidden.push_back({"pair" + std::to_string(n), a, b, "", "", ""});
    }
    for (int k = 0; k < donors; ++k) {
      if (chance(70)) task.strong_now.push_back("donor" + std::to_string(k));
    }
    const int rules = below(4);
    for (int n = 0; n < rules; ++n) {
      BalanceRule rule{"rule" + std::to_string(n), {}, 1 + below(3), "", "", ""};
      const int size = 2 + below(3);
      for (int m = 0; m < size; ++m) {
        rule.donors.push_back(donor(donors));
      }
      task.rules.push_back(rule);
    }
    for (int k = 0; k < targets; ++k) {
      const std::string name = "target" + std::to_string(k);
      if (chance(10)) {
        task.demands.push_back({name, 3, 1 + below(3), "", "", ""});
        continue;
      }
      task.demands.push_back({name, 1, 1 + below(4), "", "", ""});
      if (chance(40)) task.demands.push_back({name, 2, 1 + below(5), "", "", ""});
    }
    return task;
  }

 private:
  std::mt19937 engine_;
};

}  // namespace transfer_tests
