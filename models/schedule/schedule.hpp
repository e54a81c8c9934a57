#pragma once
// What to look for on which day: the order of return as a sheet to tick, needle studies and what
// each would show, and the entries of a calendar.
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::schedule {

// From `early` (5 %) by `middle` to `late` (95 %); days from the injury. Calendar dates follow
// where the injury's date is known.
struct Window {
  double early_days = 0.0;
  double middle_days = 0.0;
  double late_days = 0.0;
};

// One line of the sheet, in order of return.
struct SheetRow {
  std::string target;
  std::string sign;  // "first movement (M1)" of a muscle, "useful feeling (S3)" of skin
  Window window;
  bool partial = false;  // kept some of its axons, so a movement says nothing of growth
};

struct EmgReading {
  std::string id;  // of emg_rules.csv
  std::string finding;
  std::string means;
  std::string source;
  std::string provenance;
};

struct EmgStudy {
  std::string key;     // "emg-early", "emg-first-units"
  std::string muscle;  // empty: the muscles below the lesion
  Window window;
  std::vector<EmgReading> readings;
};

// An entry for a calendar. The key names what it is for, not when, so that a later issue moves it.
struct Appointment {
  std::string key;
  casefile::Date date;
  std::string what;
  std::string why;  // how to read it, or what else would change it
};

struct Schedule {
  std::vector<SheetRow> sheet;            // empty when there is no forecast or nothing grows
  std::string no_sheet;                   // why
  std::vector<EmgStudy> emg;              // those that are not over yet
  std::vector<Appointment> appointments;  // by date, none before today
};

// The readings are rows of emg_rules.csv. No calendar entries without the date of the injury, but
// for the decision when its date is known.
Schedule schedule_of(const recovery::RecoveryAnswer& answer, const evidence::DataPackage& package,
                     casefile::Date today);

}  // namespace endplate::schedule
