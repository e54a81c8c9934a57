#pragma once
// The published fractions of recovery_series.csv, ready to be predicted: what was done, to whom,
// and when the axons of such a patient arrive.
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/parameters.hpp"

namespace endplate::calibration {

enum class Procedure { repair, graft, transfer };
enum class Donor { none, near, distant, intercostal };

struct RecoverySeries {
  std::string id;
  std::string study;
  std::string row;  // of outcomes.csv or transfers.csv
  bool in_outcomes = true;
  bool fitted = true;  // otherwise judged only: the same patients stand in another row
  Procedure procedure = Procedure::repair;
  Donor donor = Donor::none;
  std::string nerve;
  std::string target;
  bool sensory = false;
  std::string scale;          // "M3", "M4", "S3" or "S3+": that grade or better
  bool higher_grade = false;  // M4 or S3+
  // The row of the same patients with the lower grade, an index into the table's rows.
  std::optional<std::size_t> within;
  double delay_months = 0.0;
  double way_mm = 0.0;
  bool delay_assumed = false;
  bool way_assumed = false;
  double gap_mm = 0.0;
  double share_under_16 = 0.0;
  double share_over_40 = 0.0;
  bool shoulder = false;  // a movement of several muscles was graded
  int n = 0;
  int count = 0;
  std::string reason;
  // Evenly likely days of arrival after the injury, by the law of the forecast.
  std::vector<double> arrival_days;
};

struct SeriesLeftOut {
  std::string row;
  std::string study;
  std::string scale;
  std::string reason;
};

struct RecoverySeriesTable {
  std::vector<RecoverySeries> rows;
  std::vector<SeriesLeftOut> left_out;
};

// Errors: a row that names no published row or a lower grade that is not there.
Expected<RecoverySeriesTable> recovery_series(const evidence::DataPackage& package,
                                              const recovery::Parameters& parameters);

}  // namespace endplate::calibration
