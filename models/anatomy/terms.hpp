#pragma once
// Finds the standard name for what a person wrote. The only place that compares names.
//
// Standard names: of nerves, column `child` of nerve_tree.csv; of muscles, the abbreviation in
// muscles.csv; of areas and landmarks, the first column of skin_areas.csv and landmarks.csv; of
// variants, variant_effects.csv and variants.csv; of movements, movements.csv (where the package
// lacks it, the ranges of motion of joints.csv); of graft donors, graft_donors.csv; of body
// measures, limb_measures.csv (where the package lacks it, anthropometry.csv). aliases.csv adds the
// trade's abbreviations and older names.
#include <expected>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "models/anatomy/term_key.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::anatomy {

struct TermReading {
  // At least one; several where one word stands for parts ("deltoid", "thumb pulp").
  std::vector<std::string> names;
  // The word was misspelt and could only mean this. Whoever shows an answer says how it was read.
  bool slip = false;
};

struct UnknownTerm {
  std::vector<std::string> nearest;  // as they may be written, nearest first; at least one
};

class Terms {
 public:
  // Refuses an alias that names no row of its table or that has two meanings.
  static Expected<Terms> from(const evidence::DataPackage& package);

  // Case, blanks, hyphens, word order, British and American spelling do not matter. A slip is
  // read only when it is the only reading: at most one letter off in a word of five to seven
  // letters, two in a longer one, two in all, never in a digit, never in a shorter word (ECRL is
  // not ECRB), and never where the word written is itself a word of the tables ("radial" is not a
  // slip of "medial").
  std::expected<TermReading, UnknownTerm> resolve(TermKind kind, std::string_view typed) const;

  // "extensor carpi radialis longus (ECRL)" for a muscle's key; other names stand for themselves.
  std::string full_name(TermKind kind, std::string_view standard) const;

  // Every standard name of a kind, in the order of its table.
  const std::vector<std::string>& names(TermKind kind) const;

 private:
  using Names = std::vector<std::string>;
  struct Key {
    std::vector<std::string> words;
    Names names;
  };
  // Keys of one strength of matching; a text with two meanings is kept as such.
  using Index = std::map<std::string, std::set<Names>, std::less<>>;
  struct Vocabulary {
    Names standard;
    std::vector<Key> keys;
    Index exact_case;  // as written in the tables: RHm and RHM are two muscles
    Index phrase;      // normalised words in their order
    Index bag;         // meaningful words in any order
    Index compact;     // without blanks
    std::map<std::string, std::string, std::less<>> full_names;
  };

  Vocabulary& of(TermKind kind) { return vocabularies_[kind]; }
  void add(TermKind kind, std::string_view written, Names names);
  void add_nerves(const evidence::DataPackage& package);
  void add_muscles(const evidence::DataPackage& package);
  void add_areas(const evidence::DataPackage& package);
  void add_landmarks(const evidence::DataPackage& package);
  void add_variants(const evidence::DataPackage& package);
  void add_column(const evidence::DataPackage& package, TermKind kind, std::string_view table,
                  std::string_view column);
  std::vector<Problem> add_aliases(const evidence::DataPackage& package);
  std::set<Names> read_slip(const Vocabulary& vocabulary,
                            const std::vector<std::string>& words) const;
  UnknownTerm unknown(TermKind kind, const std::vector<std::string>& words) const;

  std::map<TermKind, Vocabulary> vocabularies_;
  std::set<std::string, std::less<>> known_words_;
};

}  // namespace endplate::anatomy
