#include "app/window/rows/rows_view.h"

#include "app/window/look/figure_words.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QResizeEvent>
#include <QScrollBar>

#include <algorithm>

namespace afterbeat::window {

namespace {

std::vector<Interval> stops(const Figures& figures, bool shocks) {
  std::vector<Interval> all;
  if (shocks) {
    for (const ShockFigures& shock : figures.shocks) {
      all.push_back({shock.t, shock.t});
    }
  } else {
    for (const Pause& pause : figures.pauses) {
      all.push_back(pause.stretch);
    }
  }
  return all;
}

/// The stop after (or before) the one that lies in the middle of `shown`.
const Interval* neighbour(const std::vector<Interval>& all, const Interval& shown, bool forward) {
  const Time middle = shown.begin + shown.length() / 2;
  // A stretch that was centred lies within a rounding of the middle.
  constexpr Duration kSame{2};
  const auto centre = [](const Interval& i) { return i.begin + i.length() / 2; };
  if (forward) {
    const auto it = std::find_if(all.begin(), all.end(),
                                 [&](const Interval& i) { return centre(i) > middle + kSame; });
    return it == all.end() ? nullptr : &*it;
  }
  const auto it = std::find_if(all.rbegin(), all.rend(),
                               [&](const Interval& i) { return centre(i) < middle - kSame; });
  return it == all.rend() ? nullptr : &*it;
}

} // namespace

RowsView::RowsView(Session& session, Selection& selection, QWidget* parent)
    : QScrollArea(parent), session_(session), selection_(selection),
      canvas_(new RowsCanvas(session, selection)) {
  setWidget(canvas_);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Rows"));
  addStep(tr("Next pause"), Qt::Key_Period, false, true);
  addStep(tr("Previous pause"), Qt::Key_Comma, false, false);
  addStep(tr("Next shock"), Qt::CTRL | Qt::Key_Period, true, true);
  addStep(tr("Previous shock"), Qt::CTRL | Qt::Key_Comma, true, false);
  connect(&selection_, &Selection::stretchChanged, this, &RowsView::reveal);
}

void RowsView::addStep(const QString& text, const QKeySequence& key, bool shocks, bool forward) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, [this, shocks, forward] { step(shocks, forward); });
  actions_ << action;
}

void RowsView::step(bool shocks, bool forward) {
  if (!session_.hasRecord()) {
    return;
  }
  const auto all = stops(session_.figures(), shocks);
  if (const Interval* next = neighbour(all, selection_.stretch(), forward)) {
    const Time middle = next->begin + next->length() / 2;
    const PointedAt there =
        pointedAt(session_.figures(), middle, shocks ? Duration{0} : Duration{-1});
    selection_.lookAtAll(*next, there.what);
  }
}

void RowsView::reveal() {
  const Interval& stretch = selection_.stretch();
  const QRectF band = canvas_->bandHolding(stretch.begin + stretch.length() / 2);
  if (!band.isEmpty()) {
    ensureVisible(width() / 2, static_cast<int>(band.center().y()), 0,
                  static_cast<int>(band.height()));
  }
}

void RowsView::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  canvas_->setViewHeight(viewport()->height());
}

} // namespace afterbeat::window
