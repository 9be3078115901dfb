#include "app/window/shell/help.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString plain(QString text) {
  return text.replace(QStringLiteral("&&"), QStringLiteral("\x01"))
      .remove(QLatin1Char('&'))
      .replace(QLatin1Char('\x01'), QLatin1Char('&'));
}

QDialog* dialogWith(const QString& title, QWidget* content, QWidget* parent) {
  auto* dialog = new QDialog(parent);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setWindowTitle(title);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
  QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
  auto* layout = new QVBoxLayout(dialog);
  layout->addWidget(content);
  layout->addWidget(buttons);
  return dialog;
}

void addEntries(QTreeWidgetItem* group, const QMenu* menu, const QString& before) {
  for (const QAction* action : menu->actions()) {
    if (action->menu()) {
      addEntries(group, action->menu(), before + plain(action->text()) + QStringLiteral(": "));
    } else if (!action->isSeparator() && action->isVisible()) {
      QStringList keys;
      for (const QKeySequence& key : action->shortcuts()) {
        keys << key.toString(QKeySequence::NativeText);
      }
      new QTreeWidgetItem(group, {before + plain(action->text()), keys.join(tr(" or "))});
    }
  }
}

} // namespace

QString cautionLine() {
  return tr("Not a medical device. For review after the event. Local protocol goes first.");
}

void showKeys(const QMenuBar* menus, QWidget* parent) {
  auto* list = new QTreeWidget;
  list->setAccessibleName(tr("Keys"));
  list->setHeaderLabels({tr("what"), tr("key")});
  list->setRootIsDecorated(false);
  list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  list->header()->setStretchLastSection(false);
  for (const QAction* entry : menus->actions()) {
    if (entry->menu()) {
      auto* group = new QTreeWidgetItem(list, {plain(entry->text())});
      addEntries(group, entry->menu(), {});
    }
  }
  auto* rows = new QTreeWidgetItem(list, {tr("In the rows")});
  new QTreeWidgetItem(rows, {tr("Move the selected stretch"), tr("Left, Right")});
  new QTreeWidgetItem(rows, {tr("A row up or down"), tr("Up, Down")});
  new QTreeWidgetItem(rows, {tr("Begin or end of the rescue"), tr("Home, End")});
  auto* waves = new QTreeWidgetItem(list, {tr("In the waves")});
  new QTreeWidgetItem(waves, {tr("Closer or wider around the pointer"), tr("wheel")});
  new QTreeWidgetItem(waves, {tr("Earlier or later"), tr("drag, or Shift with the wheel")});
  list->expandAll();
  QDialog* dialog = dialogWith(tr("Keys"), list, parent);
  const int letter = list->fontMetrics().averageCharWidth();
  constexpr int kLetters = 100;
  dialog->resize(QSize(letter * kLetters, 560).boundedTo(parent->size()));
  dialog->show();
}

void showAbout(QWidget* parent) {
  auto* text = new QLabel(
      tr("<h2>Afterbeat %1</h2>"
         "<p>Turns what was recorded during a cardiac-arrest rescue or drill into answers: "
         "figures with their working, and a handover sheet on one page.</p>"
         "<p><b>What it is not.</b> Afterbeat is not a medical device. It is for review after "
         "the event, never for use during one. It gives no diagnosis and no prognosis, and it does "
         "not replace the crew's own assessment. Local protocol and licensed practice go first; "
         "the targets shown come from the guideline chosen under Record.</p>"
         "<p>Every figure shows its definition, its source, and how sure we are of that source. "
         "What was not recorded is said in words.</p>"
         "<p>Free software under the GNU General Public License, version 3 or later.</p>")
          .arg(QCoreApplication::applicationVersion()));
  text->setWordWrap(true);
  text->setAccessibleName(tr("About Afterbeat"));
  text->setMinimumWidth(480);
  text->setTextInteractionFlags(Qt::TextBrowserInteraction);
  dialogWith(tr("About Afterbeat"), text, parent)->show();
}

} // namespace afterbeat::window
