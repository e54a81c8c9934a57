#pragma once
// A lecture as data: a file of steps that a lecturer can edit, reorder and share.
#include <QString>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/core/error.hpp"

namespace endplate::ui {

struct LectureStep {
  QString title;
  QString text;
  std::vector<std::string>
      layers;  // of the view: "skin", "bones", "muscles", "nerves", "landmarks"
  std::vector<std::string> nerves;  // highlighted; standard names
  std::string view;                 // from where one looks: "anterior", "posterior", ...
  bool supply = false;              // list what the nerves move and serve, from the tables
};

struct Lecture {
  QString title;
  std::vector<LectureStep> steps;  // at least one
};

// {"endplate_lecture": 1, "title", "steps": [{"title", "text", "layers", "nerves", "view",
// "supply"}]}. A nerve that the tables do not know, a layer or a view outside its list and an
// unknown key are problems with their place as a JSON Pointer.
Expected<Lecture> read_lecture(std::string_view text, const anatomy::NerveTree& tree);

// What a nerve and its branches move and serve, from the tables: muscles by their abbreviation,
// areas by name.
struct NerveSupply {
  std::vector<std::string> muscles;
  std::vector<std::string> areas;
};
NerveSupply supply_of(const anatomy::Anatomy& anatomy, const std::vector<std::string>& nerves);

}  // namespace endplate::ui
