#include "app/window/figures/working_panel.h"
#include "app/papers/said.h"
#include "app/window/figures/reasons.h"
#include "app/window/figures/targets.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/signals/origin.h"
#include "core/measures/derived_use.h"

#include <QAction>
#include <QCoreApplication>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

QLabel* sentenceLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

/// Takes what the sentences leave, and no less than a few lines; where even these find no room, the
/// panel scrolls.
class PartsTable final : public QTableView {
public:
  using QTableView::QTableView;
  [[nodiscard]] QSize sizeHint() const override { return {256, 6 * fontMetrics().height()}; }
};

QString fromTo(const Measure& measure) {
  if (measure.status != Status::ok || !measure.numerator || !measure.denominator) {
    return {};
  }
  const auto part = [&measure](double value, bool denominator) {
    const bool lengths = measure.id == MeasureId::handsOffFraction ||
                         measure.id == MeasureId::chestCompressionFraction ||
                         (denominator && measureInfo(measure.id).unit == "/min");
    return lengths ? lengthWords(Duration{std::llround(value * 1e6)})
                   : words().number(value, value == std::floor(value) ? 0 : 1);
  };
  return QCoreApplication::translate("WorkingPanel", "%1 of %2.")
      .arg(part(*measure.numerator, false), part(*measure.denominator, true));
}

QString evidenceText(Evidence evidence) {
  switch (evidence) {
  case Evidence::compressions:
    return QCoreApplication::translate("WorkingPanel", "Evidence: single compressions.");
  case Evidence::segments:
    return QCoreApplication::translate("WorkingPanel", "Evidence: stretches of compressions.");
  case Evidence::both:
    return QCoreApplication::translate("WorkingPanel",
                                       "Evidence: single compressions, and stretches where no "
                                       "single ones were recorded.");
  case Evidence::none:
    break;
  }
  return QCoreApplication::translate("WorkingPanel", "No compressions were recorded.");
}

} // namespace

QString definitionText(const Figures& figures, MeasureId id) {
  const MeasureInfo& info = measureInfo(id);
  QStringList sentences{papers::definitionOf(id, words())};
  if (info.dependsOnThreshold) {
    sentences << QCoreApplication::translate(
                     "WorkingPanel", "Hands off counts as a pause when longer than %1 s, and then "
                                     "in full.")
                     .arg(words().plainNumber(seconds(figures.settings.pauseThreshold)));
  }
  if (const QString ratio = fromTo(figures[id]); !ratio.isEmpty()) {
    sentences.prepend(ratio);
  }
  for (const Coverage& coverage : figures.coverage) {
    if (coverage.id == id) {
      sentences << QCoreApplication::translate("WorkingPanel", "%1 of %2 could be used.")
                       .arg(words().plainNumber(coverage.used), words().plainNumber(coverage.of));
    }
  }
  if (figures.excludedLength > Duration::zero()) {
    sentences << QCoreApplication::translate("WorkingPanel",
                                             "%1 were excluded and count in no figure.")
                     .arg(lengthWords(figures.excludedLength));
  }
  return sentences.join(QLatin1Char(' '));
}

QString sourceText(const Figures& figures, MeasureId id) {
  QStringList sentences{papers::sourceOf(id, words())};
  if (restsOnHands(id)) {
    sentences << evidenceText(figures.evidence);
  }
  sentences << QCoreApplication::translate("WorkingPanel", "Targets: %1.")
                   .arg(words()(figures.settings.profile.name.c_str()));
  return sentences.join(QLatin1Char('\n'));
}

WorkingPanel::WorkingPanel(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), title_(sentenceLabel(this)),
      definition_(sentenceLabel(this)), source_(sentenceLabel(this)), none_(sentenceLabel(this)),
      table_(new PartsTable(this)) {
  QFont bold = font();
  bold.setBold(true);
  title_->setFont(bold);
  title_->setAccessibleName(tr("Chosen figure"));
  definition_->setAccessibleName(tr("Definition"));
  source_->setAccessibleName(tr("Source"));
  table_->setModel(&model_);
  table_->setAccessibleName(tr("Working of the figure"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setShowGrid(false);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setStretchLastSection(true);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setWordWrap(false);
  table_->setMinimumHeight(table_->sizeHint().height());
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(12, 12, 12, 12);
  layout->addWidget(title_);
  layout->addWidget(definition_);
  layout->addWidget(none_);
  layout->addWidget(table_, 1);
  layout->addWidget(source_);
  layout->addStretch(); // holds the sentences together where there is no table
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(content);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* outside = new QVBoxLayout(this);
  outside->setContentsMargins(0, 0, 0, 0);
  outside->addWidget(scroll);
  const auto addStep = [this](const QString& text, const QKeySequence& key, int by) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, [this, by] {
      if (const int rows = model_.rowCount(); rows > 0) {
        const QModelIndex now = table_->currentIndex();
        const int first = by > 0 ? 0 : rows - 1;
        const int row = now.isValid() ? std::clamp(now.row() + by, 0, rows - 1) : first;
        table_->setCurrentIndex(model_.index(row, 0));
        table_->scrollTo(table_->currentIndex());
        jump(table_->currentIndex());
      }
    });
    addAction(action);
  };
  addStep(tr("Next part of the working"), Qt::Key_N, +1);
  addStep(tr("Previous part of the working"), Qt::SHIFT | Qt::Key_N, -1);
  connect(table_, &QTableView::activated, this, &WorkingPanel::jump);
  connect(table_, &QTableView::clicked, this, &WorkingPanel::jump);
  connect(&session_, &Session::figuresChanged, this, &WorkingPanel::refresh);
  connect(&selection_, &Selection::measureChanged, this, &WorkingPanel::refresh);
  refresh();
}

QString WorkingPanel::titleText() const {
  return title_->text();
}

void WorkingPanel::refresh() {
  const auto id = selection_.measure();
  const bool chosen = id && session_.hasRecord();
  definition_->setVisible(chosen);
  source_->setVisible(chosen);
  if (!chosen) {
    model_.clear();
    title_->setText(tr("No figure is chosen"));
    none_->setText(tr("Choose a figure above, or one from the list of all figures: what it was "
                      "made from is shown here and over the rows."));
    none_->show();
    table_->hide();
    return;
  }
  const Figures& figures = session_.figures();
  title_->setText(tr("%1, %2: the working").arg(titleWords(*id), valueWords(figures[*id])));
  definition_->setText(definitionText(figures, *id));
  QStringList sources{sourceText(figures, *id)};
  if (const QString derived = originSentences(*id, figures, session_.loaded().origin);
      !derived.isEmpty()) {
    sources << derived;
  }
  if (const auto target = targetOf(*id, session_.record(), figures)) {
    const QString verdict =
        figures[*id].status == Status::ok ? verdictWords(target->verdict) : QString();
    QString line = QStringLiteral("%1%2 (%3).")
                       .arg(verdict.isEmpty() ? QString() : verdict + QStringLiteral(": "),
                            target->words, citationWords(target->source));
    line.replace(0, 1, line.at(0).toUpper());
    sources.prepend(line);
  }
  source_->setText(sources.join(QLatin1Char('\n')));
  model_.show(session_.record(), session_.loaded().figures, *id);
  const bool empty = model_.rowCount() == 0;
  none_->setVisible(empty);
  none_->setText(figures[*id].status == Status::notRecorded
                     ? tr("The record does not hold what this figure is made from: %1.")
                           .arg(reasonWords(*id, session_.record(), figures))
                     : tr("No stretch or moment went into this figure."));
  table_->setVisible(!empty);
  fitColumns();
}

void WorkingPanel::fitColumns() {
  // Lengths and clock times are about as wide in every line; a figure may have twenty thousand.
  constexpr int kLinesMeasured = 60;
  table_->horizontalHeader()->setResizeContentsPrecision(kLinesMeasured);
  table_->resizeColumnToContents(WorkingModel::fromColumn);
  table_->resizeColumnToContents(WorkingModel::lengthColumn);
  const int rowHeight = table_->fontMetrics().height() + 6;
  table_->verticalHeader()->setDefaultSectionSize(rowHeight);
  constexpr int kRowsAlwaysSeen = 4;
  table_->setMinimumHeight(kRowsAlwaysSeen * rowHeight);
}

void WorkingPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    // The table hears of the new size only after its panel.
    QMetaObject::invokeMethod(this, &WorkingPanel::fitColumns, Qt::QueuedConnection);
  }
}

void WorkingPanel::jump(const QModelIndex& index) {
  if (index.isValid()) {
    const WorkingPart& part = model_.part(index.row());
    selection_.lookAtAll({part.from, part.to}, model_.what(index.row()));
  }
}

} // namespace afterbeat::window
