#include "app/window/compare/chart_view.h"

#include "app/papers/said.h"
#include "app/papers/unbroken.h"
#include "app/window/compare/archive_words.h"
#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/season_table_model.h"
#include "app/window/look/elided_label.h"
#include "app/window/look/figure_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kUnder = 108, kLeast = 160;
/// So many lines around the point that a key leads to are in view as well: the axis takes three.
constexpr int kAround = 5;
/// The number of "kind not stated" in a chooser.
constexpr int kNotStated = 9;

int numberOf(StatedKind kind) {
  return kind ? static_cast<int>(*kind) : kNotStated;
}

/// What is not drawn because it is of another kind is counted and named.
QString otherKinds(const ChartMade& made) {
  QStringList others;
  for (const KindCount& count : made.kinds) {
    if (count.kind != made.kind) {
      others << QStringLiteral("%1 (%2)").arg(kindWords(count.kind),
                                              words().number(static_cast<double>(count.records)));
    }
  }
  return others.isEmpty()
             ? QString()
             : ChartView::tr("Kinds are never mixed in one chart; not in this one: %1.")
                   .arg(words().list(others));
}

ChartMade make(const Season& season, const Chosen& chosen, const std::optional<StatedKind>& wanted,
               const ChartMaker& maker) {
  ChartMade made;
  made.kinds = kindsOf(season, chosen);
  if (made.kinds.empty()) {
    made.refusal = ChartView::tr("There is no record to draw.");
    return made;
  }
  const auto there =
      std::find_if(made.kinds.begin(), made.kinds.end(),
                   [&](const KindCount& count) { return wanted && count.kind == *wanted; });
  made.kind = there == made.kinds.end() ? made.kinds.front().kind : there->kind;
  try {
    auto chart = maker(season, ofKind(season, chosen, made.kind), words());
    if (chart) {
      made.chart = std::make_shared<const papers::Chart>(std::move(*chart));
    } else {
      made.refusal = papers::said(afterbeat::words(chart.error()), words());
    }
  } catch (const archive::ArchiveFailure& failure) {
    made.refusal = archiveWords(failure.error);
  }
  return made;
}

} // namespace

void fillMeasures(QComboBox* box, MeasureId first) {
  for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
    box->addItem(titleWords(static_cast<MeasureId>(i)), i);
  }
  box->setCurrentIndex(box->findData(static_cast<int>(first)));
}

ChartView::ChartView(SeasonDesk& desk, const QString& name, QWidget* parent)
    : QWidget(parent), desk_(desk), choosers_(new QHBoxLayout), kind_(nullptr),
      canvas_(new ChartCanvas(this)), sentences_(new QLabel), under_(new QScrollArea(this)),
      work_(*this) {
  setAccessibleName(name);
  choosers_->setContentsMargins(16, 4, 16, 4);
  choosers_->setSpacing(8);
  auto* hint = new ElidedLabel(this);
  hint->setWhole(tr("A click on a point opens its record, as Enter does after the arrow keys."));
  hint->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  choosers_->addWidget(hint, 1);
  kind_ = addChooser(tr("Kind of records"));
  kind_->disconnect(this);
  connect(kind_, &QComboBox::activated, this, [this] {
    const int number = kind_->currentData().toInt();
    kindChosen_ = true;
    wantedKind_ = number == kNotStated ? StatedKind() : StatedKind(static_cast<RecordKind>(number));
    refresh();
  });
  sentences_->setWordWrap(true);
  sentences_->setTextFormat(Qt::RichText);
  sentences_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  sentences_->setContentsMargins(16, 8, 16, 8);
  sentences_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  under_->setWidget(sentences_);
  under_->setWidgetResizable(true);
  under_->setFrameShape(QFrame::NoFrame);
  under_->setFocusPolicy(Qt::NoFocus);
  under_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  under_->setFixedHeight(kUnder);
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(0);
  down->addLayout(choosers_);
  auto* around = new QScrollArea(this);
  around->setWidget(canvas_);
  around->setWidgetResizable(true);
  around->setFrameShape(QFrame::NoFrame);
  around->setFocusPolicy(Qt::NoFocus);
  around->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  around->setMinimumHeight(kLeast);
  around->viewport()->installEventFilter(this);
  down->addWidget(around, 1);
  down->addWidget(under_);
  setFocusProxy(canvas_);
  connect(canvas_, &ChartCanvas::wanted, this, &ChartView::wanted);
  connect(canvas_, &ChartCanvas::currentChanged, around, [this, around] {
    const auto at = canvas_->current() ? canvas_->placeOf(*canvas_->current()) : std::nullopt;
    if (at) {
      around->ensureVisible(at->toPoint().x(), at->toPoint().y(), 0,
                            kAround * canvas_->fontMetrics().height());
    }
  });
  canvas_->setNames([this](std::uint32_t place) {
    const SharedSource& source = desk_.source();
    if (!source || place >= source->season().records.size()) {
      return QString();
    }
    const RecordFacts& facts = source->season().records[place];
    return QStringLiteral("%1, %2").arg(factWords(Fact::day, facts), factWords(Fact::file, facts));
  });
  connect(&desk_, &SeasonDesk::arrangedChanged, this, &ChartView::refresh);
}

QComboBox* ChartView::addChooser(const QString& name) {
  auto* box = new QComboBox(this);
  box->setAccessibleName(name);
  box->setToolTip(name);
  box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  // Before the hint at the end.
  choosers_->insertWidget(choosers_->count() - 1, box);
  connect(box, &QComboBox::activated, this, &ChartView::refresh);
  return box;
}

void ChartView::refresh() {
  outdated_ = true;
  if (!isVisible() || !desk_.source() || !desk_.arranged().source) {
    return;
  }
  outdated_ = false;
  const std::optional<StatedKind> wanted =
      kindChosen_ ? std::optional<StatedKind>(wantedKind_) : std::nullopt;
  work_.ask([source = desk_.arranged().source, chosen = desk_.arranged().chosen, wanted,
             maker = maker()] { return make(source->season(), chosen, wanted, maker); },
            [this](const ChartMade& made) { deliver(made); });
}

void ChartView::fillKinds(const ChartMade& made) {
  const QSignalBlocker quiet(kind_);
  kind_->clear();
  for (const KindCount& count : made.kinds) {
    kind_->addItem(QStringLiteral("%1 (%2)").arg(
                       kindWords(count.kind), words().number(static_cast<double>(count.records))),
                   numberOf(count.kind));
  }
  kind_->setCurrentIndex(kind_->findData(numberOf(made.kind)));
  kind_->setVisible(made.kinds.size() > 1);
}

void ChartView::deliver(const ChartMade& made) {
  fillKinds(made);
  QStringList lines;
  if (made.chart) {
    lines = made.chart->sentences;
  } else {
    lines << made.refusal;
  }
  lines << otherKinds(made);
  if (const auto id = measureDrawn(); id && made.chart) {
    lines << definitionWords(*id).replace(QLatin1Char('\n'), QLatin1Char(' '));
  }
  lines.removeAll(QString());
  said_ = lines.join(QLatin1Char('\n'));
  QStringList shown;
  for (const QString& line : lines) {
    shown << (shown.isEmpty() ? QStringLiteral("<b>%1</b>") : QStringLiteral("%1"))
                 .arg(papers::unbroken(line).toHtmlEscaped());
  }
  sentences_->setText(shown.join(QStringLiteral("<br>")));
  canvas_->show(made.chart);
  emit drawn();
}

QString ChartView::sentences() const {
  return said_;
}

QString ChartView::asText() const {
  return canvas_->chart() ? papers::asText(*canvas_->chart()) : sentences();
}

bool ChartView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) {
    canvas_->setRoom(static_cast<QResizeEvent*>(event)->size().height());
  }
  return QWidget::eventFilter(watched, event);
}

void ChartView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (outdated_) {
    refresh();
  }
}

} // namespace afterbeat::window
