/// A recording that broke off or was damaged says so in every place, and its figures say what they
/// cannot know.
#include "tests/window/window_fixture.h"

#include "app/window/debrief/debrief_page.h"
#include "app/window/handover/handover_page.h"
#include "app/window/shell/incomplete_strip.h"

#include <QPainter>

namespace afterbeat::window {
namespace {

using NotWhole = WindowTest;

TEST_F(NotWhole, ABrokenOffRecordingSaysSoInEveryPlace) {
  open(sample("lake-steamer-power-lost.resuslog"));
  IncompleteStrip* strip = window_.places()->incomplete();
  EXPECT_TRUE(strip->text().contains("broke off")) << strip->text().toStdString();
  for (QWidget* place : QList<QWidget*>{page_, window_.debriefPage(), window_.handoverPage()}) {
    window_.places()->goTo(place);
    EXPECT_TRUE(strip->isVisible()) << place->metaObject()->className();
  }
  window_.places()->goTo(page_);
  const CardText& on = page_->headlines()->cards()[0]->card();
  EXPECT_TRUE(on.notes.front().startsWith("at least")) << on.notes.join('|').toStdString();
  const CardText& shocks = page_->headlines()->cards()[1]->card();
  EXPECT_TRUE(shocks.notes.front().startsWith("may be more"));
  EXPECT_TRUE(shocks.warned);
}

TEST_F(NotWhole, AWholeRecordingSaysNothing) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_FALSE(window_.places()->incomplete()->isVisible());
  EXPECT_FALSE(page_->headlines()->cards()[0]->card().warned);
}

TEST_F(NotWhole, LostLinesAreSaidWithWhatTheyMean) {
  QByteArray log = smallDrill();
  log.insert(log.indexOf('\n') + 1, "{\"t\": 1, garbage\n");
  open(fileWith("damaged.resuslog", log));
  EXPECT_TRUE(window_.places()->incomplete()->text().contains("One line"));
  EXPECT_TRUE(page_->headlines()->cards()[1]->card().notes.front().contains("lines were lost"));
}

TEST_F(NotWhole, AShockNotGivenHasALineOfItsOwn) {
  open(sample("boathouse.resuslog"));
  HeadlineCard* card = page_->headlines()->cards()[1];
  const QStringList& notes = card->card().notes;
  ASSERT_EQ(notes.size(), 2) << notes.join('|').toStdString();
  EXPECT_TRUE(notes[1].contains("not given"));
  // All lines of every card have room.
  for (const QSize& size : {QSize(1024, 640), QSize(1280, 720), QSize(1900, 1000)}) {
    window_.resize(size);
    QCoreApplication::processEvents();
    for (const HeadlineCard* one : page_->headlines()->cards()) {
      const int lines = one->linesFor(one->width());
      const int line = QFontMetrics(one->font()).height() * 92 / 100;
      EXPECT_GE(one->height(), (lines + 2) * line) << one->card().title.toStdString();
      EXPECT_LE(lines, 4);
    }
  }
}

} // namespace
} // namespace afterbeat::window
