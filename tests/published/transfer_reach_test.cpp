// The computed reach beside what dissections printed; docs/transfer-reach.md shows the table.
#include <fmt/format.h>

#include <boost/math/distributions/normal.hpp>
#include <catch2/catch.hpp>
#include <cmath>
#include <iostream>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "../models/transfer/transfer_fixture.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/fit_summary.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/transfer/freed_stretch.hpp"
#include "models/transfer/splits.hpp"

namespace endplate::transfer {
namespace {

struct Compared {
  std::string what;
  std::string source;  // of transfers.csv or landmark_distances.csv
  double printed = 0.0;
  double low = 0.0;  // of its published spread
  double high = 0.0;
  Summary computed;
  bool own = false;  // the limb's tables or its fit used the same row

  bool inside() const { return computed.p50 >= low && computed.p50 <= high; }
};

// Its range where it is printed, else 90 % of a normal distribution.
Compared of_row(std::string what, const std::string& id, const Summary& computed, bool own) {
  const auto& table = limb::own_tables().table("landmark_distances");
  for (const auto row : table) {
    if (row.text("id") != id) continue;
    const double mean = row.number("mean_mm").value();
    const double sd = row.number("sd_mm").value_or(0.0);
    const double low = row.number("min_mm").value_or(mean - 1.645 * sd);
    const double high = row.number("max_mm").value_or(mean + 1.645 * sd);
    return {std::move(what), id, mean, low, high, computed, own};
  }
  FAIL("no row " + id);
  return {};
}

Summary only(double value) {
  return {value, 0.0, value, value, value};
}

// As a row of transfers.csv says, with the lengths that dissections printed.
ReachQuestion question_of(const std::string& coaptation, const std::string& donor,
                          const std::string& recipient) {
  ReachQuestion question{node(donor), node(recipient)};
  if (coaptation.starts_with("supercharged")) question.junction = Junction::to_recipient_side;
  if (coaptation == "end-to-side") question.junction = Junction::to_donor_side;
  question.donor_split = donor_split(limb::own_tables(), donor);
  question.donor_followed = donor_followed(limb::own_tables(), donor);
  question.recipient_split = recipient_split(limb::own_tables(), recipient);
  return question;
}

// Khair 2016 (PMID 27577524), ten limbs dissected from behind: swing distances of the branches were
// taken from the inferior border of teres major, above which the radial nerve lies hidden. That
// border crosses it 101 mm from its origin: 62.3 to latissimus dorsi (NP_271), the 29.3 of that
// tendon (NP_273) and the 9.1 by which teres major lies further distally (NP_274, NP_275). The
// modelled radial nerve is 282 mm long.
double swung(const std::string& donor, bool held = true) {
  ReachQuestion question{node(donor), node("anterior branch of axillary nerve")};
  if (held) question.donor_held = {100.7 / 282.1, "NP_271"};
  return reach_of(question).chance_at_rest;
}

// Share of sampled limbs in which an intercostal nerve, freed in front of the midaxillary line, and
// some mm more are longer than the straight way from there to the middle of the clavicle.
double longer_than_to_clavicle(const std::string& nerve, double more_mm) {
  static const auto limb =
      limb::CaseLimb::from(limb::own_tables(), own_tree(), casefile::Limb{}).value();
  static const auto girdle = limb::GirdleCourses::from(limb::own_tables(), own_tree()).value();
  static const auto landmarks = limb::LandmarkSet::from(limb::own_tables()).value();
  static const FreedStretches stretches(limb::own_tables(), own_tree());
  constexpr int kLimbs = 1000;
  const auto lengths = limb.sample(kLimbs, 1);
  const auto sizes = limb.size().sample(kLimbs, 1);
  const double held = stretches.of(node(nerve)).value().from_share;
  int longer = 0;
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    const limb::SegmentFrames frames(sizes[i].scale);
    const Eigen::Vector3d from =
        limb::GirdleLine(girdle.points(node(nerve)), frames).at(held).neutral_mm();
    const Eigen::Vector3d to = landmarks.position_mm("clavicle, midpoint", frames).value();
    const double freed_mm = (1.0 - held) * lengths[i].length_mm[node(nerve)];
    longer += freed_mm + more_mm > (to - from).norm() ? 1 : 0;
  }
  return static_cast<double>(longer) / kLimbs;
}

std::vector<Compared> compared() {
  const std::vector<anatomy::NodeIndex> thenar{node("recurrent branch to abductor pollicis brevis"),
                                               node("recurrent branch to opponens pollicis")};
  const auto recurrent = node("recurrent motor branch of median nerve");
  ReachQuestion fdmb{node("deep ulnar branch to flexor digiti minimi brevis"), recurrent};
  fdmb.targets = thenar;
  ReachQuestion third{node("deep ulnar branch to third lumbrical"), recurrent};
  third.targets = thenar;
  const Reach by_fdmb = reach_of(fdmb);
  const Reach by_third = reach_of(third);
  ReachQuestion usual{node("anterior interosseous branch to pronator quadratus"),
                      node("deep branch of ulnar nerve")};
  usual.recipient_split = {97.0, "dbun-max-dissociation-2016"};
  usual.donor_followed =
      donor_followed(limb::own_tables(), "anterior interosseous branch to pronator quadratus");
  const Reach by_ain = reach_of(usual);
  const Reach long_head = reach_of(
      {node("radial branch to long head of triceps"), node("anterior branch of axillary nerve")});
  const Reach by_adm =
      reach_of(question_of("end-to-end", "deep ulnar branch to abductor digiti minimi",
                           "recurrent motor branch of median nerve"));
  const Reach accessory = reach_of({node("accessory branch to ascending trapezius"),
                                    node("suprascapular branch to infraspinatus")});
  ReachQuestion far_thumb{node("recurrent branch to superficial head of flexor pollicis brevis"),
                          node("deep branch of ulnar nerve")};
  far_thumb.targets = {node("deep ulnar branch to oblique head of adductor pollicis"),
                       node("deep ulnar branch to first dorsal interosseous")};
  const Reach in_palm = reach_of(far_thumb);
  ReachQuestion to_ain{node("musculocutaneous branch to brachialis"),
                       node("anterior interosseous nerve")};
  to_ain.recipient_split = {139.0, "brachialis_to_ain_winston"};
  const Reach brachialis = reach_of(to_ain);
  const Reach fds_ecrb =
      reach_of({node("median branch to flexor digitorum superficialis (proximal)"),
                node("radial branch to extensor carpi radialis brevis")});
  const Reach fds_pt = reach_of({node("median branch to flexor digitorum superficialis (proximal)"),
                                 node("median branch to pronator teres")});

  std::vector<Compared> all;
  all.push_back(of_row("anterior interosseous nerve, length available",
                       "ain-length-available-24arms", by_ain.donor_mm, false));
  all.push_back(of_row("recurrent branch, transferable length", "rmb-transferable-length-abou",
                       by_fdmb.recipient_mm, false));
  all.push_back(of_row("branch to flexor digiti minimi brevis, length", "fdmb-branch-length-abou",
                       by_fdmb.donor_mm, true));
  all.push_back(of_row("branch to third lumbrical, length", "l3-branch-length-abou",
                       by_third.donor_mm, true));
  all.push_back(of_row("branch to superficial flexor pollicis brevis, length",
                       "sfpb-branch-length-2025", in_palm.donor_mm, true));
  all.push_back(of_row("branch to long head of triceps, length",
                       "radial-long-head-length-witoonchart", long_head.donor_mm, true));
  all.push_back(of_row("branch to brachialis, length", "mcn-brachialis-branch-length-clinics",
                       brachialis.donor_mm, true));
  Summary to_deltoid = long_head.to_farthest_mm;
  all.push_back(of_row("anterior branch of axillary nerve, to deltoid",
                       "axillary-ant-branch-length-witoonchart", to_deltoid, true));
  all.push_back({"accessory nerve, mobilised stump", "san_to_infraspinatus_branch", 80.9,
                 80.9 - 1.645 * 16.0, 80.9 + 1.645 * 16.0, accessory.donor_mm, false});
  all.push_back({"overlap, flexor digiti minimi brevis on recurrent branch", "fdmb_to_thenar", 9.0,
                 2.0, 15.3, by_fdmb.slack_at_rest_mm, false});
  all.push_back({"overlap, third lumbrical on recurrent branch", "lum3_to_thenar", 17.8, 4.7, 27.5,
                 by_third.slack_at_rest_mm, false});
  // Printed with its range: deep and superficial part split over 67 mm (Schenck 2015).
  all.push_back({"ulnar nerve split for the anterior interosseous nerve", "ain_to_deep_ulnar", 67.0,
                 50.0, 85.0, only(97.0 - by_ain.slack_at_rest_mm.p50), false});
  all.push_back(of_row("gap from the donor's end to the bifurcation of the ulnar nerve",
                       "ain-pq-end-un-bifurcation-2016", only(97.0 - by_ain.slack_at_rest_mm.p50),
                       false));
  all.push_back(of_row("that coaptation, distal to the medial epicondyle",
                       "ain-coaptation-me-schenck2015", only(by_ain.sewn_at->distal_mm), true));
  if (in_palm.recipient_cut) {
    all.push_back(of_row(
        "coaptation in the palm, distal to that one", "dcbun-to-distal-transfer-site-2025",
        only(in_palm.recipient_cut->from_origin_mm.p50 - by_ain.recipient_cut->from_origin_mm.p50),
        true));
  }
  // Shares of limbs with their exact binomial 95 % interval.
  all.push_back({"long head swings to the axillary nerve, share of 10", "tri_long_to_ax_ant", 0.4,
                 0.122, 0.738, only(swung("radial branch to long head of triceps")), false});
  all.push_back({"medial head swings to the axillary nerve, share of 10", "tri_med_to_ax_ant", 1.0,
                 0.692, 1.0, only(swung("radial branch to medial head of triceps")), false});
  all.push_back({"lateral head swings to the axillary nerve, share of 10", "tri_lat_to_ax_ant", 1.0,
                 0.692, 1.0, only(swung("radial branch to lateral head of triceps")), false});
  // Without tension even while elbow and forearm move.
  all.push_back({"superficialis reaches the radial extensor, share of 28", "fds_to_ecrb", 1.0,
                 0.877, 1.0, only(fds_ecrb.chance), false});
  all.push_back({"superficialis reaches pronator teres, share of 28", "fds_to_pt", 1.0, 0.877, 1.0,
                 only(fds_pt.chance), false});
  all.push_back({"abductor digiti minimi reaches the thenar branch, share of 10", "adm_to_thenar",
                 1.0, 0.692, 1.0, only(by_adm.chance_at_rest), false});
  all.push_back({"anterior interosseous reaches a split of 97 mm, share of 28",
                 "dbun-max-dissociation-2016", 1.0, 0.877, 1.0, only(by_ain.chance_at_rest),
                 false});
  const auto at_rest = [](const std::string& donor, const std::string& recipient) {
    return only(reach_of(question_of("end-to-end", donor, recipient)).chance_at_rest);
  };
  const std::string suprascapular = "suprascapular nerve";
  all.push_back({"branch to rhomboid major reaches, share of 10", "rhomboid_to_ssn", 1.0, 0.692,
                 1.0, at_rest("dorsal scapular branch to rhomboid major", suprascapular), false});
  all.push_back(
      {"middle pectoral branch reaches, share of 26", "pectoral_to_ssn", 1.0, 0.868, 1.0,
       at_rest("lateral pectoral branch to sternocostal head of pectoralis major", suprascapular),
       false});
  const std::string superior = "lateral pectoral branch to clavicular head of pectoralis major";
  all.push_back({"superior pectoral branch reaches, share of 26", "pectoral_to_ssn", 0.654, 0.443,
                 0.828, at_rest(superior, suprascapular), false});
  all.push_back({"superior pectoral branch on axillary nerve, share of 26", "pectoral_to_axillary",
                 0.308, 0.143, 0.518, at_rest(superior, "axillary nerve"), false});
  all.push_back({"middle pectoral branch on axillary nerve, share of 26", "pectoral_to_axillary",
                 1.0, 0.868, 1.0,
                 at_rest("lateral pectoral branch to sternocostal head of pectoralis major",
                         "axillary nerve"),
                 false});
  const std::string inferior = "medial pectoral branch to sternocostal head of pectoralis major";
  all.push_back({"inferior pectoral branch reaches, share of 26", "pectoral_to_ssn", 1.0, 0.868,
                 1.0, at_rest(inferior, suprascapular), false});
  all.push_back({"inferior pectoral branch on axillary nerve, share of 26", "pectoral_to_axillary",
                 1.0, 0.868, 1.0, at_rest(inferior, "axillary nerve"), false});
  // Kazan Medical Journal, 121 bodies: the nerve alone, and with its branches before the muscle.
  all.push_back({"thoracodorsal nerve reaches, share of 121", "tdn_to_mcn", 0.587, 0.494, 0.676,
                 at_rest("thoracodorsal nerve", "musculocutaneous nerve"), false});
  all.push_back({"thoracodorsal branches reach, share of 121", "tdn_to_mcn", 0.95, 0.895, 0.982,
                 at_rest("thoracodorsal branches to latissimus dorsi", "musculocutaneous nerve"),
                 false});
  // Chu B et al. 2012 (30 sides) compared what is freed in front of the midaxillary line with the
  // way from there to the middle of the clavicle: the third and fourth are longer, the fifth with
  // 20 mm of the suprascapular nerve turned down, the sixth is shorter even then. They tested
  // means, which says of shares on which side of one half they lie.
  all.push_back({"third intercostal nerve longer than the way to the clavicle", "icn_to_ssn", 1.0,
                 0.5, 1.0, only(longer_than_to_clavicle("third intercostal nerve", 0.0)), false});
  all.push_back({"fourth, likewise", "icn_to_ssn", 1.0, 0.5, 1.0,
                 only(longer_than_to_clavicle("fourth intercostal nerve", 0.0)), false});
  all.push_back({"fifth, with 20 mm of the suprascapular nerve", "icn_to_ssn", 1.0, 0.5, 1.0,
                 only(longer_than_to_clavicle("fifth intercostal nerve", 20.0)), false});
  all.push_back({"sixth, with 20 mm of the suprascapular nerve", "icn_to_ssn", 0.0, 0.0, 0.5,
                 only(longer_than_to_clavicle("sixth intercostal nerve", 20.0)), false});
  // As the model itself frees the suprascapular nerve, not by 20 mm.
  all.push_back({"sixth, on the suprascapular nerve as the model frees it", "icn_to_ssn", 0.0, 0.0,
                 0.5, at_rest("sixth intercostal nerve", suprascapular), false});
  all.push_back({"intercostobrachial nerve reaches, share of 30", "sens_icbn_to_lcmn", 1.0, 0.884,
                 1.0, at_rest("intercostobrachial nerve", "lateral root of median nerve"), false});
  return all;
}

}  // namespace

TEST_CASE("Computed reach beside published figures", "[transfer][published]") {
  // Of the figures that the limb was not made from; the goal is four in five.
  int inside = 0;
  int judged = 0;
  for (const Compared& one : compared()) {
    if (one.own) continue;
    ++judged;
    inside += one.inside() ? 1 : 0;
  }
  CHECK(judged == kDissectedFigures);
  CHECK(inside == kDissectedInside);
}

namespace {

// Of a length: the chance that the mean of all studies lies in the printed spread of this one, when
// studies of every length behind it differ as those of the landmark distances do.
double expected_of_length(const Compared& one, const std::vector<double>& lengths_mm) {
  const auto between = limb::FitSummary::from(limb::own_tables()).between_studies;
  double variance = 0.0;
  for (const double mm : lengths_mm) variance += between.at(mm) * between.at(mm);
  const boost::math::normal true_mean(one.printed, std::sqrt(variance));
  return cdf(true_mean, one.high) - cdf(true_mean, one.low);
}

// Of a share of n limbs, `reached` of them: slack is normal between limbs, and studies differ as
// much as limbs do (fit_summary.csv: 2.3 mm + 17 % of a distance against 2.3 mm + 15 %).
double expected_of_share(const Compared& one, int reached, int n) {
  const boost::math::normal standard;
  const double here = quantile(standard, (reached + 0.5) / (n + 1.0));
  const double below = one.low <= 0.0 ? 0.0 : cdf(standard, quantile(standard, one.low) - here);
  const double above = one.high >= 1.0 ? 1.0 : cdf(standard, quantile(standard, one.high) - here);
  return above - below;
}

}  // namespace

TEST_CASE("The mean of all studies could expect to lie inside three in four published reaches",
          "[transfer][published]") {
  // An overlap rests on two branches and the gap between them, docs/transfer-reach.md.
  const std::map<std::string, std::vector<double>> lengths_mm{
      {"anterior interosseous nerve, length available", {72.0}},
      {"recurrent branch, transferable length", {20.7}},
      {"accessory nerve, mobilised stump", {80.9}},
      {"overlap, flexor digiti minimi brevis on recurrent branch", {13.8, 20.7, 25.5}},
      {"overlap, third lumbrical on recurrent branch", {24.1, 20.7, 27.0}},
      {"ulnar nerve split for the anterior interosseous nerve", {67.0}},
      {"gap from the donor's end to the bifurcation of the ulnar nerve", {80.2}}};
  const std::map<std::string, std::pair<int, int>> shares{
      {"long head swings to the axillary nerve, share of 10", {4, 10}},
      {"medial head swings to the axillary nerve, share of 10", {10, 10}},
      {"lateral head swings to the axillary nerve, share of 10", {10, 10}},
      {"superficialis reaches the radial extensor, share of 28", {28, 28}},
      {"superficialis reaches pronator teres, share of 28", {28, 28}},
      {"abductor digiti minimi reaches the thenar branch, share of 10", {10, 10}},
      {"anterior interosseous reaches a split of 97 mm, share of 28", {28, 28}},
      {"branch to rhomboid major reaches, share of 10", {10, 10}},
      {"middle pectoral branch reaches, share of 26", {26, 26}},
      {"superior pectoral branch reaches, share of 26", {17, 26}},
      {"superior pectoral branch on axillary nerve, share of 26", {8, 26}},
      {"middle pectoral branch on axillary nerve, share of 26", {26, 26}},
      {"inferior pectoral branch reaches, share of 26", {26, 26}},
      {"inferior pectoral branch on axillary nerve, share of 26", {26, 26}},
      {"thoracodorsal nerve reaches, share of 121", {71, 121}},
      {"thoracodorsal branches reach, share of 121", {115, 121}},
      {"intercostobrachial nerve reaches, share of 30", {30, 30}}};
  int judged = 0;
  int inside = 0;
  double expected = 0.0;
  for (const Compared& one : compared()) {
    if (one.own) continue;
    if (const auto length = lengths_mm.find(one.what); length != lengths_mm.end()) {
      expected += expected_of_length(one, length->second);
    } else if (const auto share = shares.find(one.what); share != shares.end()) {
      expected += expected_of_share(one, share->second.first, share->second.second);
    } else {
      continue;  // the intercostal nerves, of which means alone were compared
    }
    ++judged;
    inside += one.inside() ? 1 : 0;
  }
  // What the page says.
  CHECK(judged == 24);
  CHECK(inside == 16);
  CHECK(expected == Approx(17.9).margin(0.1));
}

namespace {

// A published transfer with the pair of branches that reaches most often.
struct Transfer {
  std::string id;
  std::string pair;
  Reach reach;
};

std::vector<Transfer> all_transfers() {
  std::vector<Transfer> all;
  const auto& table = limb::own_tables().table("transfers");
  for (const auto row : table) {
    std::optional<Transfer> best;
    for (const std::string& donor : row.list("donor_node")) {
      for (const std::string& recipient : row.list("recipient_node")) {
        Reach reach = reach_of(question_of(std::string(row.text("coaptation")), donor, recipient));
        if (best && (!reach.slack_mm ||
                     (best->reach.slack_mm && reach.slack_mm->p50 <= best->reach.slack_mm->p50))) {
          continue;
        }
        best = Transfer{std::string(row.text("id")), donor + " to " + recipient, std::move(reach)};
      }
    }
    all.push_back(*std::move(best));
  }
  return all;
}

}  // namespace

TEST_CASE("All published transfers within one limb are computed, the others say why not",
          "[transfer][published]") {
  int computed = 0;
  for (const Transfer& transfer : all_transfers()) {
    INFO(transfer.id);
    const bool answered = transfer.reach.state != ReachState::not_computable;
    CHECK(answered == transfer.reach.why.empty());
    computed += answered ? 1 : 0;
  }
  CHECK(computed == 70);  // the other two come from the other limb
}

TEST_CASE("The transfers of docs/transfer-reach.md", "[.reach-transfers]") {
  constexpr const char* kWords[] = {"reaches", "with graft", "does not reach", "not computable"};
  for (const auto& [id, pair, reach] : all_transfers()) {
    const char* state = kWords[static_cast<int>(reach.state)];
    if (!reach.slack_mm) {
      std::cout << fmt::format("| `{}` | {} | {} | | | |\n", id, pair, state);
      continue;
    }
    std::cout << fmt::format("| `{}` | {} | {} | {:.0f} ({:.0f} to {:.0f}) | {:.2f} | {:.0f} |\n",
                             id, pair, state, reach.slack_mm->p50, reach.slack_mm->p05,
                             reach.slack_mm->p95, reach.chance, reach.to_nearest_mm.p50);
  }
}

TEST_CASE("The table of docs/transfer-reach.md", "[.reach-table]") {
  // The other reading of the swing distances, not counted.
  for (const char* head : {"long", "medial", "lateral"}) {
    std::cout << fmt::format(
        "| *{} head, freed to its origin* | | | *{:.2f}* | |\n", head,
        swung(fmt::format("radial branch to {} head of triceps", head), false));
  }
  for (const Compared& one : compared()) {
    const int digits = one.printed <= 1.0 ? 2 : 1;
    std::cout << fmt::format(
        "| {} | `{}` | {:.{}f} ({:.{}f} to {:.{}f}) | {:.{}f}{} | {}{} |\n", one.what, one.source,
        one.printed, digits, one.low, digits, one.high, digits, one.computed.p50, digits,
        one.computed.sd > 0.0
            ? fmt::format(" ({:.1f} to {:.1f})", one.computed.p05, one.computed.p95)
            : "",
        one.inside() ? "inside" : "outside", one.own ? ", same row" : "");
  }
}

}  // namespace endplate::transfer
