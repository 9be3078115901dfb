#include "app/window/look/appearance.h"

#include "app/window/look/look.h"
#include "app/window/look/own_style.h"
#include "app/window/look/pictures_for_ears.h"
#include "app/window/look/remembered.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QEvent>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

const QStringList kModeNames{"system", "light", "dark"};
constexpr int kSmallestStep = -2, kLargestStep = 10;

} // namespace

Appearance::Appearance(QObject* parent) : QObject(parent), group_(new QActionGroup(this)) {
  describePictures();
  static const bool styled = [] {
    QApplication::setStyle(new OwnStyle);
    return true;
  }();
  Q_UNUSED(styled)
  static const QFont systemFont = QApplication::font();
  QApplication::setFont(programFont(systemFont));
  const auto remembered = kModeNames.indexOf(remembered::text("appearance", "system"));
  mode_ = static_cast<Mode>(std::max<qsizetype>(0, remembered));
  typeStep_ = std::clamp(remembered::text("type_step", "0").toInt(), kSmallestStep, kLargestStep);
  addMode(tr("As the &system"), QKeySequence("Ctrl+Y, 1"), Mode::system);
  addMode(tr("&Light"), QKeySequence("Ctrl+Y, 2"), Mode::light);
  addMode(tr("&Dark"), QKeySequence("Ctrl+Y, 3"), Mode::dark);
  addType(tr("Larger type"), {QKeySequence::ZoomIn, Qt::CTRL | Qt::Key_Equal}, +1);
  addType(tr("Smaller type"), {QKeySequence::ZoomOut}, -1);
  addType(tr("Normal type"), {Qt::CTRL | Qt::Key_Backspace}, 0);
  qApp->installEventFilter(this);
  applyPalette();
  if (typeStep_ != 0) {
    applyFont();
  }
}

void Appearance::addMode(const QString& text, const QKeySequence& key, Mode mode) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  action->setCheckable(true);
  action->setChecked(mode == mode_);
  group_->addAction(action);
  connect(action, &QAction::triggered, this, [this, mode] { setMode(mode); });
  modeActions_ << action;
}

void Appearance::addType(const QString& text, const QList<QKeySequence>& keys, int change) {
  auto* action = new QAction(text, this);
  action->setShortcuts(keys);
  connect(action, &QAction::triggered, this,
          [this, change] { setTypeStep(change == 0 ? 0 : typeStep_ + change); });
  typeActions_ << action;
}

void Appearance::setMode(Mode mode) {
  mode_ = mode;
  remembered::setText("appearance", kModeNames[static_cast<qsizetype>(mode)]);
  modeActions_[static_cast<qsizetype>(mode)]->setChecked(true);
  applyPalette();
}

void Appearance::setTypeStep(int step) {
  typeStep_ = std::clamp(step, kSmallestStep, kLargestStep);
  remembered::setText("type_step", QString::number(typeStep_));
  applyFont();
}

void Appearance::applyPalette() {
  bool dark = mode_ == Mode::dark;
  if (mode_ == Mode::system) {
    // A palette without any choice of its own is the system's.
    QApplication::setPalette(QPalette());
    dark = isDark(QApplication::palette());
  }
  QApplication::setPalette(ownPalette(dark));
}

void Appearance::applyFont() {
  static const QFont normal = QApplication::font();
  QFont font = normal;
  font.setPointSizeF(normal.pointSizeF() * (1 + 0.1 * typeStep_));
  QApplication::setFont(font);
}

bool Appearance::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::ThemeChange && mode_ == Mode::system && watched->isWindowType()) {
    applyPalette();
  }
  return QObject::eventFilter(watched, event);
}

} // namespace afterbeat::window
