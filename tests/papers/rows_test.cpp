#include "app/papers/rows.h"
#include "app/papers/rows_layout.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QRegularExpression>

#include <algorithm>

namespace afterbeat::papers {
namespace {

struct Named {
  const char* name;
  Record record;
};

const std::vector<Named>& records() {
  static const std::vector<Named> all{
      {"full", test::fullRescue()},   {"empty", test::emptyRecord()},
      {"notes", test::notesOnly()},   {"child", test::childWithoutShock()},
      {"cut off", test::cutOff()},    {"short", test::shortRecord()},
      {"overfull", test::overfull()}, {"crowded", test::crowded()},
      {"long", test::longRescue(3)},
  };
  return all;
}

struct Size {
  double width, height;
  bool fit;
  bool paper;
};

const std::vector<Size>& sizes() {
  static const std::vector<Size> all{{1340, 0, false, false}, {600, 0, false, false},
                                     {320, 0, false, false},  {500, 300, true, true},
                                     {500, 90, true, true},   {505, 24, true, true},
                                     {1000, 500, true, false}};
  return all;
}

RowsLook lookFor(const Size& size) {
  return size.paper ? RowsLook::paperLook() : RowsLook::screenLight();
}

QRectF areaFor(const Size& size, const RowsPicture& picture) {
  const double height = size.fit ? size.height : picture.heightFor(size.width, lookFor(size), true);
  return {20, 20, size.width, height};
}

/// Calls `check` for every record in every size.
template <typename Check>
void everywhere(Check check) {
  for (const Named& named : records()) {
    const RowsPicture picture(named.record, computeFigures(named.record));
    for (const Size& size : sizes()) {
      SCOPED_TRACE(std::string(named.name) + " " + std::to_string(size.width) + " x " +
                   std::to_string(size.height));
      check(picture, size, areaFor(size, picture));
    }
  }
}

TEST(Rows, OneRowIsTwoMinutesFromTheWindowsBegin) {
  const Record record = test::fullRescue();
  const Figures figures = computeFigures(record);
  const RowsPicture picture(record, figures);
  ASSERT_EQ(picture.rowCount(), 6);
  for (int i = 0; i < picture.rowCount(); ++i) {
    EXPECT_EQ(picture.row(i).begin, figures.window->begin + i * RowsPicture::kRowLength);
    EXPECT_EQ(picture.row(i).length(), RowsPicture::kRowLength);
  }
  const auto& labels = picture.model().labels;
  EXPECT_EQ(labels[0].minutes, QStringLiteral("0–2 min"));
  EXPECT_EQ(labels[0].clock, "09:13:01");
  EXPECT_EQ(labels[5].minutes, QStringLiteral("10–12 min"));
}

TEST(Rows, WhereTheClockWasNeverSetRowsSayTheirBeginSincePowerOn) {
  const Record record = test::cutOff();
  const RowsPicture picture(record, computeFigures(record));
  ASSERT_GE(picture.rowCount(), 1);
  EXPECT_EQ(picture.model().labels[0].clock, "from 0:25");
}

TEST(Rows, TimeAtIsTheInverseOfWhereItIsPainted) {
  everywhere([](const RowsPicture& picture, const Size& size, const QRectF& area) {
    const RowsLook look = lookFor(size);
    for (int i = 0; i < picture.rowCount(); ++i) {
      const QRectF band = picture.rowRect(i, area, look, true, size.fit);
      if (band.isNull()) {
        EXPECT_TRUE(size.fit);
        continue;
      }
      for (const double share : {0.0, 0.25, 0.8}) {
        const Time wanted = picture.row(i).begin + Duration{std::llround(share * 120e6)};
        const auto found = picture.timeAt({band.left() + share * band.width(), band.center().y()},
                                          area, look, true, size.fit);
        if (wanted > picture.model().span->end + Duration{2}) {
          EXPECT_FALSE(found);
        } else if (found) {
          EXPECT_LE(std::abs((*found - wanted).count()), 2);
        } else {
          EXPECT_LE(std::abs((wanted - picture.model().span->end).count()), 2);
        }
      }
    }
    EXPECT_FALSE(picture.timeAt({area.left() - 1, area.center().y()}, area, look));
    EXPECT_FALSE(picture.timeAt({area.center().x(), area.top() - 1}, area, look));
    EXPECT_FALSE(picture.timeAt({area.right() + 1, area.center().y()}, area, look));
  });
}

TEST(Rows, WordsNeverOverlapAndNeverLeaveTheArea) {
  everywhere([](const RowsPicture& picture, const Size& size, const QRectF& area) {
    const RowsLook look = lookFor(size);
    const RowsLayout layout =
        layOutRows(picture.model(), Lettering(look.font), area, look, true, size.fit);
    const QRectF room = area.adjusted(-0.01, -0.01, 0.01, 0.01);
    for (std::size_t i = 0; i < layout.texts.size(); ++i) {
      const PlacedText& text = layout.texts[i];
      EXPECT_TRUE(room.contains(text.box)) << text.text.toStdString();
      for (std::size_t j = i + 1; j < layout.texts.size(); ++j) {
        const QRectF both = text.box.intersected(layout.texts[j].box);
        EXPECT_FALSE(both.width() > 0.01 && both.height() > 0.01)
            << text.text.toStdString() << " | " << layout.texts[j].text.toStdString();
      }
    }
  });
}

TEST(Rows, NothingIsPaintedOutsideTheArea) {
  everywhere([](const RowsPicture& picture, const Size& size, const QRectF& area) {
    QImage image(static_cast<int>(area.right()) + 20, static_cast<int>(area.bottom()) + 20,
                 QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    const auto overlay = picture.rowCount() == 0 ? RowsOverlay{}
                                                 : RowsOverlay{{picture.row(0)},
                                                               picture.row(picture.rowCount() - 1),
                                                               picture.row(0).begin};
    picture.paint(painter, area, lookFor(size), overlay, true, size.fit);
    painter.end();
    const QRect inside = area.toAlignedRect().adjusted(-2, -2, 2, 2);
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) {
        if (!inside.contains(x, y)) {
          ASSERT_EQ(image.pixelColor(x, y), QColor(Qt::magenta)) << x << " " << y;
        }
      }
    }
  });
}

/// How dark the band is at a moment: 0 paper to 1 black.
double inkAt(const QImage& image, const RowsPicture& picture, const QRectF& area,
             const RowsLook& look, double t, double heightShare) {
  const Time moment = *timeFromSeconds(t);
  const auto index = static_cast<int>((moment - picture.row(0).begin) / RowsPicture::kRowLength);
  const QRectF band = picture.rowRect(index, area, look);
  const double share = seconds(moment - picture.row(index).begin) / 120;
  const QPoint at(static_cast<int>(band.left() + share * band.width()),
                  static_cast<int>(band.bottom() - heightShare * band.height()));
  return 1 - image.pixelColor(at).lightnessF();
}

TEST(Rows, TheBandIsAsHighAsTheRate) {
  test::RecordBuilder builder;
  builder.compressions(0, 40, 80).compressions(60, 100, 110).compressions(110, 119, 140);
  const Record record = builder.done();
  const RowsPicture picture(record, computeFigures(record));
  RowsLook look = RowsLook::screenLight();
  look.rowHeight = 100;
  const QRectF area(0, 0, 1300, picture.heightFor(1300, look, true));
  QImage image(area.size().toSize(), QImage::Format_RGB32);
  image.fill(look.paper);
  QPainter painter(&image);
  picture.paint(painter, area, look);
  painter.end();
  // The scale runs from 60 to 150: 80 stands at 0.22, 110 at 0.56, 140 at 0.89 of the height.
  struct Probe {
    double t, inside, above;
  };
  for (const Probe& probe :
       {Probe{20.6, 0.17, 0.27}, Probe{80.45, 0.51, 0.61}, Probe{115.35, 0.84, 0.94}}) {
    EXPECT_GT(inkAt(image, picture, area, look, probe.t, probe.inside), 0.4) << probe.t;
    EXPECT_LT(inkAt(image, picture, area, look, probe.t, probe.above), 0.2) << probe.t;
  }
}

TEST(Rows, APauseBeyondTheLimitSaysSoWithoutColour) {
  const Record record = test::fullRescue();
  const RowsPicture picture(record, computeFigures(record));
  const RowsLook look = RowsLook::screenLight();
  const QRectF area(0, 0, 1340, picture.heightFor(1340, look, true));
  const RowsLayout layout =
      layOutRows(picture.model(), Lettering(look.font), area, look, true, false);
  QStringList beyond;
  for (const PlacedText& text : layout.texts) {
    if (text.role == TextRole::pauseBeyond) {
      EXPECT_EQ(text.weight, Weight::bold);
      beyond << text.text;
    } else if (text.role == TextRole::pause) {
      EXPECT_EQ(text.weight, Weight::regular);
    }
  }
  EXPECT_EQ(beyond, (QStringList{"28 s", "45 s", "37 s", "25 s", "19 s"}));
}

TEST(Rows, APauseJustBeyondTheLimitKeepsItsDecimal) {
  test::RecordBuilder builder;
  builder.compressions(0, 12, 100).compressions(22.2, 40, 100);
  const Record record = builder.done();
  const RowsPicture picture(record, computeFigures(record));
  ASSERT_EQ(picture.model().pauses.size(), 1U);
  EXPECT_TRUE(picture.model().pauses[0].beyondLimit);
  EXPECT_EQ(picture.model().pauses[0].words.first(), "10.2 s");
}

TEST(Rows, ShocksCarryTheirFate) {
  const Record record = test::crowded();
  const RowsPicture picture(record, computeFigures(record));
  int given = 0;
  int withheld = 0;
  int unknown = 0;
  for (const RowMark& mark : picture.model().marks) {
    given += mark.kind == MarkKind::shockGiven ? 1 : 0;
    withheld += mark.kind == MarkKind::shockNotGiven ? 1 : 0;
    unknown += mark.kind == MarkKind::shockUnknown ? 1 : 0;
  }
  EXPECT_EQ(given, 6);
  EXPECT_EQ(withheld, 5);
  EXPECT_EQ(unknown, 4);
  const QString text = picture.asText();
  EXPECT_TRUE(text.contains("shock 6 at 1:58"));
  EXPECT_TRUE(text.contains("shock not given at 0:16"));
  EXPECT_TRUE(text.contains("shock? delivery not recorded"));
}

TEST(Rows, CirculationAfterTheWindowIsShown) {
  const Record record = test::fullRescue();
  const RowsPicture picture(record, computeFigures(record));
  ASSERT_EQ(picture.model().circulation.size(), 1U);
  EXPECT_EQ(picture.model().circulation[0],
            (Interval{*timeFromSeconds(578), *timeFromSeconds(662)}));
  EXPECT_TRUE(picture.asText().contains("circulation returned at 9:07"));
}

TEST(Rows, WhatDoesNotFitIsLeftOutInTheMiddleAndSaidSo) {
  const Record record = test::longRescue(3);
  const RowsPicture picture(record, computeFigures(record));
  const RowsLook look = RowsLook::paperLook();
  const QRectF area(0, 0, 500, 200);
  ASSERT_GT(picture.leastHeightFor(500, look, true), 200);
  const RowsLayout layout =
      layOutRows(picture.model(), Lettering(look.font), area, look, true, true);
  const RowsGeometry& geometry = layout.geometry;
  ASSERT_GT(geometry.rows.size(), 4U);
  EXPECT_EQ(geometry.rows.front().index, 0);
  EXPECT_EQ(geometry.rows.back().index, 89);
  EXPECT_EQ(static_cast<int>(geometry.rows.size()) + geometry.leftOutCount, 90);
  const auto said = std::find_if(layout.texts.begin(), layout.texts.end(),
                                 [](const auto& text) { return text.role == TextRole::leftOut; });
  ASSERT_NE(said, layout.texts.end());
  EXPECT_TRUE(said->text.contains(QString::number(geometry.leftOutCount) + " rows"));
  const QRectF enough(0, 0, 500, picture.leastHeightFor(500, look, true));
  EXPECT_EQ(
      layOutGeometry(picture.model(), Lettering(look.font), enough, look, true, true).leftOutCount,
      0);
}

/// The stretch of time that a box covers in its row.
Interval covered(const RowsPicture& picture, const RowsGeometry& geometry, const PlacedText& text) {
  const Time begin = picture.row(text.row).begin;
  const auto at = [&](double x) {
    return begin + Duration{std::llround((x - geometry.left) / geometry.width * 120e6)};
  };
  return {at(text.box.left()), at(text.box.right())};
}

TEST(Rows, NoWordHidesHandsOnTheChest) {
  // A tenth of a second for rounding.
  constexpr Duration kTouch{100'000};
  int inBands = 0;
  everywhere([&](const RowsPicture& picture, const Size& size, const QRectF& area) {
    const RowsLook look = lookFor(size);
    const RowsLayout layout =
        layOutRows(picture.model(), Lettering(look.font), area, look, true, size.fit);
    for (const PlacedText& text : layout.texts) {
      const RowPlace* place = text.row < 0 ? nullptr : layout.geometry.place(text.row);
      if (place == nullptr || !place->band.intersects(text.box) ||
          text.role == TextRole::excluded) {
        continue;
      }
      ++inBands;
      const Interval hidden = covered(picture, layout.geometry, text);
      for (const BandRun& run : picture.model().runs) {
        const bool apart =
            hidden.end <= run.stretch.begin + kTouch || hidden.begin + kTouch >= run.stretch.end;
        EXPECT_TRUE(apart) << text.text.toStdString() << " in row " << text.row;
      }
    }
  });
  EXPECT_GT(inBands, 200);
}

TEST(Rows, NothingOfARowReachesIntoTheNext) {
  everywhere([](const RowsPicture& picture, const Size& size, const QRectF& area) {
    const RowsLook look = lookFor(size);
    const RowsLayout layout =
        layOutRows(picture.model(), Lettering(look.font), area, look, true, size.fit);
    for (const PlacedText& text : layout.texts) {
      if (const RowPlace* place = text.row < 0 ? nullptr : layout.geometry.place(text.row)) {
        EXPECT_GE(text.box.top(), place->top - 0.01) << text.text.toStdString();
        EXPECT_LE(text.box.bottom(), place->bottom + 0.01) << text.text.toStdString();
      }
    }
    // Breaths lie in the lower part of the band, remarks' ticks in the upper.
    const double tick = 0.35 * layout.geometry.sizes.small;
    for (const PlacedBreath& breath : layout.breaths) {
      const auto row =
          std::find_if(layout.geometry.rows.begin(), layout.geometry.rows.end(),
                       [&](const RowPlace& place) { return place.band.contains(breath.centre); });
      ASSERT_NE(row, layout.geometry.rows.end());
      EXPECT_GE(breath.centre.y() - breath.radius, row->band.top() + tick);
      EXPECT_LE(breath.centre.y() + breath.radius, row->band.bottom());
    }
  });
}

TEST(Rows, CyclesCarryTheNumbersOfTheirTable) {
  const Record record = test::fullRescue();
  const Figures figures = computeFigures(record);
  const RowsPicture picture(record, figures);
  ASSERT_EQ(picture.model().cycles.size(), figures.cycles.size());
  const RowsLook look = RowsLook::screenLight();
  const QRectF area(0, 0, 1340, picture.heightFor(1340, look, true));
  const RowsLayout layout =
      layOutRows(picture.model(), Lettering(look.font), area, look, true, false);
  QStringList shown;
  for (const PlacedText& text : layout.texts) {
    if (text.role == TextRole::cycle) {
      shown << text.text;
      const int index = text.text.section(' ', -1).toInt() - 1;
      ASSERT_LT(static_cast<std::size_t>(index), figures.cycles.size());
      const Time begin = figures.cycles[static_cast<std::size_t>(index)].stretch.begin;
      EXPECT_NEAR(text.box.left(), layout.geometry.x(picture.row(text.row), begin), 0.01);
    }
  }
  EXPECT_GE(shown.size(), 4) << shown.join(", ").toStdString();
  EXPECT_TRUE(picture.asText().contains("cycle 2 from 0:22")) << picture.asText().toStdString();
}

TEST(Rows, ADeviceThatWasOnBeforeTheRowsBeginSaysSo) {
  const Record record = test::fullRescue();
  const RowsPicture picture(record, computeFigures(record));
  EXPECT_TRUE(picture.rowAsText(0).contains("device on 31 s earlier"));
  const RowsLook look = RowsLook::screenLight();
  const QRectF area(0, 0, 1340, picture.heightFor(1340, look, true));
  const RowsLayout layout =
      layOutRows(picture.model(), Lettering(look.font), area, look, true, false);
  const auto said = std::find_if(layout.texts.begin(), layout.texts.end(),
                                 [](const auto& text) { return text.role == TextRole::deviceOn; });
  ASSERT_NE(said, layout.texts.end());
  EXPECT_EQ(said->row, 0);
  const Record notes = test::notesOnly();
  EXPECT_FALSE(RowsPicture(notes, computeFigures(notes)).asText().contains("earlier"));
}

TEST(Rows, NoShockPauseOrCycleIsABareNumber) {
  for (const Record& record : {test::fullRescue(), test::crowded(), test::overfull()}) {
    const RowsPicture picture(record, computeFigures(record));
    static const QRegularExpression letter(QStringLiteral("\\p{L}"));
    const auto saysWhat = [&](const QStringList& words) {
      return std::all_of(words.begin(), words.end(),
                         [&](const QString& one) { return one.contains(letter); });
    };
    for (const PauseShown& pause : picture.model().pauses) {
      EXPECT_TRUE(saysWhat(pause.words));
    }
    for (const CycleShown& cycle : picture.model().cycles) {
      EXPECT_TRUE(saysWhat(cycle.words));
    }
    for (const RowMark& mark : picture.model().marks) {
      EXPECT_TRUE(!isShock(mark.kind) || saysWhat(mark.words));
    }
  }
}

bool legendSays(const RowsModel& model, LegendShape shape, const QString& words) {
  const auto items = legendItems(model);
  return std::any_of(items.begin(), items.end(), [&](const LegendItem& item) {
    return item.shape == shape && item.words == words;
  });
}

TEST(Rows, MedicationHasASignAndAWordOfItsOwn) {
  test::RecordBuilder builder;
  builder.at(0, entry::PowerOn{}).compressions(5, 100, 110).remark(20, "boat alongside");
  const auto modelOf = [](const Record& record) {
    return makeRowsModel(record, computeFigures(record), Words{});
  };
  const RowsModel without = modelOf(builder.done());
  EXPECT_FALSE(legendSays(without, LegendShape::medication, "medication"));
  EXPECT_TRUE(legendSays(without, LegendShape::remark, "remark"));
  entry::Medication given;
  given.text = "adrenaline 1 mg";
  builder.at(60, given);
  const RowsModel with = modelOf(builder.done());
  EXPECT_TRUE(legendSays(with, LegendShape::medication, "medication"));
  EXPECT_TRUE(legendSays(with, LegendShape::remark, "remark"));
}

TEST(Rows, ARecordingThatBrokeOffEndsTorn) {
  const Record cut = test::cutOff();
  const RowsModel torn = makeRowsModel(cut, computeFigures(cut), Words{});
  ASSERT_TRUE(torn.brokeOff);
  EXPECT_TRUE(torn.inRow(torn.rowCount() - 1, *torn.brokeOff));
  for (const RowMark& mark : torn.marks) {
    EXPECT_LE(mark.stretch.begin, *torn.brokeOff);
  }
  EXPECT_TRUE(legendSays(torn, LegendShape::brokeOff, "broke off"));
  const Record whole = test::fullRescue();
  const RowsModel closed = makeRowsModel(whole, computeFigures(whole), Words{});
  EXPECT_FALSE(closed.brokeOff);
  EXPECT_FALSE(legendSays(closed, LegendShape::brokeOff, "broke off"));
}

TEST(Rows, NothingToDrawIsSaidInWords) {
  const Record record = test::emptyRecord();
  const RowsPicture picture(record, computeFigures(record));
  EXPECT_EQ(picture.rowCount(), 0);
  EXPECT_TRUE(picture.asText().startsWith("Nothing in this record"));
  EXPECT_GT(picture.heightFor(600, RowsLook::screenLight(), true), 0);
  EXPECT_FALSE(picture.timeAt({10, 10}, QRectF(0, 0, 600, 100), RowsLook::screenLight()));
}

} // namespace
} // namespace afterbeat::papers
