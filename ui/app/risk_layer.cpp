#include "ui/app/risk_layer.hpp"

#include <QFutureWatcher>
#include <QtConcurrentRun>
#include <utility>

#include "models/incision/risk_map.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/case_pose.hpp"
#include "models/limb/limb_scene.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/sampled_line.hpp"
#include "models/limb/segment_frames.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr double kLineStep_mm = 2.0;

}  // namespace

struct RiskLayer::Prepared {
  // What it was made for.
  std::shared_ptr<const casefile::Case> patient;
  std::map<std::string, double> pose_deg;
  std::shared_ptr<const limb::LimbScene> scene;
  int samples = 0;
  std::uint64_t seed = 0;

  incision::SkinEntries skin;
  incision::SampledNerves nerves;
};

struct RiskLayer::Outcome {
  int number = 0;
  RiskWish wish;
  std::shared_ptr<const Prepared> prepared;
  std::vector<float> chances;
  QString why;  // there is no map
};

RiskLayer::RiskLayer(std::shared_ptr<const CaseTables> tables, QObject* parent)
    : QObject(parent), tables_(std::move(tables)) {}

void RiskLayer::ask(std::shared_ptr<const casefile::Case> patient,
                    std::map<std::string, double> pose_deg,
                    std::shared_ptr<const limb::LimbScene> scene, const RiskWish& wish) {
  if (!patient || !scene) return;
  const auto reckon = [tables = tables_, before = prepared_, number = ++wanted_, wish,
                       patient = std::move(patient), pose_deg = std::move(pose_deg),
                       scene = std::move(scene)] {
    auto outcome = std::make_shared<Outcome>();
    outcome->number = number;
    outcome->wish = wish;
    const auto fail = [&](const Error& error) {
      outcome->why = told(error.problems.front().what);
      return outcome;
    };
    outcome->prepared = before;
    if (!before || before->patient != patient || before->pose_deg != pose_deg ||
        before->scene != scene || before->samples != wish.samples || before->seed != wish.seed) {
      const auto& tree = tables->anatomy.tree();
      const auto limb = limb::CaseLimb::from(tables->package, tree, patient->limb);
      if (!limb) return fail(limb.error());
      const limb::SegmentFrames frames(limb->size().mean_scale(), patient->limb.side);
      const auto pose = limb::CasePose::from(tables->package, frames, pose_deg);
      if (!pose) return fail(pose.error());
      const auto lines =
          limb::sample_lines(tables->package, tree, *limb, *pose, patient->operations,
                             patient->limb.side, kLineStep_mm, wish.samples, wish.seed);
      if (!lines) return fail(lines.error());
      auto nerves = incision::SampledNerves::from(*lines);
      if (!nerves) return fail(nerves.error());
      outcome->prepared = std::make_shared<const Prepared>(Prepared{
          patient, pose_deg, scene, wish.samples, wish.seed,
          incision::SkinEntries({scene->skin_mm, scene->shape->skin}), std::move(*nerves)});
    }
    incision::RiskOptions options;
    options.within_mm = wish.within_mm;
    options.depth_mm = wish.depth_mm;
    if (const auto nerve = tables->anatomy.tree().find(wish.nerve)) options.nerves = {*nerve};
    const auto map =
        incision::risk_map(outcome->prepared->skin, outcome->prepared->nerves, options);
    if (!map) return fail(map.error());
    outcome->chances.assign(map->chance.begin(), map->chance.end());
    return outcome;
  };
  auto* watcher = new QFutureWatcher<std::shared_ptr<Outcome>>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher] {
    watcher->deleteLater();
    const auto outcome = watcher->result();
    if (outcome->prepared) prepared_ = outcome->prepared;
    if (outcome->number != wanted_) return;
    if (!outcome->why.isEmpty()) {
      Q_EMIT failed(outcome->why);
      return;
    }
    Q_EMIT ready(outcome->chances, outcome->wish);
  });
  watcher->setFuture(QtConcurrent::run(reckon));
}

}  // namespace endplate::ui
