#include "output/bed_views.hpp"

#include <fmt/format.h>

#include <cmath>

#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

// Slides of less than half a millimetre are written 0, without a sign.
std::string whole(double value) {
  const double rounded = std::round(value);
  return fmt::format("{:.0f}", rounded == 0.0 ? 0.0 : rounded);
}

std::string tenth(double value) {
  const double rounded = std::round(10.0 * value) / 10.0;
  return fmt::format("{:.1f}", rounded == 0.0 ? 0.0 : rounded);
}

}  // namespace

Json beds_json(const std::vector<limb::BedAnswer>& beds) {
  Json list = Json::array();
  for (const limb::BedAnswer& bed : beds) {
    Json places = Json::array();
    for (const limb::StationMotion& station : bed.stations) {
      places.push_back({{"place", station.place},
                        {"excursion_mm", to_json(station.excursion_mm)},
                        {"strain", to_json(station.strain)}});
    }
    list.push_back({{"nerve", bed.nerve},
                    {"bed_length_mm", bed.bed_mm},
                    {"lengthening_mm", bed.lengthening_mm},
                    {"places", std::move(places)},
                    {"sources", bed.sources}});
  }
  return list;
}

std::string beds_text(const std::vector<limb::BedAnswer>& beds) {
  if (beds.empty()) return "";
  using Align = TextTable::Align;
  TextTable table({{"nerve", Align::left},
                   {"at", Align::left},
                   {"slides mm", Align::right},
                   {"90 in 100, mm", Align::left},
                   {"strain %", Align::right},
                   {"90 in 100, %", Align::left}});
  for (const limb::BedAnswer& bed : beds) {
    bool first = true;
    for (const limb::StationMotion& station : bed.stations) {
      table.add_row({first ? bed.nerve : "", station.place, whole(station.excursion_mm.p50),
                     fmt::format("{} to {}", whole(station.excursion_mm.p05),
                                 whole(station.excursion_mm.p95)),
                     tenth(100.0 * station.strain.p50),
                     fmt::format("{} to {}", tenth(100.0 * station.strain.p05),
                                 tenth(100.0 * station.strain.p95))});
      first = false;
    }
  }
  std::string text = table.to_string();
  for (const limb::BedAnswer& bed : beds) {
    text += fmt::format("The bed of the {}, from the neck to the fingertip, is {} mm {}.\n",
                        bed.nerve, whole(std::abs(bed.lengthening_mm)),
                        bed.lengthening_mm < 0.0 ? "shorter" : "longer");
  }
  return text +
         "Slides toward the hand, against the anatomical position; a minus sign is toward the "
         "shoulder,\nor a slack nerve. A nerve held by scar strains more.\n";
}

}  // namespace endplate::cli
