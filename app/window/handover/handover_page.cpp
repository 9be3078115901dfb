#include "app/window/handover/handover_page.h"

#include "app/window/handover/handover_actions.h"
#include "app/window/handover/sheet_preview.h"
#include "app/window/handover/told_form.h"

#include <QAction>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShowEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kSideWidth = 310;

/// As wide as what stands in it asks for, also in larger type or a longer language.
class SideArea final : public QScrollArea {
public:
  explicit SideArea(QWidget* parent) : QScrollArea(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  }
  [[nodiscard]] QSize sizeHint() const override {
    const int content = widget() ? widget()->minimumSizeHint().width() : 0;
    const int bar = verticalScrollBar()->sizeHint().width();
    return {std::max(kSideWidth, content + bar), QScrollArea::sizeHint().height()};
  }
  [[nodiscard]] QSize minimumSizeHint() const override {
    return {sizeHint().width(), QScrollArea::minimumSizeHint().height()};
  }

protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::LayoutRequest) {
      updateGeometry();
    }
    return QScrollArea::eventFilter(watched, event);
  }
};

/// A button that does what an action does, and says its key.
QPushButton* buttonFor(QAction* action, const QString& text, QWidget* parent) {
  const QString key = action->shortcut().toString(QKeySequence::NativeText);
  auto* button = new QPushButton(QStringLiteral("%1   (%2)").arg(text, key), parent);
  button->setAccessibleName(QString(action->text()).remove(QLatin1Char('&')));
  button->setEnabled(action->isEnabled());
  QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
  QObject::connect(action, &QAction::enabledChanged, button, &QWidget::setEnabled);
  return button;
}

/// A list that chooses one of some actions.
QComboBox* listFor(const QString& title, const QList<QAction*>& actions, const QStringList& names,
                   QWidget* parent) {
  auto* list = new QComboBox(parent);
  list->setAccessibleName(title);
  QStringList keys;
  for (qsizetype i = 0; i < actions.size(); ++i) {
    QAction* action = actions[i];
    list->addItem(names[i]);
    keys << QStringLiteral("%1: %2").arg(names[i],
                                         action->shortcut().toString(QKeySequence::NativeText));
    const int index = static_cast<int>(i);
    if (action->isChecked()) {
      list->setCurrentIndex(index);
    }
    QObject::connect(action, &QAction::toggled, list, [list, index](bool chosen) {
      if (chosen) {
        list->setCurrentIndex(index);
      }
    });
  }
  list->setToolTip(keys.join(QLatin1Char('\n')));
  QObject::connect(list, &QComboBox::activated, list,
                   [actions](int index) { actions[index]->trigger(); });
  return list;
}

} // namespace

HandoverPage::HandoverPage(HandoverActions& actions, Kind kind, QWidget* parent)
    : QWidget(parent), actions_(actions), kind_(kind), preview_(new SheetPreview(this)) {
  if (kind_ == Kind::told) {
    back_ = new QAction(tr("&Back from the sheet without a recording"), this);
    back_->setShortcut(QKeySequence::Back);
    back_->setEnabled(false);
  }
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(0);
  across->addWidget(preview_, 1);
  across->addWidget(makeSide());
  setFocusProxy(form_ != nullptr ? static_cast<QWidget*>(form_->minutes()) : preview_);
  connect(&actions_, &HandoverActions::changed, this, [this] {
    if (isVisible()) {
      refresh();
    }
  });
  connect(&actions_, &HandoverActions::zoomed, this, [this](int change) {
    if (isVisible()) {
      preview_->setZoom(change == 0 ? 0 : preview_->zoom() + change);
    }
  });
  connect(preview_, &SheetPreview::drawn, this, &HandoverPage::showLeftToPen);
}

QWidget* HandoverPage::makeSide() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(16, 14, 16, 14);
  column->setSpacing(10);
  if (kind_ == Kind::told) {
    column->addWidget(buttonFor(back_, tr("Back"), side), 0, Qt::AlignLeft);
    auto* heading = new QLabel(tr("Without a recording"), side);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    column->addWidget(heading);
    auto* sentence = new QLabel(tr("Type what people or the device said, as far as it is known. "
                                   "What stays empty is a line for the pen."),
                                side);
    sentence->setWordWrap(true);
    column->addWidget(sentence);
    form_ = new ToldForm(side);
    column->addWidget(form_);
    connect(form_, &ToldForm::changed, this, [this] { actions_.setTold(form_->told()); });
  }
  column->addWidget(buttonFor(actions_.printAction(), tr("Print…"), side));
  column->addWidget(buttonFor(actions_.pdfAction(), tr("Export as PDF…"), side));
  auto* choices = new QFormLayout;
  choices->addRow(tr("Lan&guage"),
                  listFor(tr("Language of the sheet"), actions_.languages(),
                          {QStringLiteral("English"), QStringLiteral("Deutsch")}, side));
  choices->addRow(tr("Pape&r"), listFor(tr("Paper of the sheet"), actions_.paperSizes(),
                                        {QStringLiteral("A4"), QStringLiteral("Letter")}, side));
  column->addLayout(choices);
  pen_ = new QLabel(side);
  pen_->setWordWrap(true);
  pen_->setTextFormat(Qt::PlainText);
  pen_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  pen_->setAccessibleName(tr("Left to fill in by pen"));
  column->addWidget(pen_);
  column->addStretch(1);
  auto* area = new SideArea(this);
  area->setWidget(side);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  area->setAccessibleName(tr("Choices for the sheet"));
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return area;
}

void HandoverPage::refresh() {
  preview_->showSheet(actions_.source());
}

void HandoverPage::showLeftToPen() {
  pen_->setText(leftToPen());
}

QString HandoverPage::leftToPen() const {
  const QStringList& all = preview_->leftToPen();
  return all.isEmpty() ? tr("Nothing is left to fill in by pen.")
                       : tr("Left to fill in by pen:") + QStringLiteral("\n• ") +
                             all.join(QStringLiteral("\n• "));
}

/// Out of the sheet without a recording by the key that leaves things everywhere.
void HandoverPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && back_ != nullptr) {
    back_->trigger();
    return;
  }
  QWidget::keyPressEvent(event);
}

void HandoverPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (kind_ == Kind::told && !event->spontaneous()) {
    back_->setEnabled(true);
    actions_.setTold(form_->told());
  }
  refresh();
}

void HandoverPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  if (kind_ == Kind::told && !event->spontaneous()) {
    back_->setEnabled(false);
    actions_.setTold(std::nullopt);
  }
}

} // namespace afterbeat::window
