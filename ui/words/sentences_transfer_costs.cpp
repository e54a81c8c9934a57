// What a donor costs, and when a transfer is done.
#include <QtGlobal>
#include <array>

#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {

std::span<const char* const> transfer_costs_sentences() {
  static constexpr std::array all{
      QT_TRANSLATE_NOOP("models", "Adduction strength falls"),
      QT_TRANSLATE_NOOP("models", "Adduction strength falls a little"),
      QT_TRANSLATE_NOOP("models", "Adduction strength falls a little if one branch is kept"),
      QT_TRANSLATE_NOOP("models", "Chest wall numbness"),
      QT_TRANSLATE_NOOP(
          "models", "Chest wall numbness; little respiratory effect with an intact phrenic nerve"),
      QT_TRANSLATE_NOOP("models", "Chest wall sensory loss and slight loss of respiratory reserve"),
      QT_TRANSLATE_NOOP("models", "Dorsal numb patch"),
      QT_TRANSLATE_NOOP("models", "Elbow extension stays useful because two triceps heads remain"),
      QT_TRANSLATE_NOOP("models",
                        "Elbow flexion falls slightly; biceps and brachioradialis compensate"),
      QT_TRANSLATE_NOOP("models",
                        "Fourth web numb; distal stump can be put end-to-side on a working nerve"),
      QT_TRANSLATE_NOOP("models", "Third web numb"),
      QT_TRANSLATE_NOOP("models", "Grip and pinch unchanged in published series"),
      QT_TRANSLATE_NOOP(
          "models",
          "Hemidiaphragm palsy; long-term lung function stayed normal in the adult series"),
      QT_TRANSLATE_NOOP("models", "Lateral forearm numb"),
      QT_TRANSLATE_NOOP("models", "Latissimus dorsi is lost: no later muscle transfer from it"),
      QT_TRANSLATE_NOOP("models", "Little"),
      QT_TRANSLATE_NOOP("models", "Little finger abduction is lost"),
      QT_TRANSLATE_NOOP("models",
                        "Loss of lower trapezius drive; upper trapezius is kept by cutting distal "
                        "to its branches"),
      QT_TRANSLATE_NOOP("models", "Lower trapezius weakens"),
      QT_TRANSLATE_NOOP("models", "Lower trapezius weakens; upper part spared"),
      QT_TRANSLATE_NOOP("models", "Minor loss of elbow extension"),
      QT_TRANSLATE_NOOP("models", "None expected (end-to-side)"),
      QT_TRANSLATE_NOOP("models", "None; muscle absent in some people"),
      QT_TRANSLATE_NOOP("models", "Numb axilla and medial arm"),
      QT_TRANSLATE_NOOP("models", "Part of pectoralis major"),
      QT_TRANSLATE_NOOP("models", "Partial loss of pectoralis major"),
      QT_TRANSLATE_NOOP("models", "Pronation kept by pronator teres"),
      QT_TRANSLATE_NOOP("models", "Pronation kept by proximal branch and pronator quadratus"),
      QT_TRANSLATE_NOOP("models", "Pronation normal"),
      QT_TRANSLATE_NOOP("models", "Pronation stays clinically normal through pronator teres"),
      QT_TRANSLATE_NOOP("models", "Rhomboids are lost; trapezius and its nerve are kept"),
      QT_TRANSLATE_NOOP("models", "Slight loss of elbow flexion"),
      QT_TRANSLATE_NOOP("models", "Slight loss of pronation"),
      QT_TRANSLATE_NOOP("models", "Slight loss of terminal elbow extension and of anconeus drive"),
      QT_TRANSLATE_NOOP("models", "Slight wrist-flexion weakness, usually temporary"),
      QT_TRANSLATE_NOOP("models", "Small loss of thumb flexion at the metacarpophalangeal joint"),
      QT_TRANSLATE_NOOP("models", "Some loss of extension power; long and medial heads compensate"),
      QT_TRANSLATE_NOOP("models", "Sum of both donor losses"),
      QT_TRANSLATE_NOOP("models", "Supination kept by biceps"),
      QT_TRANSLATE_NOOP("models",
                        "Temporary triceps weakness and index/middle numbness on the sound side"),
      QT_TRANSLATE_NOOP("models",
                        "Usually no measurable loss of grip; transient ulnar paraesthesia"),
      QT_TRANSLATE_NOOP("models", "Wrist extension kept by extensor carpi radialis longus"),
      QT_TRANSLATE_NOOP("models", "Wrist flexion kept by flexor carpi ulnaris"),
      QT_TRANSLATE_NOOP("models", "Both radial wrist extensors M4"),
      QT_TRANSLATE_NOOP("models", "Median nerve normal"),
      QT_TRANSLATE_NOOP("models", "Pronator teres M4"),
      QT_TRANSLATE_NOOP("models", "Supinator and biceps M4"),
      QT_TRANSLATE_NOOP("models", "Ulnar nerve intact; high median lesion"),
      QT_TRANSLATE_NOOP("models", "Ulnar nerve intact"),
      QT_TRANSLATE_NOOP("models", "after failed nerve repair"),
      QT_TRANSLATE_NOOP("models", "after median repair failure or in parallel"),
      QT_TRANSLATE_NOOP("models", "after supple finger joints"),
      QT_TRANSLATE_NOOP("models", "any delay: the muscle is fresh"),
      QT_TRANSLATE_NOOP("models", "late presentation or failed nerve surgery"),
      QT_TRANSLATE_NOOP("models",
                        "late reconstruction (mean 32 months after injury in the series)"),
      QT_TRANSLATE_NOOP("models", "no nerve option left"),
      QT_TRANSLATE_NOOP("models", "when flexor pollicis longus recovery is not expected"),
      QT_TRANSLATE_NOOP("models",
                        "when wrist extension is not expected; may be done early as internal "
                        "splint (end-to-side)"),
      QT_TRANSLATE_NOOP("models", "with carpal tunnel release"),
      QT_TRANSLATE_NOOP("models", "with the wrist and finger transfers"),
      QT_TRANSLATE_NOOP("models", "brachial plexus or axillary, late or failed"),
      QT_TRANSLATE_NOOP("models", "brachial plexus or musculocutaneous, late or failed"),
      QT_TRANSLATE_NOOP("models", "brachial plexus or suprascapular, late or failed"),
      QT_TRANSLATE_NOOP("models", "combined / tetraplegia"),
      QT_TRANSLATE_NOOP("models", "combined high radial-median / tetraplegia"),
      QT_TRANSLATE_NOOP("models", "combined lower plexus"),
      QT_TRANSLATE_NOOP("models", "combined median-ulnar / tetraplegia"),
      QT_TRANSLATE_NOOP("models", "complete plexus, or late"),
      QT_TRANSLATE_NOOP("models", "tetraplegia / C7 plexus"),
      QT_TRANSLATE_NOOP("models", "ulnar or combined median-ulnar claw"),
  };
  return all;
}

}  // namespace endplate::ui
