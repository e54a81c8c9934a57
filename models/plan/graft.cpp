#include "models/plan/graft.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace endplate::plan {
namespace {

using evidence::Row;

constexpr std::string_view kSural = "sural nerve";
// Assumed: a cable more is not laid for a seventh of its cross-section.
constexpr double kSpare = 0.15;

struct Areas {
  double low = 0.0;
  double high = 0.0;
};

// By method of measurement.
std::map<std::string, Areas> areas_of(const evidence::DataPackage& package,
                                      std::string_view nerve) {
  std::map<std::string, Areas> areas;
  for (const Row row : package.table("nerve_cross_sections")) {
    if (row.text("nerve") != nerve) continue;
    const double area = *row.number("csa_mm2");
    const auto [at, is_new] = areas.try_emplace(std::string(row.text("method")), Areas{area, area});
    if (!is_new) at->second = {std::min(at->second.low, area), std::max(at->second.high, area)};
  }
  return areas;
}

int cables(double nerve_mm2, double donor_mm2) {
  return std::max(1, static_cast<int>(std::ceil(nerve_mm2 / donor_mm2 - kSpare)));
}

std::string measured_as(std::string_view nerve, bool plexus) {
  if (plexus) return "plexus root, trunk or cord";
  if (nerve.find("digital") != std::string_view::npos) return "digital nerve";
  return std::string(nerve);
}

// Joint angles as the case gives them: "elbow flexion 90 degrees".
std::string position_words(const casefile::Case& patient) {
  std::string words;
  for (const auto& [joint, degrees] : patient.limb.pose_deg) {
    std::string name = joint;
    if (name.ends_with("_deg")) name.resize(name.size() - 4);
    std::ranges::replace(name, '_', ' ');
    words += fmt::format("{}{} {:.0f} degrees", words.empty() ? "" : ", ", name, degrees);
  }
  return words;
}

void read_gap(const casefile::Case& patient, GraftNeed& need) {
  for (const casefile::Operation& operation : patient.operations) {
    if (operation.gap_after_resection_mm) need.gap_mm = operation.gap_after_resection_mm;
  }
  if (!need.gap_mm) {
    need.gap_words =
        "the gap is not known: it is measured after resection, with the joints in the position in "
        "which the graft is laid, and it grows when they are straightened";
    return;
  }
  const std::string position = position_words(patient);
  need.gap_words =
      position.empty()
          ? fmt::format(
                "gap {:.0f} mm after resection; the joint position in which it was "
                "measured is not given: measured bent, it grows when the joint is straight",
                *need.gap_mm)
          : fmt::format(
                "gap {:.0f} mm after resection, in the case's joint position ({}); it "
                "grows when the joints are straight",
                *need.gap_mm, position);
}

std::optional<int> planned_cables(const casefile::Case& patient) {
  std::optional<int> count;
  for (const casefile::Operation& operation : patient.operations) {
    for (const casefile::Procedure& procedure : operation.done) {
      if (procedure.cables) count = procedure.cables;
    }
  }
  return count;
}

// The row of a donor that says how much can be had of it.
struct Offer {
  double low_mm = 0.0;
  double high_mm = 0.0;
  std::vector<std::string> costs;
  std::vector<std::string> nodes;
};

std::vector<std::pair<std::string, Offer>> offers(const evidence::DataPackage& package) {
  std::vector<std::pair<std::string, Offer>> found;
  for (const Row row : package.table("graft_donors")) {
    const std::string nerve(row.text("nerve"));
    auto at = std::ranges::find(found, nerve, &std::pair<std::string, Offer>::first);
    if (at == found.end()) at = found.insert(found.end(), {nerve, {}});
    Offer& offer = at->second;
    offer.nodes = row.list("tree_node");
    const std::string cost(row.text("deficit"));
    if (std::ranges::find(offer.costs, cost) == offer.costs.end()) offer.costs.push_back(cost);
    const auto mean = row.number("harvest_length_mm");
    const double sd = row.number("length_sd_mm").value_or(0.0);
    const double high = row.number("length_max_mm").value_or(mean ? *mean + sd : 0.0);
    if (high <= offer.high_mm) continue;
    offer.high_mm = high;
    offer.low_mm = row.number("length_min_mm").value_or(mean ? *mean - sd : high);
  }
  return found;
}

bool is_available(const Situation& now, const std::string& nerve, const Offer& offer) {
  if (now.unavailable(nerve)) return false;
  return std::ranges::none_of(offer.nodes,
                              [&](const std::string& node) { return now.unavailable(node); });
}

// A donor whose skin is numb from this injury costs no further feeling.
bool already_numb(const Situation& now, const Offer& offer) {
  bool numb = false;
  for (const std::string& name : offer.nodes) {
    const auto node = now.anatomy().tree().find(name);
    if (!node) return false;
    for (const std::size_t area : now.areas_below(*node)) {
      if (!now.area_lost(area)) return false;
      numb = true;
    }
  }
  return numb;
}

std::string joined(const std::vector<std::string>& words) {
  std::string out;
  for (const std::string& word : words) out += (out.empty() ? "" : " ") + word;
  return out;
}

// Which of the donors covers the need, in words. The sural nerve is there twice.
std::string covers(const GraftDonor& donor, double needed_low, double needed_high, bool legs) {
  const char* one = legs ? "one leg" : "enough";
  if (needed_high <= donor.length_low_mm) return one;
  if (needed_low <= donor.length_high_mm) {
    return legs ? "one leg if the nerve is long, else both" : "enough if the nerve is long";
  }
  if (legs && needed_high <= 2.0 * donor.length_low_mm) return "both legs";
  if (legs && needed_low <= 2.0 * donor.length_high_mm) return "both legs, and perhaps not enough";
  return legs ? "not enough in both legs" : "not enough";
}

struct Allowance {
  double low = 0.0;
  double high = 0.0;
  std::string words;
};

Allowance allowance(const evidence::DataPackage& package) {
  for (const Row row : package.table("graft_figures")) {
    if (row.text("figure") != "allowance") continue;
    const double low = row.number("value").value_or(0.0);
    return {low, row.number("high").value_or(low), std::string(row.text("words"))};
  }
  return {};
}

}  // namespace

std::optional<Cables> cables_of(const evidence::DataPackage& package, std::string_view nerve,
                                std::string_view donor) {
  const auto nerves = areas_of(package, nerve);
  const auto donors = areas_of(package, donor);
  for (const auto& [method, area] : nerves) {
    const auto of_donor = donors.find(method);
    if (of_donor == donors.end()) continue;
    return Cables{
        cables(area.low, of_donor->second.high), cables(area.high, of_donor->second.low),
        fmt::format("cross-section {} mm2 against {:.1f} mm2 of the donor, {}",
                    area.high > area.low ? fmt::format("{:.1f} to {:.1f}", area.low, area.high)
                                         : fmt::format("{:.1f}", area.low),
                    of_donor->second.low, method)};
  }
  return std::nullopt;
}

GraftNeed graft_need(const Situation& now, const evidence::DataPackage& package,
                     const std::string& nerve, bool plexus) {
  GraftNeed need;
  need.nerve = nerve;
  read_gap(now.patient(), need);
  const std::string as = measured_as(nerve, plexus);
  const auto sural = cables_of(package, as, kSural);
  if (const auto planned = planned_cables(now.patient())) {
    need.cables_low = need.cables_high = *planned;
    need.cables_words = "as the case says";
  } else if (sural) {
    need.cables_low = sural->low;
    need.cables_high = sural->high;
    need.cables_words = sural->words;
  } else {
    need.cables_words =
        fmt::format("no cross-section of the {} was found: count at operation", nerve);
  }
  for (const Row row : package.table("graft_figures")) {
    if (row.text("nerve") != nerve) continue;
    const double value = row.number("value").value_or(0.0);
    if (row.text("figure") == "cables from") {
      need.notes.push_back(fmt::format("{} [{}]", row.text("words"), row.text("regeneration_row")));
    }
    if (row.text("figure") == "worse beyond") {
      const bool beyond = need.gap_mm && *need.gap_mm > value;
      need.notes.push_back(fmt::format("{:.0f} mm: {}{} [{}]", value, row.text("words"),
                                       beyond ? "; this gap is beyond it" : "",
                                       row.text("regeneration_row")));
    }
  }
  const Allowance extra = allowance(package);
  need.notes.push_back(extra.words);
  need.needed_for_10_mm = need.cables_high * 10.0 * (1.0 + extra.high);
  if (need.gap_mm && need.cables_low > 0) {
    need.needed_low_mm = need.cables_low * *need.gap_mm * (1.0 + extra.low);
    need.needed_high_mm = need.cables_high * *need.gap_mm * (1.0 + extra.high);
  }
  for (const auto& [donor_nerve, offer] : offers(package)) {
    if (offer.high_mm <= 0.0) continue;
    if (!is_available(now, donor_nerve, offer)) {
      need.unavailable.push_back(donor_nerve);
      continue;
    }
    GraftDonor donor;
    donor.nerve = donor_nerve;
    donor.length_low_mm = offer.low_mm;
    donor.length_high_mm = offer.high_mm;
    donor.cost = already_numb(now, offer)
                     ? "its skin is numb from this injury already: no further loss"
                     : joined(offer.costs);
    // A limb nerve stands for itself in the tables of areas; others are taken as the sural nerve.
    const std::string key = offer.nodes.size() == 1 && offer.nodes.front() != "none"
                                ? offer.nodes.front()
                                : donor_nerve;
    const auto own =
        need.cables_words == "as the case says" ? std::nullopt : cables_of(package, as, key);
    donor.cables_low = own ? own->low : need.cables_low;
    donor.cables_high = own ? own->high : need.cables_high;
    if (need.gap_mm && donor.cables_low > 0) {
      donor.covers =
          covers(donor, donor.cables_low * *need.gap_mm * (1.0 + extra.low),
                 donor.cables_high * *need.gap_mm * (1.0 + extra.high), donor_nerve == kSural);
    } else if (donor.cables_high > 0) {
      donor.covers =
          fmt::format("up to a gap of {:.0f} mm{}",
                      std::floor(donor.length_low_mm / (donor.cables_high * (1.0 + extra.high))),
                      donor_nerve == kSural ? " from one leg" : "");
    }
    need.donors.push_back(std::move(donor));
  }
  return need;
}

std::vector<std::string> gap_closing(const evidence::DataPackage& package, const std::string& nerve,
                                     std::optional<double> gap_mm) {
  std::vector<std::string> words;
  double most = 0.0;
  for (const Row row : package.table("graft_figures")) {
    if (row.text("figure") != "closes gap") continue;
    // Mobilisation of a trunk says nothing of a nerve of the finger.
    const bool any = row.text("nerve") == "any" && nerve.find("digital") == std::string::npos;
    if (!any && row.text("nerve") != nerve) continue;
    const double value = row.number("value").value_or(0.0);
    most = std::max(most, value);
    words.push_back(fmt::format("{:.0f} mm closed by {} [{}]", value, row.text("words"),
                                row.text("regeneration_row")));
  }
  if (gap_mm) {
    words.push_back(
        *gap_mm > most
            ? fmt::format("the gap of {:.0f} mm is more than any of these: graft", *gap_mm)
            : fmt::format("the gap of {:.0f} mm may come together; tension at the "
                          "suture with the joint moved decides",
                          *gap_mm));
  }
  return words;
}

}  // namespace endplate::plan
