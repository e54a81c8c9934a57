#include <fmt/format.h>

#include <algorithm>

#include "models/casefile/json_text.hpp"
#include "models/casefile/read_parts.hpp"
#include "models/casefile/remarks.hpp"

namespace endplate::casefile {
namespace {

bool means_plexus(const std::string& typed) {
  const auto words = anatomy::term_words(anatomy::TermKind::nerve, typed);
  const std::string text = anatomy::join_words(words);
  return text == "brachial plexus" || text == "plexus" || text == "plexus brachialis";
}

bool hangs_on(const anatomy::NerveTree& tree, const std::string& nerve, const std::string& branch) {
  const auto from = tree.find(nerve);
  const auto to = tree.find(branch);
  if (!from || !to) return false;
  const auto below = tree.descendants(*from);
  return *from == *to || std::ranges::find(below, *to) != below.end();
}

// The nerve of an injury whose key `nerve` was given.
void read_nerve(ObjectReader& object, Injury& injury, bool place_was_read) {
  const auto typed = object.text("nerve");
  if (!typed) return;
  const auto element = injury.at ? plexus_element(*injury.at) : std::nullopt;
  if (means_plexus(*typed)) {
    if (!element && place_was_read) {
      object.add(
          "nerve", "the plexus is not one nerve",
          "Place the injury by \"at\": a root, trunk or cord; several are several injuries.");
    }
    return;
  }
  const auto nerve =
      object.reading().resolve_one(anatomy::TermKind::nerve, *typed, object.place_of("nerve"));
  if (!nerve) return;
  injury.nerve = *nerve;
  if (element && *element != *nerve) {
    object.add("nerve", fmt::format("{} and the place {} disagree", *nerve, *element),
               "Leave nerve out where a root, trunk or cord is the place; an injury of the nerve "
               "itself is an entry of its own.");
  }
  const auto* branch = injury.at ? std::get_if<AtBranch>(&*injury.at) : nullptr;
  const anatomy::NerveTree* tree = object.reading().rules.tree;
  if (branch != nullptr && tree != nullptr && !hangs_on(*tree, *nerve, branch->branch)) {
    object.add("at", fmt::format("{} is no branch of {}", branch->branch, *nerve),
               fmt::format("Write \"nerve\": \"{}\", or place the injury on a branch of {}.",
                           branch->branch, *nerve));
  }
}

}  // namespace

std::optional<Injury> read_injury(ObjectReader& object) {
  Injury injury;
  injury.at = read_place(object, "at", false);
  const bool place_was_read = injury.at.has_value() || !object.has("at");
  read_nerve(object, injury, place_was_read);
  if (!object.has("nerve") && (!object.has("at") || (place_was_read && !injury.at))) {
    object.require("nerve", "Name the nerve, or place the injury at a root, trunk or cord.");
  }
  if (injury.nerve.empty() && injury.at) {
    if (const auto* at = std::get_if<AtBranch>(&*injury.at)) injury.nerve = at->branch;
    if (std::holds_alternative<AtLandmark>(*injury.at) && !object.has("nerve")) {
      object.require("nerve", "Name the nerve that is injured at this landmark.");
    }
  }
  injury.mechanism = object.word("mechanism", kMechanisms).value_or(Mechanism::unknown);
  injury.grade = object.word("grade", kGrades).value_or(Grade::unknown);
  injury.complete = object.boolean("complete");
  injury.nerve_seen = object.boolean("nerve_seen");
  injury.date = object.date("date", DatedPart::Kind::injury);
  object.finish();
  if (injury.nerve.empty() && !injury.at) return std::nullopt;
  object.reading().injuries.emplace_back(object.place(), injury);
  return injury;
}

}  // namespace endplate::casefile
