/// What the window's style draws otherwise than the toolkit.
#include "app/window/look/own_style.h"

#include <QImage>
#include <QPainter>
#include <QStyleOption>

#include <gtest/gtest.h>

namespace afterbeat::window {
namespace {

constexpr int kSide = 24;

/// Dark pixels of each line of the arrow that the heading of a sorted column has.
std::vector<int> arrowLines(QStyleOptionHeader::SortIndicator indicator) {
  OwnStyle style;
  QStyleOptionHeader option;
  option.rect = {0, 0, kSide, kSide};
  option.sortIndicator = indicator;
  option.palette = QPalette(Qt::white);
  QImage picture(kSide, kSide, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  style.drawPrimitive(QStyle::PE_IndicatorHeaderArrow, &option, &painter, nullptr);
  painter.end();
  std::vector<int> lines;
  for (int y = 0; y < kSide; ++y) {
    int dark = 0;
    for (int x = 0; x < kSide; ++x) {
      dark += qGray(picture.pixel(x, y)) < 200 ? 1 : 0;
    }
    if (dark > 0) {
      lines.push_back(dark);
    }
  }
  return lines;
}

TEST(OwnStyle, TheArrowOfAHeadingPointsUpWhereTheSmallestIsFirst) {
  // The toolkit says "down" of an ascending order.
  const auto ascending = arrowLines(QStyleOptionHeader::SortDown);
  const auto descending = arrowLines(QStyleOptionHeader::SortUp);
  ASSERT_GE(ascending.size(), 3U);
  ASSERT_GE(descending.size(), 3U);
  EXPECT_LT(ascending.front(), ascending.back());
  EXPECT_GT(descending.front(), descending.back());
}

QImage chooser(const QString& words, int width) {
  OwnStyle style;
  QStyleOptionComboBox option;
  option.rect = {0, 0, width, kSide};
  option.currentText = words;
  option.palette = QPalette(Qt::white);
  option.state = QStyle::State_Enabled;
  QImage picture(width, kSide, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  style.drawControl(QStyle::CE_ComboBoxLabel, &option, &painter, nullptr);
  painter.end();
  return picture;
}

TEST(OwnStyle, AChooserShowsWhereItsWordsWereCut) {
  const QString words = QStringLiteral("Compressions delivered a minute");
  const int wide = QFontMetrics(QStyleOptionComboBox().fontMetrics).horizontalAdvance(words);
  EXPECT_NE(chooser(words, wide + 60), chooser({}, wide + 60));
  // Cut, what follows the cut is not drawn any more.
  EXPECT_EQ(chooser(words, 100), chooser(words + words, 100));
  EXPECT_NE(chooser(words, 100), chooser(words, wide + 60).copy(0, 0, 100, kSide));
  // It ends in dots that are in view.
  QStyleOptionComboBox option;
  option.rect = {0, 0, 100, kSide};
  const int room =
      OwnStyle()
          .subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, nullptr)
          .width();
  const QFontMetrics letters(option.fontMetrics);
  const QImage cut = chooser(words, 100);
  bool same = false;
  for (qsizetype kept = 1; kept < words.size(); ++kept) {
    const QString dotted = words.left(kept).trimmed() + QChar(0x2026);
    same = same || (letters.horizontalAdvance(dotted) < room && chooser(dotted, 100) == cut);
  }
  EXPECT_TRUE(same);
}

} // namespace
} // namespace afterbeat::window
