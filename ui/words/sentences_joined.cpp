// Sentences that the models put together of several pieces.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> joined_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models", "posterior arm, proximal third"),
      QT_TRANSLATE_NOOP("models", "proximal third of the arm"),
      QT_TRANSLATE_NOOP("models", "middle third of the arm"),
      QT_TRANSLATE_NOOP("models", "distal third of the arm"),
      QT_TRANSLATE_NOOP("models", "proximal third of the forearm"),
      QT_TRANSLATE_NOOP("models", "middle third of the forearm"),
      QT_TRANSLATE_NOOP("models", "distal third of the forearm"),
      QT_TRANSLATE_NOOP("models",
                        "No girths were found below 3 years (Fryar et al. 2025): they shrink with "
                        "the length of the body (assumed)."),
      QT_TRANSLATE_NOOP("models", "%1, %2 proximal, on %3"),
      QT_TRANSLATE_NOOP("models", "%1, %2 distal, on %3"),
      QT_TRANSLATE_NOOP("models",
                        "{1}: %2 mm is outside the published range of %3, %4 to %5 mm (mean and %6 "
                        "standard deviations; {7}). It is believed as given; what follows from it "
                        "for the rest of the limb goes beyond the people who were measured."),
      QT_TRANSLATE_NOOP(
          "models",
          "{1}: %2 mm is outside the published range of %3, %4 to %5 mm (mean and %6 standard "
          "deviations; {7}). It is believed as given; what follows from it for the rest of the "
          "limb goes beyond the people who were measured, and in disproportionate short or tall "
          "stature the segments do not follow stature: measure arm, forearm and hand."),
      QT_TRANSLATE_NOOP("models", "girls at %1 years"),
      QT_TRANSLATE_NOOP("models", "boys at %1 years"),
      QT_TRANSLATE_NOOP("models", "boys and girls at %1 years"),
      QT_TRANSLATE_NOOP("models", "mean over 1 muscle, %1"),
      QT_TRANSLATE_NOOP("models", "mean over %1 skin areas, %2"),
      QT_TRANSLATE_NOOP("models", "mean over 1 skin area, %1"),
      QT_TRANSLATE_NOOP("models", "after the graft"),
      QT_TRANSLATE_NOOP("models", "after the repair"),
      QT_TRANSLATE_NOOP("models", "{1} is no nerve that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no muscle that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no landmark that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no skin area that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no movement that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no variant that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no sign that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no graft donor that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no muscle or nerve that the tables know"),
      QT_TRANSLATE_NOOP("models", "{1} is no movement or skin area that the tables know"),
      QT_TRANSLATE_NOOP("models", "%1 examined: normal"),
      QT_TRANSLATE_NOOP("models", "%1 examined: not normal"),
      QT_TRANSLATE_NOOP("models", "%1 by the superficialis of the index finger"),
      QT_TRANSLATE_NOOP("models", "%1 by the superficialis of the middle finger"),
      QT_TRANSLATE_NOOP("models", "%1 by the superficialis of the ring finger"),
      QT_TRANSLATE_NOOP("models", "%1 by the superficialis of the little finger"),
      QT_TRANSLATE_NOOP("models", "for another palsy: accessory"),
      QT_TRANSLATE_NOOP("models", "for another palsy: median"),
      QT_TRANSLATE_NOOP("models", "for another palsy: radial"),
      QT_TRANSLATE_NOOP("models", "for another palsy: ulnar"),
      QT_TRANSLATE_NOOP("models", "for another palsy: posterior interosseous"),
      QT_TRANSLATE_NOOP("models",
                        "Baltzer 2016: 13 with the transfer: intrinsic muscles recovered in 11 "
                        "(0.38 of matched controls)"),
      QT_TRANSLATE_NOOP("models",
                        "Xie 2021: randomised: good or excellent hand function in 0.67 of 45, "
                        "against 0.35 of 48 decompressed alone"),
      QT_TRANSLATE_NOOP("models",
                        "Numb lateral foot border. Numb lateral foot. Sensory loss reported by "
                        "87.2 %; pain 25.6 %; cold sensitivity 22.2 %; functional impairment 10 %. "
                        "Touch loss over calcaneus and cuboid in 84 %; no long-term pain."),
      QT_TRANSLATE_NOOP("models", "when: late"),
      QT_TRANSLATE_NOOP("models", "%1, deltoid (anterior, middle)"),
      QT_TRANSLATE_NOOP("models", "%1 mm proximal to the distal wrist crease"),
      QT_TRANSLATE_NOOP("models", "%1 mm distal to the distal wrist crease"),
      QT_TRANSLATE_NOOP("models", "at the level of the distal wrist crease"),
      QT_TRANSLATE_NOOP("models", "%1 mm proximal to the distal wrist crease, %2"),
      QT_TRANSLATE_NOOP("models", "%1 mm distal to the distal wrist crease, %2"),
      QT_TRANSLATE_NOOP("models", "at the level of the distal wrist crease, %1"),
  };
  return all;
}

}  // namespace endplate::ui
