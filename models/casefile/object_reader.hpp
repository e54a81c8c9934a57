#pragma once
// Takes the keys of one JSON object, each by the type that it must have, and collects problems.
#include <array>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"
#include "models/casefile/words.hpp"
#include "models/core/error.hpp"

namespace endplate::casefile {

// A date of the file, for the order of events.
struct DatedPart {
  enum class Kind { injury, finding, operation_done, operation_planned };
  std::string place;
  Kind kind;
  Date date;
};

// What every part of the reader shares.
struct Reading {
  const anatomy::Terms& terms;
  const ReadRules& rules;
  std::vector<Problem> problems{};
  std::vector<std::string> assumptions{};
  std::vector<DatedPart> dated{};
  std::vector<std::pair<std::string, Injury>> injuries{};  // with their places

  void add(std::string place, std::string what, std::string mend) {
    problems.push_back({std::move(place), std::move(what), std::move(mend)});
  }
  // The standard names of `typed`, or a problem and nothing. A slip becomes an assumption.
  std::vector<std::string> resolve(anatomy::TermKind kind, const std::string& typed,
                                   const std::string& place);
  // The same where a name must stand for one thing.
  std::optional<std::string> resolve_one(anatomy::TermKind kind, const std::string& typed,
                                         const std::string& place);
};

std::string_view kind_in_words(anatomy::TermKind kind);

class ObjectReader {
 public:
  // `object` must be a JSON object.
  ObjectReader(const nlohmann::json& object, std::string place, Reading& reading)
      : object_(object), place_(std::move(place)), reading_(reading) {}

  const std::string& place() const { return place_; }
  std::string place_of(std::string_view key) const;
  Reading& reading() const { return reading_; }
  bool has(std::string_view key) const { return object_.contains(key); }
  bool empty() const { return object_.empty(); }
  void add(std::string_view key, std::string what, std::string mend) const {
    reading_.add(place_of(key), std::move(what), std::move(mend));
  }

  // Each returns nothing when the key is absent; a wrong value is nothing and a problem.
  std::optional<double> number(std::string_view key, double low, double high,
                               std::string_view unit);
  std::optional<int> integer(std::string_view key, int low, int high);
  std::optional<bool> boolean(std::string_view key);
  std::optional<std::string> text(std::string_view key);
  // A date is noted for the order of events as well.
  std::optional<Date> date(std::string_view key, DatedPart::Kind kind);
  std::optional<ObjectReader> object(std::string_view key);
  // One standard name, or the names of the parts that the word stands for.
  std::optional<std::string> term(std::string_view key, anatomy::TermKind kind);
  std::vector<std::string> terms(std::string_view key, anatomy::TermKind kind);
  // One of a few words, as written.
  std::optional<std::string> word(std::string_view key, std::span<const std::string_view> words);
  template <class T, std::size_t N>
  std::optional<T> word(std::string_view key, const std::array<Word<T>, N>& words) {
    std::array<std::string_view, N> texts;
    for (std::size_t i = 0; i < N; ++i) texts[i] = words[i].text;
    const auto chosen = word(key, std::span<const std::string_view>(texts));
    if (!chosen) return std::nullopt;
    for (const auto& item : words) {
      if (item.text == *chosen) return item.value;
    }
    return std::nullopt;
  }
  // Calls `use` with each item of a list of the wanted type.
  void each_object(std::string_view key, const std::function<void(ObjectReader&)>& use);
  void each_text(std::string_view key,
                 const std::function<void(const std::string&, const std::string& place)>& use);
  // A problem when the key is absent.
  void require(std::string_view key, std::string_view mend);
  // Every key of the object that nobody took is a problem.
  void finish() const;
  // The value of a key whatever its type, or nothing.
  const nlohmann::json* take(std::string_view key);
  // All the keys, each of which counts as taken.
  std::vector<std::string> take_all_keys();

 private:
  const nlohmann::json* take_list(std::string_view key);
  void wrong_type(std::string_view key, const nlohmann::json& value, std::string_view wanted,
                  std::string_view mend) const;

  const nlohmann::json& object_;
  std::string place_;
  Reading& reading_;
  std::set<std::string, std::less<>> taken_;
};

}  // namespace endplate::casefile
