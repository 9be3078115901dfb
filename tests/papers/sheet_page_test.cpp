/// Every variant of the sheet: its words exactly, and nothing on anything else.
#include "tests/papers/sheet_faults.h"
#include "tests/papers/sheet_variants.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QPainter>
#include <QRegularExpression>

#include <algorithm>

namespace afterbeat::papers {
namespace {

/// Set this variable to write the expected files anew; the tests then fail, so that nobody takes
/// that for a comparison. Read every change before it is kept.
constexpr const char* kWriteAnew = "AFTERBEAT_WRITE_EXPECTED";

QString expectedPath(const QString& name) {
  return QStringLiteral(AFTERBEAT_SOURCE_DIR "/tests/papers/expected/") + name;
}

QString withoutVersion(QString text) {
  static const QRegularExpression version(QStringLiteral("Afterbeat \\d+\\.\\d+\\.\\d+"));
  return text.replace(version, QStringLiteral("Afterbeat VERSION"));
}

void compareText(const QString& name, const QString& text) {
  QFile file(expectedPath(name));
  if (qEnvironmentVariableIsSet(kWriteAnew)) {
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text.toUtf8());
    ADD_FAILURE() << name.toStdString() << " was written, not compared";
    return;
  }
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
  EXPECT_EQ(text.toStdString(), file.readAll().toStdString()) << name.toStdString();
}

class SheetOfVariant : public testing::TestWithParam<test::SheetVariant> {};

TEST_P(SheetOfVariant, SaysExactlyThis) {
  for (const char* language : {"en", "de"}) {
    const HandoverSheet sheet = test::sheetOf(GetParam(), language);
    compareText(QStringLiteral("%1.%2.txt").arg(QString::fromStdString(GetParam().name), language),
                withoutVersion(sheet.page.asText()));
  }
}

TEST_P(SheetOfVariant, NothingLiesOnAnythingElseOrLeavesThePage) {
  for (const char* language : {"en", "de"}) {
    for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
      SCOPED_TRACE(std::string(language) + (paper == QPageSize::A4 ? " A4" : " Letter"));
      const HandoverSheet sheet = test::sheetOf(GetParam(), language, paper);
      EXPECT_EQ(test::faultsOf(sheet.page).join('\n').toStdString(), "");
      if (GetParam().told) {
        EXPECT_TRUE(sheet.page.rows.isEmpty());
      } else {
        EXPECT_GE(sheet.page.rows.height(), std::min(sheet.rows.rowCount() * 25, 100));
      }
    }
  }
}

/// Minutes on, shocks, last shock, hands off and circulation: for each a value of 24 points and
/// more, or a line to write on.
TEST_P(SheetOfVariant, TheFirstTenSecondsReadAtArmsLength) {
  for (const char* language : {"en", "de"}) {
    const SheetPage page = test::sheetOf(GetParam(), language).page;
    int cells = 0;
    for (std::size_t i = 0; i < page.texts.size(); ++i) {
      if (page.texts[i].role != SheetRole::figureTitle) {
        continue;
      }
      constexpr int kSetting = 3;
      const bool doubtful = page.texts[i + 1].role == SheetRole::figureDoubt;
      const std::size_t next = i + (doubtful ? 2 : 1);
      const bool value = page.texts[next].role == SheetRole::figureValue;
      if (doubtful) {
        EXPECT_GE(page.texts[i + 1].size, 9) << page.texts[i + 1].text.toStdString();
      }
      const QRectF title = page.texts[i].box;
      const bool line = std::any_of(page.rules.begin(), page.rules.end(), [&](const auto& rule) {
        return rule.toFill && rule.line.x1() == title.left() && rule.line.y1() > title.bottom() &&
               rule.line.y1() < title.bottom() + 40;
      });
      EXPECT_NE(value, line) << page.texts[i].text.toStdString();
      if (value && cells != kSetting) {
        EXPECT_GE(page.texts[next].size, 24) << page.texts[next].text.toStdString();
      }
      ++cells;
    }
    EXPECT_EQ(cells, 6);
  }
}

INSTANTIATE_TEST_SUITE_P(Variants, SheetOfVariant, testing::ValuesIn(test::sheetVariants()),
                         [](const testing::TestParamInfo<test::SheetVariant>& variant) {
                           std::string name = variant.param.name;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

constexpr double kPixelsPerPoint = 1.0;

/// The page in grey, without its rows, which have pictures of their own.
QImage pictureOf(const HandoverSheet& sheet) {
  QImage image((sheet.page.size * kPixelsPerPoint).toSize(), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(kPixelsPerPoint, kPixelsPerPoint);
  SheetPage page = sheet.page;
  page.rows = {};
  paintSheet(painter, page, sheet.rows);
  painter.end();
  return image.convertToFormat(QImage::Format_Grayscale8);
}

constexpr double kTolerance = 25;

/// Mean grey of a square of 8 × 8 pixels.
double meanOf(const QImage& image, int left, int top) {
  constexpr int kSide = 8;
  double sum = 0;
  int count = 0;
  for (int y = top; y < std::min(top + kSide, image.height()); ++y) {
    for (int x = left; x < std::min(left + kSide, image.width()); ++x) {
      sum += qGray(image.pixel(x, y));
      ++count;
    }
  }
  return sum / count;
}

/// Smoothing differs a little between versions of the font engine; a letter more or less does not
/// pass: the mean of no small square may differ by more than a tenth of black.
void comparePicture(const QString& name, const QImage& image) {
  const QString path = expectedPath(name);
  if (qEnvironmentVariableIsSet(kWriteAnew)) {
    ASSERT_TRUE(image.save(path));
    ADD_FAILURE() << name.toStdString() << " was written, not compared";
    return;
  }
  const QImage expected(path);
  ASSERT_EQ(expected.size(), image.size());
  for (int y = 0; y < image.height(); y += 8) {
    for (int x = 0; x < image.width(); x += 8) {
      EXPECT_NEAR(meanOf(image, x, y), meanOf(expected, x, y), kTolerance)
          << name.toStdString() << " at " << x << ", " << y;
    }
  }
}

TEST(SheetPicture, ARescueLooksAsItDid) {
  comparePicture("rescue.en.png", pictureOf(test::sheetOf(test::sheetVariant("rescue"), "en")));
}

TEST(SheetPicture, ASheetOfWhatWasToldLooksAsItDid) {
  comparePicture("told.de.png", pictureOf(test::sheetOf(test::sheetVariant("told"), "de")));
}

TEST(SheetPicture, AMissingLetterIsSeen) {
  const QImage whole = pictureOf(test::sheetOf(test::sheetVariant("told"), "de"));
  HandoverSheet sheet = test::sheetOf(test::sheetVariant("told"), "de");
  sheet.page.texts[2].text.chop(1);
  const QImage less = pictureOf(sheet);
  double most = 0;
  for (int y = 0; y < whole.height(); y += 8) {
    for (int x = 0; x < whole.width(); x += 8) {
      most = std::max(most, std::abs(meanOf(whole, x, y) - meanOf(less, x, y)));
    }
  }
  EXPECT_GT(most, kTolerance);
}

} // namespace
} // namespace afterbeat::papers
