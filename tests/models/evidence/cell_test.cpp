#include "models/evidence/cell.hpp"

#include <catch2/catch.hpp>

using namespace endplate::evidence;

TEST_CASE("a cell is a number only as a whole", "[evidence]") {
  CHECK(parse_number("12.5") == 12.5);
  CHECK(parse_number("-114") == -114.0);
  for (const char* wrong :
       {"", " 12", "12 ", "12mm", "+12", "1,5", "nan", "inf", "-inf", "1e999", "--3"}) {
    INFO(wrong);
    CHECK_FALSE(parse_number(wrong));
  }
}

TEST_CASE("a list cell splits at every semicolon", "[evidence]") {
  CHECK(split_items("").empty());
  CHECK(split_items("a").size() == 1);
  CHECK(split_items("a;b") == std::vector<std::string_view>{"a", "b"});
  CHECK(split_items("a;;b").size() == 3);
  CHECK(split_items("a;").back().empty());
}
