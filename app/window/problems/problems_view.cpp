#include "app/window/problems/problems_view.h"

#include "app/window/look/look.h"
#include "app/window/problems/problem_delegate.h"
#include "app/window/problems/problem_words.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAbstractTextDocumentLayout>
#include <QAction>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTextEdit>
#include <QToolButton>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

/// Time after the last activity that is no figure's is said when longer than this.
constexpr Duration kSaidFrom{30'000'000};

Duration lengthAfterActivity(const Figures& figures) {
  Duration length{};
  for (const NotCounted& part : figures.notCounted) {
    if (part.why == NotCountedReason::afterWindow) {
      length += part.stretch.length();
    }
  }
  return length;
}

} // namespace

ProblemsView::ProblemsView(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), tree_(new QTreeView(this)),
      line_(new QFrame(this)), details_(new QTextEdit(this)) {
  tree_->setModel(&model_);
  tree_->setItemDelegate(new ProblemDelegate(this));
  tree_->setAccessibleName(tr("Problems of the file"));
  tree_->setHeaderHidden(true);
  tree_->setFrameShape(QFrame::NoFrame);
  tree_->setIndentation(16);
  tree_->setExpandsOnDoubleClick(false);
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  for (int column = 1; column < ProblemsModel::columnCount_; ++column) {
    tree_->setColumnHidden(column, true);
  }
  line_->setFrameShape(QFrame::HLine);
  line_->setFrameShadow(QFrame::Plain);
  details_->setReadOnly(true);
  details_->setTabChangesFocus(true);
  details_->setFrameShape(QFrame::NoFrame);
  details_->setAccessibleName(tr("What the problem means"));
  details_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  details_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(tree_, 1);
  layout->addWidget(line_);
  layout->addWidget(details_);
  setFocusProxy(tree_);
  connect(tree_, &QTreeView::clicked, this, &ProblemsView::choose);
  connect(tree_, &QTreeView::activated, this, [this](const QModelIndex& index) {
    if (model_.hasChildren(index)) {
      tree_->setExpanded(index, !tree_->isExpanded(index));
    } else {
      choose(index);
    }
  });
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &ProblemsView::showDetails);
  // Lines wrap elsewhere in another width.
  connect(
      tree_->header(), &QHeaderView::sectionResized, tree_, [this] { tree_->doItemsLayout(); },
      Qt::QueuedConnection);
  connect(details_->document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged,
          this, &ProblemsView::fitDetails);
  connect(&session_, &Session::figuresChanged, this, &ProblemsView::refresh);
  restyle();
}

/// What is chosen has a soft ground, the place of its arrow as well.
void ProblemsView::restyle() {
  const Look look = Look::of(palette(), font());
  QPalette colours = palette();
  colours.setColor(QPalette::Highlight, look.accentSoft);
  colours.setColor(QPalette::HighlightedText, look.ink);
  tree_->setPalette(colours);
  colours = palette();
  colours.setColor(QPalette::WindowText, look.line);
  line_->setPalette(colours);
  constexpr int kMargin = 8;
  details_->document()->setDocumentMargin(kMargin);
}

void ProblemsView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    restyle();
  }
}

void ProblemsView::refresh() {
  std::vector<Problem> all = session_.loaded().file->problems;
  const std::vector<Problem>& notices = session_.figures().notices;
  all.insert(all.end(), notices.begin(), notices.end());
  model_.show(session_.record(), std::move(all));
  const bool any = model_.total() > 0;
  tree_->setRootIsDecorated(model_.folds());
  tree_->setVisible(any);
  line_->setVisible(any);
  setFocusProxy(any ? static_cast<QWidget*>(tree_) : details_);
  if (any && !tree_->currentIndex().isValid()) {
    tree_->setCurrentIndex(model_.index(0, 0));
  }
  showDetails();
  emit changed();
}

QString ProblemsView::detailsText() const {
  return details_->toPlainText();
}

void ProblemsView::showDetails() {
  if (model_.total() > 0) {
    details_->setHtml(model_.detailsAt(tree_->currentIndex()));
  } else {
    details_->setPlainText(tr("No problems were found in this file."));
  }
  fitDetails();
}

/// As high as its words, and at most half of the room; all of it where there is no list.
void ProblemsView::fitDetails() {
  if (model_.total() == 0) {
    details_->setMinimumHeight(0);
    details_->setMaximumHeight(QWIDGETSIZE_MAX);
    return;
  }
  const int words = static_cast<int>(std::ceil(details_->document()->size().height()));
  details_->setFixedHeight(std::max(fontMetrics().height(), std::min(words + 2, height() / 2)));
}

void ProblemsView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitDetails();
}

void ProblemsView::choose(const QModelIndex& index) {
  if (const auto stretch = model_.stretchAt(index)) {
    selection_.lookAtAll(*stretch, problemWords(*model_.problemAt(index)));
  }
}

ProblemsStrip::ProblemsStrip(Session& session, const ProblemsView& view, QAction* showList,
                             QWidget* parent)
    : QWidget(parent), session_(session), view_(view), icon_(new QLabel(this)),
      text_(new QLabel(this)), button_(new QToolButton(this)) {
  button_->setDefaultAction(showList);
  button_->setAccessibleName(tr("Show the problems of the file"));
  text_->setWordWrap(true);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(16, 4, 12, 4);
  layout->addWidget(icon_);
  layout->addWidget(text_, 1);
  layout->addWidget(button_);
  connect(&view_, &ProblemsView::changed, this, &ProblemsStrip::refresh);
  hide();
}

void ProblemsStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
  if (looks && session_.hasRecord()) {
    refresh();
  }
}

QString ProblemsStrip::text() const {
  return text_->text();
}

void ProblemsStrip::refresh() {
  const ProblemsModel& problems = view_.problems();
  const std::size_t records = session_.loaded().file->records.size();
  QStringList sentences;
  if (records > 1) {
    sentences << tr("This file holds %1 records; record %2 is shown. The others are under Record.")
                     .arg(records)
                     .arg(session_.loaded().shown + 1);
  }
  if (problems.total() > 0) {
    sentences << tr("In this file: %1.").arg(problems.summary());
  }
  if (const Duration after = lengthAfterActivity(session_.figures()); after > kSaidFrom) {
    sentences
        << tr("Hands off and rate are counted up to the last activity; the record goes on for %1.")
               .arg(words().length(after));
  }
  // At 100 a minute a compression follows the other after 0.6 s.
  constexpr Duration kBetweenCompressions{600'000};
  const Duration threshold = session_.figures().settings.pauseThreshold;
  const bool tooShort = threshold <= kBetweenCompressions;
  if (tooShort) {
    sentences << tr("%1 s is no longer than the time between two compressions: nearly everything "
                    "counts as hands off. Figures with it mean little.")
                     .arg(words().plainNumber(seconds(threshold)));
  }
  const Severity worst = problems.count(Severity::error) > 0                 ? Severity::error
                         : problems.count(Severity::warning) > 0 || tooShort ? Severity::warning
                                                                             : Severity::info;
  const int size = fontMetrics().height();
  icon_->setPixmap(
      severityIcon(worst, palette().color(QPalette::WindowText), size).pixmap(size, size));
  text_->setText(sentences.join(QLatin1Char(' ')));
  button_->setVisible(problems.total() > 0);
  setVisible(!sentences.isEmpty());
}

} // namespace afterbeat::window
