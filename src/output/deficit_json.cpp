#include <fmt/format.h>

#include "output/deficit_views.hpp"
#include "output/envelope.hpp"

namespace endplate::cli {
namespace {

using namespace examination;

std::vector<std::string> muscle_ids(const anatomy::Anatomy& anatomy,
                                    const std::vector<std::size_t>& muscles) {
  std::vector<std::string> ids;
  for (const std::size_t muscle : muscles) ids.push_back(anatomy.muscles()[muscle].id);
  return ids;
}

Json injuries_json(const DeficitView& view) {
  Json list = Json::array();
  for (const TreeInjury& injury : view.injuries.injuries) {
    const char* extent = injury.extent == Extent::complete  ? "complete"
                         : injury.extent == Extent::partial ? "partial"
                                                            : "conduction block";
    list.push_back({{"nerve", view.anatomy.tree().node(injury.lesion.at.nerve).name},
                    {"place", injury.lesion.words},
                    {"from_start_mm", injury.lesion.at.from_start_mm},
                    {"place_sd_mm", injury.lesion.sd_mm},
                    {"preganglionic", injury.lesion.preganglionic},
                    {"extent", extent}});
  }
  return list;
}

Json muscles_json(const DeficitView& view) {
  Json list = Json::array();
  for (const MuscleDeficit& row : view.answer.muscles) {
    const anatomy::Muscle& muscle = view.anatomy.muscles()[row.muscle];
    std::vector<std::string> roots;
    std::vector<std::string> dominant;
    for (const anatomy::RootSupply& root : muscle.roots) {
      roots.push_back(root.root);
      if (root.dominant) dominant.push_back(root.root);
    }
    list.push_back({{"muscle", muscle.id},
                    {"name", muscle.name},
                    {"part", muscle.part},
                    {"nerve", view.anatomy.tree().node(muscle.nerve).name},
                    {"branch", view.anatomy.tree().node(muscle.branch).name},
                    {"roots", roots},
                    {"dominant_roots", dominant},
                    {"state", to_string(row.state)},
                    {"why", row.why},
                    {"roots_lost", row.roots_lost},
                    {"examined", examined_words(view.examined.muscles[row.muscle])}});
  }
  return list;
}

Json areas_json(const DeficitView& view) {
  Json list = Json::array();
  for (const AreaDeficit& row : view.answer.areas) {
    const anatomy::SkinArea& area = view.anatomy.areas()[row.area];
    std::vector<std::string> branches;
    for (const auto branch : area.branches)
      branches.push_back(view.anatomy.tree().node(branch).name);
    list.push_back({{"area", area.name},
                    {"nerve", view.anatomy.tree().node(area.nerve).name},
                    {"branches", branches},
                    {"roots", area.roots},
                    {"autonomous_zone",
                     area.autonomous_zone.empty() ? Json(nullptr) : Json(area.autonomous_zone)},
                    {"state", to_string(row.state)},
                    {"why", row.why},
                    {"roots_lost", row.roots_lost},
                    {"examined", examined_words(view.examined.areas[row.area])}});
  }
  return list;
}

Json movements_json(const DeficitView& view, const std::vector<MovementDeficit>& movements) {
  Json list = Json::array();
  for (const MovementDeficit& row : movements) {
    const anatomy::Movement& movement = view.anatomy.movements()[row.movement];
    list.push_back({{"movement", movement.name},
                    {"denervated", muscle_ids(view.anatomy, row.lost)},
                    {"weakened", muscle_ids(view.anatomy, row.weakened)},
                    {"kept_by", muscle_ids(view.anatomy, row.kept_by)},
                    {"by_substitutes_only", row.by_substitutes_only && !row.kept_by.empty()},
                    {"how", movement.how_substituted},
                    {"source", movement.source}});
  }
  return list;
}

Json fraction(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json variants_json(const DeficitView& view) {
  Json list = Json::array();
  for (const VariantToTest& row : view.answer.variants_to_test) {
    const anatomy::Variant& variant = view.anatomy.variants()[row.variant];
    Json rows = Json::array();
    for (const anatomy::PrevalenceRow& published : variant.prevalence.rows) {
      rows.push_back({{"id", published.id},
                      {"study", published.study},
                      {"n", fraction(published.n)},
                      {"fraction", published.fraction}});
    }
    Json changes = Json::array();
    for (const VariantChange& change : row.changes) {
      const std::string name = change.is_muscle ? view.anatomy.muscles()[change.target].id
                                                : view.anatomy.areas()[change.target].name;
      changes.push_back({{change.is_muscle ? "muscle" : "area", name},
                         {"without", change.without},
                         {"with", change.with}});
    }
    list.push_back({{"variant", variant.name},
                    {"prevalence",
                     {{"fraction", fraction(variant.prevalence.pooled)},
                      {"lowest", fraction(variant.prevalence.lowest)},
                      {"highest", fraction(variant.prevalence.highest)},
                      {"rows", rows}}},
                    {"changes", changes},
                    {"how_to_test", variant.how_to_test}});
  }
  return list;
}

}  // namespace

std::string examined_words(const std::optional<casefile::MrcGrade>& grade) {
  return grade ? "M" + grade->text : "not examined";
}

std::string examined_words(const std::optional<casefile::SensoryFinding>& finding) {
  if (!finding) return "not examined";
  std::string words;
  const auto add = [&](const std::string& part) { words += (words.empty() ? "" : ", ") + part; };
  if (finding->state) {
    switch (*finding->state) {
      case casefile::SensoryState::absent:
        add("absent");
        break;
      case casefile::SensoryState::reduced:
        add("reduced");
        break;
      case casefile::SensoryState::normal:
        add("normal");
        break;
      case casefile::SensoryState::hyperaesthetic:
        add("hyperaesthetic");
        break;
    }
  }
  if (finding->s_grade) add(*finding->s_grade);
  if (finding->two_point_mm) add(fmt::format("two points at {:g} mm", *finding->two_point_mm));
  return words.empty() ? "not examined" : words;
}

Json deficit_json(const DeficitView& view, const CommonOptions& options) {
  Json document =
      envelope("deficit", options, view.side, view.assumptions, view.answer.sources, view.warnings);
  document["injuries"] = injuries_json(view);
  document["muscles"] = muscles_json(view);
  document["areas"] = areas_json(view);
  document["movements_lost"] = movements_json(view, view.answer.movements_lost);
  document["movements_kept_by_others"] = movements_json(view, view.answer.movements_kept_by_others);
  document["movements_weakened"] = movements_json(view, view.answer.movements_weakened);
  document["variants_to_test"] = variants_json(view);
  document["notes"] = view.answer.notes;
  return document;
}

}  // namespace endplate::cli
