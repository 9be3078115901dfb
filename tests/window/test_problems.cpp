/// The problems of a file in their tab: folded, explained, gone to; and the page of keys.
#include "tests/window/window_fixture.h"

#include "app/window/problems/problem_words.h"
#include "app/window/shell/help.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QElapsedTimer>
#include <QMenuBar>
#include <QPushButton>
#include <QTest>
#include <QTextEdit>
#include <QTreeView>
#include <QTreeWidget>

namespace afterbeat::window {
namespace {

class Problems : public WindowTest {
protected:
  /// Three lines that are garbage, and one incomplete entry.
  static QByteArray damagedDrill() {
    QByteArray log = smallDrill();
    const auto first = log.indexOf('\n') + 1;
    log.insert(first, "{\"t\": 1, garbage\n{\"t\": 2, <rubbish>\n{\"t\": 3, litter\n");
    return log.replace(R"({"t":110,)", R"({"t":108,"type":"electrodes"})"
                                       "\n"
                                       R"({"t":110,)");
  }

  void openDamaged() {
    open(fileWith("damaged.resuslog", damagedDrill()));
    window_.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    QTest::keyClick(&window_, Qt::Key_F5);
    ASSERT_EQ(page_->panel()->currentWidget(), view());
    ASSERT_TRUE(tree()->hasFocus());
  }

  [[nodiscard]] ProblemsView* view() const { return page_->panel()->problems(); }
  [[nodiscard]] QTreeView* tree() const { return view()->tree(); }

  /// The top row whose words hold a part.
  [[nodiscard]] QModelIndex top(const QString& part) const {
    const QAbstractItemModel& model = *tree()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
      const QModelIndex index = model.index(row, 0);
      if (index.data().toString().contains(part)) {
        return index;
      }
    }
    return {};
  }

  void click(const QModelIndex& index) const {
    tree()->scrollTo(index);
    QTest::mouseClick(tree()->viewport(), Qt::LeftButton, {}, tree()->visualRect(index).center());
  }
};

TEST_F(Problems, SeveralOfAKindStandUnderOneHeadingWithTheirNumber) {
  openDamaged();
  const QAbstractItemModel& model = *tree()->model();
  const QModelIndex broken = model.index(0, 0);
  EXPECT_EQ(broken.data().toString(), "3 × Lines that could not be read");
  EXPECT_EQ(broken.data(kProblemPlaceRole).toString(), "3 errors · lines 2 to 4");
  ASSERT_EQ(model.rowCount(broken), 3);
  EXPECT_FALSE(tree()->isExpanded(broken));
  const QModelIndex second = model.index(1, 0, broken);
  EXPECT_TRUE(second.data().toString().startsWith("This line could not be read"));
  EXPECT_EQ(second.data(kProblemPlaceRole).toString(), "error · line 3");
  EXPECT_EQ(second.parent(), broken);
  // One alone of its kind needs no heading.
  const QModelIndex alone = top("electrodes");
  ASSERT_TRUE(alone.isValid());
  EXPECT_FALSE(model.hasChildren(alone));
  EXPECT_EQ(view()->problems().total(), 5);
  EXPECT_EQ(view()->problems().count(Severity::error), 4);
  EXPECT_TRUE(page_->panel()->tabText(page_->panel()->indexOf(view())).contains("(5)"));
}

TEST_F(Problems, KeysOpenAHeadingAndTheMeaningOfTheChosenStandsBelow) {
  openDamaged();
  const QModelIndex broken = tree()->model()->index(0, 0);
  EXPECT_EQ(tree()->currentIndex(), broken);
  const QString meaning = kindWords(ProblemKind::brokenLine).meaning;
  EXPECT_TRUE(view()->detailsText().contains(meaning)) << view()->detailsText().toStdString();
  QTest::keyClick(tree(), Qt::Key_Return);
  EXPECT_TRUE(tree()->isExpanded(broken));
  QTest::keyClick(tree(), Qt::Key_Down);
  QTest::keyClick(tree(), Qt::Key_Down);
  EXPECT_EQ(tree()->currentIndex().parent(), broken);
  EXPECT_TRUE(view()->detailsText().contains(tree()->currentIndex().data().toString()));
  EXPECT_TRUE(view()->detailsText().contains(meaning));
  // A line that could not be read has no time: nothing moves, and that is said.
  EXPECT_TRUE(view()->detailsText().contains("No time is known"));
  const Interval before = window_.selection().stretch();
  QTest::keyClick(tree(), Qt::Key_Return);
  EXPECT_EQ(window_.selection().stretch(), before);
  QTest::keyClick(tree(), Qt::Key_Left);
  QTest::keyClick(tree(), Qt::Key_Left);
  EXPECT_FALSE(tree()->isExpanded(broken));
}

TEST_F(Problems, AClickOrEnterGoesToTheTimeOfAProblem) {
  openDamaged();
  Selection& selection = window_.selection();
  const auto isShown = [&](double s) {
    const Interval& shown = selection.stretch();
    return std::chrono::abs(shown.begin + shown.length() / 2 - at(s)) <= Duration{2};
  };
  selection.lookAt(at(20));
  const QModelIndex electrodes = top("electrodes");
  ASSERT_TRUE(electrodes.isValid());
  click(electrodes);
  EXPECT_TRUE(isShown(108));
  EXPECT_EQ(selection.what(), electrodes.data().toString());
  selection.lookAt(at(20));
  EXPECT_FALSE(isShown(108));
  QTest::keyClick(tree(), Qt::Key_Return);
  EXPECT_TRUE(isShown(108));
}

TEST_F(Problems, TheListIsCopiedWholeWithItsMeanings) {
  openDamaged();
  QApplication::clipboard()->clear();
  QTest::keyClick(tree(), Qt::Key_C, Qt::ControlModifier);
  const QString text = QApplication::clipboard()->text();
  const QStringList lines = text.split('\n', Qt::SkipEmptyParts);
  // The titles, one heading, and five problems.
  ASSERT_EQ(lines.size(), 7) << text.toStdString();
  EXPECT_EQ(lines[0], "what was found\thow bad\twhere\twhen\twhat it means");
  EXPECT_EQ(lines[1], "3 × Lines that could not be read\t3 errors\tlines 2 to 4\t\t" +
                          kindWords(ProblemKind::brokenLine).meaning);
  EXPECT_TRUE(lines[2].contains("\terror\tline 2\t")) << lines[2].toStdString();
}

TEST_F(Problems, NothingFoundIsSaidInASentence) {
  openDamaged();
  EXPECT_TRUE(tree()->isVisible());
  open(sample("ferry-terminal.resuslog"));
  QTest::keyClick(&window_, Qt::Key_F5);
  EXPECT_FALSE(tree()->isVisible());
  EXPECT_EQ(view()->detailsText(), "No problems were found in this file.");
  EXPECT_TRUE(view()->findChild<QTextEdit*>()->hasFocus());
}

TEST_F(Problems, WordsWrapInANarrowPanelAndNothingIsCutOff) {
  openDamaged();
  ProblemsView narrow(window_.session(), window_.selection());
  narrow.resize(280, 400);
  narrow.show();
  emit window_.session().figuresChanged();
  QTreeView& list = *narrow.tree();
  list.expandAll();
  const QModelIndex child = list.model()->index(0, 0, list.model()->index(0, 0));
  const int room = list.visualRect(child).width() - QFontMetrics(list.font()).height() * 2;
  const int needed =
      QFontMetrics(list.font())
          .boundingRect(QRect(0, 0, room, 1000), Qt::TextWordWrap, child.data().toString())
          .height();
  EXPECT_GE(list.visualRect(child).height(), needed);
  EXPECT_LE(list.visualRect(child).right(), list.viewport()->width());
  const auto* details = narrow.findChild<QTextEdit*>();
  EXPECT_LE(details->height(), narrow.height() / 2);
  EXPECT_LE(narrow.minimumSizeHint().width(), 280);
}

TEST_F(Problems, ThousandsOfProblemsOpenAtOnce) {
  QByteArray log = smallDrill();
  QByteArray garbage;
  constexpr int kMany = 20'000;
  for (int i = 0; i < kMany; ++i) {
    garbage += "{\"t\": " + QByteArray::number(i) + ", garbage\n";
  }
  log.insert(log.indexOf('\n') + 1, garbage);
  open(fileWith("wreck.resuslog", log));
  QTest::keyClick(&window_, Qt::Key_F5);
  const QModelIndex broken = tree()->model()->index(0, 0);
  ASSERT_EQ(tree()->model()->rowCount(broken), kMany);
  QElapsedTimer timer;
  timer.start();
  QTest::keyClick(tree(), Qt::Key_Return);
  tree()->grab();
  // A generous multiple of what it takes, for slow machines under load.
  constexpr int kMost = 1'000;
  EXPECT_LT(timer.elapsed(), kMost);
  EXPECT_TRUE(tree()->isExpanded(broken));
}

TEST_F(Problems, ThePageOfKeysTellsGesturesAndIsCopied) {
  showKeys(window_.menuBar(), &window_);
  QDialog* page = nullptr;
  for (QDialog* dialog : window_.findChildren<QDialog*>()) {
    page = dialog->isVisible() ? dialog : page;
  }
  ASSERT_NE(page, nullptr);
  auto* list = page->findChild<QTreeWidget*>();
  for (const char* what :
       {"Measure between two moments", "Move the cursor", "Begin a ruler, and stretch it",
        "Choose the track that the ruler measures", "Take the ruler and the cursor away"}) {
    EXPECT_EQ(list->findItems(QLatin1String(what), Qt::MatchExactly | Qt::MatchRecursive).size(), 1)
        << what;
  }
  QPushButton* copy = nullptr;
  for (QPushButton* button : page->findChildren<QPushButton*>()) {
    copy = button->text() == "Copy as text" ? button : copy;
  }
  ASSERT_NE(copy, nullptr);
  QApplication::clipboard()->clear();
  QTest::mouseClick(copy, Qt::LeftButton);
  const QString text = QApplication::clipboard()->text();
  EXPECT_TRUE(text.startsWith("what\tkey\n")) << text.toStdString();
  EXPECT_TRUE(text.contains("Measure between two moments\tShift while dragging\n"));
  EXPECT_TRUE(text.contains("Next pause\t.\n")) << text.toStdString();
  page->close();
}

} // namespace
} // namespace afterbeat::window
