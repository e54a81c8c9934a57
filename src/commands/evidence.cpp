#include <fmt/format.h>
#include <fmt/ranges.h>
#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>

#include "command.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/evidence_answer.hpp"
#include "output/envelope.hpp"
#include "output/evidence_views.hpp"

namespace endplate::cli {
namespace {

using namespace endplate::evidence;

constexpr std::size_t kMostInDetail = 6;

struct Options {
  EvidenceQuery query;
  std::vector<std::string> words;
};

std::vector<std::string> sources_of(const EvidenceAnswer& answer) {
  std::vector<std::string> ids;
  for (const auto& a : answer.distances) {
    for (const auto& row : a.quantity.rows) ids.push_back(row.id);
  }
  for (const auto& a : answer.shares) {
    for (const auto& row : a.quantity.rows) ids.push_back(row.id);
  }
  for (const auto& row : answer.rows) {
    if (!row.cell("id").empty()) ids.push_back(row.cell("id"));
  }
  std::ranges::sort(ids);
  const auto repeats = std::ranges::unique(ids);
  ids.erase(repeats.begin(), repeats.end());
  return ids;
}

Expected<Answer> run(const CommonOptions& common, const Options& options) {
  const auto package = DataPackage::read(common.datasets);
  if (!package) return std::unexpected(package.error());
  EvidenceQuery query = options.query;
  query.words = fmt::format("{}", fmt::join(options.words, " "));
  const auto answer = answer_evidence(*package, query);
  if (!answer) return std::unexpected(answer.error());

  Answer result;
  if (common.json) {
    result.document =
        envelope("evidence", common, Side::right,
                 {"published figures hold for either side; limbs of both sides were studied",
                  "intervals are at 90 %"},
                 sources_of(*answer));
    result.document.update(evidence_json(*answer));
  } else {
    result.text = evidence_text(*answer, kMostInDetail);
  }
  return result;
}

}  // namespace

void register_evidence(Registry& registry) {
  auto options = std::make_shared<Options>();
  CLI::App* command = registry.add_command(
      "evidence", "the published rows behind a number, and how they were pooled", false,
      [options](const CommonOptions& common) { return run(common, *options); });
  command->add_option("WORDS", options->words,
                      "words that the quantity or one of its rows must hold");
  command->add_option("--nerve", options->query.nerve, "nerve or branch, as in the nerve tree");
  command->add_option("--point", options->query.point,
                      "point of it: origin, bifurcation, motor entry ...");
  command->add_option("--from", options->query.landmark, "landmark it was measured from");
  command->add_option("--id", options->query.id, "row of a table, with the quantity it belongs to");
  command->add_option("--table", options->query.table,
                      "table: variants, outcomes, regeneration ...");
}

}  // namespace endplate::cli
