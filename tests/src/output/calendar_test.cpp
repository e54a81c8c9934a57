// Calendars against the rules of RFC 5545, line by line, and against an independent reader
// (python3-icalendar).
#include "output/calendar.hpp"

#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace endplate;
using namespace endplate::cli;

namespace {

casefile::Date on(int year, unsigned month, unsigned day) {
  return casefile::Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}

const CalendarCase kCase{
    "Wrist drop; made up, with a label \\ that needs escaping, and accents: \xC3\xA9", Side::right,
    on(2026, 3, 9)};

std::vector<schedule::Appointment> appointments() {
  return {{"step-28", on(2026, 3, 30), "first EMG and conduction", ""},
          {"decision", on(2026, 6, 1), "Watch; with dates, and commas", "Unless: a gap\non scan."}};
}

// Content lines with the folding undone; fails where a line breaks a rule.
std::vector<std::string> content_lines(const std::string& text) {
  std::vector<std::string> lines;
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = text.find("\r\n", begin);
    REQUIRE(end != std::string::npos);  // 3.1: lines end with CRLF
    const std::string line = text.substr(begin, end - begin);
    CHECK(line.size() <= 75);  // 3.1: octets, without the line break
    CHECK(line.find('\n') == std::string::npos);
    if (line.starts_with(' ')) {
      REQUIRE_FALSE(lines.empty());
      lines.back() += line.substr(1);
    } else {
      lines.push_back(line);
    }
    begin = end + 2;
  }
  return lines;
}

std::vector<std::string> values(const std::string& text, const std::string& name) {
  std::vector<std::string> found;
  for (const std::string& line : content_lines(text)) {
    if (line.starts_with(name + ":") || line.starts_with(name + ";")) {
      found.push_back(line.substr(line.find(':') + 1));
    }
  }
  return found;
}

}  // namespace

TEST_CASE("a calendar keeps the rules of RFC 5545", "[calendar]") {
  const auto text = calendar(kCase, appointments());
  REQUIRE(text);
  const auto lines = content_lines(*text);
  CHECK(lines.front() == "BEGIN:VCALENDAR");
  CHECK(lines.back() == "END:VCALENDAR");
  CHECK(values(*text, "VERSION") == std::vector<std::string>{"2.0"});
  CHECK(values(*text, "PRODID").size() == 1);
  CHECK(values(*text, "METHOD") == std::vector<std::string>{"PUBLISH"});
  CHECK(values(*text, "UID").size() == 2);
  CHECK(values(*text, "DTSTAMP") ==
        std::vector<std::string>{"20260309T000000Z", "20260309T000000Z"});
  CHECK(values(*text, "DTSTART") == std::vector<std::string>{"20260330", "20260601"});
  CHECK(text->find("DTSTART;VALUE=DATE:20260330") != std::string::npos);
  // 3.3.11: commas, semicolons and line breaks of a text are escaped.
  CHECK(values(*text, "SUMMARY").at(1) == "Watch\\; with dates\\, and commas");
  CHECK(values(*text, "DESCRIPTION").at(1).starts_with("Unless: a gap\\non scan."));
  for (const std::string& description : values(*text, "DESCRIPTION")) {
    CHECK(description.find("not to replace surgical judgement") != std::string::npos);
  }
}

TEST_CASE("an independent reader finds the same entries", "[calendar]") {
  const auto text = calendar(kCase, appointments());
  REQUIRE(text);
  const auto path = std::filesystem::temp_directory_path() /
                    ("endplate_calendar_" + std::to_string(getpid()) + ".ics");
  std::ofstream(path, std::ios::binary) << *text;
  const auto script = path.string() + ".py";
  std::ofstream(script) << "import icalendar,sys\n"
                           "c=icalendar.Calendar.from_ical(open(sys.argv[1],'rb').read())\n"
                           "for e in c.walk('VEVENT'):\n"
                           " print(e.decoded('dtstart'),e.decoded('sequence'),str(e['summary']))\n"
                           " assert sys.argv[2] in str(e['description']), e['description']\n"
                           " assert not e.errors, e.errors\n";
  std::string out;
  std::FILE* pipe = popen((std::string(ENDPLATE_PYTHON) + " '" + script + "' '" + path.string() +
                           "' '" + kCase.label + "' 2>&1")
                              .c_str(),
                          "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 256> part{};
  while (std::fgets(part.data(), part.size(), pipe) != nullptr) out += part.data();
  CHECK(pclose(pipe) == 0);
  std::filesystem::remove(path);
  std::filesystem::remove(script);
  CHECK(out ==
        "2026-03-30 19128 first EMG and conduction\n"
        "2026-06-01 19128 Watch; with dates, and commas\n");
}

TEST_CASE("a later issue keeps the UIDs and counts as newer", "[calendar]") {
  const auto first = calendar(kCase, appointments());
  auto later_case = kCase;
  later_case.today = on(2026, 4, 9);
  auto moved = appointments();
  moved[1].date = on(2026, 7, 1);
  const auto second = calendar(later_case, moved);
  REQUIRE((first && second));
  CHECK(values(*first, "UID") == values(*second, "UID"));
  CHECK(std::stoi(values(*second, "SEQUENCE")[0]) > std::stoi(values(*first, "SEQUENCE")[0]));
  CHECK(*calendar(kCase, appointments()) == *first);  // the same bytes
}

TEST_CASE("another label or side makes other UIDs", "[calendar]") {
  auto other = kCase;
  other.side = Side::left;
  CHECK(values(*calendar(kCase, appointments()), "UID") !=
        values(*calendar(other, appointments()), "UID"));
  other = kCase;
  other.label = "another";
  CHECK(values(*calendar(kCase, appointments()), "UID") !=
        values(*calendar(other, appointments()), "UID"));
}

TEST_CASE("what no longer stands is withdrawn with a higher sequence", "[calendar]") {
  const auto issued = calendar(kCase, appointments());
  REQUIRE(issued);
  auto now = kCase;
  now.today = on(2026, 4, 20);
  // The EMG is over, the decision is gone; a new entry came.
  const auto text = withdrawal(now, {{"late", on(2026, 8, 1), "late", ""}}, *issued, "old.ics");
  REQUIRE(text);
  CHECK(values(*text, "METHOD") == std::vector<std::string>{"CANCEL"});
  REQUIRE(values(*text, "UID").size() == 1);
  CHECK(values(*text, "UID")[0] == values(*issued, "UID")[1]);
  CHECK(values(*text, "STATUS") == std::vector<std::string>{"CANCELLED"});
  CHECK(std::stoi(values(*text, "SEQUENCE")[0]) > std::stoi(values(*issued, "SEQUENCE")[1]));
  // Withdrawn on the very day of issue it still counts as newer.
  const auto same_day = withdrawal(kCase, {}, *issued, "old.ics");
  REQUIRE(same_day);
  CHECK(std::stoi(values(*same_day, "SEQUENCE")[0]) > std::stoi(values(*issued, "SEQUENCE")[0]));
  CHECK(withdrawal(kCase, appointments(), *issued, "old.ics")->empty());
}

TEST_CASE("no calendar without a label, and none of another case is withdrawn", "[calendar]") {
  auto nameless = kCase;
  nameless.label.clear();
  const auto refused = calendar(nameless, appointments());
  REQUIRE_FALSE(refused);
  CHECK(refused.error().problems.front().place == "/label");
  auto other = kCase;
  other.label = "another";
  const auto issued = calendar(other, appointments());
  const auto foreign = withdrawal(kCase, {}, *issued, "old.ics");
  REQUIRE_FALSE(foreign);
  CHECK(foreign.error().problems.front().place == "old.ics");
  CHECK_FALSE(withdrawal(kCase, {}, "no calendar at all", "old.ics"));
  CHECK_FALSE(calendar(kCase, {}));
}
