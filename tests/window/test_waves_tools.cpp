/// Cursor, ruler, ECG paper, the choice of tracks, fingers and keys in the waves.
#include "app/window/waves/paper_grid.h"
#include "core/signal/trace.h"
#include "tests/window/window_fixture.h"

#include <QAccessible>
#include <QAction>
#include <QGestureEvent>
#include <QLabel>
#include <QMenu>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QTest>
#include <QWheelEvent>

namespace afterbeat::window {

namespace {

class WavesTools : public WindowTest {
protected:
  void SetUp() override {
    open(sample("ferry-terminal.resuslog"));
    plot_ = page_->waves()->plot();
  }
  [[nodiscard]] QCPAxis* time() const {
    return plot_->axisRects().front()->axis(QCPAxis::atBottom);
  }
  [[nodiscard]] QPoint place(double share, int track) const {
    const QRect lane = plot_->axisRects().front()->rect();
    const QRect room = plot_->axisRects()[track + 1]->rect();
    return {lane.left() + static_cast<int>(share * lane.width()), room.center().y()};
  }
  void move(const QPoint& to, Qt::MouseButtons buttons = Qt::NoButton,
            Qt::KeyboardModifiers keys = Qt::NoModifier) const {
    QMouseEvent event(QEvent::MouseMove, to, plot_->mapToGlobal(to), Qt::NoButton, buttons, keys);
    QCoreApplication::sendEvent(plot_, &event);
  }
  [[nodiscard]] QAction* tool(const char* key) const {
    for (QAction* action : page_->waves()->tools()) {
      if (action->shortcut() == QKeySequence(QLatin1String(key))) {
        return action;
      }
    }
    return nullptr;
  }
  WavesPlot* plot_ = nullptr;
};

TEST_F(WavesTools, ThePointerShowsTheValueOfEveryTrackAndMovesTheCommonCursor) {
  move(place(0.25, 0));
  ASSERT_TRUE(window_.selection().cursor());
  const Time t = *window_.selection().cursor();
  EXPECT_NEAR(seconds(t), time()->pixelToCoord(place(0.25, 0).x()), 1e-6);
  const Record& record = window_.session().record();
  const auto value = valueAt(record.channels[0], t);
  ASSERT_TRUE(value);
  EXPECT_EQ(plot_->valueText(0), words().number(*value, 2) + " mV");
  QEvent leave(QEvent::Leave);
  QCoreApplication::sendEvent(plot_, &leave);
  EXPECT_FALSE(window_.selection().cursor());
  EXPECT_EQ(plot_->valueText(0), "");
}

TEST_F(WavesTools, WhereNothingWasRecordedThereIsNoValue) {
  window_.selection().setCursor(window_.selection().extent().end + Duration{600'000'000});
  EXPECT_EQ(plot_->valueText(0), "no signal");
}

TEST_F(WavesTools, MovingTheCursorDrawsNoWaveAgain) {
  QSignalSpy drawn(plot_, &QCustomPlot::afterReplot);
  for (const double share : {0.1, 0.5, 0.9}) {
    move(place(share, 0));
  }
  QCoreApplication::processEvents();
  EXPECT_EQ(drawn.count(), 0);
}

TEST_F(WavesTools, DraggingWithShiftMeasuresAndEscapeEndsIt) {
  const QPoint from = place(0.3, 1), to = place(0.5, 1);
  const Interval shown = window_.selection().stretch();
  QTest::mousePress(plot_, Qt::LeftButton, Qt::ShiftModifier, from);
  move(to, Qt::LeftButton, Qt::ShiftModifier);
  QTest::mouseRelease(plot_, Qt::LeftButton, Qt::ShiftModifier, to);
  ASSERT_TRUE(plot_->ruler());
  EXPECT_EQ(plot_->ruler()->track, 1U);
  EXPECT_TRUE(window_.selection().stretch() == shown) << "measuring moves nothing";
  const double length = time()->pixelToCoord(to.x()) - time()->pixelToCoord(from.x());
  EXPECT_TRUE(plot_->rulerText().startsWith(words().number(length, length < 10 ? 2 : 1) + " s"))
      << plot_->rulerText().toStdString();
  EXPECT_TRUE(plot_->rulerText().endsWith("Ω")) << plot_->rulerText().toStdString();
  for (int track = 0; track < plot_->trackCount(); ++track) {
    EXPECT_FALSE(plot_->rulerBox().intersects(plot_->axisRects()[track + 1]->rect()));
  }
  plot_->setFocus();
  QTest::keyClick(plot_, Qt::Key_Escape);
  EXPECT_FALSE(plot_->ruler());
  EXPECT_TRUE(plot_->rulerBox().isEmpty());
}

TEST_F(WavesTools, AClickWithShiftLeavesNoRulerBehind) {
  QTest::mouseClick(plot_, Qt::LeftButton, Qt::ShiftModifier, place(0.3, 0));
  EXPECT_FALSE(plot_->ruler());
}

TEST_F(WavesTools, TheRulerSaysTimeRateAndAmplitude) {
  const Record& record = window_.session().record();
  const Time from = window_.selection().stretch().begin;
  plot_->setRuler(Ruler{from, from + Duration{840'000}, 0});
  const double rise =
      *valueAt(record.channels[0], from + Duration{840'000}) - *valueAt(record.channels[0], from);
  const QString signedRise = words().number(rise, 2).replace('-', QStringLiteral("−"));
  EXPECT_EQ(plot_->rulerText(),
            QStringLiteral("0.840 s  ·  71 a minute  ·  %1 mV").arg(signedRise));
  plot_->setRuler(Ruler{from, window_.selection().extent().end + Duration{600'000'000}, 0});
  EXPECT_TRUE(plot_->rulerText().endsWith("no signal at one end"));
  EXPECT_FALSE(plot_->rulerText().contains("a minute")) << "longer than a minute";
}

TEST_F(WavesTools, KeysMoveTheCursorAndStretchTheRuler) {
  plot_->setFocus();
  const double length = seconds(window_.selection().stretch().length());
  QTest::keyClick(plot_, Qt::Key_Right);
  ASSERT_TRUE(window_.selection().cursor());
  const Time first = *window_.selection().cursor();
  QTest::keyClick(plot_, Qt::Key_Right);
  EXPECT_NEAR(seconds(*window_.selection().cursor() - first), length * 0.005, 1e-5);
  tool("M")->trigger();
  ASSERT_TRUE(plot_->ruler());
  const Time end = plot_->ruler()->to;
  QTest::keyClick(plot_, Qt::Key_Left, Qt::ShiftModifier);
  EXPECT_LT(plot_->ruler()->to, end);
  QTest::keyClick(plot_, Qt::Key_Down);
  EXPECT_EQ(plot_->ruler()->track, 1U);
  QTest::keyClick(plot_, Qt::Key_Up);
  QTest::keyClick(plot_, Qt::Key_Up);
  EXPECT_EQ(plot_->ruler()->track, 0U);
  tool("Shift+M")->trigger();
  EXPECT_FALSE(plot_->ruler());
}

TEST_F(WavesTools, OnlyTheWholeRecordIsCalledSo) {
  const auto caption = [this] {
    QStringList texts;
    for (const QLabel* label : page_->waves()->findChildren<QLabel*>()) {
      texts << label->text() << label->toolTip();
    }
    return texts.join('|');
  };
  for (QAction* action : page_->waves()->actions()) {
    if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_Home)) {
      action->trigger();
    }
  }
  EXPECT_TRUE(caption().contains("the whole record")) << caption().toStdString();
  window_.selection().zoom(0.5);
  EXPECT_FALSE(caption().contains("the whole record")) << caption().toStdString();
}

TEST_F(WavesTools, TwoFingersZoomAroundTheirMiddle) {
  const QPointF middle = place(0.75, 0);
  const double fixed = time()->pixelToCoord(middle.x());
  const Duration before = window_.selection().stretch().length();
  QNativeGestureEvent pinch(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2,
                            middle, middle, plot_->mapToGlobal(middle), 0.25, {});
  QCoreApplication::sendEvent(plot_, &pinch);
  EXPECT_NEAR(seconds(window_.selection().stretch().length()), seconds(before) / 1.25, 1e-3);
  EXPECT_NEAR(time()->pixelToCoord(middle.x()), fixed, 1e-3);
}

TEST_F(WavesTools, TracksCanBeLeftOutButNeverAll) {
  QMenu menu;
  page_->waves()->fillTracks(&menu);
  QList<QAction*> tracks;
  for (QAction* action : menu.actions()) {
    if (action->isVisible()) {
      tracks << action;
    }
  }
  const int all = plot_->trackCount();
  ASSERT_EQ(tracks.size(), all);
  for (qsizetype i = 0; i + 1 < tracks.size(); ++i) {
    EXPECT_TRUE(tracks[i]->isEnabled());
    tracks[i]->trigger();
  }
  EXPECT_EQ(plot_->trackCount(), 1);
  EXPECT_FALSE(tracks.back()->isEnabled()) << "the last one stays";
  for (qsizetype i = 0; i + 1 < tracks.size(); ++i) {
    tracks[i]->trigger();
  }
  EXPECT_EQ(plot_->trackCount(), all);
}

TEST_F(WavesTools, EcgPaperIsSaidInMillimetresOfThisScreen) {
  EXPECT_EQ(plot_->paperScaleText(), "");
  tool("P")->trigger();
  tool("Shift+P")->trigger();
  QCoreApplication::processEvents();
  EXPECT_TRUE(plot_->paperScaleText().startsWith("ECG paper: 25 mm/s"))
      << plot_->paperScaleText().toStdString();
  EXPECT_NEAR(paperScale(*plot_->axisRects()[1], *plot_).mmPerSecond, 25, 0.01);
  tool("P")->trigger();
  EXPECT_EQ(plot_->paperScaleText(), "");
}

TEST(PaperGrid, SquaresAreDrawnOnlyWhereTheyCanBeToldApart) {
  EXPECT_TRUE(squaresFor(4).small && squaresFor(4).large);
  EXPECT_TRUE(!squaresFor(3.9).small && squaresFor(3.9).large);
  EXPECT_TRUE(!squaresFor(1).small && !squaresFor(1).large);
}

TEST_F(WavesTools, MovingTheViewByWholeBinsShiftsThePictureAndChangesNoColumn) {
  // Nothing but the wave: no working, no marks, a stretch without any of them would be too short.
  window_.selection().setMeasure(std::nullopt);
  const Channel& ecg = window_.session().record().channels[0];
  const int width = plot_->axisRects()[1]->rect().width();
  constexpr int kSamplesAPixel = 4, kShift = 50;
  const auto pixelsLong = [&](double pixels) {
    return *durationFromSeconds(pixels * kSamplesAPixel / ecg.rateHz);
  };
  const Time begin = ecg.blocks[0].t + *durationFromSeconds(4 * 1000 / ecg.rateHz);
  const auto lines = [&](Time from) {
    window_.selection().setStretch({from, from + pixelsLong(width)});
    QCoreApplication::processEvents();
    std::map<double, std::pair<double, double>> columns;
    for (const auto& point : plot_->points(0)) {
      auto [at, fresh] = columns.try_emplace(point.seconds, point.value, point.value);
      if (!fresh) {
        at->second = std::minmax({at->second.first, at->second.second, point.value});
      }
    }
    return columns;
  };
  const auto before = lines(begin), after = lines(begin + pixelsLong(kShift));
  int shared = 0;
  for (const auto& [t, column] : after) {
    if (const auto same = before.find(t); same != before.end()) {
      EXPECT_EQ(same->second, column) << t;
      ++shared;
    }
  }
  EXPECT_GT(shared, width / 2);
}

TEST_F(WavesTools, AGapIsSaidAndNoLineCrossesIt) {
  QByteArray log = smallDrill();
  log.replace("\"site\":\"South boathouse\"",
              "\"site\":\"South boathouse\",\"channels\":[{\"id\":\"e\",\"quantity\":\"ecg\","
              "\"unit\":\"mV\",\"rate_hz\":100,\"scale\":0.01,\"offset\":0}]");
  const QByteArray block = QByteArray(200, '\x05').toBase64();
  log += "{\"t\":10,\"type\":\"samples\",\"channel\":\"e\",\"count\":100,\"data\":\"" + block +
         "\"}\n";
  log += "{\"t\":14,\"type\":\"samples\",\"channel\":\"e\",\"count\":100,\"data\":\"" + block +
         "\"}\n";
  open(fileWith("gap.resuslog", log));
  ASSERT_EQ(plot_->trackCount(), 1);
  window_.selection().setStretch({at(9), at(16)});
  QCoreApplication::processEvents();
  window_.selection().setCursor(at(12));
  EXPECT_EQ(plot_->valueText(0), "no signal");
  bool lifted = false;
  for (const auto& point : plot_->points(0)) {
    lifted |= point.seconds > 10.9 && point.seconds <= 14 && std::isnan(point.value);
  }
  EXPECT_TRUE(lifted);
  EXPECT_TRUE(plot_->asText().contains("ECG"));
}

TEST_F(WavesTools, AProblemOfALineWithATimeStandsAtItsMoment) {
  QByteArray log = smallDrill();
  log += "{\"t\":70,\"type\":\"compression\",\"depth_mm\":\"deep\"}\n";
  open(fileWith("problem.resuslog", log));
  const int line = static_cast<int>(log.count('\n'));
  window_.selection().setStretch({at(60), at(80)});
  EXPECT_TRUE(plot_->asText().contains(QStringLiteral("problem in line %1").arg(line)))
      << plot_->asText().toStdString();
}

TEST_F(WavesTools, NoGridIsDrawnOverTheLines) {
  open(sample("ferry-terminal.resuslog"));
  const int lines = plot_->layer(QStringLiteral("main"))->index();
  for (const QCPAxisRect* rect : plot_->axisRects()) {
    for (const QCPAxis* axis : rect->axes()) {
      EXPECT_TRUE(!axis->grid()->visible() || axis->grid()->layer()->index() < lines);
    }
  }
}

/// Values of a moment that is not in view would be read as those of what is.
TEST_F(WavesTools, NoValuesStandBesideTracksForAMomentOutOfView) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().setStretch({at(60), at(80)});
  window_.selection().setCursor(at(70));
  QCoreApplication::processEvents();
  const QImage pointed = plot_->grab().toImage();
  window_.selection().setCursor(at(200));
  window_.selection().setStretch({at(60), at(80)});
  QCoreApplication::processEvents();
  const QImage elsewhere = plot_->grab().toImage();
  window_.selection().setCursor(std::nullopt);
  QCoreApplication::processEvents();
  EXPECT_EQ(elsewhere, plot_->grab().toImage());
  EXPECT_NE(elsewhere, pointed);
}

TEST_F(WavesTools, AScreenReaderGetsWhatTheWavesShow) {
  QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(plot_);
  ASSERT_NE(interface, nullptr);
  EXPECT_FALSE(interface->text(QAccessible::Name).isEmpty());
  EXPECT_TRUE(interface->text(QAccessible::Description).contains("Hands off"));
}

} // namespace

} // namespace afterbeat::window
