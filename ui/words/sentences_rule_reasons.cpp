// Reasons of the decision rules.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> rule_reasons_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models", "muscle and nerve die within hours"),
      QT_TRANSLATE_NOOP("models", "a pulse does not exclude it"),
      QT_TRANSLATE_NOOP("models", "limb before nerve"),
      QT_TRANSLATE_NOOP("models", "the nerve lies beside the artery"),
      QT_TRANSLATE_NOOP("models",
                        "a haematoma or a false aneurysm squeezes a nerve that was whole"),
      QT_TRANSLATE_NOOP("models",
                        "a nerve that fails under the eye was whole at first: what presses it can "
                        "still be taken away"),
      QT_TRANSLATE_NOOP("models",
                        "the deficit was not there before, so something was done to a whole nerve"),
      QT_TRANSLATE_NOOP("models", "cut or caught nerves do best when dealt with early"),
      QT_TRANSLATE_NOOP("models", "the adult trauma forecast does not hold for an infant plexus"),
      QT_TRANSLATE_NOOP("models", "elbow flexion and the hand at 3 months decide on surgery"),
      QT_TRANSLATE_NOOP("models", "a flail arm with Horner sign is referred at once"),
      QT_TRANSLATE_NOOP("models",
                        "muscles with a whole lower motor neurone keep their endplates, so the "
                        "window does not bind them"),
      QT_TRANSLATE_NOOP("models",
                        "silent muscles at the level have the window of any denervated muscle"),
      QT_TRANSLATE_NOOP("models", "no axon is known to be divided"),
      QT_TRANSLATE_NOOP(
          "models",
          "recovery goes on for one to three years, so a distance-and-rate forecast would mislead"),
      QT_TRANSLATE_NOOP("models",
                        "nothing advances and nothing has come back when a block should have"),
      QT_TRANSLATE_NOOP("models", "a block that is not back at 3 months was none"),
      QT_TRANSLATE_NOOP("models", "recovery goes on for one to three years and is patchy"),
      QT_TRANSLATE_NOOP("models", "hourglass constrictions do not open by themselves"),
      QT_TRANSLATE_NOOP("models", "after a year a silent muscle is on its way out of reach"),
      QT_TRANSLATE_NOOP("models", "conduction is back at 6 to 8 weeks in most"),
      QT_TRANSLATE_NOOP("models", "what is not back at 3 months was no conduction block"),
      QT_TRANSLATE_NOOP("models", "axon loss or a pressure that goes on is what is left"),
      QT_TRANSLATE_NOOP("models",
                        "a block returns when the pressure is gone, axon loss does not wait"),
      QT_TRANSLATE_NOOP("models", "the trauma forecast knows no cause that goes on pressing"),
      QT_TRANSLATE_NOOP(
          "models", "the agent and the place inside the nerve decide, and neither is in the model"),
      QT_TRANSLATE_NOOP("models", "a sign of recovery was found"),
      QT_TRANSLATE_NOOP("models", "a sign of recovery was found: what comes next is dated below"),
      QT_TRANSLATE_NOOP("models", "pain decides as much as power"),
      QT_TRANSLATE_NOOP("models", "about three months without a sign"),
      QT_TRANSLATE_NOOP("models", "about three months have passed without a sign"),
      QT_TRANSLATE_NOOP("models", "the scar inside the nerve does not loosen"),
      QT_TRANSLATE_NOOP("models", "no advance below the operation"),
      QT_TRANSLATE_NOOP("models", "no axons to grow, so waiting gains nothing from this root"),
      QT_TRANSLATE_NOOP("models", "a transfer near its muscle is best done early"),
      QT_TRANSLATE_NOOP("models", "transfers do best within 3 to 6 months of injury"),
      QT_TRANSLATE_NOOP("models",
                        "the middle of the motor window is passed before new axons could arrive"),
      QT_TRANSLATE_NOOP("models",
                        "the middle of the motor window is passed before axons could arrive"),
      QT_TRANSLATE_NOOP(
          "models",
          "the Tinel sign stands still longer than the sutures should hold the axons back"),
      QT_TRANSLATE_NOOP("models", "the Tinel sign stands still or what was due has not come"),
      QT_TRANSLATE_NOOP("models", "some sutures hold them longer than others"),
      QT_TRANSLATE_NOOP("models", "slow growth spends the time of the far muscles first"),
      QT_TRANSLATE_NOOP("models",
                        "no movement more than 10 months after a suture and no evoked potential 14 "
                        "months after a graft are reasons to look again"),
      QT_TRANSLATE_NOOP("models",
                        "no units by 12 months after a graft at the wrist or forearm speak for a "
                        "graft that failed"),
      QT_TRANSLATE_NOOP(
          "models",
          "no units by 12 months after a graft at the wrist or forearm is a reason to look again"),
      QT_TRANSLATE_NOOP("models",
                        "no units by 7 months after a suture at the wrist or forearm speak for a "
                        "suture that failed"),
      QT_TRANSLATE_NOOP(
          "models",
          "no units by 7 months after a suture at the wrist or forearm is a reason to look again"),
      QT_TRANSLATE_NOOP("models", "each further month costs muscle"),
      QT_TRANSLATE_NOOP("models", "each further month costs muscle if nothing grows across"),
      QT_TRANSLATE_NOOP("models", "each further month costs muscle if the nerve is divided"),
      QT_TRANSLATE_NOOP("models", "each month of delay costs chance"),
      QT_TRANSLATE_NOOP("models", "results fall with each month of delay"),
      QT_TRANSLATE_NOOP("models", "late reconstructions have reached M3, seldom"),
      QT_TRANSLATE_NOOP("models", "waiting costs the muscle and gains no axon"),
      QT_TRANSLATE_NOOP(
          "models", "an open wound over a nerve with its deficit is a divided nerve until seen"),
      QT_TRANSLATE_NOOP(
          "models", "direct repair without tension is possible for days, later the ends retract"),
      QT_TRANSLATE_NOOP("models",
                        "recovery below an open wound means that part of the nerve is whole"),
      QT_TRANSLATE_NOOP(
          "models", "a partial cut is repaired best at once, before the neuroma is in continuity"),
      QT_TRANSLATE_NOOP("models", "a partial division becomes a neuroma in continuity"),
      QT_TRANSLATE_NOOP("models", "intraoperative stimulation tells what to keep"),
      QT_TRANSLATE_NOOP("models", "nothing advances below an open wound"),
      QT_TRANSLATE_NOOP("models", "nothing grows across a divided nerve"),
      QT_TRANSLATE_NOOP("models", "a divided nerve does not grow across a gap"),
      QT_TRANSLATE_NOOP("models", "seen to be whole, so bruised or stretched"),
      QT_TRANSLATE_NOOP("models", "seen and whole, so stretched or bruised"),
      QT_TRANSLATE_NOOP("models", "an open wound is explored whatever the forecast"),
      QT_TRANSLATE_NOOP("models", "the length of bruised nerve cannot be judged on the first day"),
      QT_TRANSLATE_NOOP(
          "models",
          "an open wound with a complete deficit is not watched to the end of a closed one"),
      QT_TRANSLATE_NOOP("models", "the nerve is in continuity or is recovering"),
      QT_TRANSLATE_NOOP("models",
                        "nothing has advanced although axons should have been on their way"),
      QT_TRANSLATE_NOOP("models",
                        "waiting longer than about three months without a sign costs muscle if the "
                        "nerve is divided"),
      QT_TRANSLATE_NOOP("models",
                        "nothing advances although axons should have come far enough to be found"),
      QT_TRANSLATE_NOOP("models", "most gunshot palsies are stretched and in continuity"),
      QT_TRANSLATE_NOOP("models", "early repair through a burst zone fails"),
      QT_TRANSLATE_NOOP("models",
                        "about three months without a sign make a lesion that needs repair likely"),
      QT_TRANSLATE_NOOP("models", "results fall after about 6 months"),
      QT_TRANSLATE_NOOP("models", "an operated nerve that was not seen counts as divided"),
      QT_TRANSLATE_NOOP("models", "early direct repair beats a late graft"),
      QT_TRANSLATE_NOOP("models",
                        "ultrasound shows a gap or metal on the nerve but does not clear it"),
      QT_TRANSLATE_NOOP("models", "nothing advances from the field of the operation"),
      QT_TRANSLATE_NOOP("models", "an early repair beats a late one"),
      QT_TRANSLATE_NOOP("models", "part of the nerve works"),
      QT_TRANSLATE_NOOP("models", "part of the nerve is whole and must not be lost at operation"),
      QT_TRANSLATE_NOOP("models",
                        "part of the axons is whole: the deficit is partial, and what conducts "
                        "must not be lost at an operation"),
      QT_TRANSLATE_NOOP("models",
                        "axons are on their way to a muscle that lies too far to have answered"),
      QT_TRANSLATE_NOOP(
          "models",
          "an advancing Tinel sign is no movement, and some nerves advance in skin fibres only"),
      QT_TRANSLATE_NOOP("models",
                        "most closed palsies beside a fracture recover by themselves (77 per cent "
                        "of 890 radial palsies)"),
      QT_TRANSLATE_NOOP(
          "models",
          "by month 4 nearly every nerve that recovered by itself showed units on EMG (21 of 22)"),
      QT_TRANSLATE_NOOP("models",
                        "a stretched nerve in continuity recovers by itself in many (no count for "
                        "single nerves was found)"),
      QT_TRANSLATE_NOOP("models", "torn roots gain nothing from waiting and must be found early"),
      QT_TRANSLATE_NOOP(
          "models",
          "those who reached M3 were operated at 4 months in the median, the others at 7"),
      QT_TRANSLATE_NOOP("models", "the cause decides the first step more than any forecast"),
      QT_TRANSLATE_NOOP("models", "an operation was done that is no repair or graft of this nerve"),
      QT_TRANSLATE_NOOP("models", "more than three months have gone"),
      QT_TRANSLATE_NOOP(
          "models",
          "a nerve seen whole can still be crushed beyond growing, or have been another nerve"),
      QT_TRANSLATE_NOOP("models", "an entrapment gets better when it is released, not with time"),
      QT_TRANSLATE_NOOP("models",
                        "contested: a secondary page has 56 per cent recover fully after 7 months "
                        "without a sign"),
      QT_TRANSLATE_NOOP("models",
                        "the waiting has ended without a sign; only movement or EMG units in the "
                        "first muscle prolong it"),
  };
  return all;
}

}  // namespace endplate::ui
