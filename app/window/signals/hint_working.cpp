#include "app/window/signals/hint_working.h"

#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/signals/feature_words.h"
#include "app/window/signals/rhythms.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

Time middleOf(const Interval& where) {
  return where.begin + where.length() / 2;
}

QLabel* sentences(const QString& name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setAccessibleName(name);
  return label;
}

} // namespace

std::optional<std::size_t> windowAt(const Derived& hints, Time t) {
  const auto& windows = hints.windows;
  const auto after = std::lower_bound(
      windows.begin(), windows.end(), t,
      [](const RhythmWindow& window, Time moment) { return middleOf(window.where) < moment; });
  std::optional<std::size_t> best;
  for (auto one = after - std::min<std::ptrdiff_t>(1, after - windows.begin());
       one != windows.end() && one <= after; ++one) {
    const auto index = static_cast<std::size_t>(one - windows.begin());
    const auto apart = [&](std::size_t i) {
      return std::chrono::abs(middleOf(windows[i].where) - t);
    };
    if (one->where.holds(t) && (!best || apart(index) < apart(*best))) {
      best = index;
    }
  }
  return best;
}

HintWorking::HintWorking(Session& session, Selection& selection, QWidget* parent)
    : QDialog(parent), session_(session), selection_(selection),
      title_(sentences(tr("Hint and window"), this)), caution_(sentences(tr("Caution"), this)),
      decision_(sentences(tr("Decision and reason"), this)),
      facts_(sentences(tr("Amplitude and rates"), this)), features_(new QTreeWidget(this)) {
  setWindowTitle(tr("Working of a rhythm hint"));
  features_->setAccessibleName(tr("Features of the window"));
  features_->setHeaderLabels(
      {tr("feature"), tr("value"), tr("limit"), tr("speaks for"), tr("how much")});
  features_->headerItem()->setTextAlignment(1, Qt::AlignRight);
  features_->headerItem()->setTextAlignment(2, Qt::AlignRight);
  features_->headerItem()->setTextAlignment(4, Qt::AlignRight);
  features_->setRootIsDecorated(false);
  features_->setUniformRowHeights(true);
  features_->header()->setStretchLastSection(false);
  features_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  for (int column = 1; column < 5; ++column) {
    features_->header()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  }
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
  const auto add = [&](const QString& text, const QKeySequence& key, auto does) {
    QPushButton* button = buttons->addButton(text, QDialogButtonBox::ActionRole);
    button->setShortcut(key);
    button->setToolTip(key.toString(QKeySequence::NativeText));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, does);
  };
  add(tr("Previous hint"), Qt::SHIFT | Qt::Key_N, [this] { stepHint(-1); });
  add(tr("Next hint"), Qt::Key_N, [this] { stepHint(+1); });
  add(tr("2 s earlier"), Qt::ALT | Qt::Key_Left, [this] { stepWindow(-1); });
  add(tr("2 s later"), Qt::ALT | Qt::Key_Right, [this] { stepWindow(+1); });
  add(tr("Copy as text"), QKeySequence::Copy,
      [this] { QApplication::clipboard()->setText(asText()); });
  auto* layout = new QVBoxLayout(this);
  for (QWidget* part : {static_cast<QWidget*>(title_), static_cast<QWidget*>(caution_),
                        static_cast<QWidget*>(decision_), static_cast<QWidget*>(facts_)}) {
    layout->addWidget(part);
  }
  layout->addWidget(features_, 1);
  layout->addWidget(buttons);
  constexpr int kLetters = 92, kLines = 27;
  const QSize wanted(fontMetrics().averageCharWidth() * kLetters, fontMetrics().height() * kLines);
  resize(parent ? wanted.boundedTo(parent->size()) : wanted);
  restyle();
  connect(&session_, &Session::hintsChanged, this, [this] {
    hints_ = session_.hints();
    shown_.reset();
    refresh();
  });
}

void HintWorking::showAt(Time t) {
  hints_ = session_.hints();
  shown_ = hints_ ? windowAt(*hints_, t) : std::nullopt;
  refresh();
  look();
}

void HintWorking::stepHint(int by) {
  if (!hints_ || !shown_) {
    return;
  }
  const Time now = middleOf(hints_->windows[*shown_].where);
  const RhythmLine hints = rhythmsOf(session_.record(), hints_.get(), false).hints;
  const auto& all = hints.all();
  const auto after =
      std::upper_bound(all.begin(), all.end(), now,
                       [](Time t, const RhythmStretch& one) { return t < one.where.begin; });
  const auto here = after - all.begin() - 1;
  const auto count = static_cast<std::ptrdiff_t>(all.size());
  // A hint shorter than a window's step may have no window of its own.
  for (auto next = here + by; next >= 0 && next < count; next += by) {
    const auto window = windowAt(*hints_, middleOf(all[static_cast<std::size_t>(next)].where));
    if (window && *window != *shown_) {
      shown_ = window;
      refresh();
      look();
      return;
    }
  }
}

void HintWorking::stepWindow(int by) {
  if (!hints_ || !shown_) {
    return;
  }
  const auto last = static_cast<std::ptrdiff_t>(hints_->windows.size()) - 1;
  const auto next = std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(*shown_) + by, 0, last);
  shown_ = static_cast<std::size_t>(next);
  refresh();
  look();
}

/// The waves show the window, and the cursor stands where it decides.
void HintWorking::look() {
  if (hints_ && shown_) {
    const Interval& where = hints_->windows[*shown_].where;
    selection_.lookAtAll(where, tr("window of the rhythm hint"));
    selection_.setCursor(middleOf(where));
  }
}

void HintWorking::refresh() {
  const bool any = hints_ && shown_ && session_.hasRecord();
  for (QWidget* part : {static_cast<QWidget*>(decision_), static_cast<QWidget*>(facts_),
                        static_cast<QWidget*>(features_)}) {
    part->setVisible(any);
  }
  caution_->setText(cautionWords() + QLatin1Char('.'));
  features_->clear();
  if (!any) {
    title_->setText(session_.hintsAwaited()
                        ? tr("The hints are being made.")
                        : tr("No hint was made for this moment. Hints that came with the file "
                             "have no working here: choose Figures, From the signals, Always."));
    return;
  }
  const RhythmWindow& window = hints_->windows[*shown_];
  const Record& record = session_.record();
  const RhythmLine hints = rhythmsOf(record, hints_.get(), false).hints;
  const RhythmStretch* hint = hints.at(middleOf(window.where));
  const QString which = tr("Window of 8 s from %1, one of %2")
                            .arg(momentWords(record, window.where.begin, true))
                            .arg(hints_->windows.size());
  title_->setText(hint ? QStringLiteral("%1, %2\n%3")
                             .arg(stretchWords(*hint),
                                  tr("%1 to %2")
                                      .arg(momentWords(record, hint->where.begin),
                                           momentWords(record, hint->where.end)),
                                  which)
                       : which);
  decision_->setText(decisionWords(window));
  facts_->setText(factWords(window));
  fillFeatures(window);
}

void HintWorking::fillFeatures(const RhythmWindow& window) {
  for (const FeatureShown& feature : featuresOf(window)) {
    auto* item = new QTreeWidgetItem(
        features_, {feature.name, feature.value, feature.limit, feature.speaksFor, feature.weight});
    for (const int column : {1, 2, 4}) {
      item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
  }
  features_->setCurrentItem(features_->topLevelItem(0));
}

QString HintWorking::asText() const {
  QStringList lines{title_->text(), caution_->text()};
  if (shown_) {
    lines << decision_->text() << facts_->text() << tabbedText(*features_);
  }
  return lines.join(QLatin1Char('\n'));
}

void HintWorking::restyle() {
  const Look look = Look::of(palette(), font());
  QFont bold = font();
  bold.setBold(true);
  title_->setFont(bold);
  caution_->setFont(bold);
  QPalette attention = palette();
  attention.setColor(QPalette::WindowText, look.attention);
  caution_->setPalette(attention);
}

void HintWorking::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
