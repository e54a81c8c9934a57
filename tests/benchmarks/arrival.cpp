// Times the forecast's sampler and writes the same question down for NumPy (arrival.py).
// usage: endplate-bench-arrival DATASETS FOLDER radial|plexus SAMPLES TARGETS
#include <fmt/format.h>
#include <tbb/global_control.h>

#include <cstdlib>
#include <ctime>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <span>

#include "models/limb/case_limb.hpp"
#include "models/recovery/forecast.hpp"
#include "models/recovery/target_sample.hpp"

namespace {

using namespace endplate;
using Json = nlohmann::json;

constexpr int kMostLimbs = 4000;  // as the program has it

template <class Value>
Value need(Expected<Value> value) {
  if (value) return std::move(*value);
  for (const Problem& problem : value.error().problems) {
    std::cerr << problem.place << ": " << problem.what << '\n';
  }
  std::exit(1);
}

// Of this process on the processor, so that others on the machine count little.
double processor_seconds() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

// The shortest of several runs.
template <class Work>
double seconds_of(const Work& work) {
  double best = 1e9;
  double spent = 0.0;
  for (int k = 0; k < 3 || (spent < 0.3 && k < 50); ++k) {
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
  const auto ways = recovery::way_table(question, models);
  for (std::size_t t = 0; t < models.size(); ++t) {
    Json target{{"motor", models[t].motor()},
                {"rates", {of(models[t].rate(false)), of(models[t].rate(true))}},
                {"ways", Json::array()}};
    const bool operated = std::ranges::any_of(ways.targets[t], [&](const auto& way) {
      return question.lesions[way.front().lesion].repaired;
    });
    target["useful"] = of(p.find("useful delay", models[t].motor() ? "motor" : "sensory",
                                 operated ? "operated" : "none"));
    for (std::size_t w = 0; w < ways.targets[t].size(); ++w) {
      const recovery::LesionOnWay& on = ways.targets[t][w].front();
      target["ways"].push_back(
          {{"lesion", on.lesion},
           {"to_target", folder.column(fmt::format("to_{}_{}", t, w), on.to_target_mm)},
           {"leaves", folder.column(fmt::format("leaves_{}_{}", t, w), on.leaves_mm)}});
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
  const auto limbs = limb.sample(count, 1);
  question.tree = &tree;
  question.parameters = &parameters;
  question.limbs = &limbs;
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
  const double ways_seconds = seconds_of([&] { recovery::way_table(question, models); });

  // The same words again, and the same words with the numbers that are made of them.
  constexpr std::size_t kBlock = 512;
  std::array<std::vector<std::uint32_t>, 4> words;
  for (auto& column : words) column.resize(kBlock);
  double sum = 0.0;
  const auto draw = [&](bool numbers) {
    const auto stream =
        [&](std::uint32_t number,
            std::initializer_list<std::pair<int, const recovery::QuantileTable*>> used) {
          for (std::size_t begin = 0; begin < question.samples; begin += kBlock) {
            const std::size_t n = std::min(kBlock, question.samples - begin);
            draws.words(static_cast<std::uint32_t>(begin), number,
                        {std::span(words[0].data(), n), std::span(words[1].data(), n),
                         std::span(words[2].data(), n), std::span(words[3].data(), n)});
            sum += words[0][0];
            if (!numbers) continue;
            for (const auto& [word, table] : used) {
              const auto& column = words[static_cast<std::size_t>(word)];
              for (std::size_t i = 0; i < n; ++i) sum += table->at(column[i]);
            }
          }
        };
    const auto& normal = recovery::QuantileTable::normal();
    stream(0, {{0, &normal}, {1, &normal}, {2, &normal}});
    for (std::size_t k = 0; k < question.lesions.size(); ++k) {
      stream(100 + static_cast<std::uint32_t>(k), {{0, &normal}, {2, &normal}});
    }
    for (const recovery::TargetModel& model : models) {
      if (model.motor()) {
        stream(
            model.stream(),
            {{0, &model.units_delay()}, {1, &model.movement_delay()}, {2, &model.useful_delay()}});
      } else {
        stream(model.stream(), {{2, &model.useful_delay()}});
      }
    }
  };
  const double words_seconds = seconds_of([&] { draw(false); });
  const double numbers_seconds = seconds_of([&] { draw(true); });

  const auto patients = recovery::sample_columns(question, draws);
  const auto ways = recovery::way_table(question, models);
  const auto slowness = recovery::slowness_of(patients, models);
  std::vector<double> growing;
  recovery::TargetSample sample;
  for (std::size_t t = 0; t < models.size(); ++t) {
    recovery::sample_target(question, models[t], ways.targets[t], patients, slowness, {}, draws,
                            sample);
    growing.push_back(static_cast<double>(sample.growing.arrive.size()));
  }
  const double targets_seconds = seconds_of([&] {
    for (std::size_t t = 0; t < models.size(); ++t) {
      recovery::sample_target(question, models[t], ways.targets[t], patients, slowness, {}, draws,
                              sample);
      sum += sample.in_time;
    }
  });
  std::cout << Json{{"seconds", seconds},
                    {"ways_seconds", ways_seconds},
                    {"words_seconds", words_seconds},
                    {"numbers_seconds", numbers_seconds},
                    {"targets_seconds", targets_seconds},
                    {"patients_seconds", seconds_of([&] {
                       sum += recovery::sample_columns(question, draws).rate_z[0];
                     })},
                    {"sum", sum},
                    {"targets", answered(forecast, question.samples, growing)}}
                   .dump()
            << '\n';
  return 0;
}
