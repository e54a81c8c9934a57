// What the decision rules say to do next.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> rule_steps_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models",
                        "Now: take every dressing and cast off down to skin, measure or open the "
                        "compartments; fasciotomy when in doubt"),
      QT_TRANSLATE_NOOP("models",
                        "Now: reduce and splint, then vascular surgery at once if the pulse stays "
                        "away; see the nerve in the same operation"),
      QT_TRANSLATE_NOOP("models",
                        "Now: vascular imaging or exploration at once; decompress and see the "
                        "nerve in the same operation"),
      QT_TRANSLATE_NOOP("models",
                        "Now: find what presses the nerve (haematoma, fragment, cast, spine) and "
                        "relieve it today; examine hourly until then"),
      QT_TRANSLATE_NOOP(
          "models",
          "Today: release dressings, position and cast, read the operation or block note, image "
          "for haematoma and metal; re-explore today if something presses or passes through the "
          "nerve, or if the nerve was not seen and was at risk"),
      QT_TRANSLATE_NOOP(
          "models",
          "Refer to a birth palsy clinic now; grade every movement at 1, 3 and 6 months of age; "
          "surgery is decided on elbow flexion at 3 months and on the hand"),
      QT_TRANSLATE_NOOP(
          "models",
          "Test by stimulation which muscles below the level still answer (upper motor neurone) "
          "and which are silent (lower); refer early to an upper-limb tetraplegia team"),
      QT_TRANSLATE_NOOP("models",
                        "Watch: neuralgic amyotrophy and spontaneous anterior interosseous palsy "
                        "are not explored at first; pain control, EMG at 4 weeks, image for a mass "
                        "and for constrictions"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: this is no conduction block alone. Nerve conduction and "
                        "EMG now, then decompress and see the nerve"),
      QT_TRANSLATE_NOOP("models",
                        "Go on watching: examine every 6 to 8 weeks, EMG of what is still silent"),
      QT_TRANSLATE_NOOP("models",
                        "Examine and EMG again now, and image the nerve for constrictions "
                        "(ultrasound or MR neurography): where neither movement nor units show by "
                        "3 to 6 months, discuss exploration"),
      QT_TRANSLATE_NOOP(
          "models",
          "Take the pressure away, splint, and watch: a conduction block returns as a whole"),
      QT_TRANSLATE_NOOP(
          "models",
          "End of waiting: what is not back at 12 weeks was no conduction block, or something "
          "still presses. EMG and conduction now, image the nerve, then decompress or explore"),
      QT_TRANSLATE_NOOP(
          "models",
          "Find and treat the cause of the pressure; nerve conduction at 3 to 4 weeks tells block "
          "from axon loss; decompress if weakness or wasting is established"),
      QT_TRANSLATE_NOOP("models",
                        "Watch with pain control; EMG and ultrasound at 3 to 4 weeks; explore for "
                        "severe pain or no recovery"),
      QT_TRANSLATE_NOOP("models", "Go on watching the order of return; examine every 4 to 6 weeks"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: explore with nerve action potentials, then neurolysis, or "
                        "resection and graft"),
      QT_TRANSLATE_NOOP(
          "models",
          "Refer to a plexus unit now: the root is torn from the cord, nothing grows from it; "
          "nerve transfers are planned once MRI or myelography and EMG confirm it"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: nothing advances and a second nerve repair would come too "
                        "late for most muscles. Discuss tendon transfer, free muscle or fusion; "
                        "nerve work for skin and pain only"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: ultrasound and EMG now, then re-explore the repair or go "
                        "to nerve transfers"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting set: a second observer taps the nerve and ultrasound shows "
                        "the suture lines now; list for re-exploration or nerve transfer unless "
                        "the sign has moved by the next visit"),
      QT_TRANSLATE_NOOP("models",
                        "EMG of the first muscle now: axons advance, but slowly. Plan nerve or "
                        "tendon transfer now for what they will reach too late (chances below); "
                        "explore if the first muscle shows no units when due"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting for the first muscle: EMG now; without units re-explore or "
                        "go to nerve or tendon transfers"),
      QT_TRANSLATE_NOOP("models",
                        "Do not wait longer: EMG now; without units re-explore the graft, or go to "
                        "nerve or tendon transfers"),
      QT_TRANSLATE_NOOP("models",
                        "Do not wait longer: EMG now; without units re-explore the suture, or go "
                        "to nerve or tendon transfers"),
      QT_TRANSLATE_NOOP("models",
                        "Protect, then examine monthly: Tinel, the next muscle in order; EMG when "
                        "the first muscle is due"),
      QT_TRANSLATE_NOOP(
          "models",
          "Nerve reconstruction is unlikely to give a useful muscle now: discuss tendon transfer, "
          "free muscle or fusion; nerve work for skin and pain only"),
      QT_TRANSLATE_NOOP("models", "Explore and repair now: the nerve is known to be divided"),
      QT_TRANSLATE_NOOP("models",
                        "Explore and reconstruct: this grade does not recover by itself; at about "
                        "3 weeks when the zone of injury has shown itself, at once if it has"),
      QT_TRANSLATE_NOOP("models", "Explore the wound and repair the nerve, tendons and vessels"),
      QT_TRANSLATE_NOOP("models",
                        "Explore now: a cut nerve does not wait; expect to trim and graft"),
      QT_TRANSLATE_NOOP(
          "models",
          "Watch the order of return and explore what stays behind: some axons pass the wound"),
      QT_TRANSLATE_NOOP(
          "models",
          "Explore the wound: a partial deficit below a cut is a partial division until seen"),
      QT_TRANSLATE_NOOP("models",
                        "A partial deficit that stands still after 3 months: EMG, and discuss "
                        "exploration of the part that is dead"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: explore with nerve action potentials, then neurolysis, "
                        "suture, graft or transfer"),
      QT_TRANSLATE_NOOP("models",
                        "Nerve seen and whole: watch as a closed injury, EMG at 3 to 4 weeks, end "
                        "of waiting 3 months"),
      QT_TRANSLATE_NOOP("models",
                        "Explore with the wound excision: see the nerve, bridge or tag the ends, "
                        "record the gap; reconstruct when the zone has declared itself"),
      QT_TRANSLATE_NOOP("models", "Explore now: the nerve was not seen and the wound was open"),
      QT_TRANSLATE_NOOP(
          "models", "Watch: examine every 4 weeks, EMG at 3 to 4 weeks; end of waiting 3 months"),
      QT_TRANSLATE_NOOP(
          "models",
          "End of waiting set: EMG now and list for exploration; explore with nerve action "
          "potentials, then neurolysis, suture, graft or transfer unless something moves"),
      QT_TRANSLATE_NOOP("models", "End of waiting: explore"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: explore with nerve action potentials (or transfer), now "
                        "that about three months have passed without a sign"),
      QT_TRANSLATE_NOOP(
          "models",
          "End of waiting: explore with nerve action potentials, whatever the first operation saw"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: explore with nerve action potentials, then neurolysis, "
                        "suture or graft of the part that is dead"),
      QT_TRANSLATE_NOOP(
          "models",
          "Watch unless vessels, bone or wound call for an operation, and then see the nerve; EMG "
          "at 3 to 4 weeks, examine every 4 weeks, end of waiting 3 months"),
      QT_TRANSLATE_NOOP(
          "models",
          "End of waiting: explore with nerve action potentials, then neurolysis, suture or graft"),
      QT_TRANSLATE_NOOP("models",
                        "Re-explore early, by a surgeon who repairs nerves: the nerve was not seen "
                        "and may be cut, tied or under the plate"),
      QT_TRANSLATE_NOOP("models",
                        "End of waiting: re-explore, by a surgeon who repairs nerves; explore with "
                        "nerve action potentials, then neurolysis, suture, graft or transfer"),
      QT_TRANSLATE_NOOP("models",
                        "Ultrasound now, EMG at 3 to 4 weeks, examine every 4 weeks; re-explore at "
                        "3 months or when it stops improving"),
      QT_TRANSLATE_NOOP("models",
                        "Nerve seen whole at the end of the operation: watch, EMG at 3 to 4 weeks, "
                        "end of waiting 3 months"),
      QT_TRANSLATE_NOOP(
          "models",
          "Watch: a conduction block returns as a whole, not in order; end of waiting 12 weeks"),
      QT_TRANSLATE_NOOP(
          "models",
          "Go on watching, with an end: axons advance at the usual pace and no muscle has answered "
          "yet. EMG of the first muscle when it is due (dates below), examine every 4 weeks"),
      QT_TRANSLATE_NOOP("models",
                        "Watch with dates: reduce and fix as the bone needs, splint, EMG at 3 to 4 "
                        "weeks, examine every 4 weeks; end of waiting about 3 months"),
      QT_TRANSLATE_NOOP("models",
                        "Watch with dates: splint, EMG at 3 to 4 weeks, examine every 4 weeks; end "
                        "of waiting about 3 months"),
      QT_TRANSLATE_NOOP(
          "models",
          "Refer to a plexus unit now; EMG, and MRI or myelography for torn roots, at 3 to 4 "
          "weeks; examine every 4 weeks; reconstruct by about 3 months what shows no sign"),
      QT_TRANSLATE_NOOP("models",
                        "Explore and reconstruct now (graft what is torn outside the spine, "
                        "transfer what is torn from it)"),
      QT_TRANSLATE_NOOP("models",
                        "Find the cause first: ask for wound, fall, operation, injection, pressure "
                        "and pain; until then treat as a closed injury with dates"),
      QT_TRANSLATE_NOOP("models",
                        "Follow up what was done: examine every 4 to 6 weeks in the order below, "
                        "EMG when the first muscle is due"),
      QT_TRANSLATE_NOOP("models",
                        "Examine now, EMG, and decide at this visit: the usual end of waiting (3 "
                        "months) has passed or no rule fits better"),
      QT_TRANSLATE_NOOP(
          "models",
          "Refer for exploration if the deficit disturbs or pain is growing; ultrasound first"),
      QT_TRANSLATE_NOOP("models", "Neurolysis only, then wait with dates"),
      QT_TRANSLATE_NOOP("models", "Resect to healthy fascicles, then repair, graft or transfer"),
  };
  return all;
}

}  // namespace endplate::ui
