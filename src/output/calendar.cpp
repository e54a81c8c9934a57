#include "output/calendar.hpp"

#include <fmt/format.h>
#include <libical/ical.h>

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <memory>
#include <set>

#include "output/dates.hpp"
#include "output/envelope.hpp"

namespace endplate::cli {
namespace {

struct FreeComponent {
  void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

// Every UID of a case begins with the first, so that a file of another case is told apart.
std::string case_id(const CalendarCase& of) {
  const boost::uuids::name_generator_sha1 name(boost::uuids::ns::oid());
  return to_string(name(fmt::format("endplate calendar|{}|{}", of.label, to_string(of.side))));
}

std::string uid(const CalendarCase& of, const std::string& key) {
  return case_id(of) + "-" + key;
}

// Even for what is issued, odd for what is withdrawn, and growing from day to day.
int sequence(casefile::Date today, bool withdrawn) {
  const auto since = std::chrono::sys_days(today) -
                     std::chrono::sys_days(casefile::Date{
                         std::chrono::year(2000), std::chrono::month(1), std::chrono::day(1)});
  return 2 * static_cast<int>(since.count()) + (withdrawn ? 1 : 0);
}

icaltimetype on_day(casefile::Date date) {
  icaltimetype time = icaltime_null_date();
  time.year = static_cast<int>(date.year());
  time.month = static_cast<int>(static_cast<unsigned>(date.month()));
  time.day = static_cast<int>(static_cast<unsigned>(date.day()));
  time.is_date = 1;
  return time;
}

icaltimetype stamp(casefile::Date date) {
  icaltimetype time = on_day(date);
  time.is_date = 0;
  time.hour = time.minute = time.second = 0;
  time.zone = icaltimezone_get_utc_timezone();
  return time;
}

std::string text_of(icalcomponent* component) {
  char* text = icalcomponent_as_ical_string_r(component);
  std::string result = text == nullptr ? "" : text;
  icalmemory_free_buffer(text);
  return result;
}

Component new_calendar(icalproperty_method method) {
  Component root(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
  icalcomponent_add_property(root.get(), icalproperty_new_version("2.0"));
  icalcomponent_add_property(
      root.get(), icalproperty_new_prodid(
                      fmt::format("-//Endplate//Endplate {}//EN", ENDPLATE_VERSION).c_str()));
  icalcomponent_add_property(root.get(), icalproperty_new_calscale("GREGORIAN"));
  icalcomponent_add_property(root.get(), icalproperty_new_method(method));
  return root;
}

icalcomponent* new_event(icalcomponent* root, const CalendarCase& of, const std::string& id,
                         icaltimetype day, const std::string& summary, bool withdrawn) {
  icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
  const auto add = [&](icalproperty* property) { icalcomponent_add_property(event, property); };
  add(icalproperty_new_uid(id.c_str()));
  add(icalproperty_new_dtstamp(stamp(of.today)));
  add(icalproperty_new_sequence(sequence(of.today, withdrawn)));
  add(icalproperty_new_dtstart(day));
  add(icalproperty_new_summary(summary.c_str()));
  add(icalproperty_new_status(withdrawn ? ICAL_STATUS_CANCELLED : ICAL_STATUS_TENTATIVE));
  add(icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  icalcomponent_add_component(root, event);
  return event;
}

std::optional<Error> without_label(const CalendarCase& of) {
  if (!of.label.empty()) return std::nullopt;
  return Error::input({"/label",
                       "a calendar needs the case's label, by which its entries are known "
                       "again when it is issued anew",
                       "Give the case a \"label\" without the patient's identity."});
}

casefile::Date date_of(icaltimetype time) {
  return casefile::Date{std::chrono::year(time.year),
                        std::chrono::month(static_cast<unsigned>(time.month)),
                        std::chrono::day(static_cast<unsigned>(time.day))};
}

std::string text_or_empty(const char* text) {
  return text == nullptr ? std::string() : std::string(text);
}

}  // namespace

Expected<std::string> calendar(const CalendarCase& of,
                               const std::vector<schedule::Appointment>& appointments) {
  if (const auto error = without_label(of)) return std::unexpected(*error);
  if (appointments.empty()) {
    return std::unexpected(
        Error::outside_model({"/injuries/0/date", "no entry of the calendar can be dated",
                              "Give the date of the injury."}));
  }
  const Component root = new_calendar(ICAL_METHOD_PUBLISH);
  for (const schedule::Appointment& appointment : appointments) {
    icalcomponent* event = new_event(root.get(), of, uid(of, appointment.key),
                                     on_day(appointment.date), appointment.what, false);
    const std::string more = appointment.why.empty() ? "" : appointment.why + "\n\n";
    const std::string text = fmt::format("{}Case: {}. {} limb. Reckoned on {}.\n\n{}", more,
                                         of.label, of.side == Side::right ? "RIGHT" : "LEFT",
                                         iso_date(of.today), standing_caution());
    icalcomponent_add_property(event, icalproperty_new_description(text.c_str()));
  }
  return text_of(root.get());
}

Expected<std::string> withdrawal(const CalendarCase& of,
                                 const std::vector<schedule::Appointment>& appointments,
                                 const std::string& issued, const std::string& place) {
  if (const auto error = without_label(of)) return std::unexpected(*error);
  icalerror_set_errors_are_fatal(0);
  const Component old(icalparser_parse_string(issued.c_str()));
  if (old == nullptr || icalcomponent_isa(old.get()) != ICAL_VCALENDAR_COMPONENT) {
    return std::unexpected(Error::input(
        {place, "this is no calendar", "Name a file that --calendar wrote for this case."}));
  }
  std::set<std::string> standing;
  for (const schedule::Appointment& appointment : appointments) {
    standing.insert(uid(of, appointment.key));
  }
  const Component root = new_calendar(ICAL_METHOD_CANCEL);
  bool any = false;
  for (icalcomponent* event = icalcomponent_get_first_component(old.get(), ICAL_VEVENT_COMPONENT);
       event != nullptr;
       event = icalcomponent_get_next_component(old.get(), ICAL_VEVENT_COMPONENT)) {
    const std::string id = text_or_empty(icalcomponent_get_uid(event));
    if (!id.starts_with(case_id(of))) {
      return std::unexpected(Error::input(
          {place, "an entry of this calendar belongs to another case, or to no case of Endplate",
           "Name the file that --calendar wrote for a case with this label and side."}));
    }
    const icaltimetype day = icalcomponent_get_dtstart(event);
    if (standing.contains(id) || date_of(day) < of.today) continue;
    new_event(root.get(), of, id, day, text_or_empty(icalcomponent_get_summary(event)), true);
    any = true;
  }
  return any ? text_of(root.get()) : std::string();
}

}  // namespace endplate::cli
