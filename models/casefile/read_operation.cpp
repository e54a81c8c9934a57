#include <fmt/format.h>

#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

using anatomy::TermKind;

// A graft's donor is a nerve that is taken; a transfer's donor a nerve of the limb.
void read_donor(ObjectReader& item, Procedure& procedure) {
  const bool graft = procedure.procedure == "graft";
  const bool transfer = procedure.procedure.ends_with("nerve transfer");
  if (item.has("cables") && !graft) {
    item.add("cables", "only a graft has cables", "Leave it out, or write \"graft\".");
  }
  if (item.has("donor") && !graft && !transfer) {
    item.add("donor", "only a graft or a nerve transfer has a donor",
             "Leave it out, or write the procedure that was done.");
  }
  procedure.cables = item.integer("cables", 1, 20);
  procedure.donor = item.term("donor", graft ? TermKind::graft_donor : TermKind::nerve);
}

// Only the ulnar nerve is laid in front of the elbow, so only then a layer has a meaning.
void read_layer(ObjectReader& item, Procedure& procedure) {
  const bool ulnar = procedure.procedure == "transposition" && procedure.nerve == "ulnar nerve";
  if (item.has("layer") && !ulnar) {
    item.add("layer", "only a transposed ulnar nerve has a layer",
             "Leave it out, or write \"transposition\" of the \"ulnar nerve\".");
  }
  procedure.layer = item.word("layer", kLayers);
}

}  // namespace

Operation read_operation(ObjectReader& object) {
  constexpr double kLongestGap_mm = 400.0;
  Operation operation;
  const auto state = object.word("state", kOperationStates);
  operation.state = state.value_or(OperationState::planned);
  operation.date = object.date("date", operation.state == OperationState::done
                                           ? DatedPart::Kind::operation_done
                                           : DatedPart::Kind::operation_planned);
  if (!object.has("state")) {
    object.reading().assumptions.push_back(
        fmt::format("whether the operation at {} is planned or done is not given; taken as planned",
                    object.place()));
  }
  operation.nerve_action_potential =
      object.word("nerve_action_potential", std::span<const std::string_view>(kActionPotential));
  operation.gap_after_resection_mm =
      object.number("gap_after_resection_mm", 0.0, kLongestGap_mm, "mm");
  if (state == OperationState::planned && operation.nerve_action_potential) {
    object.add("nerve_action_potential", "a planned operation has recorded nothing yet",
               "Leave it out, or write \"state\": \"done\".");
  }
  object.each_object("done", [&](ObjectReader& item) {
    Procedure procedure;
    item.require("procedure", "Name what was done.");
    const auto name = item.word("procedure", std::span<const std::string_view>(kProcedures));
    procedure.procedure = name.value_or("");
    procedure.nerve = item.term("nerve", TermKind::nerve);
    procedure.at = read_place(item, "at", false);
    if (name) {
      read_donor(item, procedure);
      read_layer(item, procedure);
    } else {
      item.take("cables");
      item.take("donor");
      item.take("layer");
    }
    item.finish();
    if (name) operation.done.push_back(std::move(procedure));
  });
  object.finish();
  return operation;
}

}  // namespace endplate::casefile
