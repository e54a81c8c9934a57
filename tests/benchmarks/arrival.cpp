// Times the forecast's sampler and writes the same question down for NumPy (arrival.py).
// usage: endplate-bench-arrival DATASETS FOLDER radial|plexus SAMPLES TARGETS
#include <fmt/format.h>
#include <tbb/global_control.h>

#include <cstdlib>
#include <ctime>
#include <fstream>
#include <iostream>
#include <memory>
#include <nlohmann/json.hpp>
#include <numeric>
#include <span>

#include "models/limb/case_limb.hpp"
#include "models/recovery/forecast.hpp"
#include "models/recovery/target_sample.hpp"
#include "models/recovery/word_block.hpp"
#include "tests/benchmarks/bench.hpp"

namespace {

using namespace endplate;
using benchmarks::need;
using benchmarks::processor_seconds;
using Json = nlohmann::json;

constexpr int kMostLimbs = 4000;  // as the program has it

// The shortest of several runs.
template <class Work>
double seconds_of(const Work& work) {
  double best = 1e9;
  double spent = 0.0;
  for (int k = 0; k < 3 || (spent < 0.5 && k < 100); ++k) {
    const double begin = processor_seconds();
    work();
    const double took = processor_seconds() - begin;
    best = std::min(best, took);
    spent += took;
  }
  return best;
}

class Folder {
 public:
  explicit Folder(std::string path) : path_(std::move(path)) {}
  std::string column(std::string name, std::span<const double> values) const {
    std::ofstream out(path_ + "/" + name, std::ios::binary);
    out.write(reinterpret_cast<const char*>(values.data()),
              static_cast<std::streamsize>(values.size() * sizeof(double)));
    return name;
  }
  void question(const Json& json) const { std::ofstream(path_ + "/question.json") << json.dump(); }

 private:
  std::string path_;
};

Json of(const recovery::Parameter& p) {
  return {{"id", p.id}, {"mean", p.mean}, {"sd", p.sd}};
}

Json of(const std::optional<Summary>& s) {
  if (!s) return nullptr;
  return Json::array({s->mean, s->sd, s->p05, s->p50, s->p95});
}

Json written_down(const recovery::ForecastQuestion& question,
                  const std::vector<recovery::TargetModel>& models, const Folder& folder) {
  const recovery::Parameters& p = *question.parameters;
  const auto& window = p.find("motor window", "motor", "any");
  const auto law = recovery::log_logistic_from(window.mean, window.sd);
  Json json{{"samples", question.samples},
            {"reference_mm", p.find("rate reference distance", "any", "any").mean},
            {"slowing_mm", p.find("slowing length", "any", "any").mean},
            {"lesions", Json::array()},
            {"targets", Json::array()}};
  json["parameters"] = {{"block_first", of(p.find("block first sign", "any", "any"))},
                        {"block_useful", of(p.find("block useful delay", "any", "any"))},
                        {"coaptation", of(p.find("coaptation delay", "any", "operated"))},
                        {"latency", of(p.find("latency", "any", "none"))},
                        {"units", of(p.find("units delay", "any", "any"))},
                        {"movement", of(p.find("movement delay", "any", "any"))},
                        {"window", {{"median", law.median}, {"shape", law.shape}}}};
  for (std::size_t k = 0; k < question.lesions.size(); ++k) {
    const recovery::LesionModel& model = question.lesions[k];
    json["lesions"].push_back(
        {{"repaired", model.repaired},
         {"operation_days", model.operation_days},
         {"coaptations", model.coaptations},
         {"gap_mm", model.gap_mm},
         {"chance", model.chance},
         {"sd_mm", model.lesion.sd_mm},
         {"length", question.limb(0).length_mm[model.lesion.at.nerve]},
         {"places", folder.column(fmt::format("place_{}", k), model.places_mm)}});
  }
  const auto ways = recovery::way_table(question, *question.limb_columns, models);
  for (std::size_t t = 0; t < models.size(); ++t) {
    Json target{{"motor", models[t].motor()},
                {"rates", {of(models[t].rate(false)), of(models[t].rate(true))}},
                {"ways", Json::array()}};
    const bool operated = std::ranges::any_of(
        ways[t], [&](const auto& way) { return question.lesions[way.front().lesion].repaired; });
    target["useful"] = of(p.find("useful delay", models[t].motor() ? "motor" : "sensory",
                                 operated ? "operated" : "none"));
    // Each limb once, in double precision.
    const auto once = [&](std::span<const float> column) {
      const std::size_t limbs = std::min(question.limbs->size(), question.samples);
      return std::vector<double>(column.begin(),
                                 column.begin() + static_cast<std::ptrdiff_t>(limbs));
    };
    for (std::size_t w = 0; w < ways[t].size(); ++w) {
      const recovery::LesionOnWay& on = ways[t][w].front();
      target["ways"].push_back(
          {{"lesion", on.lesion},
           {"to_target", folder.column(fmt::format("to_{}_{}", t, w), once(on.to_target_mm))},
           {"leaves", folder.column(fmt::format("leaves_{}_{}", t, w), once(on.leaves_mm))}});
    }
    json["targets"].push_back(std::move(target));
  }
  return json;
}

Json answered(const recovery::Forecast& forecast, std::size_t samples,
              const std::vector<double>& growing) {
  Json targets(forecast.targets.size(), Json());
  for (const recovery::TargetForecast& target : forecast.targets) {
    targets[target.target] = {
        {"arrive", of(target.axons_arrive_days)},
        {"units", of(target.first_units_days)},
        {"movement", of(target.first_movement_days)},
        {"useful", of(target.useful_days)},
        {"in_time", target.chance_axons_in_time},
        {"share_growing", growing[target.target] / static_cast<double>(samples)}};
  }
  return targets;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 6) {
    std::cerr << "usage: endplate-bench-arrival DATASETS FOLDER radial|plexus SAMPLES TARGETS\n";
    return 2;
  }
  const tbb::global_control one_thread(tbb::global_control::max_allowed_parallelism, 1);
  const auto package = need(evidence::DataPackage::read(argv[1]));
  const auto tree = need(anatomy::NerveTree::from(package));
  const auto parameters = need(recovery::Parameters::from(package));
  const casefile::Limb adult;
  const auto limb = need(limb::CaseLimb::from(package, tree, adult));

  std::vector<casefile::Injury> injuries;
  if (std::string_view(argv[3]) == "radial") {
    casefile::Injury injury;
    injury.nerve = "radial nerve";
    injury.at = casefile::AtLandmark{"lateral epicondyle", 120.0, casefile::Toward::proximal};
    injuries.push_back(injury);
  } else {
    for (const char* trunk : {"superior trunk", "middle trunk", "inferior trunk"}) {
      casefile::Injury injury;
      injury.at = casefile::AtTrunk{trunk};
      injuries.push_back(injury);
    }
  }
  recovery::ForecastQuestion question;
  question.samples = static_cast<std::size_t>(std::stoi(argv[4]));
  const int count = std::min(static_cast<int>(question.samples), kMostLimbs);
  const double sampling = processor_seconds();
  const auto limbs = limb.sample(count, 1);
  const double limbs_seconds = processor_seconds() - sampling;
  question.tree = &tree;
  question.parameters = &parameters;
  question.limbs = &limbs;
  const anatomy::LimbColumns limb_columns(limbs);
  question.limb_columns = &limb_columns;
  std::vector<anatomy::NervePosition> places;
  for (std::size_t k = 0; k < injuries.size(); ++k) {
    recovery::LesionModel model;
    model.lesion = need(limb.place_injury(injuries[k], k));
    model.places_mm = need(limb.sample_places_mm(injuries[k].nerve, *injuries[k].at, count, 1));
    model.chance = {0.3, 0.5, 0.2};
    if (k == 1) {  // the middle trunk is grafted
      model.repaired = true;
      model.operation_days = 100.0;
      model.coaptations = 2;
      model.gap_mm = 40.0;
    }
    places.push_back(model.lesion.at);
    question.lesions.push_back(std::move(model));
  }
  question.targets =
      recovery::targets_below(recovery::all_targets(tree, package), places, tree, limb.metrics());
  const auto wanted = static_cast<std::size_t>(std::stoi(argv[5]));
  // Spread over the limb, muscles and skin.
  std::vector<recovery::TargetBelow> chosen;
  const std::size_t most = std::min(wanted, question.targets.size());
  for (std::size_t t = 0; t < most; ++t) {
    chosen.push_back(question.targets[t * question.targets.size() / most]);
  }
  question.targets = std::move(chosen);

  std::vector<recovery::TargetModel> models;
  for (const auto& below : question.targets) models.emplace_back(question, below);
  Folder(argv[2]).question(written_down(question, models, Folder(argv[2])));

  const recovery::Draws draws(question.seed);
  recovery::Forecast forecast;
  const double seconds = seconds_of([&] { forecast = recovery::forecast(question); });
  const double columns_seconds = seconds_of([&] { anatomy::LimbColumns again(limbs); });
  const double ways_seconds =
      seconds_of([&] { recovery::way_table(question, limb_columns, models); });

  const auto patients = recovery::sample_columns(question, draws);
  const auto ways = recovery::way_table(question, limb_columns, models);
  const auto leaving = recovery::departures(question, patients, models);
  const std::vector<double> weights;
  const recovery::SampledPatients sampled{patients, leaving, weights};
  std::vector<double> growing;
  recovery::TargetSample sample;
  double sum = 0.0;
  for (std::size_t t = 0; t < models.size(); ++t) {
    recovery::sample_target(question, models[t], ways[t], sampled, draws, sample);
    growing.push_back(static_cast<double>(sample.growing.arrive.values().size()));
  }
  const double targets_seconds = seconds_of([&] {
    for (std::size_t t = 0; t < models.size(); ++t) {
      recovery::sample_target(question, models[t], ways[t], sampled, draws, sample);
      sum += sample.in_time;
    }
  });

  // The same number of words again, and the same words with the numbers that are made of them.
  std::vector<std::uint32_t> counters(question.samples);
  std::iota(counters.begin(), counters.end(), 0U);
  const auto words = std::make_unique<recovery::WordBlock>();
  const auto in_blocks = [](double n, const auto& work) {
    const auto whole = static_cast<std::size_t>(n);
    for (std::size_t begin = 0; begin < whole; begin += recovery::kBlock) {
      work(begin, std::min(recovery::kBlock, whole - begin));
    }
  };
  const auto words_of = [&](std::uint32_t stream, double n) {
    in_blocks(n, [&](std::size_t begin, std::size_t several) {
      words->draw(draws, std::span(counters).subspan(begin, several), stream);
      sum += (*words)[0][0];
    });
  };
  const auto word_columns = std::make_unique<recovery::WordBlock>();
  word_columns->draw(draws, std::span(counters).first(std::min(recovery::kBlock, counters.size())),
                     0);
  std::vector<float> values(recovery::kBlock);
  const auto numbers_of = [&](double n, const std::vector<const recovery::QuantileTable*>& tables) {
    in_blocks(n, [&](std::size_t /*begin*/, std::size_t several) {
      for (std::size_t w = 0; w < tables.size(); ++w) {
        tables[w]->fill((*word_columns)[w].first(several), std::span(values).first(several));
        sum += double{values[0]};
      }
    });
  };
  const auto draw = [&](bool numbers) {
    const auto& normal = recovery::QuantileTable::normal();
    const auto n = static_cast<double>(question.samples);
    words_of(recovery::Streams::kPatient, n);
    if (numbers) numbers_of(n, {&normal, &normal, &normal});
    for (std::uint32_t k = 0; k < question.lesions.size(); ++k) {
      // A number of a lesion has a stream of its own, in which four patients share a counter.
      const recovery::LesionModel& lesion = question.lesions[k];
      const int drawn =
          (lesion.repaired ? lesion.coaptations : 1) + (lesion.lesion.sd_mm > 0 ? 1 : 0);
      for (int number = 0; number < drawn; ++number) {
        words_of(recovery::Streams::kLesions + k, 0.25 * n);
        if (numbers) numbers_of(n, {&normal});
      }
    }
    for (std::size_t t = 0; t < models.size(); ++t) {
      const recovery::TargetModel& model = models[t];
      // Of a muscle, words for the patients whose axons grow; of skin, four patients share a
      // counter.
      words_of(model.stream(), model.motor() ? growing[t] : 0.25 * n);
      if (!numbers) continue;
      if (model.motor()) {
        numbers_of(growing[t],
                   {&model.units_delay(), &model.movement_delay(), &model.useful_delay()});
      } else {
        numbers_of(growing[t], {&model.useful_delay()});
      }
    }
  };
  const double words_seconds = seconds_of([&] { draw(false); });
  const double numbers_seconds = seconds_of([&] { draw(true); });

  std::cout << Json{{"seconds", seconds},
                    {"ways_seconds", ways_seconds},
                    {"limbs_seconds", limbs_seconds},
                    {"columns_seconds", columns_seconds},
                    {"leaving_seconds", seconds_of([&] {
                       sum +=
                           double{recovery::departures(question, patients, models)[0].behind_mm[0]};
                     })},
                    {"models_seconds", seconds_of([&] {
                       for (const auto& below : question.targets) {
                         sum += recovery::TargetModel(question, below).useful_given_in_time();
                       }
                     })},
                    {"words_seconds", words_seconds},
                    {"numbers_seconds", numbers_seconds},
                    {"targets_seconds", targets_seconds},
                    {"patients_seconds", seconds_of([&] {
                       sum += double{recovery::sample_columns(question, draws).rate_z[0]};
                     })},
                    {"sum", sum},
                    {"targets", answered(forecast, question.samples, growing)}}
                   .dump()
            << '\n';
  return 0;
}
