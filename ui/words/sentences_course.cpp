// Course, forecast, dates, and what a case file lacks.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> course_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models", "Unless: %1."),
      QT_TRANSLATE_NOOP("models", "EMG and nerve conduction"),
      QT_TRANSLATE_NOOP("models", "EMG of %1 for first units"),
      QT_TRANSLATE_NOOP("models", "Last expected day for %1: %2"),
      QT_TRANSLATE_NOOP(
          "models",
          "If it has not come, growth is late: decide again, do not wait for the next in order."),
      QT_TRANSLATE_NOOP("models", "first movement (M1)"),
      QT_TRANSLATE_NOOP("models", "useful feeling (S3)"),
      QT_TRANSLATE_NOOP("models",
                        "nothing grows from this lesion as it stands, so no order can be dated"),
      QT_TRANSLATE_NOOP("models", "fibrillation or sharp waves in a muscle that does not move"),
      QT_TRANSLATE_NOOP("models", "axons are lost: what comes back grows in from above, in order"),
      QT_TRANSLATE_NOOP("models",
                        "no fibrillation, no units, and the muscle still answers to stimulation "
                        "below the lesion"),
      QT_TRANSLATE_NOOP("models", "conduction block: it returns as a whole, not in order"),
      QT_TRANSLATE_NOOP("models", "units under will beside fibrillation"),
      QT_TRANSLATE_NOOP("models", "small polyphasic units in the first muscle"),
      QT_TRANSLATE_NOOP(
          "models",
          "axons have reached it: watch on, movement is due next; units are not movement"),
      QT_TRANSLATE_NOOP("models", "no units by the late end of the window"),
      QT_TRANSLATE_NOOP(
          "models", "growth is late or has failed: decide now, do not wait for the next muscle"),
      QT_TRANSLATE_NOOP("models", "ahead"),
      QT_TRANSLATE_NOOP("models", "on course"),
      QT_TRANSLATE_NOOP("models", "late"),
      QT_TRANSLATE_NOOP("models", "no advance"),
      QT_TRANSLATE_NOOP("models", "cannot tell yet"),
      QT_TRANSLATE_NOOP("models", "not informative"),
      QT_TRANSLATE_NOOP("models",
                        "growth is still the likelier, but what was seen has raised the odds that "
                        "nothing grows %1 times"),
      QT_TRANSLATE_NOOP(
          "models",
          "no skin fibres run in the nerve beyond the lesion, so there is nothing to tap, and no "
          "muscle or EMG below it was examined: examine the muscles in their order"),
      QT_TRANSLATE_NOOP("models",
                        "nothing below the lesion was examined on a known date: tap the nerve, "
                        "grade the muscles"),
      QT_TRANSLATE_NOOP(
          "models",
          "the findings fit no course of growth: examine again before anything is built on them"),
      QT_TRANSLATE_NOOP("models",
                        "too few points: %1 visit(s) with a Tinel point, %2 are needed, %3 days "
                        "apart, and no muscle was examined that is due by now"),
      QT_TRANSLATE_NOOP("models",
                        "no muscle was examined that is due by now, and there is nothing to tap"),
      QT_TRANSLATE_NOOP("models",
                        "the last finding that tells anything is %1 days from the injury or the "
                        "repair; before %2 nothing is called"),
      QT_TRANSLATE_NOOP("models", "no state is more likely than not"),
      QT_TRANSLATE_NOOP("models",
                        "the date of the injury is not given, so no finding has a place in time"),
      QT_TRANSLATE_NOOP(
          "models",
          "hardly any patient with these findings grows: the dates are those of the few that do"),
      QT_TRANSLATE_NOOP("models",
                        "the last examination, of %1, is more than %2 weeks old: examine again "
                        "before acting on this"),
      QT_TRANSLATE_NOOP(
          "models",
          "the Tinel points fit no course of growth, nor a nerve that stands still: look again at "
          "dates, places and the place of the lesion; they were not used"),
      QT_TRANSLATE_NOOP("models",
                        "the Tinel points of the lesions do not go together; they were not used"),
      QT_TRANSLATE_NOOP("models",
                        "the planned operation is left out: the nerve is judged as it is"),
      QT_TRANSLATE_NOOP("models",
                        "the Tinel point of %1 lies %2 mm proximal to that of %3: a front does not "
                        "go back, so one of the two is wrong; the series was not used"),
      QT_TRANSLATE_NOOP("models",
                        "%1: found before the nerve was repaired, from when growth starts anew; "
                        "the point was not used"),
      QT_TRANSLATE_NOOP(
          "models", "%1: the farthest of several Tinel points of one day is taken as the front"),
      QT_TRANSLATE_NOOP("models", "%1: the Tinel point has no date and was not used"),
      QT_TRANSLATE_NOOP("models",
                        "%1: no skin fibres that the lesion cut run in the %2, so tapping it says "
                        "nothing of this lesion; the point was not used"),
      QT_TRANSLATE_NOOP(
          "models", "%1: its examination has no date, so it was not used to weigh the forecast"),
      QT_TRANSLATE_NOOP("models",
                        "no skin fibres run in the nerve beyond the lesion: there is nothing that "
                        "could tingle, so its silence is no bad sign"),
      QT_TRANSLATE_NOOP(
          "models",
          "no axons grow from this lesion as it stands: a fixed Tinel sign over it is expected"),
      QT_TRANSLATE_NOOP("models", "no axon has left the lesion within the next year"),
      QT_TRANSLATE_NOOP("models",
                        "the date of the injury is not known: days count from the injury, and time "
                        "already gone is taken as none"),
      QT_TRANSLATE_NOOP("models",
                        "the Tinel points of the case are not weighed here, though they can change "
                        "the decision: followup weighs them"),
      QT_TRANSLATE_NOOP("models", "the injury lies after today"),
      QT_TRANSLATE_NOOP("models", "Correct the date, or give --today."),
      QT_TRANSLATE_NOOP("models", "the operation lies before the injury"),
      QT_TRANSLATE_NOOP("models", "Correct one of the two dates."),
      QT_TRANSLATE_NOOP("models", "an operation that is done lies after today"),
      QT_TRANSLATE_NOOP("models", "Correct the date, or write \"state\": \"planned\"."),
      QT_TRANSLATE_NOOP(
          "models", "the place of the lesion is not given: fill in /injuries/%1/at for a forecast"),
      QT_TRANSLATE_NOOP("models", "place not given"),
      QT_TRANSLATE_NOOP(
          "models",
          "series with grafts over about 50 mm do worse (graft_len_threshold_radial_zhu23, "
          "graft_len_poor_kallio93, graftlen_ulnar_roganovic04); the effect of length that the "
          "counts show is small and uncertain, so the chance of a long graft may be too high"),
      QT_TRANSLATE_NOOP("models",
                        "the deficit is partial: what is dated are the interrupted axons alone, "
                        "and no chance of use is given for a muscle that kept some"),
      QT_TRANSLATE_NOOP("models", "the mechanism '%1' is not run as adult trauma"),
      QT_TRANSLATE_NOOP("models",
                        "injury %1: whether the deficit is complete is not given; the rules for a "
                        "complete one were used"),
      QT_TRANSLATE_NOOP("models",
                        "no muscle and no skin area of the tables hangs beyond the lesion"),
      QT_TRANSLATE_NOOP("models",
                        "the findings fit hardly any patient with this lesion: look again at "
                        "place, grade and findings; the forecast was made without them"),
      QT_TRANSLATE_NOOP("models", "the nerve is repaired"),
      QT_TRANSLATE_NOOP("models", "a conduction block is not operated on"),
      QT_TRANSLATE_NOOP("models",
                        "no lesion that could be repaired has a whole muscle or area below it"),
      QT_TRANSLATE_NOOP("models", "mean over the muscles that a repair can reach"),
      QT_TRANSLATE_NOOP("models", "mean over the skin areas that a repair can reach"),
      QT_TRANSLATE_NOOP("models", "the case holds no injury, so nothing is denervated"),
      QT_TRANSLATE_NOOP("models",
                        "Add \"injuries\" with at least \"nerve\", \"at\" and \"mechanism\"."),
      QT_TRANSLATE_NOOP("models", "with the planned %1"),
      QT_TRANSLATE_NOOP("models", "after the %1"),
      QT_TRANSLATE_NOOP("models", "without repair"),
      QT_TRANSLATE_NOOP("models", "graft"),
      QT_TRANSLATE_NOOP("models", "direct repair"),
      QT_TRANSLATE_NOOP("models", "repair"),
      QT_TRANSLATE_NOOP("models", "M3 or better"),
      QT_TRANSLATE_NOOP("models", "open sharp"),
      QT_TRANSLATE_NOOP("models", "open crush"),
      QT_TRANSLATE_NOOP("models", "gunshot"),
      QT_TRANSLATE_NOOP("models", "closed traction"),
      QT_TRANSLATE_NOOP("models", "fracture or dislocation"),
      QT_TRANSLATE_NOOP("models", "iatrogenic"),
      QT_TRANSLATE_NOOP("models", "compression"),
      QT_TRANSLATE_NOOP("models", "injection"),
      QT_TRANSLATE_NOOP("models", "inflammatory"),
      QT_TRANSLATE_NOOP("models", "birth"),
      QT_TRANSLATE_NOOP("models", "spinal cord"),
      QT_TRANSLATE_NOOP("models", "unknown"),
      QT_TRANSLATE_NOOP("models", "neurapraxia"),
      QT_TRANSLATE_NOOP("models", "axonotmesis"),
      QT_TRANSLATE_NOOP("models", "neurotmesis"),
      QT_TRANSLATE_NOOP("models", "read"),
      QT_TRANSLATE_NOOP("models", "recalled"),
      QT_TRANSLATE_NOOP("models", "common practice"),
      QT_TRANSLATE_NOOP("models", "assumed"),
      QT_TRANSLATE_NOOP("models", "without the place nothing distal to it can be told"),
      QT_TRANSLATE_NOOP("models", "it decides the first step more than any forecast does"),
      QT_TRANSLATE_NOOP("models", "without it no time can be counted from the injury"),
      QT_TRANSLATE_NOOP("models",
                        "whether the nerve was seen, whole or cut, weighs in what to do next"),
      QT_TRANSLATE_NOOP("models", "the drawing shows a right limb until it is given"),
      QT_TRANSLATE_NOOP("models", "age changes the rate of growth and the result"),
      QT_TRANSLATE_NOOP("models",
                        "lengths follow it; a measured length of the limb is better still"),
      QT_TRANSLATE_NOOP("models", "limb lengths differ at the same stature"),
      QT_TRANSLATE_NOOP("models",
                        "a muscle that is not listed counts as not examined, never as normal"),
      QT_TRANSLATE_NOOP("models", "findings mean another thing early and late"),
      QT_TRANSLATE_NOOP("models", "without it the observation has no place in time"),
      QT_TRANSLATE_NOOP("models", "regrowth is counted from it"),
      QT_TRANSLATE_NOOP("models", "sunderland_1"),
      QT_TRANSLATE_NOOP("models", "sunderland_2"),
      QT_TRANSLATE_NOOP("models", "sunderland_3"),
      QT_TRANSLATE_NOOP("models", "sunderland_4"),
      QT_TRANSLATE_NOOP("models", "sunderland_5"),
  };
  return all;
}

}  // namespace endplate::ui
