#include "tests/window/window_fixture.h"

#include "app/window/handover/handover_actions.h"

#include <QAction>
#include <QFile>

namespace afterbeat::window {
namespace {

using HandoverExport = WindowTest;

TEST_F(HandoverExport, WritesThePdfOfTheOpenRecord) {
  open(sample("ferry-terminal.resuslog"));
  QSignalSpy written(&window_.handover(), &HandoverActions::written);
  const QString path = folder_.filePath("sheet.pdf");
  window_.handover().writePdf(path);
  ASSERT_TRUE(written.wait(kPatience));
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.read(8).startsWith("%PDF-1."));
  EXPECT_TRUE(window_.notices()->text().contains(path));
}

TEST_F(HandoverExport, AFolderThatIsNotThereIsSaidInASentence) {
  open(sample("ferry-terminal.resuslog"));
  QSignalSpy problem(&window_.handover(), &HandoverActions::problem);
  window_.handover().writePdf(folder_.filePath("nowhere/sheet.pdf"));
  ASSERT_TRUE(problem.wait(kPatience));
  EXPECT_TRUE(window_.notices()->text().contains("could not be written"));
}

TEST_F(HandoverExport, IsOnlyOfferedWithARecord) {
  for (const QAction* action : window_.handover().actions()) {
    EXPECT_FALSE(action->isEnabled());
  }
  open(sample("ferry-terminal.resuslog"));
  for (const QAction* action : window_.handover().actions()) {
    EXPECT_TRUE(action->isEnabled());
  }
  EXPECT_EQ(window_.handover().suggestedName(), "Handover Ferry terminal east pier 2026-03-14.pdf");
}

} // namespace
} // namespace afterbeat::window
