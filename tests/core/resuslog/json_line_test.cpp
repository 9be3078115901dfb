#include "core/resuslog/json_line.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

std::string nestedArrays(int levels) {
  return "{\"a\":" + std::string(static_cast<std::size_t>(levels - 1), '[') +
         std::string(static_cast<std::size_t>(levels - 1), ']') + "}";
}

std::string nestedObjects(int levels) {
  std::string text;
  for (int i = 0; i < levels; ++i) {
    text += i + 1 < levels ? "{\"a\":" : "{";
  }
  return text + std::string(static_cast<std::size_t>(levels), '}');
}

TEST(ObjectParser, takesWhatIsOneObject) {
  ObjectParser parser;
  for (const std::string text :
       {"{}", " {} ", "\t{\"a\":1}\r", R"({"a":"\u00e9\ud83d\ude00"})", R"({"a":{"a":{"a":[]}}})",
        R"({"a":1,"A":2,"":3})", R"({"a":1e308,"b":-1e-400})", R"({"a":18446744073709551616})",
        R"({"a":-123456789012345678901234567890,"b":[{"c":1},{"c":1}]})", R"({"\u0000":0})"}) {
    EXPECT_TRUE(parser.parse(text)) << text;
  }
  EXPECT_TRUE(parser.parse(nestedArrays(64)));
  EXPECT_TRUE(parser.parse(nestedObjects(64)));
}

TEST(ObjectParser, refusesEverythingElse) {
  ObjectParser parser;
  const std::string withNul("{\"a\":1}\0", 8);
  for (const std::string& text : {std::string(),
                                  std::string("{"),
                                  std::string("}"),
                                  std::string("[]"),
                                  std::string("1"),
                                  std::string("\"a\""),
                                  std::string("null"),
                                  std::string("[1"),
                                  std::string("{\"a\"}"),
                                  std::string("{\"a\":}"),
                                  std::string("{\"a\":1,}"),
                                  std::string("{a:1}"),
                                  std::string("{'a':1}"),
                                  std::string("{\"a\":NaN}"),
                                  std::string("{\"a\":Infinity}"),
                                  std::string("{\"a\":-Infinity}"),
                                  std::string("{\"a\":nan}"),
                                  std::string("{\"a\":1e999}"),
                                  std::string("{\"a\":01}"),
                                  std::string("{\"a\":+1}"),
                                  std::string("{\"a\":.5}"),
                                  std::string("{\"a\":1.}"),
                                  std::string("{\"a\":0x10}"),
                                  std::string("{\"a\":tru}"),
                                  std::string("{\"a\":1}{\"b\":2}"),
                                  std::string("{\"a\":1} x"),
                                  std::string("{\"a\":\"\t\"}"),
                                  std::string("{\"a\":\"\\x\"}"),
                                  std::string("{\"a\":\"\xff\"}"),
                                  std::string("{\"a\":\"\xc0\xaf\"}"),
                                  std::string("{\"a\":\"\xed\xa0\x80\"}"),
                                  std::string("{\"a\":\"\\ud800\"}"),
                                  std::string("{\"a\":\"\\udc00\"}"),
                                  std::string("{\"a\":\"\\uDC00\"}"),
                                  std::string("// no\n{}"),
                                  withNul,
                                  std::string("\xEF\xBB\xBF{\"a\":18446744073709551616}"),
                                  std::string("{\"a\":18446744073709551616}\0", 25),
                                  nestedArrays(65),
                                  nestedObjects(65),
                                  nestedArrays(5000),
                                  nestedObjects(100000)}) {
    const auto object = parser.parse(text);
    ASSERT_FALSE(object) << text.substr(0, 80);
    EXPECT_FALSE(sentence(object.error()).empty());
  }
}

TEST(ObjectParser, refusesKeysGivenTwiceAtAnyLevel) {
  ObjectParser parser;
  for (const char* text :
       {R"({"a":1,"a":1})", R"({"a":1,"\u0061":2})", R"({"b":{"a":1,"a":2}})",
        R"({"b":[[{"a":1,"c":0,"a":2}]]})", R"({"a":18446744073709551616,"a":1})",
        R"({"n":18446744073709551616,"b":[{"a":1,"\u0061":2}]})"}) {
    const auto object = parser.parse(text);
    ASSERT_FALSE(object) << text;
    EXPECT_NE(sentence(object.error()).find("twice"), std::string::npos)
        << sentence(object.error());
  }
  std::string many = "{";
  for (int i = 0; i < 5000; ++i) {
    many += "\"k" + std::to_string(i) + "\":0,";
  }
  EXPECT_TRUE(parser.parse(many + "\"x\":0}"));
  EXPECT_FALSE(parser.parse(many + "\"k17\":0}"));
}

/// Both ways of reading give the same: a number of more than 64 bits makes the patient one run.
TEST(ObjectParser, theQuickAndThePatientWayAgree) {
  const std::string inside =
      R"("t":-1.25,"text":"a\"b\\c\n\u00e9","yes":true,"no":false,"nil":null,"list":[1,{"x":"]"}],)"
      R"("object":{"t":"}"},"empty":"","e":1E2)";
  ObjectParser quick;
  ObjectParser patient;
  const std::string quickText = "{" + inside + ",\"big\":1}";
  const std::string patientText = "{" + inside + ",\"big\":99999999999999999999}";
  const auto a = quick.parse(quickText);
  const auto b = patient.parse(patientText);
  ASSERT_TRUE(a && b);
  for (const char* key : {"t", "text", "yes", "no", "nil", "list", "object", "empty", "e"}) {
    JsonMember* x = (*a)->find(key);
    JsonMember* y = (*b)->find(key);
    ASSERT_TRUE(x != nullptr && y != nullptr) << key;
    EXPECT_EQ(x->kind, y->kind) << key;
    EXPECT_EQ(x->number, y->number) << key;
    EXPECT_EQ(x->flag, y->flag) << key;
    EXPECT_EQ(x->text, y->text) << key;
    EXPECT_EQ((*a)->raw(*x), (*b)->raw(*y)) << key;
  }
  EXPECT_EQ((*b)->find("big")->number, 1e20);
  EXPECT_EQ((*a)->find("missing"), nullptr);
  EXPECT_EQ((*a)->find("x"), nullptr);
}

TEST(FlatObject, whatNobodyTookIsKeptAsSpelled) {
  ObjectParser parser;
  const auto object =
      parser.parse("{ \"a\" : 1.50 , \"b\":[ 1, 2 ],\"c\\u0041\":\"\\u00e9\" ,\"d\":{\"e\":[]}}");
  ASSERT_TRUE(object);
  EXPECT_EQ((*object)->rest(),
            "\"a\":1.50,\"b\":[ 1, 2 ],\"c\\u0041\":\"\\u00e9\",\"d\":{\"e\":[]}");
  (*object)->find("b")->taken = true;
  (*object)->find("cA")->taken = true;
  EXPECT_EQ((*object)->rest(), "\"a\":1.50,\"d\":{\"e\":[]}");
}

TEST(SplitArray, givesEachElementAsSpelled) {
  EXPECT_EQ(splitArray("[ 1 ,\"a,]\", [2, 3],{\"x\":[]} , true ]"),
            (std::vector<std::string_view>{"1", "\"a,]\"", "[2, 3]", "{\"x\":[]}", "true"}));
  EXPECT_TRUE(splitArray("[]").empty());
  EXPECT_TRUE(splitArray("[ ]").empty());
}

TEST(ObjectParser, isGoodAfterALongLine) {
  ObjectParser parser;
  const std::string text = "{\"a\":\"" + std::string(5000000, 'x') + "\"}";
  const auto large = parser.parse(text);
  ASSERT_TRUE(large);
  EXPECT_EQ((*large)->find("a")->text.size(), 5000000U);
  const auto small = parser.parse("{\"a\":\"y\"}");
  ASSERT_TRUE(small);
  EXPECT_EQ((*small)->find("a")->text, "y");
}

} // namespace
} // namespace afterbeat
