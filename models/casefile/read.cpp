#include "models/casefile/read.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "models/casefile/json_text.hpp"
#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

using anatomy::TermKind;

void read_version(ObjectReader& file) {
  constexpr int kVersion = 1;
  constexpr std::string_view kMend = "Write \"endplate_case\": 1.";
  file.require("endplate_case", kMend);
  const nlohmann::json* version = file.take("endplate_case");
  if (version == nullptr) return;
  if (!version->is_number() || version->get<double>() != kVersion) {
    file.add("endplate_case",
             fmt::format("{} is no version that this program reads", in_quotes(version->dump())),
             std::string(kMend));
  }
}

// Names of a list, each once; a word for several parts adds them all.
void read_names(ObjectReader& file, std::string_view key, std::vector<std::string>& names,
                const std::function<std::vector<std::string>(const std::string&,
                                                             const std::string&)>& resolve) {
  file.each_text(key, [&](const std::string& typed, const std::string& place) {
    for (std::string& name : resolve(typed, place)) {
      if (std::ranges::find(names, name) == names.end()) {
        names.push_back(std::move(name));
      } else {
        file.reading().add(place, fmt::format("{} is listed already", in_quotes(typed)),
                           "Delete one of the two.");
        break;
      }
    }
  });
}

// A name of the first kind that knows it; where none does, the nearest of all.
std::vector<std::string> resolve_any(Reading& reading, std::initializer_list<TermKind> kinds,
                                     std::string_view what, const std::string& typed,
                                     const std::string& place) {
  std::vector<std::string> nearest;
  for (const bool slips : {false, true}) {
    for (const TermKind kind : kinds) {
      const auto found = reading.terms.resolve(kind, typed);
      if (found && found->slip == slips) return reading.resolve(kind, typed, place);
      if (!found && !slips) {
        const auto& offered = found.error().nearest;
        nearest.insert(nearest.end(), offered.begin(),
                       offered.begin() + std::min<std::ptrdiff_t>(2, std::ssize(offered)));
      }
    }
  }
  reading.add(place, fmt::format("{} is no {} that the tables know", in_quotes(typed), what),
              fmt::format("Nearest names: {}.", fmt::join(nearest, "; ")));
  return {};
}

void read_red_flags(ObjectReader& file, std::vector<std::string>& flags) {
  read_names(file, "red_flags", flags, [&](const std::string& typed, const std::string& place) {
    std::vector<std::string> names;
    if (std::ranges::find(kRedFlags, typed) != kRedFlags.end()) {
      names.push_back(typed);
    } else {
      file.reading().add(place, fmt::format("{} is no red flag of the list", in_quotes(typed)),
                         fmt::format("Write one of: {}.", fmt::join(kRedFlags, ", ")));
    }
    return names;
  });
}

Case read_document(ObjectReader& file) {
  Reading& reading = file.reading();
  Case read;
  read_version(file);
  read.label = file.text("label").value_or("");
  if (auto limb = file.object("limb")) read.limb = read_limb(*limb);
  read_names(file, "variants", read.variants,
             [&](const std::string& typed, const std::string& place) {
               return reading.resolve(TermKind::variant, typed, place);
             });
  file.each_object("injuries", [&](ObjectReader& item) {
    if (auto injury = read_injury(item)) read.injuries.push_back(std::move(*injury));
  });
  read_red_flags(file, read.red_flags);
  if (auto examination = file.object("examination")) {
    read.examination = read_examination(*examination);
  }
  file.each_object("electrodiagnosis", [&](ObjectReader& item) {
    for (auto& test : read_electrodiagnosis(item)) read.electrodiagnosis.push_back(std::move(test));
  });
  file.each_object("observations", [&](ObjectReader& item) {
    read.observations.push_back(read_examination(item));
  });
  file.each_object("operations",
                   [&](ObjectReader& item) { read.operations.push_back(read_operation(item)); });
  read_names(file, "unavailable", read.unavailable,
             [&](const std::string& typed, const std::string& place) {
               return resolve_any(reading,
                                  {TermKind::muscle, TermKind::nerve, TermKind::graft_donor},
                                  "muscle or nerve", typed, place);
             });
  read_names(file, "priorities", read.priorities,
             [&](const std::string& typed, const std::string& place) {
               return resolve_any(reading, {TermKind::movement, TermKind::area},
                                  "movement or skin area", typed, place);
             });
  file.each_object("incisions", [&](ObjectReader& item) {
    if (auto incision = read_incision(item)) read.incisions.push_back(std::move(*incision));
  });
  file.finish();
  return read;
}

}  // namespace

Expected<Case> read_case(std::string_view text, const anatomy::Terms& terms,
                         const ReadRules& rules) {
  Reading reading{terms, rules};
  auto document = parse_json_text(text, reading.problems);
  if (!document) {
    auto problems = std::move(document.error().problems);
    problems.insert(problems.end(), reading.problems.begin(), reading.problems.end());
    return std::unexpected(Error{Fault::input, std::move(problems)});
  }
  if (!document->is_object()) {
    return std::unexpected(Error::input(
        {"case file", "the file is not one JSON object",
         "Begin with { \"endplate_case\": 1 and see the format's page or the example cases."}));
  }
  ObjectReader file(*document, "", reading);
  Case read = read_document(file);
  check_coherence(reading);
  if (!reading.problems.empty()) {
    return std::unexpected(Error{Fault::input, std::move(reading.problems)});
  }
  read.assumptions = std::move(reading.assumptions);
  return read;
}

Expected<Case> read_patient(std::string_view text, const anatomy::Terms& terms,
                            const ReadRules& rules) {
  auto read = read_case(text, terms, rules);
  if (read && !read->limb.side_given) {
    read->assumptions.emplace_back("the side was not given; shown as a right limb");
  }
  return read;
}

}  // namespace endplate::casefile
