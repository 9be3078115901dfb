#include "tests/window/window_fixture.h"

#include "app/window/figures/measure_delegate.h"
#include "app/window/figures/reasons.h"
#include "app/window/figures/targets.h"
#include "app/window/look/figure_words.h"
#include "app/window/settings/figure_settings_actions.h"

#include <QTableView>
#include <QTest>

namespace afterbeat::window {
namespace {

using FiguresPlace = WindowTest;

HeadlineCard* cardOf(RecordPage* page, const Session& session, MeasureId id) {
  const auto all = cardsOf(session.record(), session.figures());
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].id == id) {
      return page->headlines()->cards()[static_cast<qsizetype>(i)];
    }
  }
  return nullptr;
}

TEST_F(FiguresPlace, AClickOnAHeadlineLaysItsWorkingOpen) {
  open(sample("ferry-terminal.resuslog"));
  HeadlineCard* card = cardOf(page_, window_.session(), MeasureId::longestPause);
  ASSERT_NE(card, nullptr);
  QTest::mouseClick(card, Qt::LeftButton);
  EXPECT_TRUE(card->isChecked());
  const Measure& measure = window_.session().figures()[MeasureId::longestPause];
  ASSERT_FALSE(measure.working.empty());
  const auto& overlay = page_->rows()->canvas()->overlay();
  ASSERT_EQ(overlay.working.size(), measure.working.size());
  EXPECT_EQ(overlay.working.front().begin, measure.working.front().from);
  EXPECT_EQ(overlay.working.front().end, measure.working.front().to);
  EXPECT_TRUE(page_->panel()->working()->titleText().contains(valueWords(measure)));
  EXPECT_EQ(page_->panel()->working()->table()->model()->rowCount(),
            static_cast<int>(measure.working.size()));
}

TEST_F(FiguresPlace, EnterOnAHeadlineDoesTheSame) {
  open(sample("ferry-terminal.resuslog"));
  HeadlineCard* card = cardOf(page_, window_.session(), MeasureId::shocksDelivered);
  ASSERT_NE(card, nullptr);
  QTest::keyClick(card, Qt::Key_Return);
  EXPECT_EQ(window_.selection().measure(), MeasureId::shocksDelivered);
}

TEST_F(FiguresPlace, EveryWorkingPartCanBeJumpedTo) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().setMeasure(MeasureId::handsOffFraction);
  QTableView* table = page_->panel()->working()->table();
  const auto& working = window_.session().figures()[MeasureId::handsOffFraction].working;
  ASSERT_GT(working.size(), 3u);
  for (int row = 0; row < table->model()->rowCount(); ++row) {
    emit table->activated(table->model()->index(row, 0));
    const Interval& shown = window_.selection().stretch();
    const WorkingPart& part = working[static_cast<std::size_t>(row)];
    EXPECT_TRUE(shown.holds(part.from) && shown.holds(part.to)) << row;
    EXPECT_FALSE(window_.selection().what().isEmpty());
  }
}

TEST_F(FiguresPlace, TheListNamesEveryFigureAndSaysNotRecordedInWords) {
  open(fileWith("drill.resuslog", smallDrill()));
  const Figures& figures = window_.session().figures();
  int unrecorded = 0;
  for (const Measure& measure : figures.measures) {
    const QString text = page_->panel()->measures()->valueText(measure.id);
    EXPECT_FALSE(text.isEmpty()) << measureInfo(measure.id).name;
    if (measure.status == Status::notRecorded) {
      ++unrecorded;
      EXPECT_EQ(text, "not recorded") << measureInfo(measure.id).name;
    } else if (measure.status == Status::notApplicable) {
      EXPECT_EQ(text, "does not apply") << measureInfo(measure.id).name;
    }
  }
  EXPECT_GT(unrecorded, 5);
}

TEST_F(FiguresPlace, TheListSaysWhetherATargetIsMet) {
  open(sample("ferry-terminal.resuslog"));
  const auto targetText = [this](MeasureId id) {
    const auto items = page_->panel()->measures()->findItems(titleWords(id),
                                                             Qt::MatchExactly | Qt::MatchRecursive);
    return items.size() == 1 ? items.front()->data(0, kTargetRole).toString() : "?";
  };
  // 23 % hands off against 20 %, 112 a minute against 100 to 120.
  EXPECT_EQ(targetText(MeasureId::handsOffFraction), "beyond the target · target at most 20 %");
  EXPECT_EQ(targetText(MeasureId::chestCompressionFraction),
            "below the target · target at least 80 %");
  EXPECT_EQ(targetText(MeasureId::compressionRate), "within the target · target 100–120 a minute");
  // A share in a range has no target of its own.
  EXPECT_EQ(targetText(MeasureId::compressionRateInRange), "target 100–120 a minute");
  EXPECT_EQ(targetText(MeasureId::handsOffTime), "");
}

TEST_F(FiguresPlace, ListAndHeadlinesJudgeAlike) {
  for (const char* name : {"ferry-terminal.resuslog", "boathouse.resuslog",
                           "bathing-jetty-child.resuslog", "drill-evening-1.resuslog"}) {
    open(sample(name));
    const Record& record = window_.session().record();
    const Figures& figures = window_.session().figures();
    for (const Card& card : cardsOf(record, figures)) {
      // The card of the share in range also says the mean rate, which is what has a target.
      const MeasureId judged =
          card.id == MeasureId::compressionRateInRange ? MeasureId::compressionRate : card.id;
      const auto target = targetOf(judged, record, figures);
      EXPECT_EQ(card.text.attention, target && target->verdict > Verdict::within)
          << name << ' ' << measureInfo(card.id).name;
    }
  }
}

TEST_F(FiguresPlace, WhatHasNoValueSaysWhy) {
  open(fileWith("drill.resuslog", smallDrill()));
  const Record& record = window_.session().record();
  const Figures& figures = window_.session().figures();
  for (const Measure& measure : figures.measures) {
    EXPECT_EQ(reasonWords(measure.id, record, figures).isEmpty(), measure.status == Status::ok)
        << measureInfo(measure.id).name;
  }
  EXPECT_EQ(reasonWords(MeasureId::collapseToFirstShock, record, figures),
            "not in the record: the collapse");
  EXPECT_EQ(reasonWords(MeasureId::ventilations, record, figures), "no breath was recorded");
}

TEST_F(FiguresPlace, KeysStepThroughTheWorking) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().setMeasure(MeasureId::shocksDelivered);
  const auto& working = window_.session().figures()[MeasureId::shocksDelivered].working;
  ASSERT_GT(working.size(), 2u);
  RowsCanvas* canvas = page_->rows()->canvas();
  for (std::size_t i = 0; i < 3; ++i) {
    QTest::keyClick(canvas, Qt::Key_N);
    EXPECT_EQ(window_.selection().what(), QStringLiteral("shock %1").arg(i + 1));
  }
  QTest::keyClick(canvas, Qt::Key_N, Qt::ShiftModifier);
  EXPECT_EQ(window_.selection().what(), "shock 2");
}

TEST_F(FiguresPlace, SettingsAreThereAgainAtTheNextStart) {
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{2'250'000};
  settings.windowEnd = WindowEnd::recordEnd;
  window_.session().setSettings(settings);
  Profile own;
  own.id = "our-own";
  own.name = "Boathouse protocol";
  own.pauseLimit = Target<double>{8, {"our own", SourceMark::read}};
  QString error;
  ASSERT_TRUE(window_.settings().useProfileFile(
      fileWith("own.json", QByteArray::fromStdString(profileJson(own))), &error))
      << error.toStdString();
  {
    const MainWindow next;
    const FigureSettings& found = next.session().settings();
    EXPECT_EQ(found.pauseThreshold, Duration{2'250'000});
    EXPECT_EQ(found.windowEnd, WindowEnd::recordEnd);
    EXPECT_EQ(found.profile.id, "our-own");
    ASSERT_TRUE(found.profile.pauseLimit);
    EXPECT_EQ(found.profile.pauseLimit->value, 8);
  }
  window_.session().setSettings(FigureSettings());
}

TEST_F(FiguresPlace, AnotherPauseThresholdChangesEverythingAtOnce) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().setMeasure(MeasureId::handsOffTime);
  QTableView* table = page_->panel()->working()->table();
  const int before = table->model()->rowCount();
  const QString listed = page_->panel()->measures()->valueText(MeasureId::handsOffTime);
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{5'000'000};
  untilFiguresChange([&] { window_.session().setSettings(settings); });
  EXPECT_EQ(window_.session().figures().settings.pauseThreshold, Duration{5'000'000});
  EXPECT_LT(table->model()->rowCount(), before);
  EXPECT_NE(page_->panel()->measures()->valueText(MeasureId::handsOffTime), listed);
  EXPECT_EQ(page_->rows()->canvas()->overlay().working.size(),
            window_.session().figures()[MeasureId::handsOffTime].working.size());
  EXPECT_TRUE(window_.settings().asText().contains("longer than 5 s"));
}

TEST_F(FiguresPlace, SettingsChangedWhileAFileIsReadCount) {
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  window_.openFile(sample("ferry-terminal.resuslog"));
  FigureSettings settings = window_.session().settings();
  settings.windowEnd = WindowEnd::recordEnd;
  window_.session().setSettings(settings);
  ASSERT_TRUE(complete.wait(kPatience));
  if (window_.session().figures().settings.windowEnd != WindowEnd::recordEnd) {
    untilFiguresChange([] {});
  }
  EXPECT_EQ(window_.session().figures().settings.windowEnd, WindowEnd::recordEnd);
}

TEST_F(FiguresPlace, AProfileThatCannotBeUsedIsRefusedInASentence) {
  open(fileWith("drill.resuslog", smallDrill()));
  const std::string before = window_.session().settings().profile.id;
  QString error;
  EXPECT_FALSE(window_.settings().useProfileFile(fileWith("p.json", "{"), &error));
  EXPECT_TRUE(error.contains("stay as they were")) << error.toStdString();
  EXPECT_EQ(window_.session().settings().profile.id, before);
}

TEST_F(FiguresPlace, MomentsAreToldByTheClockWhereThereIsOne) {
  open(fileWith("drill.resuslog", smallDrill()));
  const Record& record = window_.session().record();
  EXPECT_EQ(momentWords(record, at(60)), "19:06:00");
  EXPECT_EQ(momentWords(record, at(60.25), true), "19:06:00.2");
  Record clockless = record;
  clockless.header.clock.state = ClockState::unset;
  EXPECT_EQ(momentWords(clockless, at(187)), "3:07");
  EXPECT_EQ(momentWords(clockless, at(3727)), "1:02:07");
  EXPECT_EQ(momentWords(clockless, at(-12)), "−0:12");
}

} // namespace
} // namespace afterbeat::window
