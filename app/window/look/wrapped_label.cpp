#include "app/window/look/wrapped_label.h"

#include <QEvent>

#include <algorithm>

namespace afterbeat::window {

WrappedLabel::WrappedLabel(QWidget* parent) : QLabel(parent) {
  setWordWrap(true);
  setTextFormat(Qt::PlainText);
}

int WrappedLabel::heightForWidth(int width) const {
  // A layout asks for some widths: a window's least one, the one before, the one to come.
  constexpr std::size_t kWidthsKept = 8;
  // Of these no event tells.
  if (text() != knownText_ || margin() != knownMargin_ || indent() != knownIndent_) {
    known_.clear();
    knownText_ = text();
    knownMargin_ = margin();
    knownIndent_ = indent();
  }
  const auto at = std::find_if(known_.begin(), known_.end(),
                               [width](const Known& one) { return one.width == width; });
  if (at != known_.end()) {
    return at->height;
  }
  if (known_.size() == kWidthsKept) {
    known_.erase(known_.begin());
  }
  known_.push_back({width, QLabel::heightForWidth(width)});
  return known_.back().height;
}

/// Whatever may change how high the same words are.
bool WrappedLabel::event(QEvent* event) {
  switch (event->type()) {
  case QEvent::FontChange:
  case QEvent::StyleChange:
  case QEvent::ContentsRectChange:
  case QEvent::LayoutDirectionChange:
  case QEvent::LocaleChange:
  case QEvent::ScreenChangeInternal:
  case QEvent::ParentChange:
  case QEvent::Polish:
    known_.clear();
    break;
  default:
    break;
  }
  return QLabel::event(event);
}

} // namespace afterbeat::window
