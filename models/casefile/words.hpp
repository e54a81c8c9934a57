#pragma once
// The words that a case file may use where it has a choice of a few.
#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "models/casefile/case.hpp"

namespace endplate::casefile {

template <class T>
struct Word {
  std::string_view text;
  T value;
};

inline constexpr std::array<Word<Side>, 2> kSides{{{"right", Side::right}, {"left", Side::left}}};
inline constexpr std::array<Word<Sex>, 2> kSexes{{{"female", Sex::female}, {"male", Sex::male}}};
inline constexpr std::array<Word<Toward>, 2> kDirections{
    {{"proximal", Toward::proximal}, {"distal", Toward::distal}}};
inline constexpr std::array<Word<Aside>, 4> kAsides{{{"anterior", Aside::anterior},
                                                     {"posterior", Aside::posterior},
                                                     {"medial", Aside::medial},
                                                     {"lateral", Aside::lateral}}};
inline constexpr std::array<Word<CutKind>, 4> kCutKinds{{{"line", CutKind::line},
                                                         {"portal", CutKind::portal},
                                                         {"pin", CutKind::pin},
                                                         {"injection", CutKind::injection}}};
inline constexpr std::array<Word<RootLevel>, 2> kRootLevels{
    {{"preganglionic", RootLevel::preganglionic}, {"postganglionic", RootLevel::postganglionic}}};

inline constexpr std::array<Word<Mechanism>, 12> kMechanisms{{
    {"open sharp", Mechanism::open_sharp},
    {"open crush", Mechanism::open_crush},
    {"gunshot", Mechanism::gunshot},
    {"closed traction", Mechanism::closed_traction},
    {"fracture or dislocation", Mechanism::fracture_or_dislocation},
    {"iatrogenic", Mechanism::iatrogenic},
    {"compression", Mechanism::compression},
    {"injection", Mechanism::injection},
    {"inflammatory", Mechanism::inflammatory},
    {"birth", Mechanism::birth},
    {"spinal cord", Mechanism::spinal_cord},
    {"unknown", Mechanism::unknown},
}};

inline constexpr std::array<Word<Grade>, 9> kGrades{{
    {"neurapraxia", Grade::neurapraxia},
    {"axonotmesis", Grade::axonotmesis},
    {"neurotmesis", Grade::neurotmesis},
    {"Sunderland 1", Grade::sunderland_1},
    {"Sunderland 2", Grade::sunderland_2},
    {"Sunderland 3", Grade::sunderland_3},
    {"Sunderland 4", Grade::sunderland_4},
    {"Sunderland 5", Grade::sunderland_5},
    {"unknown", Grade::unknown},
}};

inline constexpr std::array<Word<SensoryState>, 4> kSensoryStates{{
    {"absent", SensoryState::absent},
    {"reduced", SensoryState::reduced},
    {"normal", SensoryState::normal},
    {"hyperaesthetic", SensoryState::hyperaesthetic},
}};

inline constexpr std::array<Word<OperationState>, 2> kOperationStates{
    {{"planned", OperationState::planned}, {"done", OperationState::done}}};
inline constexpr std::array<Word<Layer>, 2> kLayers{
    {{"subcutaneous", Layer::subcutaneous}, {"submuscular", Layer::submuscular}}};

// Roots, trunks and cords by the words of the key that places an injury on them; the value is the
// standard name.
inline constexpr std::array<Word<std::string_view>, 8> kRoots{{{"C3", "C3 root"},
                                                               {"C4", "C4 root"},
                                                               {"C5", "C5 root"},
                                                               {"C6", "C6 root"},
                                                               {"C7", "C7 root"},
                                                               {"C8", "C8 root"},
                                                               {"T1", "T1 root"},
                                                               {"T2", "T2 root"}}};
inline constexpr std::array<Word<std::string_view>, 5> kTrunks{{{"upper", "superior trunk"},
                                                                {"superior", "superior trunk"},
                                                                {"middle", "middle trunk"},
                                                                {"lower", "inferior trunk"},
                                                                {"inferior", "inferior trunk"}}};
inline constexpr std::array<Word<std::string_view>, 3> kCords{
    {{"lateral", "lateral cord"}, {"posterior", "posterior cord"}, {"medial", "medial cord"}}};

// Words that stand for themselves.
inline constexpr std::array<std::string_view, 8> kSensoryGrades{"S0",  "S1", "S1+", "S2",
                                                                "S2+", "S3", "S3+", "S4"};
inline constexpr std::array<std::string_view, 4> kMotorUnits{"none", "few", "reduced", "normal"};
inline constexpr std::array<std::string_view, 3> kPotentials{"absent", "reduced", "normal"};
inline constexpr std::array<std::string_view, 2> kStimulation{"contracts", "silent"};
inline constexpr std::array<std::string_view, 2> kActionPotential{"absent", "present"};
inline constexpr std::array<std::string_view, 15> kProcedures{"exploration",
                                                              "neurolysis",
                                                              "decompression",
                                                              "transposition",
                                                              "repair",
                                                              "graft",
                                                              "conduit",
                                                              "nerve transfer",
                                                              "end-to-side nerve transfer",
                                                              "reverse end-to-side nerve transfer",
                                                              "tendon transfer",
                                                              "free muscle transfer",
                                                              "joint fusion",
                                                              "fracture fixation",
                                                              "revascularisation"};
// As the rules of decision name them.
inline constexpr std::array<std::string_view, 6> kRedFlags{
    "expanding haematoma",
    "growing deficit",
    "lost pulse",
    "new deficit after an operation or block",
    "pain out of proportion",
    "tense compartment"};
inline constexpr std::array<std::string_view, 18> kSigns{"Horner",
                                                         "Froment",
                                                         "Jeanne",
                                                         "Wartenberg",
                                                         "Duchenne",
                                                         "claw hand",
                                                         "pinch sign",
                                                         "wrist drop",
                                                         "scapular winging",
                                                         "swallow-tail",
                                                         "hornblower",
                                                         "Phalen",
                                                         "Tinel at the neck",
                                                         "diaphragm palsy",
                                                         "pseudomeningocele",
                                                         "biceps reflex lost",
                                                         "triceps reflex lost",
                                                         "spasticity"};

// The word of a value, for whoever shows it.
template <class T, std::size_t N>
constexpr std::string_view word_of(const std::array<Word<T>, N>& words, T value) {
  for (const auto& word : words) {
    if (word.value == value) return word.text;
  }
  return {};
}

constexpr std::string_view to_string(Mechanism value) {
  return word_of(kMechanisms, value);
}
constexpr std::string_view to_string(Grade value) {
  return word_of(kGrades, value);
}
constexpr std::string_view to_string(Sex value) {
  return word_of(kSexes, value);
}
constexpr std::string_view to_string(Toward value) {
  return word_of(kDirections, value);
}
constexpr std::string_view to_string(Aside value) {
  return word_of(kAsides, value);
}
constexpr std::string_view to_string(CutKind value) {
  return word_of(kCutKinds, value);
}
constexpr std::string_view to_string(RootLevel value) {
  return word_of(kRootLevels, value);
}
constexpr std::string_view to_string(SensoryState value) {
  return word_of(kSensoryStates, value);
}
constexpr std::string_view to_string(OperationState value) {
  return word_of(kOperationStates, value);
}
constexpr std::string_view to_string(Layer value) {
  return word_of(kLayers, value);
}

// "4-" is 3.67 and "4+" 4.33: a third of a grade either way, the usual way of putting the half
// steps of the MRC scale in numbers. Accepts 0 to 5, + and - on 1 to 4, 5-, with or without M.
std::optional<MrcGrade> mrc_grade(std::string_view text);

// A day of the calendar, "2026-06-01", years 1900 to 2199.
std::optional<Date> date_from(std::string_view text);
std::string to_string(Date date);

}  // namespace endplate::casefile
