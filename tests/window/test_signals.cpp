/// What the signals say, in the window: the choice, the strip of rhythms, the working of a hint,
/// shocks, and figures that say where they come from.
#include "app/papers/rows_layout.h"
#include "app/window/look/remembered.h"
#include "app/window/signals/derive_actions.h"
#include "app/window/signals/hint_working.h"
#include "app/window/signals/rhythms.h"
#include "app/window/signals/shock_words.h"
#include "app/window/signals/suppressed_ecg.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QLabel>
#include <QTableView>
#include <QTest>
#include <QTreeWidget>

#include <algorithm>
#include <cmath>
#include <functional>

namespace afterbeat::window {
namespace {

constexpr double kPi = 3.14159265358979323846;

QByteArray line(const QString& text) {
  return text.toUtf8() + '\n';
}

/// `samples` lines of one channel, five seconds each, of a waveform over [0, length) s.
QByteArray samples(const char* channel, double rateHz, double length,
                   const std::function<double(double)>& raw) {
  QByteArray all;
  constexpr double kEach = 5;
  for (double begin = 0; begin < length; begin += kEach) {
    const auto count = static_cast<int>(kEach * rateHz);
    QByteArray bytes;
    for (int i = 0; i < count; ++i) {
      const auto value = static_cast<std::int16_t>(std::lround(raw(begin + i / rateHz)));
      bytes.append(static_cast<char>(value & 0xff)).append(static_cast<char>(value >> 8));
    }
    all += line(QStringLiteral(R"({"t":%1,"type":"samples","channel":"%2","count":%3,"data":"%4"})")
                    .arg(begin)
                    .arg(QLatin1String(channel))
                    .arg(count)
                    .arg(QLatin1String(bytes.toBase64())));
  }
  return all;
}

/// An upright spike every `period` seconds on a flat line, in microvolts: like QRS complexes.
double beats(double t, double period) {
  const double at = std::fmod(t, period) - period / 2;
  return 1000 * std::exp(-at * at / (2 * 0.012 * 0.012)) +
         250 * std::exp(-(at - 0.25) * (at - 0.25) / (2 * 0.05 * 0.05));
}

/// A wandering wave of about five a second, in microvolts: like coarse fibrillation.
double fibrillation(double t) {
  const auto turning = [t](double hz, double by, double slow) {
    return std::sin(2 * kPi * hz * t + by * std::sin(2 * kPi * slow * t) +
                    1.7 * std::sin(2 * kPi * 2.7 * slow * t + 1));
  };
  return 260 * turning(4.6, 3.1, 0.23) + 200 * turning(6.1, 2.3, 0.37) +
         120 * turning(7.9, 2.9, 0.19);
}

/// Two minutes: fibrillation to the shock at 60 s, a slow organised rhythm after it; hands on from
/// 70 to 110 s in depth alone. `more`: further lines, in place.
QByteArray shockedDrill(const QByteArray& more = {}) {
  QByteArray log =
      line(R"({"resuslog":"1.0","id":"urn:uuid:0b6f9f3e-5f1c-4c5e-9d65-2f0a1c9c1d77",)"
           R"("recorded":"2026-04-17T19:05:00+02:00","kind":"drill","synthetic":true,"channels":[)"
           R"({"id":"e","quantity":"ecg","unit":"mV","rate_hz":250,"scale":0.001,"offset":0},)"
           R"({"id":"d","quantity":"depth","unit":"mm","rate_hz":100,"scale":0.01,"offset":0}]})");
  log += line(R"({"t":0,"type":"power_on"})");
  log += line(R"({"t":1,"type":"electrodes","state":"attached"})");
  log += samples("e", 250, 120, [](double t) {
    return t < 60 ? fibrillation(t) : t < 61 ? 0.0 : beats(t, 0.9);
  });
  log += samples("d", 100, 120, [](double t) {
    const double phase = std::fmod(t, 0.55) / 0.55;
    return t < 70 || t > 110 ? 0.0 : 2600 * (1 - std::cos(2 * kPi * phase));
  });
  log += line(R"({"t":60,"type":"shock","delivered":true,"energy_j":200})");
  log += more;
  log += line(R"({"t":119,"type":"power_off"})");
  return log;
}

class Signals : public WindowTest {
protected:
  void openDrill(const QByteArray& more = {}) { open(fileWith("d.resuslog", shockedDrill(more))); }
  [[nodiscard]] WavesPlot* plot() const { return page_->waves()->plot(); }
  [[nodiscard]] QAction* actionFor(const char* key) const {
    for (QAction* action : window_.findChildren<QAction*>()) {
      if (action->shortcut() == QKeySequence(QLatin1String(key))) {
        return action;
      }
    }
    return nullptr;
  }
  void chooseMode(const char* key) {
    QSignalSpy complete(&window_, &MainWindow::pictureComplete);
    actionFor(key)->trigger();
    ASSERT_TRUE(complete.wait(kPatience));
    untilHints();
  }
  [[nodiscard]] std::size_t derivedCompressions() const {
    const auto& entries = window_.session().record().entries;
    return static_cast<std::size_t>(
        std::count_if(entries.begin(), entries.end(), [](const Entry& entry) {
          return entry.complete<entry::Compression>() && entry.source == Source::derived;
        }));
  }
  /// The place of a moment in a line of the lane.
  [[nodiscard]] QPointF place(Time t, int laneLine) const {
    const QRect line = plot()->lineOfLane(laneLine);
    return {pixelOf(*plot()->axisRects().front(), t), static_cast<double>(line.center().y())};
  }
};

TEST_F(Signals, WhatTheDeviceDidNotRecordIsDerivedAndSaidToBe) {
  openDrill();
  EXPECT_NEAR(static_cast<double>(derivedCompressions()), 40 / 0.55, 3);
  const Loaded& loaded = window_.session().loaded();
  ASSERT_TRUE(loaded.origin.use.compressions.any());
  ASSERT_TRUE(loaded.origin.compressions);
  ASSERT_EQ(window_.session().figures()[MeasureId::handsOffFraction].status, Status::ok);
  const HeadlineCard* handsOff = page_->headlines()->cards()[2];
  EXPECT_TRUE(handsOff->accessibleDescription().contains("from the signals, "))
      << handsOff->accessibleDescription().toStdString();
  EXPECT_FALSE(page_->headlines()->cards()[1]->accessibleDescription().contains("signals"))
      << "shocks are the device's";
  window_.selection().setMeasure(MeasureId::compressionRate);
  QStringList said;
  for (const QLabel* label : page_->panel()->working()->findChildren<QLabel*>()) {
    said << label->text();
  }
  EXPECT_TRUE(said.join('|').contains("compressions were derived, not recorded"))
      << said.join('|').toStdString();
  EXPECT_TRUE(said.join('|').contains("Channels: ")) << said.join('|').toStdString();
}

TEST_F(Signals, RowsTellDerivedHandsFromRecordedOnes) {
  openDrill();
  const papers::RowsModel& model = window_.session().loaded().rows->model();
  ASSERT_FALSE(model.runs.empty());
  EXPECT_TRUE(model.runs.front().derived);
  QStringList legend;
  for (const papers::LegendItem& item : papers::legendItems(model)) {
    legend << item.words;
  }
  EXPECT_TRUE(legend.join('|').contains("hands on, from the signals"));
  EXPECT_FALSE(legend.join('|').contains("hands on; height"));
  EXPECT_TRUE(page_->rows()->canvas()->asText().contains("from the signals"));
  open(fileWith("device.resuslog", smallDrill()));
  EXPECT_FALSE(window_.session().loaded().rows->model().runs.front().derived);
  EXPECT_FALSE(page_->rows()->canvas()->asText().contains("from the signals"));
}

TEST_F(Signals, TheChoiceReadsTheFileOnceMoreAndIsRemembered) {
  openDrill();
  chooseMode("Ctrl+H, 2");
  EXPECT_EQ(window_.session().deriveMode(), DeriveMode::never);
  EXPECT_EQ(derivedCompressions(), 0U);
  EXPECT_FALSE(window_.session().hints());
  EXPECT_EQ(plot()->rhythms().lines(), 0);
  EXPECT_EQ(window_.session().figures()[MeasureId::compressionRate].status, Status::notRecorded);
  {
    Session other;
    const DeriveActions actions(other);
    EXPECT_EQ(other.deriveMode(), DeriveMode::never);
    EXPECT_TRUE(actions.actions()[1]->isChecked());
  }
  chooseMode("Ctrl+H, 3");
  EXPECT_GT(derivedCompressions(), 0U);
  EXPECT_TRUE(window_.session().hints());
  chooseMode("Ctrl+H, 1");
  EXPECT_EQ(window_.session().deriveMode(), DeriveMode::automatic);
}

TEST_F(Signals, ACancelledReadingGoesBackToTheModeOfWhatIsShown) {
  openDrill();
  const auto hints = window_.session().hints();
  ASSERT_TRUE(hints);
  actionFor("Ctrl+H, 2")->trigger();
  ASSERT_EQ(window_.session().state(), Session::State::loading);
  window_.session().cancel();
  EXPECT_EQ(window_.session().deriveMode(), DeriveMode::automatic);
  EXPECT_TRUE(actionFor("Ctrl+H, 1")->isChecked());
  EXPECT_EQ(window_.session().hints(), hints) << "the record in view keeps its own";
}

TEST_F(Signals, HintsGoWithTheirRecord) {
  openDrill();
  ASSERT_TRUE(window_.session().hints());
  QSignalSpy changed(&window_.session(), &Session::hintsChanged);
  // Without an ECG there is nothing to make hints from.
  open(fileWith("device.resuslog", smallDrill()));
  EXPECT_GT(changed.count(), 0);
  EXPECT_FALSE(window_.session().hints());
  EXPECT_FALSE(window_.session().hintsAwaited());
  EXPECT_EQ(plot()->rhythms().lines(), 0);
  // Hints of a record that was closed meanwhile never arrive.
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  window_.openFile(fileWith("d.resuslog", shockedDrill()));
  ASSERT_TRUE(complete.wait(kPatience));
  window_.session().close();
  QThreadPool::globalInstance()->waitForDone();
  QCoreApplication::processEvents();
  EXPECT_FALSE(window_.session().hints());
  EXPECT_FALSE(window_.session().hintsAwaited());
}

TEST_F(Signals, TheStripShowsHintsAndRecordedRhythmsApart) {
  openDrill(line(R"({"t":62,"type":"rhythm","end":70,"is":"organised","source":"observer"})"));
  chooseMode("Ctrl+H, 3");
  const Rhythms& rhythms = plot()->rhythms();
  ASSERT_EQ(rhythms.lines(), 2);
  ASSERT_EQ(rhythms.recorded.all().size(), 1U);
  EXPECT_EQ(stretchWords(rhythms.recorded.all()[0]), "noted: organised");
  const RhythmStretch* before = rhythms.hints.at(at(30));
  ASSERT_NE(before, nullptr);
  EXPECT_EQ(before->kind, RhythmKind::shockable);
  EXPECT_EQ(stretchWords(*before), "hint: shockable");
  window_.selection().setStretch({at(20), at(40)});
  QCoreApplication::processEvents();
  const QString tip = plot()->tipAt(place(at(30), 4));
  EXPECT_TRUE(tip.startsWith("hint: shockable")) << tip.toStdString();
  EXPECT_TRUE(tip.contains("derived")) << tip.toStdString();
  EXPECT_TRUE(tip.contains("A reviewer's aid, not a diagnosis")) << tip.toStdString();
  EXPECT_TRUE(plot()->asText().contains("hint: shockable"));
  EXPECT_TRUE(plot()->asText().contains("not a diagnosis"));
  window_.selection().setStretch({at(55), at(75)});
  QCoreApplication::processEvents();
  const QString noted = plot()->tipAt(place(at(66), 3));
  EXPECT_TRUE(noted.startsWith("noted: organised")) << noted.toStdString();
  EXPECT_FALSE(noted.contains("diagnosis")) << "an observer's word is no hint";
}

TEST_F(Signals, ARecordWithoutRhythmsHasNoStrip) {
  open(fileWith("device.resuslog", smallDrill()));
  EXPECT_EQ(plot()->rhythms().lines(), 0);
  EXPECT_FALSE(plot()->asText().contains("diagnosis"));
}

TEST_F(Signals, AShockSaysWhatTheEcgShowsAroundIt) {
  openDrill();
  const auto hints = window_.session().hints();
  ASSERT_EQ(hints->shocks.size(), 1U);
  const ShockRhythm& shock = hints->shocks[0];
  ASSERT_TRUE(shock.before);
  window_.selection().setStretch({at(50), at(70)});
  QCoreApplication::processEvents();
  const QString tip = plot()->tipAt(place(at(60), 0));
  EXPECT_TRUE(tip.contains("Before the shock: coarse fibrillation")) << tip.toStdString();
  EXPECT_TRUE(tip.contains("AMSA")) << tip.toStdString();
  EXPECT_TRUE(tip.contains("not a diagnosis")) << tip.toStdString();
  EXPECT_FALSE(plot()->tipAt(place(at(65), 0)).contains("Before the shock"));

  page_->lower()->setCurrentWidget(page_->tables());
  page_->tables()->showKind(TableKind::ecgAtShocks);
  const QAbstractItemModel& table = *page_->tables()->currentTable()->model();
  ASSERT_EQ(table.rowCount(), 1);
  EXPECT_EQ(table.index(0, 2).data().toString(), "coarse fibrillation");
  EXPECT_EQ(table.index(0, 5).data().toString(), words().number(shock.before->amsaMvHz, 1));
  EXPECT_EQ(table.index(0, 7).data().toString(), followedWords(shock));
  QStringList said;
  for (const QLabel* label : page_->tables()->findChildren<QLabel*>()) {
    if (label->isVisible()) {
      said << label->text();
    }
  }
  EXPECT_TRUE(said.join('|').contains("not a diagnosis")) << said.join('|').toStdString();
  page_->tables()->showKind(TableKind::pauses);
  for (const QLabel* label : page_->tables()->findChildren<QLabel*>()) {
    EXPECT_FALSE(label->isVisible() && label->text().contains("diagnosis"));
  }
}

TEST_F(Signals, AClickOnAHintOpensItsWorking) {
  openDrill();
  window_.selection().setStretch({at(20), at(40)});
  QCoreApplication::processEvents();
  EXPECT_EQ(window_.findChild<HintWorking*>(), nullptr);
  QTest::mouseClick(plot(), Qt::LeftButton, Qt::NoModifier, place(at(30), 3).toPoint());
  auto* working = window_.findChild<HintWorking*>();
  ASSERT_NE(working, nullptr);
  EXPECT_TRUE(working->isVisible());
  const auto hints = window_.session().hints();
  ASSERT_TRUE(working->shown());
  const RhythmWindow& shown = hints->windows[*working->shown()];
  EXPECT_LE(std::fabs(seconds(shown.where.begin + shown.where.length() / 2) - 30), 1.01);
  const QString text = working->asText();
  EXPECT_TRUE(text.contains("hint: shockable")) << text.toStdString();
  EXPECT_TRUE(text.contains("Decision: shockable.")) << text.toStdString();
  EXPECT_TRUE(text.contains("A reviewer's aid, not a diagnosis.")) << text.toStdString();
  EXPECT_TRUE(text.contains("Log-odds of shockable: +")) << text.toStdString();
  EXPECT_EQ(working->findChild<QTreeWidget*>()->topLevelItemCount(),
            static_cast<int>(kRhythmFeatures));
  const std::size_t first = *working->shown();
  working->stepWindow(+1);
  EXPECT_EQ(*working->shown(), first + 1);
  EXPECT_TRUE(window_.selection().stretch().holds(hints->windows[first + 1].where.begin));
  working->stepHint(+1);
  EXPECT_FALSE(working->asText().contains("Decision: shockable.")) << "the next hint is another";
  working->stepHint(-1);
  EXPECT_TRUE(working->asText().contains("Decision: shockable."));
  // Another record: what was shown is gone.
  open(fileWith("device.resuslog", smallDrill()));
  EXPECT_FALSE(working->shown());
  EXPECT_TRUE(working->asText().contains("No hint")) << working->asText().toStdString();
}

TEST_F(Signals, ADragOverTheStripMovesAndOpensNothing) {
  openDrill();
  window_.selection().setStretch({at(20), at(40)});
  QCoreApplication::processEvents();
  const QPoint from = place(at(30), 3).toPoint(), to = place(at(25), 3).toPoint();
  QTest::mousePress(plot(), Qt::LeftButton, Qt::NoModifier, from);
  QMouseEvent move(QEvent::MouseMove, to, plot()->mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                   Qt::NoModifier);
  QCoreApplication::sendEvent(plot(), &move);
  QTest::mouseRelease(plot(), Qt::LeftButton, Qt::NoModifier, to);
  EXPECT_EQ(window_.findChild<HintWorking*>(), nullptr);
  EXPECT_NEAR(seconds(window_.selection().stretch().begin), 25, 0.1);
}

TEST_F(Signals, TheEcgIsShownWithoutItsCompressionArtefactAndLabelled) {
  openDrill();
  const int before = plot()->trackCount();
  QSignalSpy changed(page_->waves(), &WavesView::tracksChanged);
  actionFor("E")->trigger();
  const SuppressedEcgMaker& maker = page_->waves()->suppressed();
  while (maker.awaited()) {
    ASSERT_TRUE(changed.wait(kPatience));
  }
  ASSERT_TRUE(maker.track());
  EXPECT_EQ(plot()->trackCount(), before + 1);
  EXPECT_TRUE(plot()->asText().contains("ECG, compressions suppressed"));
  const Channel& original = window_.session().record().channels[0];
  const Channel& shown = maker.track()->channel;
  ASSERT_EQ(shown.samples.size(), original.samples.size());
  const auto same = [&](double from, double to) {
    const auto begin = static_cast<std::ptrdiff_t>(from * 250),
               end = static_cast<std::ptrdiff_t>(to * 250);
    return std::equal(original.samples.begin() + begin, original.samples.begin() + end,
                      shown.samples.begin() + begin);
  };
  EXPECT_TRUE(same(0, 60)) << "without compressions nothing is changed";
  EXPECT_FALSE(same(80, 100));
  // Not wanted any more.
  actionFor("E")->trigger();
  EXPECT_EQ(plot()->trackCount(), before);
  EXPECT_FALSE(maker.track());
}

TEST_F(Signals, WithoutCompressionsThereIsNothingToSuppress) {
  Record record;
  EXPECT_EQ(suppressedEcg(record), nullptr);
  openDrill();
  record = window_.session().record();
  EXPECT_NE(suppressedEcg(record), nullptr);
  record.entries.clear();
  EXPECT_EQ(suppressedEcg(record), nullptr);
}

TEST_F(Signals, AKeyOpensTheHintAtTheCursor) {
  openDrill();
  window_.selection().setCursor(at(100));
  actionFor("Shift+H")->trigger();
  auto* working = window_.findChild<HintWorking*>();
  ASSERT_NE(working, nullptr);
  ASSERT_TRUE(working->shown());
  EXPECT_TRUE(window_.session().hints()->windows[*working->shown()].where.holds(at(100)));
}

} // namespace
} // namespace afterbeat::window
