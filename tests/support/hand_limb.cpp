#include "tests/support/hand_limb.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <stdexcept>

namespace endplate::test {
namespace {

using anatomy::Anatomy;
using anatomy::NerveMetrics;
using anatomy::NodeIndex;

// Nerve, its length, and where its branches leave it, all mm from its beginning.
struct HandNerve {
  std::string name;
  double length_mm;
  std::map<std::string, double> branches;
};

// clang-format off
const std::vector<HandNerve> kNerves{
    {"C4 root", 50, {{"phrenic nerve", 10}, {"dorsal scapular nerve", 15}}},
    {"C5 root", 50, {{"phrenic nerve", 10}, {"dorsal scapular nerve", 15}, {"long thoracic nerve", 20}, {"superior trunk", 50}}},
    {"C6 root", 50, {{"long thoracic nerve", 20}, {"superior trunk", 50}}},
    {"C7 root", 50, {{"long thoracic nerve", 25}, {"middle trunk", 50}}},
    {"superior trunk", 30, {{"nerve to subclavius", 12}, {"suprascapular nerve", 20},
        {"anterior division of superior trunk", 30}, {"posterior division of superior trunk", 30}}},
    {"lateral cord", 60, {{"lateral pectoral nerve", 5}, {"musculocutaneous nerve", 60}, {"lateral root of median nerve", 60}}},
    {"medial cord", 60, {{"medial pectoral nerve", 10}, {"medial brachial cutaneous nerve", 35},
        {"medial antebrachial cutaneous nerve", 40}, {"ulnar nerve", 60}, {"medial root of median nerve", 60}}},
    {"posterior cord", 60, {{"upper subscapular nerve", 10}, {"thoracodorsal nerve", 25}, {"lower subscapular nerve", 35},
        {"axillary nerve", 50}, {"radial nerve", 60}}},
    {"accessory nerve", 80, {{"accessory branch to sternocleidomastoid", 20}, {"accessory branch to descending trapezius", 60},
        {"distal part of accessory nerve", 80}}},
    {"suprascapular nerve", 120, {{"suprascapular branch to supraspinatus", 75}, {"suprascapular branch to infraspinatus", 115}}},
    {"axillary nerve", 60, {{"anterior branch of axillary nerve", 45}, {"posterior branch of axillary nerve", 45}}},
    {"anterior branch of axillary nerve", 60, {{"axillary branch to spinal deltoid", 10}, {"axillary branch to acromial deltoid", 25},
        {"axillary branch to clavicular deltoid", 45}}},
    {"posterior branch of axillary nerve", 40, {{"axillary branch to teres minor", 8}, {"axillary branch to spinal deltoid", 20},
        {"superior lateral brachial cutaneous nerve", 40}}},
    {"musculocutaneous nerve", 230, {{"musculocutaneous branch to coracobrachialis", 25}, {"musculocutaneous branch to biceps brachii", 100},
        {"musculocutaneous branch to brachialis", 150}, {"lateral antebrachial cutaneous nerve", 220}}},
    {"radial nerve", 285, {{"posterior brachial cutaneous nerve", 10}, {"radial branch to long head of triceps", 20},
        {"radial branch to medial head of triceps", 45}, {"radial branch to lateral head of triceps", 90},
        {"radial branch to medial head of triceps and anconeus", 100}, {"inferior lateral brachial cutaneous nerve", 125},
        {"posterior antebrachial cutaneous nerve", 130}, {"radial branch to brachialis", 210}, {"radial branch to brachioradialis", 235},
        {"radial branch to extensor carpi radialis longus", 255}, {"radial branch to extensor carpi radialis brevis", 283},
        {"superficial branch of radial nerve", 285}, {"deep branch of radial nerve", 285}}},
    {"deep branch of radial nerve", 80, {{"radial branch to extensor carpi radialis brevis", 10}, {"radial branch to supinator", 35},
        {"posterior interosseous nerve", 80}}},
    {"posterior interosseous nerve", 150, {{"posterior interosseous branch to extensor digitorum", 10},
        {"posterior interosseous branch to extensor carpi ulnaris", 15}, {"posterior interosseous branch to extensor digiti minimi", 25},
        {"posterior interosseous branch to abductor pollicis longus", 40}, {"posterior interosseous branch to extensor pollicis longus", 55},
        {"posterior interosseous branch to extensor pollicis brevis", 65}, {"posterior interosseous branch to extensor indicis", 85}}},
    {"superficial branch of radial nerve", 220, {{"radial branch to extensor carpi radialis brevis", 8},
        {"dorsal digital nerve of thumb radial side", 150}, {"dorsal digital nerve of thumb ulnar side", 155},
        {"dorsal digital nerve of index radial side", 170}, {"dorsal digital nerve of index ulnar and middle radial sides", 175},
        {"dorsal digital nerve of middle ulnar and ring radial sides", 180}}},
    {"median nerve", 490, {{"expendable motor fascicle of median nerve", 120}, {"median branch to pronator teres", 220},
        {"median branch to flexor carpi radialis", 240}, {"median branch to palmaris longus", 245},
        {"median branch to flexor digitorum superficialis (proximal)", 250},
        {"communicating branch of median nerve with ulnar nerve in forearm", 270}, {"anterior interosseous nerve", 275},
        {"median branch to flexor digitorum superficialis (distal)", 300}, {"palmar cutaneous branch of median nerve", 400},
        {"recurrent motor branch of median nerve", 485}, {"common palmar digital nerve 1 of median nerve", 490},
        {"common palmar digital nerve 2 of median nerve", 490}, {"common palmar digital nerve 3 of median nerve", 490}}},
    {"anterior interosseous nerve", 200, {{"communicating branch of median nerve with ulnar nerve in forearm", 15},
        {"anterior interosseous branch to flexor digitorum profundus of index", 25},
        {"anterior interosseous branch to flexor digitorum profundus of middle finger", 30},
        {"anterior interosseous branch to flexor pollicis longus", 40}, {"anterior interosseous branch to pronator quadratus", 150}}},
    {"ulnar nerve", 480, {{"expendable motor fascicle of ulnar nerve", 120}, {"articular branches of ulnar nerve to elbow", 230},
        {"ulnar branch to flexor carpi ulnaris", 245}, {"ulnar branch to flexor digitorum profundus", 260}, {"nerve of Henle", 340},
        {"palmar cutaneous branch of ulnar nerve", 350}, {"dorsal branch of ulnar nerve", 385},
        {"transverse palmar cutaneous branch of ulnar nerve", 470}, {"superficial branch of ulnar nerve", 480},
        {"deep branch of ulnar nerve", 480}}},
    {"deep branch of ulnar nerve", 90, {{"deep ulnar branch to abductor digiti minimi", 8},
        {"deep ulnar branch to flexor digiti minimi brevis", 12}, {"deep ulnar branch to opponens digiti minimi", 18}}},
    {"medial antebrachial cutaneous nerve", 250, {{"arm filament of medial antebrachial cutaneous nerve", 40},
        {"anterior branch of medial antebrachial cutaneous nerve", 200}, {"posterior branch of medial antebrachial cutaneous nerve", 200}}},
    {"medial pectoral nerve", 60, {{"ansa pectoralis", 10}, {"medial pectoral branch to pectoralis minor", 30},
        {"medial pectoral branch to sternocostal head of pectoralis major", 40}}},
};
// clang-format on

// Branches without a figure of their own leave in the order of the tree, between the last figure
// and the end.
NerveMetrics build(const anatomy::NerveTree& tree) {
  NerveMetrics metrics;
  metrics.length_mm.assign(tree.size(), 60.0);
  metrics.leaves_parent_at_mm.resize(tree.size());
  for (NodeIndex i = 0; i < tree.size(); ++i) {
    metrics.leaves_parent_at_mm[i].assign(tree.node(i).parents.size(), NerveMetrics::kUnknown);
  }
  const auto place = [&](NodeIndex child, NodeIndex parent) -> double& {
    const auto& parents = tree.node(child).parents;
    const auto which = std::ranges::find(parents, parent) - parents.begin();
    return metrics.leaves_parent_at_mm[child].at(static_cast<std::size_t>(which));
  };
  std::vector<double> last(tree.size(), 0.0);
  for (const HandNerve& nerve : kNerves) {
    const NodeIndex parent = tree.find(nerve.name).value();
    metrics.length_mm[parent] = nerve.length_mm;
    for (const auto& [name, mm] : nerve.branches) {
      place(tree.find(name).value(), parent) = mm;
      last[parent] = std::max(last[parent], mm);
    }
  }
  for (NodeIndex parent = 0; parent < tree.size(); ++parent) {
    const auto& children = tree.node(parent).children;
    for (std::size_t k = 0; k < children.size(); ++k) {
      double& mm = place(children[k], parent);
      if (mm == mm) continue;
      const double share = static_cast<double>(k + 1) / static_cast<double>(children.size());
      mm = last[parent] + (metrics.length_mm[parent] - last[parent]) * share;
    }
  }
  return metrics;
}

}  // namespace

const evidence::DataPackage& shipped_package() {
  static const evidence::DataPackage package = [] {
    auto read = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    if (!read) throw std::runtime_error(read.error().problems.front().what);
    return std::move(*read);
  }();
  return package;
}

const Anatomy& shipped_anatomy() {
  static const Anatomy anatomy = [] {
    auto read = Anatomy::from(shipped_package());
    if (!read) {
      const Problem& first = read.error().problems.front();
      throw std::runtime_error(first.place + ": " + first.what);
    }
    return std::move(*read);
  }();
  return anatomy;
}

const NerveMetrics& hand_limb() {
  static const NerveMetrics metrics = build(shipped_anatomy().tree());
  return metrics;
}

examination::TreeInjury injury(const std::string& nerve, double from_start_mm, double sd_mm) {
  const NodeIndex node = shipped_anatomy().tree().find(nerve).value();
  return {{{node, from_start_mm}, sd_mm, false, "here"}, examination::Extent::complete};
}

examination::TreeInjury avulsion(const std::string& root) {
  const NodeIndex node = shipped_anatomy().root_node(root).value();
  return {{{node, 0.0}, 0.0, true, "at the cord"}, examination::Extent::complete};
}

examination::DeficitAnswer deficit_of(const std::vector<examination::TreeInjury>& injuries,
                                      const std::vector<std::string>& variants) {
  std::vector<std::size_t> given;
  for (const std::string& name : variants) {
    given.push_back(shipped_anatomy().find_variant(name).value());
  }
  return examination::deficit(shipped_anatomy(), hand_limb(), {}, injuries, given);
}

std::string state_of(const examination::DeficitAnswer& answer, const std::string& target) {
  if (const auto muscle = shipped_anatomy().find_muscle(target)) {
    for (const auto& row : answer.muscles) {
      if (row.muscle == *muscle) return std::string(to_string(row.state));
    }
    return "not there";
  }
  const std::size_t area = shipped_anatomy().find_area(target).value();
  for (const auto& row : answer.areas) {
    if (row.area == area) return std::string(to_string(row.state));
  }
  return "not there";
}

}  // namespace endplate::test
