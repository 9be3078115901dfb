#include "app/window/compare/season_ways.h"

#include "app/window/compare/archive_words.h"
#include "app/window/compare/season_desk.h"
#include "app/window/look/look.h"
#include "app/window/look/remembered.h"

#include <QAction>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kRecent = 4;
const QString kRemembered = QStringLiteral("compare/archives");
const QString kService = QStringLiteral("service:");

QString archiveFilter() {
  return SeasonWays::tr("Archives (*.sqlite);;All files (*)");
}

QStringList recentArchives() {
  QStringList all = remembered::text(kRemembered).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  all.erase(std::remove_if(all.begin(), all.end(),
                           [](const QString& typed) {
                             return !typed.startsWith(kService) && !QFileInfo::exists(typed);
                           }),
            all.end());
  return all;
}

} // namespace

SeasonWays::SeasonWays(SeasonDesk& desk, QWidget* window)
    : QObject(window), desk_(desk), window_(window), broken_(new QAction(this)) {
  const auto make = [this](const QString& text, const QKeySequence& key,
                           void (SeasonWays::*does)()) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    return action;
  };
  ways_ << make(tr("Look through a &folder…"), Qt::SHIFT | Qt::Key_F, &SeasonWays::askFolder)
        << make(tr("Open an &archive…"), Qt::SHIFT | Qt::Key_R, &SeasonWays::askArchive)
        << make(tr("Open a shared archive by its ser&vice…"), Qt::SHIFT | Qt::Key_G,
                &SeasonWays::askService)
        << make(tr("Take recordings &into an archive…"), Qt::SHIFT | Qt::Key_I,
                &SeasonWays::askTakeIn);
  broken_->setText(tr("Files that could not be &read…"));
  broken_->setShortcut(Qt::SHIFT | Qt::Key_W);
  connect(broken_, &QAction::triggered, this, &SeasonWays::showBroken);
  for (int i = 0; i < kRecent; ++i) {
    auto* action = new QAction(this);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+K, %1").arg(i + 1)));
    connect(action, &QAction::triggered, this,
            [this, action] { openTyped(action->data().toString()); });
    recent_ << action;
  }
  connect(&desk_, &SeasonDesk::sourceChanged, this, [this] {
    remember();
    broken_->setEnabled(desk_.source() && !desk_.source()->refused().empty());
  });
  broken_->setEnabled(false);
  refreshRecent();
}

void SeasonWays::remember() {
  if (!desk_.place()) {
    return;
  }
  QStringList all = recentArchives();
  const QString typed = QString::fromStdString(desk_.place()->words());
  all.removeAll(typed);
  all.prepend(typed);
  remembered::setText(kRemembered, all.mid(0, kRecent).join(QLatin1Char('\n')));
  refreshRecent();
}

void SeasonWays::refreshRecent() {
  const QStringList all = recentArchives();
  for (qsizetype i = 0; i < recent_.size(); ++i) {
    const bool used = i < all.size();
    QString name = !used                         ? tr("(empty)")
                   : all[i].startsWith(kService) ? all[i]
                                                 : QFileInfo(all[i]).fileName();
    recent_[i]->setText(name.replace(QLatin1Char('&'), QStringLiteral("&&")));
    recent_[i]->setToolTip(used ? all[i] : QString());
    recent_[i]->setData(used ? all[i] : QString());
    recent_[i]->setVisible(used);
    recent_[i]->setEnabled(used);
  }
}

void SeasonWays::openTyped(const QString& typed) {
  const auto place = archive::ArchivePlace::from(typed.toStdString());
  if (!place) {
    emit said(archiveWords(place.error()));
    return;
  }
  desk_.openArchive(*place);
  emit asked();
}

void SeasonWays::askFolder() {
  const QString path = QFileDialog::getExistingDirectory(
      window_, tr("A folder of recordings to look through"), remembered::folder("open"));
  if (!path.isEmpty()) {
    remembered::setFolder("open", path);
    desk_.openFiles({path});
    emit asked();
  }
}

void SeasonWays::askArchive() {
  const QString path = QFileDialog::getOpenFileName(window_, tr("Open an archive"),
                                                    remembered::folder("archive"), archiveFilter());
  if (!path.isEmpty()) {
    remembered::setFolder("archive", QFileInfo(path).path());
    openTyped(path);
  }
}

void SeasonWays::askService() {
  bool said = false;
  const QString name = QInputDialog::getText(
      window_, tr("Open a shared archive"),
      tr("Name of the service in PostgreSQL's service file (.pg_service.conf); user and password "
         "stay in its own files:"),
      QLineEdit::Normal, {}, &said);
  if (said && !name.trimmed().isEmpty()) {
    openTyped(kService + name.trimmed());
  }
}

void SeasonWays::askTakeIn() {
  const QString folder = QFileDialog::getExistingDirectory(
      window_, tr("A folder of recordings to take in"), remembered::folder("open"));
  if (folder.isEmpty()) {
    return;
  }
  remembered::setFolder("open", folder);
  std::optional<archive::ArchivePlace> place = desk_.place();
  if (!place) {
    const QString path = QFileDialog::getSaveFileName(
        window_,
        tr("Into which archive? One that is there gains them; another name makes a new one"),
        remembered::folder("archive") + QStringLiteral("/season.sqlite"), archiveFilter(), nullptr,
        QFileDialog::DontConfirmOverwrite);
    const auto typed = archive::ArchivePlace::from(path.toStdString());
    if (path.isEmpty() || !typed) {
      return;
    }
    remembered::setFolder("archive", QFileInfo(path).path());
    place = *typed;
  }
  desk_.takeIn(*place, {folder});
  emit asked();
}

void SeasonWays::showBroken() {
  if (!desk_.source()) {
    return;
  }
  auto* dialog = new QDialog(window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setWindowTitle(tr("Files that could not be read"));
  dialog->resize(760, 420);
  auto* list = new QTreeWidget(dialog);
  list->setAccessibleName(dialog->windowTitle());
  list->setHeaderLabels({tr("File"), tr("What happened")});
  list->setRootIsDecorated(false);
  list->setWordWrap(true);
  for (const archive::RefusedFile& file : desk_.source()->refused()) {
    auto* item = new QTreeWidgetItem(
        list, {QString::fromStdU16String(file.path.filename().u16string()), archiveWords(file)});
    item->setToolTip(0, QString::fromStdU16String(file.path.u16string()));
  }
  list->resizeColumnToContents(0);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
  connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
  auto* down = new QVBoxLayout(dialog);
  down->addWidget(list);
  down->addWidget(buttons);
  dialog->show();
}

} // namespace afterbeat::window
