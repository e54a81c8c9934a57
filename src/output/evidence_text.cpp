#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "models/evidence/provenance.hpp"
#include "output/envelope.hpp"
#include "output/evidence_views.hpp"
#include "output/forest_plot.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using namespace endplate::evidence;
using Align = TextTable::Align;

// Items joined by a semicolon may wrap.
std::string spaced(const std::string& text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    out += text[i];
    if (text[i] == ';' && i + 1 < text.size() && text[i + 1] != ' ') out += ' ';
  }
  return out;
}

std::string paragraph(const std::string& text) {
  std::string out;
  for (const std::string& line : wrap(spaced(text), 100)) out += line + '\n';
  return out;
}

std::string figure(std::optional<double> value, int digits = 1) {
  return value ? fmt::format("{:.{}f}", *value, digits) : "";
}

// Negative zero is zero.
std::string rounded(double value, int digits) {
  const double scale = std::pow(10.0, digits);
  return fmt::format("{:.{}f}", std::round(value * scale) / scale + 0.0, digits);
}

std::string range(const Interval& interval, int digits = 0) {
  return fmt::format("{} to {}", rounded(interval.low, digits), rounded(interval.high, digits));
}

// Values are shown in the direction of the pooled mean, so that a distal distance is positive.
struct Facing {
  double sign = 1.0;
  std::string unit = "mm";

  Interval turned(const Interval& i) const { return sign < 0.0 ? Interval{-i.high, -i.low} : i; }
};

Facing facing(const QuantityAnswer& answer) {
  const double mean = answer.pooled ? answer.pooled->estimate.mean : 0.0;
  const auto word = direction_word(answer.quantity.axis, mean);
  Facing result;
  const bool signed_axis = answer.quantity.axis == Axis::axial ||
                           answer.quantity.axis == Axis::transverse ||
                           answer.quantity.axis == Axis::sagittal;
  if (signed_axis && mean < 0.0) result.sign = -1.0;
  if (!word.empty()) result.unit = "mm " + std::string(word);
  return result;
}

std::string_view spread_word(SpreadSource source) {
  switch (source) {
    case SpreadSource::printed:
      return "printed";
    case SpreadSource::from_range:
      return "from range";
    case SpreadSource::imputed:
      return "imputed";
  }
  return "";
}

std::string distance_rows(const QuantityAnswer& answer, const Facing& face) {
  TextTable table({{"row, study", Align::left, 48},
                   {"n", Align::right, 6},
                   {"mean (mm)", Align::right, 9},
                   {"SD (mm)", Align::right, 7},
                   {"provenance", Align::left, 10}});
  for (const Measurement& row : answer.quantity.rows) {
    const auto mean = row.mean_mm ? std::optional(face.sign * *row.mean_mm) : std::nullopt;
    table.add_row({row.id + " " + row.study, figure(row.n, 0), figure(mean), figure(row.sd_mm),
                   std::string(to_string(row.provenance))});
  }
  std::string out = table.to_string();
  for (const Measurement& row : answer.quantity.rows) {
    if (!row.left_out.empty())
      out += paragraph("Not pooled: " + row.id + ": " + row.left_out + ".");
  }
  return out;
}

std::string distance_detail(const QuantityAnswer& answer) {
  const Facing face = facing(answer);
  std::string out = paragraph(answer.quantity.name());
  out += '\n' + distance_rows(answer, face);
  if (!answer.pooled) return out + "Nothing can be pooled.\n";

  const PooledQuantity& pooled = *answer.pooled;
  const double z = 1.645;
  std::vector<ForestLine> lines;
  for (std::size_t i = 0; i < pooled.studies.size(); ++i) {
    const StudyEffect& s = pooled.studies[i];
    const double mean = face.sign * s.mean_mm;
    lines.push_back(
        {ForestLine::Kind::study, fmt::format("{} (SD {})", s.study, spread_word(s.sd_source)),
         mean, mean - z * s.standard_error_mm, mean + z * s.standard_error_mm, pooled.weights[i],
         fmt::format("{:.0f}, {:.0f} %", mean, 100.0 * pooled.weights[i])});
  }
  const auto add = [&](ForestLine::Kind kind, const std::string& label, const Interval& interval) {
    const Interval turned = face.turned(interval);
    lines.push_back({kind, label, face.sign * pooled.mixture.mean(), turned.low, turned.high, 0.0,
                     range(turned)});
  };
  add(ForestLine::Kind::pooled, "pooled mean", pooled.mixture.mean_interval(kEvidenceLevel));
  add(ForestLine::Kind::spread, "mean of a new study",
      pooled.mixture.new_study_interval(kEvidenceLevel));
  add(ForestLine::Kind::spread, "a single limb", pooled.limb_interval(kEvidenceLevel));
  out += '\n' + forest_plot(lines, face.unit) + '\n';

  out += paragraph(fmt::format(
      "Pooled mean {} {} (standard error {:.1f}). 90 % intervals: mean {}, mean of a new study {}, "
      "a "
      "single limb {}.",
      rounded(face.sign * pooled.estimate.mean, 1), face.unit, pooled.estimate.standard_error,
      range(face.turned(pooled.mixture.mean_interval(kEvidenceLevel))),
      range(face.turned(pooled.mixture.new_study_interval(kEvidenceLevel))),
      range(face.turned(pooled.limb_interval(kEvidenceLevel)))));
  out += paragraph(fmt::format(
      "Spread between studies {:.1f} mm (these studies alone: REML {:.1f}, DerSimonian-Laird "
      "{:.1f}, "
      "Paule-Mandel {:.1f}; expected at this distance {:.1f}); between limbs {:.1f} mm.",
      pooled.estimate.between_study_sd, std::sqrt(pooled.reml.tau_squared),
      std::sqrt(pooled.dersimonian_laird.tau_squared), std::sqrt(pooled.paule_mandel.tau_squared),
      pooled.floor_tau_mm, pooled.estimate.between_limb_sd));
  if (pooled.studies.size() > 1) {
    out += paragraph(fmt::format(
        "Heterogeneity: Q {:.1f} on {} degrees of freedom (p {}), I² {:.0f} %.", pooled.reml.q,
        pooled.studies.size() - 1,
        pooled.reml.q_p_value < 0.001 ? "< 0.001" : fmt::format("{:.3f}", pooled.reml.q_p_value),
        100.0 * pooled.reml.i_squared));
  } else {
    out += paragraph("One study: how far studies disagree is taken from all other quantities.");
  }
  for (const std::string& assumption : pooled.estimate.assumptions) {
    out += paragraph("Assumed: " + assumption + ".");
  }
  return out;
}

std::string percent(double share) {
  return fmt::format("{:.1f}", 100.0 * share);
}

std::string share_detail(const ShareAnswer& answer) {
  std::string out = paragraph(answer.quantity.name) + '\n';
  TextTable table({{"row, study", Align::left, 48},
                   {"events", Align::right, 6},
                   {"n", Align::right, 6},
                   {"share (%)", Align::right, 9},
                   {"provenance", Align::left, 10}});
  for (const ShareRow& row : answer.quantity.rows) {
    table.add_row({row.id + " " + row.study,
                   row.count ? fmt::format("{:.0f}", row.count->events) : "", figure(row.n, 0),
                   row.share ? percent(*row.share) : "", std::string(to_string(row.provenance))});
  }
  out += table.to_string();
  for (const ShareRow& row : answer.quantity.rows) {
    if (!row.left_out.empty())
      out += paragraph("Not pooled: " + row.id + ": " + row.left_out + ".");
  }
  if (!answer.pooled) return out + "Nothing can be pooled.\n";

  const PooledShare& pooled = *answer.pooled;
  std::vector<ForestLine> lines;
  double total = 0.0;
  for (const Count& c : pooled.counts) total += c.n;
  for (std::size_t i = 0; i < pooled.counts.size(); ++i) {
    const std::vector<Count> alone{pooled.counts[i]};
    const PooledProportion own = pool_proportions(alone, 0.0, kEvidenceLevel);
    lines.push_back({ForestLine::Kind::study, pooled.studies[i], 100.0 * own.share,
                     100.0 * own.mean_interval.low, 100.0 * own.mean_interval.high,
                     pooled.counts[i].n / total,
                     fmt::format("{:.0f} of {:.0f}", pooled.counts[i].events, pooled.counts[i].n)});
  }
  const auto add = [&](ForestLine::Kind kind, const std::string& label, const Interval& i) {
    lines.push_back({kind, label, 100.0 * pooled.pooled.share, 100.0 * i.low, 100.0 * i.high, 0.0,
                     range({100.0 * i.low, 100.0 * i.high})});
  };
  add(ForestLine::Kind::pooled, "pooled", pooled.pooled.mean_interval);
  add(ForestLine::Kind::spread, "a new study", pooled.pooled.new_study_interval);
  out += '\n' + forest_plot(lines, "%") + '\n';
  out += paragraph(fmt::format(
      "{}: {} %. 90 % intervals: share {} %, share in a new study {} %. Spread "
      "between "
      "studies on the logit scale {:.2f} ({}).",
      pooled.counts.size() == 1 ? "One study" : "Pooled as counts", percent(pooled.pooled.share),
      range({100.0 * pooled.pooled.mean_interval.low, 100.0 * pooled.pooled.mean_interval.high}),
      range({100.0 * pooled.pooled.new_study_interval.low,
             100.0 * pooled.pooled.new_study_interval.high}),
      pooled.pooled.tau,
      pooled.pooled.at_floor ? "as in all other shares together" : "of these studies"));
  if (answer.quantity.scale == OutcomeScale::other) {
    out += paragraph("The scale is the author's own: comparable with no other row.");
  }
  return out;
}

std::string row_detail(const TableRow& row) {
  std::string out = fmt::format("Row of {}.csv\n", row.table);
  TextTable table({{"column", Align::left, 26}, {"cell", Align::left, 72}});
  for (const auto& [column, cell] : row.cells) table.add_row({column, spaced(cell)});
  return out + table.to_string();
}

// The columns of a row that say most, for a list.
std::string row_summary(const TableRow& row) {
  static constexpr std::array<std::string_view, 8> kept_out{
      "id", "study", "source", "doi_or_pmid", "provenance", "url", "notes", "tree_node"};
  std::vector<std::string> parts;
  for (const auto& [column, cell] : row.cells) {
    if (std::ranges::find(kept_out, column) == kept_out.end())
      parts.push_back(column + " " + spaced(cell));
  }
  return fmt::format("{}", fmt::join(parts, "; "));
}

// Words of the table that are joined by underscores may wrap.
std::string in_words(std::string text) {
  std::ranges::replace(text, '_', ' ');
  return text;
}

std::string regeneration_value(const TableRow& row) {
  std::string text = row.cell("value");
  if (!row.cell("sd").empty()) text += " ± " + row.cell("sd");
  if (!row.cell("low").empty() || !row.cell("high").empty()) {
    text += fmt::format("{}{} to {}", text.empty() ? "" : ", ", row.cell("low"), row.cell("high"));
  }
  return text.empty() ? "" : text + " " + in_words(row.cell("unit"));
}

std::string row_list(const std::vector<TableRow>& rows) {
  const bool regeneration = rows.front().table == "regeneration";
  TextTable table =
      regeneration ? TextTable({{"row, study", Align::left, 40},
                                {"what", Align::left, 25},
                                {"value and unit", Align::left, 16},
                                {"n", Align::right, 5}})
                   : TextTable({{"row, study", Align::left, 40}, {"content", Align::left, 44}});
  for (const TableRow& row : rows) {
    const std::string head = row.cell("id") + " " + row.cell("study");
    if (regeneration) {
      table.add_row({head, in_words(row.cell("quantity")) + ": " + row.cell("condition"),
                     regeneration_value(row), row.cell("n")});
    } else {
      table.add_row({head, row_summary(row)});
    }
  }
  return table.to_string();
}

std::string list(const EvidenceAnswer& answer) {
  std::string out;
  if (!answer.distances.empty()) {
    TextTable table({{"quantity", Align::left, 52},
                     {"studies", Align::right, 7},
                     {"mean (mm)", Align::right, 18},
                     {"single limb (mm)", Align::right, 14}});
    for (const QuantityAnswer& a : answer.distances) {
      if (!a.pooled) {
        table.add_row({spaced(a.quantity.name()), "0", "not pooled", ""});
        continue;
      }
      const Facing face = facing(a);
      std::string mean = rounded(face.sign * a.pooled->estimate.mean, 0);
      if (face.unit.size() > 3) mean += face.unit.substr(2);
      table.add_row({spaced(a.quantity.name()), std::to_string(a.pooled->studies.size()), mean,
                     range(face.turned(a.pooled->limb_interval(kEvidenceLevel)))});
    }
    out += table.to_string() + '\n';
  }
  if (!answer.shares.empty()) {
    TextTable table({{"share", Align::left, 56},
                     {"studies", Align::right, 7},
                     {"pooled (%)", Align::right, 10},
                     {"new study (%)", Align::right, 14}});
    for (const ShareAnswer& a : answer.shares) {
      if (!a.pooled) {
        table.add_row({a.quantity.name, "0", "not pooled", ""});
        continue;
      }
      const Interval& i = a.pooled->pooled.new_study_interval;
      table.add_row({a.quantity.name, std::to_string(a.pooled->counts.size()),
                     rounded(100.0 * a.pooled->pooled.share, 0),
                     range({100.0 * i.low, 100.0 * i.high})});
    }
    out += table.to_string() + '\n';
  }
  return out;
}

}  // namespace

std::string evidence_text(const EvidenceAnswer& answer, std::size_t most_in_detail) {
  std::string out = "EITHER SIDE: published figures and how they were pooled\n\n";
  const std::size_t quantities = answer.distances.size() + answer.shares.size();
  if (quantities > most_in_detail) {
    out += list(answer);
    out +=
        paragraph(fmt::format("{} quantities; intervals at 90 %. Narrow the choice to {} or fewer "
                              "(--nerve, --point, --from, "
                              "--id, --table or words) to see rows, weights and forest plots.",
                              quantities, most_in_detail));
  } else {
    for (const QuantityAnswer& a : answer.distances) out += distance_detail(a) + '\n';
    for (const ShareAnswer& a : answer.shares) out += share_detail(a) + '\n';
  }
  if (answer.rows.size() == 1) {
    out += row_detail(answer.rows.front());
  } else if (!answer.rows.empty()) {
    out += row_list(answer.rows);
  }
  return out + '\n' + paragraph(std::string(standing_caution()));
}

}  // namespace endplate::cli
