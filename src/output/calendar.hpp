#pragma once
// Appointments as an iCalendar file (RFC 5545), and the withdrawal of those that no longer stand.
#include <filesystem>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/core/side.hpp"
#include "models/schedule/schedule.hpp"

namespace endplate::cli {

// Whose calendar it is. Nothing of the patient goes into a file but this label, and an entry is
// known again by it: the same label, side and kind of entry give the same UID on any day, so a
// later issue moves the entry. Without a label the problem stands at /label.
struct CalendarCase {
  std::string label;
  Side side = Side::right;
  casefile::Date today{};
};

// One object with METHOD:PUBLISH. SEQUENCE and DTSTAMP follow from the day of reckoning alone, so
// the same case and day give the same bytes, and a later day counts as newer. Entries last a day
// and do not block time.
Expected<std::string> calendar(const CalendarCase& of,
                               const std::vector<schedule::Appointment>& appointments);

// One object with METHOD:CANCEL for every entry of `issued`, a calendar of this case, that lies
// today or later and is no longer among `appointments`; its SEQUENCE is above that of anything
// issued up to today. Empty text when nothing has to be withdrawn. A text that is no calendar, or
// one of another case, is refused with `place`, the name of the file.
Expected<std::string> withdrawal(const CalendarCase& of,
                                 const std::vector<schedule::Appointment>& appointments,
                                 const std::string& issued, const std::string& place);

}  // namespace endplate::cli
