#include "core/bytes/digest.h"

#include <limits>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

TEST(Sha256, knowsThePublishedDigests) {
  // FIPS 180-2, appendix B (still NIST's example values for FIPS 180-4), and the empty message of
  // the NIST CAVP short-message vectors.
  EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(sha256Hex(std::string(1000000, 'a')),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
  EXPECT_EQ(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(Sha256, piecesMakeTheSameDigestAndMoreMayFollow) {
  Sha256 sha;
  sha.add("a");
  const std::string first = sha.hex();
  EXPECT_EQ(first, sha256Hex("a"));
  EXPECT_EQ(sha.hex(), first);
  sha.add("");
  sha.add("bc");
  EXPECT_EQ(sha.hex(), sha256Hex("abc"));
  Sha256 moved = std::move(sha);
  moved.add("d");
  EXPECT_EQ(moved.hex(), sha256Hex("abcd"));
}

TEST(UuidFrom, makesVersion8NamesThatOnlyDependOnTheSeed) {
  for (const char* seed : {"", "a", "b", "urn", "another seed", "0123456789"}) {
    const std::string name = uuidFrom(seed);
    ASSERT_EQ(name.size(), 45U);
    EXPECT_EQ(name.substr(0, 9), "urn:uuid:");
    // RFC 9562, sections 4.1 and 4.2: variant 10xx, version 8.
    EXPECT_EQ(name[23], '8') << name;
    EXPECT_NE(std::string("89ab").find(name[28]), std::string::npos) << name;
    for (const std::size_t dash : {17U, 22U, 27U, 32U}) {
      EXPECT_EQ(name[dash], '-') << name;
    }
    EXPECT_EQ(name, uuidFrom(seed));
  }
  EXPECT_NE(uuidFrom("a"), uuidFrom("b"));
}

struct Pair {
  const char* plain;
  const char* base64;
};

// RFC 4648, section 10.
constexpr Pair kRfc4648[] = {{"", ""},
                             {"f", "Zg=="},
                             {"fo", "Zm8="},
                             {"foo", "Zm9v"},
                             {"foob", "Zm9vYg=="},
                             {"fooba", "Zm9vYmE="},
                             {"foobar", "Zm9vYmFy"}};

TEST(Base64, knowsTheVectorsOfRfc4648) {
  for (const auto& [plain, base64] : kRfc4648) {
    EXPECT_EQ(base64Encode(plain), base64);
    EXPECT_EQ(base64Decode(base64), plain);
  }
}

TEST(Base64, takesOnlyTheStrictForm) {
  for (const char* text :
       {"Z", "Zg", "Zg=", "Zg===", "Zg==\n", " Zg==", "Z g=", "=", "==", "====", "A===", "Zg==Zg==",
        "Zm9v====", "Zm9-", "Zm9_", "Zm9.", "Zm=v", "Zm9vYg==Zm9v", "é===",
        // Bits that no encoder leaves set before the padding (RFC 4648, section 3.5).
        "Zh==", "Zv==", "Zm9=", "Zm+="}) {
    EXPECT_FALSE(base64Decode(text)) << text;
  }
  EXPECT_FALSE(base64Decode(std::string_view("Zg=\0", 4)));
}

TEST(Base64, everyByteSurvives) {
  std::string bytes;
  for (int i = 0; i < 1000; ++i) {
    bytes += static_cast<char>(i * 7 % 256);
    ASSERT_EQ(base64Decode(base64Encode(bytes)), bytes) << i;
  }
}

TEST(Int16FromBase64, valuesSurvive) {
  std::vector<std::int16_t> values;
  std::vector<std::int16_t> all = {7};
  for (int i = 0; i < 300; ++i) {
    ASSERT_TRUE(appendInt16FromBase64(base64FromInt16(values), values.size(), all));
    std::vector<std::int16_t> back;
    ASSERT_TRUE(appendInt16FromBase64(base64FromInt16(values), values.size(), back));
    ASSERT_EQ(back, values);
    values.push_back(static_cast<std::int16_t>(i * 7919 - 32768));
  }
  EXPECT_EQ(all.size(), 1U + 299U * 300U / 2U);
}

TEST(Int16FromBase64, isLittleEndian) {
  std::vector<std::int16_t> values;
  // 01 00, ff 7f, 00 80, ff ff
  ASSERT_TRUE(appendInt16FromBase64(
      base64Encode(std::string_view("\x01\x00\xff\x7f\x00\x80\xff\xff", 8)), 4, values));
  EXPECT_EQ(values, (std::vector<std::int16_t>{1, 32767, -32768, -1}));
  EXPECT_EQ(base64FromInt16(values),
            base64Encode(std::string_view("\x01\x00\xff\x7f\x00\x80\xff\xff", 8)));
}

TEST(Int16FromBase64, aWrongCountOrTextChangesNothing) {
  std::vector<std::int16_t> values = {5};
  const std::string four = base64FromInt16(std::vector<std::int16_t>{1, 2, 3, 4});
  for (const std::size_t count :
       {0UL, 1UL, 3UL, 5UL, 1UL << 62U, std::numeric_limits<std::size_t>::max()}) {
    EXPECT_FALSE(appendInt16FromBase64(four, count, values)) << count;
  }
  EXPECT_FALSE(appendInt16FromBase64("AAA=", 2, values)); // two bytes, one value
  EXPECT_FALSE(appendInt16FromBase64("AA==", 1, values)); // one byte
  EXPECT_FALSE(appendInt16FromBase64("AA!AAA==", 2, values));
  EXPECT_EQ(values, std::vector<std::int16_t>{5});
}

} // namespace
} // namespace afterbeat
