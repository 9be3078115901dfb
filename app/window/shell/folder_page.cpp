#include "app/window/shell/folder_page.h"

#include "app/window/compare/beside_load.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QAction>
#include <QBoxLayout>
#include <QDir>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>

namespace afterbeat::window {

namespace {

constexpr int kRowsShown = 9, kListWidth = 900;

QString lineFor(const FoundRecording& found) {
  const QLocale locale;
  QStringList parts;
  const QString when = locale.toString(found.when, QStringLiteral("yyyy-MM-dd  HH:mm"));
  parts << (found.whenFromRecord ? when : FolderPage::tr("%1 (file date)").arg(when));
  if (found.header) {
    parts << kindWords(found.header->kind);
    parts << (found.header->site.empty() ? FolderPage::tr("place not recorded")
                                         : papers::plainText(found.header->site));
    if (found.header->synthetic) {
      parts << FolderPage::tr("synthetic");
    }
  }
  if (found.unusable) {
    parts << (found.bytes == 0 ? FolderPage::tr("empty")
                               : FolderPage::tr("begins like no recording"));
  }
  parts << QDir::toNativeSeparators(found.name) << locale.formattedDataSize(found.bytes, 0);
  return parts.join(QStringLiteral("  ·  "));
}

} // namespace

FolderPage::FolderPage(const QList<QAction*>& others, QWidget* parent)
    : Page(parent, kListWidth), heading_(addHeading(tr("Which recording?"))),
      name_(addSentence({})), said_(addSentence({})),
      open_(new QPushButton(tr("Open this recording   (Enter)"), this)),
      list_(new QListWidget(this)) {
  list_->setAccessibleName(tr("Recordings in the folder, newest first"));
  // Several are marked to be laid side by side.
  list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  list_->setTextElideMode(Qt::ElideMiddle);
  list_->setUniformItemSizes(true);
  list_->setSpacing(2);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  column_->addWidget(list_);
  open_->setAccessibleName(tr("Open this recording"));
  connect(open_, &QPushButton::clicked, this, &FolderPage::openChosen);
  column_->addWidget(open_, 0, Qt::AlignLeft);
  for (QAction* action : others) {
    column_->addWidget(buttonFor(action, this), 0, Qt::AlignLeft);
  }
  connect(list_, &QListWidget::itemActivated, this, &FolderPage::openChosen);
}

FolderPage::~FolderPage() {
  if (cancelled_) {
    *cancelled_ = true;
  }
  pool_.waitForDone();
}

void FolderPage::lookInto(const QString& folder) {
  search(QDir::toNativeSeparators(folder), [folder](const std::atomic<bool>& cancelled) {
    return findRecordings(folder, cancelled);
  });
}

void FolderPage::lookAt(const QStringList& paths) {
  search(tr("%1 files").arg(paths.size()),
         [paths](const std::atomic<bool>& cancelled) { return lookAtFiles(paths, cancelled); });
}

void FolderPage::search(const QString& where,
                        std::function<FoundRecordings(const std::atomic<bool>&)> find) {
  if (cancelled_) {
    *cancelled_ = true;
  }
  cancelled_ = std::make_shared<std::atomic<bool>>(false);
  heading_->setText(tr("Which recording?"));
  name_->setText(where);
  said_->setText(tr("Looking for recordings…"));
  list_->clear();
  list_->hide();
  open_->hide();
  pool_.start([this, find = std::move(find), cancelled = cancelled_] {
    const FoundRecordings found = find(*cancelled);
    QMetaObject::invokeMethod(
        this,
        [this, found, cancelled] {
          if (cancelled == cancelled_) {
            show(found);
          }
        },
        Qt::QueuedConnection);
  });
}

void FolderPage::openChosen() {
  if (const QListWidgetItem* item = list_->currentItem()) {
    emit chosen(item->data(Qt::UserRole).toString());
  }
}

QStringList FolderPage::paths() const {
  QStringList all;
  for (int i = 0; i < list_->count(); ++i) {
    all << list_->item(i)->data(Qt::UserRole).toString();
  }
  return all;
}

QStringList FolderPage::besideChosen() const {
  QStringList marked;
  for (int i = 0; i < list_->count(); ++i) {
    if (list_->item(i)->isSelected()) {
      marked << list_->item(i)->data(Qt::UserRole).toString();
    }
  }
  const bool shortList = list_->count() <= static_cast<int>(kMostBeside);
  return marked.size() < 2 && shortList ? paths() : marked;
}

void FolderPage::show(const FoundRecordings& found) {
  for (const FoundRecording& recording : found.recordings) {
    auto* item = new QListWidgetItem(lineFor(recording), list_);
    item->setData(Qt::UserRole, recording.path);
    item->setToolTip(QDir::toNativeSeparators(recording.path));
  }
  const auto count = found.recordings.size();
  heading_->setText(count == 0 ? tr("No recording found") : tr("Which recording?"));
  if (count == 0) {
    said_->setText(
        tr("No recording was found in this folder or the folders in it. Nothing was changed. "
           "Afterbeat looks for event logs (.resuslog), WFDB records (.hea) and observer's notes "
           "(.csv); copy the recording from the device first, or open another file."));
  } else {
    said_->setText(found.more
                       ? tr("The newest is at the top. Only the first %1 files were looked at; "
                            "open a folder nearer to the recording to see the others.")
                             .arg(kMostFiles)
                       : tr("The newest is at the top. Enter opens it; the files are only read. "
                            "Mark two to eight to lay them side by side."));
  }
  list_->setVisible(count > 0);
  open_->setVisible(count > 0);
  fitList();
  emit listed();
  if (count == 1) {
    emit chosen(found.recordings.front().path);
  } else if (count > 1) {
    list_->setCurrentRow(0);
    list_->setFocus(Qt::OtherFocusReason);
  }
}

void FolderPage::fitList() {
  const int rows = std::min(list_->count(), kRowsShown);
  if (rows > 0) {
    list_->setFixedHeight(rows * (list_->sizeHintForRow(0) + 2 * list_->spacing()) +
                          2 * list_->frameWidth());
  }
}

QString FolderPage::asText() const {
  QStringList lines{heading_->text(), name_->text(), said_->text()};
  for (int i = 0; i < list_->count(); ++i) {
    lines << list_->item(i)->text();
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace afterbeat::window
