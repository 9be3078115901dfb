#include "app/window/shell/folder_page.h"

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
  parts << QDir::toNativeSeparators(found.name) << locale.formattedDataSize(found.bytes, 0);
  return parts.join(QStringLiteral("  ·  "));
}

} // namespace

FolderPage::FolderPage(QAction* open, QWidget* parent)
    : Page(parent, kListWidth), name_(nullptr), said_(nullptr), list_(new QListWidget(this)) {
  addHeading(tr("Which recording?"));
  name_ = addSentence({});
  said_ = addSentence({});
  list_->setAccessibleName(tr("Recordings in the folder, newest first"));
  list_->setTextElideMode(Qt::ElideMiddle);
  list_->setUniformItemSizes(true);
  list_->setSpacing(2);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  column_->addWidget(list_);
  auto* other = new QPushButton(open->text(), this);
  other->setAccessibleName(open->text());
  connect(other, &QPushButton::clicked, open, &QAction::trigger);
  column_->addWidget(other, 0, Qt::AlignLeft);
  connect(list_, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
    emit chosen(item->data(Qt::UserRole).toString());
  });
}

FolderPage::~FolderPage() {
  if (cancelled_) {
    *cancelled_ = true;
  }
  pool_.waitForDone();
}

void FolderPage::lookInto(const QString& folder) {
  if (cancelled_) {
    *cancelled_ = true;
  }
  cancelled_ = std::make_shared<std::atomic<bool>>(false);
  name_->setText(QDir::toNativeSeparators(folder));
  said_->setText(tr("Looking for recordings…"));
  list_->clear();
  list_->hide();
  pool_.start([this, folder, cancelled = cancelled_] {
    const FoundRecordings found = findRecordings(folder, *cancelled);
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

void FolderPage::show(const FoundRecordings& found) {
  for (const FoundRecording& recording : found.recordings) {
    auto* item = new QListWidgetItem(lineFor(recording), list_);
    item->setData(Qt::UserRole, recording.path);
    item->setToolTip(QDir::toNativeSeparators(recording.path));
  }
  const auto count = found.recordings.size();
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
                       : tr("The newest is at the top. Enter opens it; the files are only read."));
  }
  list_->setVisible(count > 0);
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
  QStringList lines{name_->text(), said_->text()};
  for (int i = 0; i < list_->count(); ++i) {
    lines << list_->item(i)->text();
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace afterbeat::window
