#include "app/window/shell/help.h"

#include "app/window/finding/list_text.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <utility>
#include <vector>

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

/// What a part of the window understands beside the keys of the menus.
struct Gestures {
  const char* where;
  std::vector<std::pair<const char*, const char*>> what;
};

Gestures inRows() {
  return {QT_TRANSLATE_NOOP("afterbeat::window", "In the rows"),
          {{QT_TRANSLATE_NOOP("afterbeat::window", "Show the pause, shock or moment"),
            QT_TRANSLATE_NOOP("afterbeat::window", "click")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Show a stretch in the waves"),
            QT_TRANSLATE_NOOP("afterbeat::window", "drag")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Say what was at a moment"),
            QT_TRANSLATE_NOOP("afterbeat::window", "hold the pointer still")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Go to the waves"),
            QT_TRANSLATE_NOOP("afterbeat::window", "double click, or Enter")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Move the selected stretch"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Left, Right")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "A row up or down"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Up, Down")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Begin or end of the rescue"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Home, End")}}};
}

Gestures inWaves() {
  return {QT_TRANSLATE_NOOP("afterbeat::window", "In the waves"),
          {{QT_TRANSLATE_NOOP("afterbeat::window", "Read the values at a moment"),
            QT_TRANSLATE_NOOP("afterbeat::window", "move the pointer")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Closer or wider around the pointer"),
            QT_TRANSLATE_NOOP("afterbeat::window", "wheel, or pinch with two fingers")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Earlier or later"),
            QT_TRANSLATE_NOOP("afterbeat::window", "drag, or Shift with the wheel")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Measure between two moments"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Shift while dragging")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Move the cursor"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Left, Right")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Begin a ruler, and stretch it"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Shift+Left, Shift+Right")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Stretch the ruler"),
            QT_TRANSLATE_NOOP("afterbeat::window", "drag an end")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Choose the track that the ruler measures"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Up, Down")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Open the working of a rhythm hint"),
            QT_TRANSLATE_NOOP("afterbeat::window", "click the hint")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Say what a rhythm or shock is known by"),
            QT_TRANSLATE_NOOP("afterbeat::window", "hold the pointer still")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Take the ruler and the cursor away"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Escape")}}};
}

Gestures inLists() {
  return {QT_TRANSLATE_NOOP("afterbeat::window", "In the lists"),
          {{QT_TRANSLATE_NOOP("afterbeat::window", "Show the chosen line in the rows and waves"),
            QT_TRANSLATE_NOOP("afterbeat::window", "click, or Enter")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Open or close a heading of problems"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Right, Left, or double click")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "From the words typed to the lines found"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Down")}}};
}

Gestures inDebrief() {
  return {QT_TRANSLATE_NOOP("afterbeat::window", "In the debrief"),
          {{QT_TRANSLATE_NOOP("afterbeat::window", "Go to the moment of a line"),
            QT_TRANSLATE_NOOP("afterbeat::window", "click, or Enter")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "From line to line"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Up, Down")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "Keep or drop what was reworded"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Enter, Escape")},
           {QT_TRANSLATE_NOOP("afterbeat::window", "In its rows: go to a moment"),
            QT_TRANSLATE_NOOP("afterbeat::window", "click, or the arrows, Home, End")}}};
}

void addGestures(QTreeWidget* list, const Gestures& part) {
  auto* group = new QTreeWidgetItem(list, {tr(part.where)});
  for (const auto& [what, how] : part.what) {
    new QTreeWidgetItem(group, {tr(what), tr(how)});
  }
}

void makeHeadingsBold(QTreeWidget& list) {
  QFont bold = list.font();
  bold.setBold(true);
  for (int i = 0; i < list.topLevelItemCount(); ++i) {
    list.topLevelItem(i)->setFont(0, bold);
  }
}

/// What is typed leaves the lines that hold it; keys that move belong to the list.
class KeySearch final : public QLineEdit {
public:
  KeySearch(QTreeWidget* list, QWidget* parent) : QLineEdit(parent), list_(list) {
    setClearButtonEnabled(true);
    connect(this, &QLineEdit::textChanged, this, &KeySearch::filter);
  }

protected:
  void keyPressEvent(QKeyEvent* event) override {
    const int key = event->key();
    const bool moves = key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp ||
                       key == Qt::Key_PageDown ||
                       (text().isEmpty() && (key == Qt::Key_Home || key == Qt::Key_End));
    if (moves) {
      QCoreApplication::sendEvent(list_, event);
    } else {
      QLineEdit::keyPressEvent(event);
    }
  }

private:
  void filter(const QString& typed) {
    for (int i = 0; i < list_->topLevelItemCount(); ++i) {
      QTreeWidgetItem* group = list_->topLevelItem(i);
      bool any = false;
      for (int j = 0; j < group->childCount(); ++j) {
        QTreeWidgetItem* line = group->child(j);
        const bool fits =
            (line->text(0) + QLatin1Char(' ') + line->text(1)).contains(typed, Qt::CaseInsensitive);
        line->setHidden(!fits);
        any = any || fits;
      }
      group->setHidden(!any);
    }
  }

  QTreeWidget* list_;
};

/// The dialog's own menus are not open meanwhile: its button has the key of copying.
void addCopyButton(QDialog* dialog, const QTreeWidget* list) {
  auto* buttons = dialog->findChild<QDialogButtonBox*>();
  QPushButton* copy = buttons->addButton(tr("Copy as text"), QDialogButtonBox::ActionRole);
  copy->setShortcut(QKeySequence::Copy);
  copy->setToolTip(copy->shortcut().toString(QKeySequence::NativeText));
  QObject::connect(copy, &QPushButton::clicked, list,
                   [list] { QApplication::clipboard()->setText(tabbedText(*list)); });
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
  // What hands do without a menu comes first: nothing else says it.
  for (const auto part : {inRows, inWaves, inLists, inDebrief}) {
    addGestures(list, part());
  }
  for (const QAction* entry : menus->actions()) {
    if (entry->menu()) {
      auto* group = new QTreeWidgetItem(list, {plain(entry->text())});
      addEntries(group, entry->menu(), {});
    }
  }
  makeHeadingsBold(*list);
  list->expandAll();
  list->setCurrentItem(list->topLevelItem(0)->child(0));
  auto* content = new QWidget;
  auto* search = new KeySearch(list, content);
  search->setPlaceholderText(tr("Type to search: shock, ruler, F4 …"));
  search->setAccessibleName(tr("Search the keys"));
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(search);
  column->addWidget(list);
  QDialog* dialog = dialogWith(tr("Keys"), content, parent);
  search->setFocus(Qt::OtherFocusReason);
  addCopyButton(dialog, list);
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
