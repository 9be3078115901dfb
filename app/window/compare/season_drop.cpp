#include "app/window/compare/season_drop.h"

#include "app/window/compare/beside_load.h"
#include "app/window/compare/season_desk.h"

#include <QFileInfo>
#include <QMenu>

#include <algorithm>
#include <functional>
#include <vector>

namespace afterbeat::window {

namespace {

struct Choice {
  QString text;
  std::function<void()> does;
};

} // namespace

SeasonDrop::SeasonDrop(SeasonDesk& desk, QWidget* window)
    : QObject(window), desk_(desk), window_(window) {}

void SeasonDrop::dropped(const QStringList& paths, const QPoint& at) {
  const bool filesAlone = std::all_of(paths.begin(), paths.end(),
                                      [](const QString& path) { return QFileInfo(path).isFile(); });
  if (paths.size() == 1 && filesAlone &&
      archive::isDatabaseFile(QFileInfo(paths.front()).filesystemAbsoluteFilePath())) {
    emit archiveWanted(paths.front());
    return;
  }
  std::vector<Choice> choices;
  if (desk_.place() && desk_.source()) {
    QString name = desk_.source()->name();
    choices.push_back({tr("&Take into %1").arg(name.replace(QLatin1Char('&'), QLatin1String("&&"))),
                       [this, paths, place = *desk_.place()] { desk_.takeIn(place, paths); }});
  }
  if (paths.size() == 1 && filesAlone) {
    choices.push_back(
        {tr("&Open the recording"), [this, paths] { emit recordWanted(paths.front()); }});
  } else {
    choices.push_back(
        {tr("&Look at them, keeping nothing"), [this, paths] { desk_.openFiles(paths); }});
  }
  if (filesAlone && paths.size() > 1 && paths.size() <= static_cast<qsizetype>(kMostBeside)) {
    choices.push_back({tr("Lay them &side by side"), [this, paths] { emit besideWanted(paths); }});
  }
  if (choices.size() == 1) {
    choices.front().does();
    return;
  }
  auto* menu = new QMenu(window_);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->setAccessibleName(tr("What to do with what was dropped"));
  for (const Choice& choice : choices) {
    menu->addAction(choice.text, this, choice.does);
  }
  menu->addSeparator();
  menu->addAction(tr("&Cancel"));
  menu->setActiveAction(menu->actions().front());
  menu->popup(at);
}

} // namespace afterbeat::window
