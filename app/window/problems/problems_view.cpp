#include "app/window/problems/problems_view.h"

#include "app/window/look/look.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QToolButton>

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

ProblemsView::ProblemsView(Session& session, QWidget* parent)
    : QTableView(parent), session_(session) {
  setModel(&model_);
  setAccessibleName(tr("Problems of the file"));
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setShowGrid(false);
  setFrameShape(QFrame::NoFrame);
  setTabKeyNavigation(false);
  setWordWrap(true);
  verticalHeader()->hide();
  horizontalHeader()->setStretchLastSection(true);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  connect(&session_, &Session::figuresChanged, this, &ProblemsView::refresh);
}

void ProblemsView::refresh() {
  std::vector<Problem> all = session_.loaded().file->problems;
  const std::vector<Problem>& notices = session_.figures().notices;
  all.insert(all.end(), notices.begin(), notices.end());
  model_.show(std::move(all));
  fitRows();
  emit changed();
}

void ProblemsView::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  fitRows();
}

void ProblemsView::fitRows() {
  resizeColumnToContents(ProblemsModel::severityColumn);
  resizeColumnToContents(ProblemsModel::lineColumn);
  // Thousands of rows would take long to measure; they stay one line high.
  constexpr int kMeasured = 300;
  if (model_.rowCount() <= kMeasured) {
    resizeRowsToContents();
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
  if (problems.rowCount() > 0) {
    sentences << tr("In this file: %1.").arg(problems.summary());
  }
  if (const Duration after = lengthAfterActivity(session_.figures()); after > kSaidFrom) {
    sentences << tr("What follows the last activity (%1) counts in no figure.")
                     .arg(words().length(after));
  }
  const Severity worst = problems.count(Severity::error) > 0     ? Severity::error
                         : problems.count(Severity::warning) > 0 ? Severity::warning
                                                                 : Severity::info;
  const int size = fontMetrics().height();
  icon_->setPixmap(
      severityIcon(worst, palette().color(QPalette::WindowText), size).pixmap(size, size));
  text_->setText(sentences.join(QLatin1Char(' ')));
  button_->setVisible(problems.rowCount() > 0);
  setVisible(!sentences.isEmpty());
}

} // namespace afterbeat::window
