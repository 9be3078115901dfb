#include "app/window/waves/waves_view.h"

#include "app/window/look/elided_label.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/waves/waves_plot.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace afterbeat::window {

WavesView::WavesView(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), stretch_(new QLabel(this)),
      what_(new ElidedLabel(this)), none_(new QLabel(this)), scale_(new QLabel(this)),
      plot_(new WavesPlot(selection)), scroll_(new QScrollArea(this)) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  stretch_->setTextFormat(Qt::PlainText);
  stretch_->setAccessibleName(tr("Selected stretch"));
  none_->setWordWrap(true);
  scroll_->setWidget(plot_);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setAccessibleName(tr("Wave tracks"));
  scroll_->viewport()->installEventFilter(this);
  auto* heading = new QHBoxLayout;
  heading->setContentsMargins(16, 8, 16, 2);
  heading->setSpacing(14);
  heading->addWidget(stretch_);
  heading->addWidget(what_, 1);
  heading->addWidget(scale_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addLayout(heading);
  none_->setContentsMargins(16, 2, 16, 10);
  none_->setAlignment(Qt::AlignTop | Qt::AlignLeading);
  layout->addWidget(none_, 1);
  layout->addWidget(scroll_, 1);
  scale_->setAccessibleName(tr("Ruler and scale of the waves"));
  makeActions();
  makeTools();
  makeTrackActions();
  restyle();
  connect(plot_, &WavesPlot::rulerChanged, this, &WavesView::showScale);
  connect(plot_, &QCustomPlot::afterReplot, this, &WavesView::showScale);
  connect(plot_, &WavesPlot::hintClicked, this, &WavesView::showHint);
  connect(plot_, &WavesPlot::painted, this, &WavesView::painted);
  connect(&session_, &Session::figuresChanged, this, &WavesView::showRecord);
  connect(&session_, &Session::stateChanged, this, [this] {
    if (!session_.hasRecord()) {
      plot_->clearAll();
    }
  });
  connect(&session_, &Session::hintsChanged, this, &WavesView::showRhythms);
  connect(&selection_, &Selection::stretchChanged, this, &WavesView::follow);
  connect(&selection_, &Selection::measureChanged, this, &WavesView::followMeasure);
}

void WavesView::makeActions() {
  const auto length = [this] { return selection_.stretch().length(); };
  add(tr("Closer"), {Qt::Key_Plus, Qt::Key_Equal}, [this] { selection_.zoom(0.5); });
  add(tr("Wider"), {Qt::Key_Minus}, [this] { selection_.zoom(2); });
  add(tr("Earlier"), {Qt::CTRL | Qt::Key_Left}, [=, this] { selection_.moveBy(-length() / 4); });
  add(tr("Later"), {Qt::CTRL | Qt::Key_Right}, [=, this] { selection_.moveBy(length() / 4); });
  add(tr("The whole record"), {Qt::CTRL | Qt::Key_Home},
      [this] { selection_.setStretch(selection_.extent()); });
  add(tr("Twenty seconds"), {Qt::CTRL | Qt::Key_End}, [this] {
    const Interval& now = selection_.stretch();
    selection_.lookAt(now.begin + now.length() / 2);
  });
}

void WavesView::add(const QString& text, const QList<QKeySequence>& keys,
                    std::function<void()> does) {
  auto* action = new QAction(text, this);
  action->setShortcuts(keys);
  connect(action, &QAction::triggered, this, [this, does = std::move(does)] {
    if (session_.hasRecord()) {
      does();
    }
  });
  actions_ << action;
}

bool WavesView::hasTracks() const {
  return plot_->trackCount() > 0;
}

int WavesView::headingHeight() const {
  return stretch_->sizeHint().height() + 12;
}

int WavesView::goodHeight() const {
  return plot_->goodHeight() + headingHeight();
}

int WavesView::leastHeight() const {
  return plot_->leastHeight() + headingHeight();
}

bool WavesView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == scroll_->viewport() && event->type() == QEvent::Resize) {
    plot_->setViewHeight(scroll_->viewport()->height());
  }
  return QWidget::eventFilter(watched, event);
}

QString WavesView::heading() const {
  return stretch_->text();
}

void WavesView::showRecord() {
  moments_.emplace(session_.record());
  chooseTracks();
  plot_->show(session_.loaded());
  showRhythms();
  offerTracks();
  const bool any = hasTracks();
  scroll_->setVisible(any);
  none_->setVisible(!any);
  none_->setText(session_.record().channels.empty()
                     ? tr("This record holds no waves: the device or the observer wrote down "
                          "events only.")
                     : tr("This record holds waves in a form that cannot be drawn; the list of "
                          "problems says which."));
  follow();
  followMeasure();
}

void WavesView::showRhythms() {
  if (!session_.hasRecord()) {
    plot_->setRhythms(std::make_shared<const Rhythms>(), nullptr);
    return;
  }
  plot_->setRhythms(std::make_shared<const Rhythms>(rhythmsOf(
                        session_.record(), session_.hints().get(), session_.hintsAwaited())),
                    session_.hints());
  follow();
}

void WavesView::follow() {
  if (!session_.hasRecord() || !moments_) {
    return;
  }
  const Interval& shown = selection_.stretch();
  const bool tenths = shown.length() < Duration{10'000'000};
  stretch_->setText(
      tr("%1 to %2").arg(moments_->words(shown.begin, tenths), moments_->words(shown.end, tenths)));
  const Interval& extent = selection_.extent();
  const bool whole = shown.begin <= extent.begin && shown.end >= extent.end;
  QStringList what{whole ? tr("the whole record") : selection_.what(),
                   rhythmsIn(plot_->rhythms(), shown)};
  what.removeAll(QString());
  what_->setWhole(what.join(QStringLiteral(" · ")));
  plot_->follow();
}

void WavesView::followMeasure() {
  std::vector<Interval> working;
  if (const auto id = selection_.measure(); id && session_.hasRecord()) {
    for (const WorkingPart& part : session_.figures()[*id].working) {
      working.push_back({part.from, part.to});
    }
  }
  plot_->setWorking(std::move(working));
}

void WavesView::restyle() {
  QFont bold = font();
  bold.setBold(true);
  stretch_->setFont(bold);
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, Look::of(palette(), font()).faintInk);
  what_->setPalette(faint);
}

void WavesView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
