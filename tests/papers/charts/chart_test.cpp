#include "app/papers/charts/chart_files.h"
#include "app/papers/charts/chart_layout.h"
#include "app/papers/charts/chart_ticks.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QXmlStreamReader>

#include <algorithm>
#include <cmath>
#include <set>

namespace afterbeat::papers {
namespace {

std::string ticksOf(AxisKind kind, double from, double to, int most, const Words& words = Words{}) {
  ChartAxis axis;
  axis.kind = kind;
  axis.from = from;
  axis.to = to;
  QStringList texts;
  for (const ChartTick& tick : tickedAxis(words, axis, most).ticks) {
    texts << tick.text;
  }
  return texts.join(QStringLiteral(" | ")).toStdString();
}

TEST(ChartTicks, StandWherePeopleCount) {
  EXPECT_EQ(ticksOf(AxisKind::seconds, 0, 55, 6), "0 s | 10 s | 20 s | 30 s | 40 s | 50 s | 1 min");
  EXPECT_EQ(ticksOf(AxisKind::seconds, 0, 700, 6),
            "0 s | 2 min | 4 min | 6 min | 8 min | 10 min | 12 min");
  EXPECT_EQ(ticksOf(AxisKind::seconds, 0, 1.7, 4), "0.0 s | 0.5 s | 1.0 s | 1.5 s | 2.0 s");
  EXPECT_EQ(ticksOf(AxisKind::seconds, 0, 30'000, 5), "0 s | 2 h | 4 h | 6 h | 8 h | 10 h");
  EXPECT_EQ(ticksOf(AxisKind::share, 0, 1, 5), "0 % | 20 % | 40 % | 60 % | 80 % | 100 %");
  EXPECT_EQ(ticksOf(AxisKind::number, 98, 123, 5), "95 | 100 | 105 | 110 | 115 | 120 | 125");
  EXPECT_EQ(ticksOf(AxisKind::number, 7, 7, 5), "6 | 8 | 10 | 12 | 14");
  // 2024-01-10 to 2024-12-20, and some days of a month.
  EXPECT_EQ(ticksOf(AxisKind::days, 19'732, 20'077, 6),
            "Mar 2024 | May 2024 | Jul 2024 | Sep 2024 | Nov 2024");
  EXPECT_EQ(ticksOf(AxisKind::days, 19'732, 19'735, 6),
            "10 Jan 2024 | 11 Jan 2024 | 12 Jan 2024 | 13 Jan 2024");
  EXPECT_EQ(ticksOf(AxisKind::days, 10'000, 20'000, 6), "2000 | 2005 | 2010 | 2015 | 2020");
  EXPECT_EQ(ticksOf(AxisKind::number, 0, 1.2, 3, Words::inLanguage(QStringLiteral("de"))),
            "0,0 | 0,5 | 1,0 | 1,5");
}

/// Two lanes, points at 1 to 5 and one at 3, a summary for the first.
Chart twoLanes() {
  Chart chart;
  chart.title = QStringLiteral("Pause by site");
  chart.marks = QStringList{QStringLiteral("DRILL")};
  chart.x.kind = AxisKind::seconds;
  chart.x.title = QStringLiteral("Pause");
  chart.x.to = 6;
  chart.x.least = 0;
  chart.y.kind = AxisKind::names;
  chart.y.names = QStringList{QStringLiteral("Ferry"), QStringLiteral("Lido")};
  chart.y.notes = QStringList{QStringLiteral("5 records"), QStringLiteral("1 record")};
  for (std::uint32_t i = 0; i < 6; ++i) {
    chart.points.push_back({i < 5 ? i + 1.0 : 3.0, i < 5 ? 0.0 : 1.0, i, 1, PointShape::usual});
    chart.records.push_back(100 + i);
  }
  chart.summaries.push_back({SummaryKind::interval, 0, 3, 2, 4});
  chart.keys.push_back({KeyShape::usual, QStringLiteral("one record")});
  chart.sentences = QStringList{QStringLiteral("Each point is one record.")};
  return chart;
}

Chart scattered(std::size_t count, double spread) {
  Chart chart;
  chart.y.title = QStringLiteral("Rate");
  chart.x.kind = AxisKind::days;
  chart.x.from = 19'000;
  chart.x.to = 20'000;
  for (std::size_t i = 0; i < count; ++i) {
    const double at = static_cast<double>(i);
    chart.points.push_back({19'000 + std::fmod(at * 617.0, 1000.0),
                            0.5 + spread * std::sin(at * 12.9898), static_cast<std::uint32_t>(i), 1,
                            PointShape::usual});
    chart.records.push_back(static_cast<std::uint32_t>(i));
  }
  return chart;
}

ChartPlaced placed(Chart chart, const QRectF& area = {0, 0, 900, 400},
                   const ChartLook& look = ChartLook::screenLight()) {
  return {std::make_shared<const Chart>(std::move(chart)), area, look};
}

TEST(ChartLayout, SaysEverythingInReadingOrder) {
  EXPECT_EQ(placed(twoLanes()).layoutAsText().toStdString(),
            "[MARK] DRILL\n"
            "[title] Pause by site\n"
            "[tick] 0 s\n[tick] 1 s\n[tick] 2 s\n[tick] 3 s\n[tick] 4 s\n[tick] 5 s\n[tick] 6 s\n"
            "[axis] Pause\n"
            "[lane] Ferry\n[note] 5 records\n[lane] Lido\n[note] 1 record\n"
            "[key] one record\n"
            "[sentence] Each point is one record.\n");
  EXPECT_EQ(asText(twoLanes()).toStdString(), "Pause by site\nDRILL\nEach point is one record.\n"
                                              "Ferry: 5 records\nLido: 1 record");
}

TEST(ChartLayout, EmptyChartsHaveWordsAndNoTicks) {
  Chart chart = twoLanes();
  chart.points.clear();
  chart.summaries.clear();
  chart.emptyText = QStringLiteral("No record has a value.");
  const QString text = placed(chart).layoutAsText();
  EXPECT_TRUE(text.contains("[empty] No record has a value."));
  EXPECT_FALSE(text.contains("[tick]")) << text.toStdString();
}

/// No text leaves the chart's area, however narrow it is.
TEST(ChartLayout, TextsStayInside) {
  Chart chart = twoLanes();
  chart.y.names[0] = QString(80, QLatin1Char('W'));
  chart.keys.push_back({KeyShape::band, QString(90, QLatin1Char('x'))});
  chart.sentences << QStringLiteral("word ").repeated(80);
  const ChartLook look = ChartLook::screenLight();
  const Lettering lettering(look.font);
  for (const double width : {300.0, 500.0, 900.0}) {
    const double height = chartHeight(chart, width, look);
    const ChartLayout layout = layOutChart(chart, {0, 0, width, height}, look, lettering);
    for (const ChartText& text : layout.texts) {
      const double right = text.at.x() + lettering.width(text.text, text.size, text.weight);
      EXPECT_GE(text.at.x(), -0.5) << text.text.toStdString();
      EXPECT_LE(right, width + 0.5) << width << " " << text.text.toStdString();
      EXPECT_LE(text.at.y(), height) << width << " " << text.text.toStdString();
    }
    EXPECT_LT(leastChartHeight(chart, width, look), height);
  }
}

/// Where amounts are drawn although there are few points, their sentence has a line of its own.
/// What a lane holds was cut after "8 without".
TEST(ChartLayout, WhatALaneHoldsGoesOnToASecondLine) {
  Chart chart = twoLanes();
  chart.y.notes[0] = QStringLiteral("205 records, middle 6 min 42 s; 35 without value");
  const QRectF area(0, 0, 440, leastChartHeight(chart, 440, ChartLook::paperLook()));
  const QString text =
      ChartPlaced(std::make_shared<const Chart>(chart), area, ChartLook::paperLook())
          .layoutAsText();
  EXPECT_TRUE(text.contains("[note] 205 records, middle 6 min 42 s;\n[note] 35 without value\n"))
      << text.toStdString();
}

TEST(ChartLayout, TheSentenceOfAmountsLiesOnNoOther) {
  Chart chart = twoLanes();
  for (std::uint32_t i = 0; i < 90; ++i) {
    chart.points.push_back({3.0, 0.0, i, 1, PointShape::usual});
  }
  const ChartLook look = ChartLook::screenLight();
  const Lettering lettering(look.font);
  const ChartLayout layout = layOutChart(chart, {0, 0, 700, 220}, look, lettering);
  ASSERT_FALSE(layout.amounts.empty());
  std::vector<QRectF> boxes;
  for (const ChartText& text : layout.texts) {
    const QRectF box(text.at.x(), text.at.y() - 0.7 * text.size,
                     lettering.width(text.text, text.size, text.weight), 0.7 * text.size);
    for (const QRectF& other : boxes) {
      EXPECT_FALSE(box.intersects(other)) << text.text.toStdString();
    }
    boxes.push_back(box);
  }
}

TEST(ChartHits, EveryPointIsFoundWhereItIsPainted) {
  for (const ChartPlaced& chart : {placed(twoLanes()), placed(scattered(150, 0.4))}) {
    EXPECT_FALSE(chart.crowded());
    for (std::size_t i = 0; chart.point(i); ++i) {
      const auto hits = chart.at(chart.point(i)->at, 0);
      ASSERT_FALSE(hits.empty()) << i;
      EXPECT_EQ(hits.front().index, i);
      EXPECT_TRUE(chart.record(hits.front()).has_value());
    }
  }
  const ChartPlaced chart = placed(twoLanes());
  EXPECT_EQ(chart.record(*chart.point(5)), 105U);
  EXPECT_TRUE(chart.at({5, 5}).empty());
  EXPECT_FALSE(chart.point(6).has_value());
}

TEST(ChartHits, PointsInLanesNeverHideEachOther) {
  Chart chart = twoLanes();
  for (std::uint32_t i = 0; i < 40; ++i) {
    chart.points.push_back({3.0, 0.0, i, 1, PointShape::usual});
  }
  const ChartPlaced lanes = placed(chart, {0, 0, 900, 600});
  ASSERT_FALSE(lanes.crowded());
  std::set<std::pair<double, double>> places;
  for (std::size_t i = 0; i < chart.points.size(); ++i) {
    places.insert({lanes.point(i)->at.x(), lanes.point(i)->at.y()});
  }
  EXPECT_EQ(places.size(), chart.points.size());
}

/// Twenty records of nearly one value were points of a fifth of a letter's height.
TEST(ChartHits, PointsOfAPileAreLargeEnoughToBeSeen) {
  Chart chart = twoLanes();
  for (std::uint32_t i = 0; i < 20; ++i) {
    chart.points.push_back({2.9 + 0.01 * i, 0.0, i, 1, PointShape::usual});
  }
  const ChartLook look = ChartLook::paperLook();
  const QRectF area(0, 0, 500, leastChartHeight(chart, 500, look));
  const ChartLayout layout = layOutChart(chart, area, look, Lettering(look.font));
  ASSERT_TRUE(layout.amounts.empty());
  EXPECT_GE(layout.radius, 0.2 * layout.size);
  for (std::size_t i = 0; i < layout.points.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k) {
      EXPECT_GE(QLineF(layout.points[i], layout.points[k]).length(), 0.8 * layout.radius)
          << i << " hides " << k;
    }
    EXPECT_GE(layout.points[i].y() - layout.radius, layout.lane(0).top());
  }
}

TEST(ChartHits, AnAmountStandsForAllItsRecords) {
  const ChartPlaced crowd = placed(scattered(20'000, 0.01));
  ASSERT_TRUE(crowd.crowded());
  EXPECT_TRUE(crowd.layoutAsText().contains("Too many for single points")) << "said in the key";
  std::size_t most = 0;
  for (std::size_t i = 0; i < 20'000; i += 997) {
    const auto hits = crowd.at(crowd.point(i)->at, 0);
    EXPECT_TRUE(std::any_of(hits.begin(), hits.end(), [&](const ChartHit& hit) {
      return hit.index == i;
    })) << i;
    most = std::max(most, hits.size());
  }
  EXPECT_GT(most, 3U);
}

/// Cells beyond an axis would look like other values, and no key may explain points that are not
/// there.
TEST(ChartHits, AmountsEndWithThePlotAndNoKeySpeaksOfPoints) {
  Chart chart = scattered(20'000, 0.01);
  chart.keys = {{KeyShape::usual, QStringLiteral("one record")},
                {KeyShape::centre, QStringLiteral("middle of the points")}};
  const ChartLook look = ChartLook::screenLight();
  for (const double width : {700.0, 903.0, 1277.0}) {
    const ChartLayout layout = layOutChart(chart, {0, 0, width, 400}, look, Lettering(look.font));
    ASSERT_FALSE(layout.amounts.empty());
    std::size_t sum = 0;
    for (const ChartAmount& amount : layout.amounts) {
      sum += amount.count;
      EXPECT_TRUE(layout.plot.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(amount.box));
      EXPECT_GT(amount.box.width(), 1);
      EXPECT_GT(amount.box.height(), 1);
    }
    EXPECT_EQ(sum, chart.points.size());
    ASSERT_EQ(layout.keys.size(), 1U);
    EXPECT_EQ(layout.keys[0].key.shape, KeyShape::centre);
  }
  const ChartLayout points =
      layOutChart(scattered(40, 0.4), {0, 0, 700, 400}, look, Lettering(look.font));
  EXPECT_TRUE(points.amounts.empty());
}

/// The columns of lanes hold every record, and the tallest one is in the key.
TEST(ChartHits, AmountsAddUp) {
  Chart chart = twoLanes();
  for (std::uint32_t i = 0; i < 50'000; ++i) {
    chart.points.push_back({6.0 * i / 50'000.0, i % 3 == 0 ? 1.0 : 0.0, i, 1, PointShape::usual});
  }
  const ChartLook look = ChartLook::screenLight();
  const ChartLayout layout = layOutChart(chart, {0, 0, 900, 400}, look, Lettering(look.font));
  std::uint32_t sum = 0, most = 0;
  for (const ChartAmount& amount : layout.amounts) {
    sum += amount.count;
    most = std::max(most, amount.count);
    EXPECT_EQ(amount.count > 0, amount.box.height() > 0);
  }
  EXPECT_EQ(sum, chart.points.size());
  EXPECT_TRUE(placed(chart).layoutAsText().contains(QStringLiteral("at most %1.").arg(most)));
}

double luminance(const QColor& color) {
  const auto linear = [](double c) {
    return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) +
         0.0722 * linear(color.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const double one = luminance(a), other = luminance(b);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

TEST(ChartLooks, AreReadWithoutColour) {
  for (const ChartLook& look :
       {ChartLook::screenLight(), ChartLook::screenDark(), ChartLook::paperLook()}) {
    for (const QColor& text : {look.ink, look.faintInk, look.value, look.attention}) {
      EXPECT_GE(contrast(text, look.paper), 4.5) << text.name().toStdString();
    }
    for (const QColor& line : {look.centre, look.bandEdge, look.highlight}) {
      EXPECT_GE(contrast(line, look.paper), 2.5) << line.name().toStdString();
    }
    EXPECT_GE(contrast(look.ink, look.band), 4.5);
    for (std::size_t i = 0; i < look.stages.size(); ++i) {
      EXPECT_GE(contrast(look.stages[i], look.stageInk[i]), 4.5) << i;
      if (i > 0) {
        EXPECT_GE(contrast(look.stages[i], look.stages[i - 1]), 2.5) << i;
      }
    }
  }
}

TEST(ChartFiles, SvgIsWellFormedAndDescribesItself) {
  Chart chart = twoLanes();
  chart.title = QStringLiteral("<&> \"title\"");
  const QByteArray svg = chartAsSvg(chart, 700, ChartLook::screenLight());
  QXmlStreamReader xml(svg);
  QString title, description, words;
  int circles = 0;
  while (!xml.atEnd()) {
    if (xml.readNext() == QXmlStreamReader::StartElement) {
      if (xml.name() == QStringLiteral("title")) {
        title = xml.readElementText();
      } else if (xml.name() == QStringLiteral("desc")) {
        description = xml.readElementText();
      } else if (xml.name() == QStringLiteral("text")) {
        words += xml.readElementText().trimmed() + QLatin1Char('\n');
      } else if (xml.name() == QStringLiteral("circle") ||
                 xml.name() == QStringLiteral("ellipse")) {
        ++circles;
      }
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  EXPECT_EQ(title, chart.title);
  EXPECT_TRUE(description.contains(QStringLiteral("Ferry: 5 records")));
  EXPECT_TRUE(words.contains(QStringLiteral("Each point is one record.")));
  EXPECT_EQ(circles, 7) << "six points and the key's";
}

TEST(ChartFiles, PngHasWhatTheChartNeeds) {
  const ChartLook look = ChartLook::screenLight();
  const QImage image = QImage::fromData(chartAsPng(twoLanes(), 700, look, 2));
  const double high = std::ceil(chartHeight(twoLanes(), 700 - 2 * kPictureMargin, look));
  EXPECT_EQ(image.width(), 1400);
  EXPECT_EQ(image.height(), 2 * static_cast<int>(high + 2 * kPictureMargin));
}

/// A picture that stands by itself has a margin on all sides; within it the text begins.
TEST(ChartFiles, PicturesHaveAMargin) {
  const ChartLook look = ChartLook::screenLight();
  const QImage png = QImage::fromData(chartAsPng(twoLanes(), 700, look, 1));
  QRect inked;
  for (int y = 0; y < png.height(); ++y) {
    for (int x = 0; x < png.width(); ++x) {
      if (png.pixelColor(x, y) != look.paper) {
        inked |= QRect(x, y, 1, 1);
      }
    }
  }
  EXPECT_GE(inked.left(), 14);
  EXPECT_GE(inked.top(), 14);
  EXPECT_LE(inked.right(), png.width() - 14);
  EXPECT_LE(inked.bottom(), png.height() - 14);
  EXPECT_LE(inked.left(), 20) << "and no more";
}

/// The two mean different things, and a printed page knows no colours: a box is filled, a line is
/// not. Each key is drawn as what it explains.
TEST(ChartLooks, AnIntervalIsALineAndTheMiddleHalfABox) {
  ChartLook look = ChartLook::paperLook();
  const auto inkAround = [&look](SummaryKind kind, KeyShape key) {
    Chart chart = twoLanes();
    chart.summaries = {{kind, 0, 3, 1, 5}};
    chart.keys = {{key, QStringLiteral("middle")}};
    QImage image(900, 500, QImage::Format_RGB32);
    image.fill(look.paper);
    const QRectF area(20, 20, 860, 460);
    const ChartLayout layout = layOutChart(chart, area, look, Lettering(look.font));
    QPainter painter(&image);
    ChartPlaced(std::make_shared<const Chart>(chart), area, look).paint(painter);
    painter.end();
    // Off the middle of the line, and off the tick of the median.
    const double x = layout.xAt(4.3), y = layout.lane(0).bottom() - 0.68 * layout.size;
    const QRectF box = layout.keys[0].box;
    const double off = 0.16 * layout.size;
    return std::pair(
        image.pixelColor(QPointF(x, y - off).toPoint()) != look.paper,
        image.pixelColor(QPointF(box.left() + box.width() / 4, box.center().y() - off).toPoint()) !=
            look.paper);
  };
  look.textSize = 24;
  EXPECT_EQ(inkAround(SummaryKind::interval, KeyShape::interval), std::pair(false, false));
  EXPECT_EQ(inkAround(SummaryKind::middleHalf, KeyShape::middleHalf), std::pair(true, true));
}

} // namespace
} // namespace afterbeat::papers
