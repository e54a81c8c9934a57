#pragma once
// What every command of the program shares: its options, its answer and how it is registered.
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "models/core/error.hpp"

namespace CLI {
class App;
}

namespace endplate::cli {

using Json = nlohmann::ordered_json;

struct CommonOptions {
  std::string case_path;  // empty: no case was given; "-": standard input
  bool json = false;
  std::uint64_t seed = 1;
  int samples = 2000;
  std::filesystem::path datasets;
  std::chrono::year_month_day today{};  // --today, or the system's date
  bool today_given = false;
  bool quiet = false;
};

// One answer in both of its forms: a JSON document that begins with the envelope
// (output/envelope.hpp), and the table for people.
struct Answer {
  Json document;
  std::string text;
};

using Run = std::function<Expected<Answer>(const CommonOptions&)>;

// Every command's file defines one function of this shape. It adds a subcommand with its own
// options and hands `add_command` what to run; the options live as long as the App through the
// shared_ptr that both closures hold.
struct Registry {
  CLI::App& app;
  // Adds the options that every command takes and remembers `run` for the subcommand.
  std::function<CLI::App*(const std::string& name, const std::string& description, bool takes_case,
                          Run run)>
      add_command;
};

void register_check(Registry&);
void register_deficit(Registry&);
void register_distance(Registry&);
void register_evidence(Registry&);
void register_followup(Registry&);
void register_incision(Registry&);
void register_limb(Registry&);
void register_plan(Registry&);
void register_recovery(Registry&);
void register_transfer(Registry&);

}  // namespace endplate::cli
