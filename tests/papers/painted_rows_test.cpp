// The rows as they come out of the painter: what a pixel says.
#include "app/papers/rows.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <set>

namespace afterbeat::papers {
namespace {

QImage painted(const RowsPlaced& placed, const QSize& size, const RowsOverlay& overlay) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  placed.paint(painter, overlay.working);
  placed.paintOverlay(painter, overlay);
  return image;
}

TEST(PaintedRows, SelectingAndPointingChangeOnlyWhatTheySayTheyTouch) {
  const Record record = test::fullRescue();
  const RowsPicture picture(record, computeFigures(record));
  const RowsLook look = RowsLook::screenLight();
  const QSize size(1340, static_cast<int>(std::ceil(picture.heightFor(1340, look, true))));
  const RowsPlaced placed(picture, QRectF(QPointF(), QSizeF(size)), look);
  const QImage plain = painted(placed, size, {});
  for (const double from : {31.0, 140.0, 500.0}) {
    const RowsOverlay overlay{{},
                              Interval{*timeFromSeconds(from), *timeFromSeconds(from + 40)},
                              timeFromSeconds(from + 9)};
    const QImage over = painted(placed, size, overlay);
    const auto touched = placed.touched(overlay);
    ASSERT_FALSE(touched.empty());
    int changed = 0;
    for (int y = 0; y < size.height(); ++y) {
      for (int x = 0; x < size.width(); ++x) {
        if (over.pixel(x, y) != plain.pixel(x, y)) {
          ++changed;
          EXPECT_TRUE(
              std::any_of(touched.begin(), touched.end(),
                          [&](const QRectF& box) { return box.toAlignedRect().contains(x, y); }))
              << x << " " << y;
        }
      }
    }
    EXPECT_GT(changed, 300);
  }
}

/// Rows whose bands say something else with these stretches of a working.
std::set<int> rowsMarked(const RowsPicture& picture, const RowsPlaced& placed, const QSize& size,
                         const std::vector<Interval>& working) {
  const QImage plain = painted(placed, size, {}), marked = painted(placed, size, {working, {}, {}});
  std::set<int> rows;
  for (int i = 0; i < picture.rowCount(); ++i) {
    const QRect band = placed.rowRect(i).toAlignedRect();
    if (plain.copy(band) != marked.copy(band)) {
      rows.insert(i);
    }
  }
  return rows;
}

TEST(PaintedRows, AWorkingIsMarkedInEveryRowThatItReaches) {
  const Record record = test::fullRescue();
  const RowsPicture picture(record, computeFigures(record));
  const RowsLook look = RowsLook::screenLight();
  const QSize size(1340, static_cast<int>(std::ceil(picture.heightFor(1340, look, true))));
  const RowsPlaced placed(picture, QRectF(QPointF(), QSizeF(size)), look);
  ASSERT_GE(picture.rowCount(), 5);
  const Time begin = picture.row(0).begin;
  const auto stretch = [begin](double from, double to) {
    return Interval{begin + *durationFromSeconds(from), begin + *durationFromSeconds(to)};
  };
  using Rows = std::set<int>;
  const auto marked = [&](const std::vector<Interval>& working) {
    return rowsMarked(picture, placed, size, working);
  };
  EXPECT_EQ(marked({stretch(130, 150)}), (Rows{1}));
  EXPECT_EQ(marked({stretch(100, 370)}), (Rows{0, 1, 2, 3}));
  // What ends where a row begins is marked at both edges.
  EXPECT_EQ(marked({stretch(230, 240)}), (Rows{1, 2}));
  // In any order, also where they lie in each other or before the rows.
  EXPECT_EQ(marked({stretch(490, 500), stretch(10, 470), stretch(20, 30)}), (Rows{0, 1, 2, 3, 4}));
  EXPECT_EQ(marked({stretch(-500, -1)}), (Rows{}));
  EXPECT_EQ(marked({stretch(-500, 1)}), (Rows{0}));
}

/// Mean lightness of a stretch of the band, and how much it varies from pixel to pixel.
struct Grey {
  double mean = 0, roughness = 0;
};
Grey greyOf(const QImage& image, const QRectF& box) {
  Grey grey;
  double sum = 0;
  double squares = 0;
  int n = 0;
  const QRect inside = box.toAlignedRect().adjusted(2, 2, -2, -2);
  for (int y = inside.top(); y <= inside.bottom(); ++y) {
    for (int x = inside.left(); x <= inside.right(); ++x, ++n) {
      const double value = qGray(image.pixel(x, y)) / 255.0;
      sum += value;
      squares += value * value;
    }
  }
  grey.mean = sum / n;
  grey.roughness = std::sqrt(std::max(0.0, squares / n - grey.mean * grey.mean));
  return grey;
}

/// A picture as painted, and where the first row's band lies in it.
struct PaintedRow {
  QImage image;
  QRectF band;
};
PaintedRow firstRow(const RowsPicture& picture, const RowsLook& look, int height) {
  const QSize size(1340, height);
  const RowsPlaced placed(picture, QRectF(QPointF(), QSizeF(size)), look);
  PaintedRow row{QImage(size, QImage::Format_RGB32), placed.rowRect(0)};
  row.image.fill(look.paper);
  QPainter painter(&row.image);
  placed.paint(painter);
  return row;
}

TEST(PaintedRows, WithoutColourEveryShapeIsStillItsOwn) {
  test::RecordBuilder builder;
  builder.compressions(0, 30, 110).compressions(39, 60, 110).from(62, 80, entry::Cpr{});
  builder.from(81, 100, entry::Excluded{ExclusionReason::notRescue}).compressions(101, 119, 110);
  const Record record = builder.done();
  const RowsPicture picture(record, computeFigures(record));
  for (const bool dark : {false, true}) {
    RowsLook look = dark ? RowsLook::screenDark() : RowsLook::paperLook();
    look.rowHeight = 60;
    const auto [image, band] = firstRow(picture, look, 200);
    const auto part = [&](double from, double to) {
      QRectF box = band;
      box.setLeft(band.left() + band.width() * from / 120);
      box.setRight(band.left() + band.width() * to / 120);
      box.setTop(band.bottom() - band.height() * 0.3);
      return greyOf(image, box);
    };
    const double paper = qGray(look.paper.rgb()) / 255.0;
    const double hands = std::abs(part(3, 25).mean - paper);
    const double unknown = std::abs(part(64, 78).mean - paper);
    const double hatch = std::abs(part(31, 33).mean - paper);
    const double excluded = std::abs(part(82, 85).mean - paper);
    EXPECT_GT(hands, unknown + 0.08);
    EXPECT_GT(unknown, excluded);
    EXPECT_GT(excluded, hatch * 1.3);
    EXPECT_GT(hatch, 0.02);
    EXPECT_LT(part(3, 25).roughness / hands, part(82, 85).roughness / excluded);
    // The corridor's limits are dotted in the band, not only tinted.
    QRectF limit = band;
    limit.setLeft(band.left() + band.width() * 5 / 120);
    limit.setRight(band.left() + band.width() * 25 / 120);
    const double low = band.bottom() - band.height() * (100.0 - 60) / 90;
    limit.setTop(low - 3.5);
    limit.setBottom(low + 3.5);
    EXPECT_GT(greyOf(image, limit).roughness, 0.1);
  }
}

TEST(PaintedRows, AShortReturnOfCirculationIsStillDrawn) {
  const auto painted = [](bool returned) {
    test::RecordBuilder builder;
    builder.compressions(0, 100, 110);
    if (returned) {
      builder.at(50, entry::Circulation{CirculationState::returned});
    }
    const Record record = builder.done();
    const RowsPicture picture(record, computeFigures(record));
    const PaintedRow row = firstRow(picture, RowsLook::paperLook(), 120);
    QRectF box = row.band;
    const double width = box.width();
    box.setRight(box.left() + width * 53 / 120);
    box.setLeft(box.left() + width * 50 / 120);
    box.setTop(box.center().y() - box.height() * 0.2);
    box.setBottom(box.top() + box.height() * 0.4);
    return greyOf(row.image, box).mean;
  };
  EXPECT_GT(std::abs(painted(true) - painted(false)), 0.01);
}

TEST(PaintedRows, HandsOnAtAnUnknownRateAreDrawnBelowTheTarget) {
  test::RecordBuilder builder;
  builder.from(0, 100, entry::Cpr{});
  const Record record = builder.done();
  const RowsPicture picture(record, computeFigures(record));
  const PaintedRow row = firstRow(picture, RowsLook::paperLook(), 120);
  QRectF upper = row.band;
  upper.setRight(upper.left() + upper.width() * 0.5);
  upper.setBottom(upper.top() + upper.height() * 0.6);
  EXPECT_DOUBLE_EQ(greyOf(row.image, upper).mean, 1);
}

} // namespace
} // namespace afterbeat::papers
