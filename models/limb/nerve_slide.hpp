#pragma once
// How a nerve slides along its bed when the bed lengthens or shortens.
//
// The nerve is an elastic thread tied all along to its bed by the loose tissue about it, and fixed
// at both ends. With stiffness EA of the nerve and k of the tissue (force per length and slide) the
// slide u obeys lambda^2 (u' + e)' = u, where e is the strain of the bed, u' + e that of the nerve
// and lambda = sqrt(EA / k) the tether length: what happens at one place is felt about that far
// away. Shear lag as in any text on fibres in a matrix (Cox, Br J Appl Phys 1952;3:72, recalled). A
// nerve that would be shortened lies in waves instead; the thread that takes a push like a pull
// stands for that, for published nerves slide as far when their bed shortens as when it lengthens.
#include <span>
#include <vector>

namespace endplate::limb {

struct Slide {
  std::vector<double> slide_mm;  // of each place along its bed, positive toward the far end
  std::vector<double> strain;    // of the nerve between neighbours, against rest; one fewer
};

// `rest_mm`, `posed_mm`: arc lengths of the bed's places before and after, strictly ascending.
// `tether_mm`: the tether length at each place, > 0.
Slide slide(std::span<const double> rest_mm, std::span<const double> posed_mm,
            std::span<const double> tether_mm);

}  // namespace endplate::limb
