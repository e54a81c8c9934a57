#pragma once
// The map of risk over the skin: reckoned off the interface thread, the latest wish first. What
// depends on the limb and its pose alone is prepared once.
#include <QObject>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"

namespace endplate::limb {
struct LimbScene;
}

namespace endplate::ui {

struct CaseTables;

struct RiskWish {
  double within_mm = 5.0;
  double depth_mm = 0.0;
  std::string nerve;  // standard term; empty: every modelled nerve
  int samples = 1000;
  std::uint64_t seed = 1;
  bool operator==(const RiskWish&) const = default;
};

class RiskLayer : public QObject {
  Q_OBJECT

 public:
  explicit RiskLayer(std::shared_ptr<const CaseTables> tables, QObject* parent = nullptr);

  /// `scene`: whose skin the map is for, in the pose `pose_deg` as the skin holds it.
  void ask(std::shared_ptr<const casefile::Case> patient, std::map<std::string, double> pose_deg,
           std::shared_ptr<const limb::LimbScene> scene, const RiskWish& wish);
  /// Nothing that is still on its way arrives.
  void forget() { ++wanted_; }

 Q_SIGNALS:
  /// By vertex of the scene's skin, 0 to 1.
  void ready(const std::vector<float>& chances, const endplate::ui::RiskWish& wish);
  void failed(const QString& why);

 private:
  struct Prepared;
  struct Outcome;

  std::shared_ptr<const CaseTables> tables_;
  std::shared_ptr<const Prepared> prepared_;
  int wanted_ = 0;
};

}  // namespace endplate::ui
