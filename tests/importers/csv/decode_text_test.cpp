#include "importers/csv/decode_text.h"

#include "text_forms.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

const std::string kNotes = "Zeit;Was\n95;\u00dcbergabe an die F\u00e4hre\n";

TEST(DecodeText, everyEncoding) {
  struct Case {
    const char* name;
    std::string bytes;
    TextEncoding encoding;
  };
  const Case cases[] = {
      {"UTF-8", kNotes, TextEncoding::utf8},
      {"UTF-8 with mark", "\xEF\xBB\xBF" + kNotes, TextEncoding::utf8},
      {"UTF-16LE with mark", "\xFF\xFE" + utf16(kNotes, false), TextEncoding::utf16LittleEndian},
      {"UTF-16BE with mark", "\xFE\xFF" + utf16(kNotes, true), TextEncoding::utf16BigEndian},
      {"UTF-16LE", utf16(kNotes, false), TextEncoding::utf16LittleEndian},
      {"UTF-16BE", utf16(kNotes, true), TextEncoding::utf16BigEndian},
      {"Windows-1252", latin1(kNotes), TextEncoding::windows1252},
  };
  for (const auto& one : cases) {
    const auto decoded = decodeText(one.bytes);
    ASSERT_TRUE(decoded) << one.name;
    EXPECT_EQ(decoded->text, kNotes) << one.name;
    EXPECT_EQ(decoded->encoding, one.encoding) << one.name;
    EXPECT_EQ(decoded->replaced, 0U) << one.name;
  }
}

TEST(DecodeText, windows1252IsMoreThanLatin1) {
  // 0x80 is the euro sign, 0x96 an en dash, 0xFC a small u with dots.
  const auto decoded = decodeText("5 \x80 \x96 f\xFCr");
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->text, "5 \u20ac \u2013 f\u00fcr");
}

TEST(DecodeText, whatMeansNothingIsReplacedAndCounted) {
  const auto loose = decodeText("\xEF\xBB\xBF"
                                "ab\xFF"
                                "c");
  ASSERT_TRUE(loose);
  EXPECT_EQ(loose->text, "ab\uFFFDc");
  EXPECT_EQ(loose->replaced, 1U);
  const auto cut = decodeText(std::string{"\xFF\xFE"} + utf16("ab", false) + "c");
  ASSERT_TRUE(cut);
  EXPECT_EQ(cut->text, "ab\uFFFD");
}

TEST(DecodeText, longTextsAreWhole) {
  std::string text;
  for (int i = 0; i < 5000; ++i) {
    text += "\u00e4\u20ac" + std::to_string(i) + "\n";
  }
  EXPECT_EQ(decodeText(text)->text, text);
  EXPECT_EQ(decodeText("\xFE\xFF" + utf16(text, true))->text, text);
}

TEST(DecodeText, whatIsNoTextIsRefused) {
  EXPECT_FALSE(decodeText(std::string{"\x7F"
                                      "ELF\x02\x01\x01\x00\x00\x00\x00\x01\x02\x03",
                                      14}));
  EXPECT_FALSE(decodeText("a\x01\x02\x03\x04"));
  EXPECT_TRUE(decodeText(""));
}

} // namespace
} // namespace afterbeat
