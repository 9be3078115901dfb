/// What is another figure under other definitions or settings.
#include "app/archive/database.h"
#include "app/window/compare/figures_moved.h"
#include "tests/window/season_fixture.h"

#include <QClipboard>
#include <QHeaderView>
#include <QTableView>

namespace afterbeat::window {

namespace {

class FiguresThatMoved : public ArchiveWindowTest {
protected:
  [[nodiscard]] QAction* actionFor(const char* key) const {
    for (QAction* action : window_.findChildren<QAction*>()) {
      if (action->shortcut() == QKeySequence(QLatin1String(key))) {
        return action;
      }
    }
    return nullptr;
  }
  /// The dialog, once the archive has answered.
  MovedDialog* asked() {
    pressShift(Qt::Key_V);
    for (QDialog* dialog : window_.findChildren<QDialog*>()) {
      if (auto* moved = qobject_cast<MovedDialog*>(dialog); moved && moved->isVisible()) {
        EXPECT_TRUE(QTest::qWaitFor([moved] { return !moved->sentence().contains("being asked"); },
                                    kPatience));
        return moved;
      }
    }
    throw std::runtime_error("no dialog");
  }
};

TEST_F(FiguresThatMoved, AreListedSortedAndCopied) {
  fileWith("lantern.resuslog", smallDrill());
  takeIn();
  // What an earlier version of the program left: other definitions, and a figure of its own.
  archive::Database(place(), archive::Access::write)
      .run("UPDATE making SET definitions = definitions - 1");
  archive::Database(place(), archive::Access::write)
      .run("UPDATE figure SET value = 77 WHERE measure_id = "
           "(SELECT id FROM measure WHERE name = 'power_on_to_first_shock')");
  archive::Database(place(), archive::Access::write)
      .run("DELETE FROM figure WHERE measure_id = "
           "(SELECT id FROM measure WHERE name = 'longest_pause')");
  takeIn();
  MovedDialog* dialog = asked();
  EXPECT_TRUE(dialog->sentence().contains("Figures that changed: 2."))
      << dialog->sentence().toStdString();
  QTableView* table = dialog->table();
  ASSERT_TRUE(table->isVisible());
  const QAbstractItemModel& model = *table->model();
  ASSERT_EQ(model.rowCount(), 2);
  const auto column = [&model](int at) {
    return QStringList{model.index(0, at).data().toString(), model.index(1, at).data().toString()};
  };
  const QString shock = titleWords(MeasureId::powerOnToFirstShock),
                pause = titleWords(MeasureId::longestPause);
  QTest::mouseClick(table->horizontalHeader()->viewport(), Qt::LeftButton, {},
                    {table->horizontalHeader()->sectionPosition(1) + 5, 5});
  const QStringList upwards = column(1);
  EXPECT_EQ(QSet<QString>(upwards.begin(), upwards.end()), (QSet<QString>{shock, pause}));
  QTest::mouseClick(table->horizontalHeader()->viewport(), Qt::LeftButton, {},
                    {table->horizontalHeader()->sectionPosition(1) + 5, 5});
  EXPECT_EQ(column(1), (QStringList{upwards[1], upwards[0]}));
  const int of = model.index(0, 1).data().toString() == shock ? 0 : 1;
  EXPECT_EQ(column(0)[of], "lantern.resuslog");
  EXPECT_TRUE(column(2)[of].startsWith("1 min 17")) << column(2)[of].toStdString();
  EXPECT_EQ(column(3)[of], "1 min");
  EXPECT_EQ(column(2)[1 - of], "not recorded");
  EXPECT_EQ(column(4)[of], QStringLiteral("definitions 0 → 1"));
  QApplication::setActiveWindow(dialog);
  QApplication::clipboard()->clear();
  QTest::keyClick(dialog, Qt::Key_C, Qt::ControlModifier);
  // A button's key lets it look pressed for a moment first.
  ASSERT_TRUE(
      QTest::qWaitFor([] { return !QApplication::clipboard()->text().isEmpty(); }, kPatience));
  const QString copied = QApplication::clipboard()->text();
  EXPECT_EQ(copied.trimmed().count('\n'), 2) << copied.toStdString();
  EXPECT_TRUE(copied.contains("lantern.resuslog\t" + shock)) << copied.toStdString();
}

TEST_F(FiguresThatMoved, BetweenSettingsSayWhichOnes) {
  fileWith("lantern.resuslog", smallDrill());
  takeIn();
  archive::MakingSettings other;
  other.figures.pauseThreshold = Duration{500'000};
  ASSERT_TRUE(archive::Archive::open(place())->use(other));
  takeIn();
  const MovedDialog* dialog = asked();
  const QAbstractItemModel& model = *dialog->table()->model();
  ASSERT_GT(model.rowCount(), 0);
  EXPECT_EQ(model.index(0, 4).data().toString(),
            QStringLiteral("pauses longer than 1.5 s → pauses longer than 0.5 s"));
}

TEST_F(FiguresThatMoved, NoneIsSaidInASentence) {
  EXPECT_FALSE(actionFor("Shift+V")->isEnabled());
  writeSeason(2);
  takeIn();
  const MovedDialog* dialog = asked();
  EXPECT_TRUE(dialog->sentence().contains("made in one way")) << dialog->sentence().toStdString();
  EXPECT_FALSE(dialog->table()->isVisible());
}

TEST_F(FiguresThatMoved, AnArchiveThatIsGoneIsSaid) {
  writeSeason(2);
  takeIn();
  ASSERT_TRUE(QFile::remove(QString::fromStdString(place().name)));
  const MovedDialog* dialog = asked();
  EXPECT_TRUE(dialog->sentence().contains("There is no archive"))
      << dialog->sentence().toStdString();
  EXPECT_FALSE(dialog->table()->isVisible());
}

} // namespace

} // namespace afterbeat::window
