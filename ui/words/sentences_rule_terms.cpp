// Exceptions, practice and dated steps of the decision rules.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> rule_terms_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models", "another cause of the pain and the tension is proven at once"),
      QT_TRANSLATE_NOOP("models", "pulse and perfusion return with reduction and stay"),
      QT_TRANSLATE_NOOP("models", "imaging shows no bleeding and the deficit does not grow"),
      QT_TRANSLATE_NOOP("models", "it is improving"),
      QT_TRANSLATE_NOOP("models",
                        "a local block still explains it (examine again when it should have worn "
                        "off, at most 24 hours)"),
      QT_TRANSLATE_NOOP("models", "elbow flexion against gravity returns before 2 months of age"),
      QT_TRANSLATE_NOOP("models", "the examination still changes from month to month"),
      QT_TRANSLATE_NOOP("models", "a mass, a growing deficit, or no sign of recovery on EMG"),
      QT_TRANSLATE_NOOP("models", "a muscle stays silent on EMG while its neighbours return"),
      QT_TRANSLATE_NOOP("models", "units are found in the silent muscles"),
      QT_TRANSLATE_NOOP("models", "fibrillation on EMG at 4 weeks, or nothing back at 12 weeks"),
      QT_TRANSLATE_NOOP("models", "a first movement or units are found at this visit"),
      QT_TRANSLATE_NOOP("models", "an acute pressure palsy that is already recovering"),
      QT_TRANSLATE_NOOP(
          "models",
          "high-pressure injection or a toxic agent under pressure: washed out the same day"),
      QT_TRANSLATE_NOOP("models", "pain grows, or the next muscle does not come"),
      QT_TRANSLATE_NOOP("models", "recovery in order"),
      QT_TRANSLATE_NOOP("models", "imaging and the examination show that the root is whole"),
      QT_TRANSLATE_NOOP("models", "the first muscle answers"),
      QT_TRANSLATE_NOOP("models",
                        "the next visit finds the Tinel sign further down, or EMG shows units in "
                        "the first muscle"),
      QT_TRANSLATE_NOOP("models",
                        "EMG shows units in the first muscle, or a second observer finds the Tinel "
                        "sign further down"),
      QT_TRANSLATE_NOOP(
          "models", "the first muscle still lies beyond the reach of the axons by the dates below"),
      QT_TRANSLATE_NOOP("models", "EMG this week shows units in the first muscle"),
      QT_TRANSLATE_NOOP("models",
                        "EMG shows units in the first muscle, or that muscle lies so far that its "
                        "time below is still to come"),
      QT_TRANSLATE_NOOP("models",
                        "no advance of Tinel at two visits running, or pain at the suture line"),
      QT_TRANSLATE_NOOP(
          "models", "the next muscle is late by two months, or Tinel stands still at two visits"),
      QT_TRANSLATE_NOOP("models",
                        "muscles that still answer to stimulation or show fibrillation in "
                        "short-denervated parts"),
      QT_TRANSLATE_NOOP(
          "models",
          "the patient or the wound is not fit: then tag the ends and return within 3 weeks"),
      QT_TRANSLATE_NOOP(
          "models", "nerve action potential across the lesion at operation: then neurolysis only"),
      QT_TRANSLATE_NOOP("models", "clear recovery in order below the wound"),
      QT_TRANSLATE_NOOP("models", "a muscle that is due does not come"),
      QT_TRANSLATE_NOOP("models", "the rest is recovering month by month"),
      QT_TRANSLATE_NOOP("models", "no sign by 3 months"),
      QT_TRANSLATE_NOOP("models",
                        "a second observer finds the Tinel sign further down, or units or movement "
                        "show before the date"),
      QT_TRANSLATE_NOOP("models",
                        "EMG this week shows units in the first muscle, or a second observer finds "
                        "the Tinel sign further down"),
      QT_TRANSLATE_NOOP("models",
                        "operation for another reason (see the nerve then), high-energy wound with "
                        "tissue loss, growing pain, or ends seen apart"),
      QT_TRANSLATE_NOOP("models", "the deficit is partial and shrinking"),
      QT_TRANSLATE_NOOP("models",
                        "the deficit grows, or ultrasound shows a gap or metal on the nerve"),
      QT_TRANSLATE_NOOP(
          "models", "the note does not say that it was seen along its whole way through the field"),
      QT_TRANSLATE_NOOP("models",
                        "the Tinel sign stands still at two visits, or the first muscle shows no "
                        "units two months after it was due: then explore"),
      QT_TRANSLATE_NOOP("models",
                        "the palsy came with reduction or fixation, the fracture is open, a vessel "
                        "needs repair, or the nerve is to be seen at fixation"),
      QT_TRANSLATE_NOOP("models",
                        "a gap on ultrasound, a vessel that needs repair, or a high-energy pull "
                        "with a whole limb dead"),
      QT_TRANSLATE_NOOP("models", "clear recovery from month to month"),
      QT_TRANSLATE_NOOP("models", "a wound lies over the nerve: then explore"),
      QT_TRANSLATE_NOOP("models", "the first muscle that is due does not come"),
      QT_TRANSLATE_NOOP("models", "birth palsy clinic and dated examinations"),
      QT_TRANSLATE_NOOP("models", "as soon as a list can be had"),
      QT_TRANSLATE_NOOP("models", "3 months"),
      QT_TRANSLATE_NOOP("models", "3 to 6 months"),
      QT_TRANSLATE_NOOP("models", "3 months without a sign"),
      QT_TRANSLATE_NOOP("models",
                        "3 months, up to 6 when the first target lies far from the lesion"),
      QT_TRANSLATE_NOOP("models",
                        "nerve transfer to silent muscles within 6 months, others later; tendon "
                        "transfer when stable"),
      QT_TRANSLATE_NOOP("models",
                        "exploration is discussed when neither clinical nor EMG recovery shows by "
                        "3 to 6 months; opinions differ"),
      QT_TRANSLATE_NOOP("models", "end to waiting 12 weeks"),
      QT_TRANSLATE_NOOP(
          "models",
          "exploration is discussed only for what stays silent by 3 to 6 months; opinions differ"),
      QT_TRANSLATE_NOOP("models", "nerve conduction at 3 to 4 weeks; end to waiting 12 weeks"),
      QT_TRANSLATE_NOOP("models",
                        "established wasting or constant numbness: decompress without waiting"),
      QT_TRANSLATE_NOOP("models",
                        "neurolysis or repair is considered at 3 months without recovery"),
      QT_TRANSLATE_NOOP("models", "explore only what stays behind"),
      QT_TRANSLATE_NOOP("models", "explore only what stays behind or hurts"),
      QT_TRANSLATE_NOOP("models", "explore at 3 months without recovery"),
      QT_TRANSLATE_NOOP("models", "reconstruct at 3 months, seldom after 6"),
      QT_TRANSLATE_NOOP("models", "reconstruct within 3 months, seldom after 6"),
      QT_TRANSLATE_NOOP(
          "models", "tendon transfers after about 18 months; earlier when the distance is long"),
      QT_TRANSLATE_NOOP("models", "re-explore when Tinel stands still at two visits"),
      QT_TRANSLATE_NOOP(
          "models",
          "re-explore when Tinel stands still at two visits; without units at 7 months after a "
          "suture, 12 after a graft (wrist and forearm), at the latest"),
      QT_TRANSLATE_NOOP("models",
                        "re-explore when no unit shows by 7 months or no movement by 10 (wrist and "
                        "forearm); nearer targets earlier"),
      QT_TRANSLATE_NOOP("models",
                        "re-explore, or go to transfers, when no unit shows by 12 months (wrist "
                        "and forearm); nearer targets earlier"),
      QT_TRANSLATE_NOOP("models",
                        "re-explore when no movement shows by 10 months after a suture, no "
                        "potential by 14 after a graft (wrist and forearm)"),
      QT_TRANSLATE_NOOP(
          "models", "explore without movement or units by 6 months, whatever the Tinel sign does"),
      QT_TRANSLATE_NOOP(
          "models", "direct repair within days; ends retract and need a graft after about 3 weeks"),
      QT_TRANSLATE_NOOP("models", "delayed repair or graft at 3 weeks to 3 months"),
      QT_TRANSLATE_NOOP("models", "within 72 hours where possible, always within 2 weeks"),
      QT_TRANSLATE_NOOP("models", "explore the part that stays dead at 3 months"),
      QT_TRANSLATE_NOOP("models", "within days, with the wound"),
      QT_TRANSLATE_NOOP("models", "by 3 months"),
      QT_TRANSLATE_NOOP("models", "definite repair or graft at about 3 weeks, by 3 months"),
      QT_TRANSLATE_NOOP("models", "as soon as the soft tissue allows"),
      QT_TRANSLATE_NOOP("models", "explore by 3 months without a sign"),
      QT_TRANSLATE_NOOP(
          "models",
          "explore at 3 months without a sign, at once when the lack of advance is certain"),
      QT_TRANSLATE_NOOP(
          "models", "explore at 3 to 4 months without recovery; results fall after about 6 months"),
      QT_TRANSLATE_NOOP("models", "explore at 3 to 4 months without recovery"),
      QT_TRANSLATE_NOOP("models", "within days to two weeks of recognition"),
      QT_TRANSLATE_NOOP("models", "within two weeks of recognition"),
      QT_TRANSLATE_NOOP("models", "12 weeks"),
      QT_TRANSLATE_NOOP(
          "models",
          "explore when neither movement nor EMG units show by about 3 months (6 at the latest)"),
      QT_TRANSLATE_NOOP("models", "EMG at 3 to 4 weeks, end of waiting 3 months"),
      QT_TRANSLATE_NOOP("models", "3 months after neurolysis without a sign: think again"),
      QT_TRANSLATE_NOOP("models", "nerve reconstruction in infancy"),
      QT_TRANSLATE_NOOP("models", "nerve surgery is decided at 3 to 6 months of age"),
      QT_TRANSLATE_NOOP("models", "examine every movement"),
      QT_TRANSLATE_NOOP("models", "elbow flexion decides"),
      QT_TRANSLATE_NOOP("models", "second decision"),
      QT_TRANSLATE_NOOP("models", "first EMG"),
      QT_TRANSLATE_NOOP("models", "EMG again"),
      QT_TRANSLATE_NOOP("models", "decide on exploration for constrictions"),
      QT_TRANSLATE_NOOP("models", "first EMG and conduction"),
      QT_TRANSLATE_NOOP("models", "examine"),
      QT_TRANSLATE_NOOP("models", "end to waiting"),
      QT_TRANSLATE_NOOP("models", "first EMG and ultrasound"),
      QT_TRANSLATE_NOOP("models",
                        "EMG and nerve conduction (a kept sensory potential speaks for avulsion)"),
      QT_TRANSLATE_NOOP("models", "reconstruct at the latest"),
      QT_TRANSLATE_NOOP("models", "second look and reconstruction of ends tagged"),
      QT_TRANSLATE_NOOP("models", "ultrasound"),
      QT_TRANSLATE_NOOP("models", "EMG, nerve conduction and MRI"),
      QT_TRANSLATE_NOOP("models", "reconstruct what shows no sign"),
      QT_TRANSLATE_NOOP("models", "injury"),
      QT_TRANSLATE_NOOP("models", "operation"),
      QT_TRANSLATE_NOOP("models", "today"),
  };
  return all;
}

}  // namespace endplate::ui
