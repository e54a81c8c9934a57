#include "models/anatomy/variant.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "models/anatomy/table_names.hpp"

namespace endplate::anatomy {
namespace {

constexpr std::string_view kFile = "variant_effects.csv";

constexpr std::array<std::pair<std::string_view, Effect>, 6> kEffects{{
    {"instead", Effect::instead},
    {"as well", Effect::as_well},
    {"standard only", Effect::standard_only},
    {"absent", Effect::absent},
    {"roots one higher", Effect::roots_one_higher},
    {"roots one lower", Effect::roots_one_lower},
}};

std::optional<evidence::Row> variant_row(const evidence::Table& variants, const std::string& id) {
  for (const evidence::Row row : variants) {
    if (row.text("id") == id) return row;
  }
  return std::nullopt;
}

// `share` is the fraction of the variant's cases to which the effect belongs.
Prevalence prevalence_of(const evidence::Table& variants, const std::vector<std::string>& ids,
                         double share) {
  Prevalence result;
  std::optional<double> meta_analysis;
  double meta_n = 0.0;
  double cases = 0.0;
  double limbs = 0.0;
  double sum = 0.0;
  const auto widen = [&](double fraction) {
    result.lowest = std::min(result.lowest.value_or(fraction), fraction);
    result.highest = std::max(result.highest.value_or(fraction), fraction);
  };
  for (const std::string& id : ids) {
    const auto row = variant_row(variants, id);
    if (!row) continue;
    for (const auto* column : {"prevalence_fraction", "low_fraction", "high_fraction"}) {
      if (const auto fraction = row->number(column)) widen(*fraction * share);
    }
    const auto printed = row->number("prevalence_fraction");
    if (!printed) continue;
    const double fraction = *printed * share;
    const auto n = row->number("n");
    result.rows.push_back({id, std::string(row->text("study")), n, fraction});
    sum += fraction;
    if (n) {
      cases += fraction * *n;
      limbs += *n;
    }
    const bool has_interval = row->number("low_fraction") && row->number("high_fraction");
    if (has_interval && n.value_or(0.0) > meta_n) {
      meta_analysis = fraction;
      meta_n = *n;
    }
  }
  if (meta_analysis) {
    result.pooled = meta_analysis;
  } else if (limbs > 0.0) {
    result.pooled = cases / limbs;
  } else if (!result.rows.empty()) {
    result.pooled = sum / static_cast<double>(result.rows.size());
  }
  return result;
}

class Reader {
 public:
  Reader(const evidence::DataPackage& package, const NerveTree& tree,
         const std::vector<Muscle>& muscles, const std::vector<SkinArea>& areas)
      : package_(package), tree_(tree), muscles_(muscles), areas_(areas) {}

  Expected<std::vector<Variant>> read() {
    for (const evidence::Row row : package_.table("variant_effects")) read_row(row);
    if (!problems_.empty()) return std::unexpected(Error{Fault::internal, std::move(problems_)});
    return std::move(variants_);
  }

 private:
  void complain(const evidence::Row& row, std::string_view column, std::string what,
                std::string mend) {
    problems_.push_back({cell_place(kFile, row, column), std::move(what), std::move(mend)});
  }

  void read_row(const evidence::Row& row) {
    Variant& variant = variant_named(row);
    VariantEffect effect;
    effect.id = row.text("id");
    effect.source = row.text("source");
    effect.provenance = *evidence::provenance_from(row.text("provenance"));
    effect.effect =
        std::ranges::find(kEffects, row.text("effect"), &std::pair<std::string_view, Effect>::first)
            ->second;
    for (const std::string& target : row.list("targets")) read_target(row, target, effect);
    const bool needs_route = effect.effect == Effect::instead || effect.effect == Effect::as_well;
    if (needs_route == row.text("from").empty()) {
      complain(
          row, "from",
          fmt::format("an effect '{}' {} a route", row.text("effect"),
                      needs_route ? "needs" : "takes no"),
          needs_route ? "Name the nerve that the axons come along." : "Empty the route cells.");
    } else if (needs_route) {
      effect.route = read_route(row);
    }
    variant.effects.push_back(std::move(effect));
  }

  Variant& variant_named(const evidence::Row& row) {
    const bool usual = row.text("counted") == "usual";
    const auto found = std::ranges::find(variants_, row.text("variant"), &Variant::name);
    if (found != variants_.end()) {
      if (found->usual != usual) {
        complain(row, "counted", "rows of one variant differ", "Count all of them alike.");
      }
      return *found;
    }
    Variant variant;
    variant.name = row.text("variant");
    variant.also_called = row.list("also_called");
    variant.usual = usual;
    variant.how_to_test = row.text("how_to_test");
    const evidence::Table& published = package_.table("variants");
    double share = 1.0;
    if (const auto cases = variant_row(published, std::string(row.text("share_of_cases_row")))) {
      share = cases->number("prevalence_fraction").value_or(1.0);
    }
    variant.prevalence = prevalence_of(published, row.list("prevalence_rows"), share);
    variants_.push_back(std::move(variant));
    return variants_.back();
  }

  void read_target(const evidence::Row& row, const std::string& target, VariantEffect& effect) {
    if (target == "all") {
      effect.all_targets = true;
      return;
    }
    const auto muscle = std::ranges::find(muscles_, target, &Muscle::id);
    const auto area = std::ranges::find(areas_, target, &SkinArea::name);
    if (muscle != muscles_.end()) {
      effect.muscles.push_back(static_cast<std::size_t>(muscle - muscles_.begin()));
    } else if (area != areas_.end()) {
      effect.areas.push_back(static_cast<std::size_t>(area - areas_.begin()));
    } else {
      complain(row, "targets", fmt::format("'{}' is neither a muscle nor a skin area", target),
               "Use an abbreviation of muscles.csv or an area of skin_areas.csv.");
    }
  }

  Route read_route(const evidence::Row& row) {
    const auto node = [&](std::string_view column) { return tree_.find(row.text(column)); };
    Route route{*node("from"), node("leaves_after"), node("leaves_before"), node("through"),
                node("into"),  node("enters_after"), node("enters_before")};
    const auto must_leave = [&](std::string_view column, const std::optional<NodeIndex>& branch,
                                const std::optional<NodeIndex>& nerve) {
      if (!branch) return;
      if (nerve && std::ranges::count(tree_.node(*branch).parents, *nerve) > 0) return;
      complain(row, column, fmt::format("'{}' does not leave that nerve", row.text(column)),
               "Name a branch of the nerve on which the place lies.");
    };
    must_leave("leaves_after", route.leaves_after, route.from);
    must_leave("leaves_before", route.leaves_before, route.from);
    must_leave("through", route.through, route.from);
    must_leave("enters_after", route.enters_after, route.into);
    must_leave("enters_before", route.enters_before, route.into);
    return route;
  }

  const evidence::DataPackage& package_;
  const NerveTree& tree_;
  const std::vector<Muscle>& muscles_;
  const std::vector<SkinArea>& areas_;
  std::vector<Variant> variants_;
  std::vector<Problem> problems_;
};

}  // namespace

Expected<std::vector<Variant>> read_variants(const evidence::DataPackage& package,
                                             const NerveTree& tree,
                                             const std::vector<Muscle>& muscles,
                                             const std::vector<SkinArea>& areas) {
  return Reader(package, tree, muscles, areas).read();
}

}  // namespace endplate::anatomy
