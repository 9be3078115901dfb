/// What the place of the waves offers besides moving: ruler, ECG paper, and which tracks are shown.
#include "app/window/look/remembered.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/signals/hint_working.h"
#include "app/window/signals/suppressed_ecg.h"
#include "app/window/waves/waves_plot.h"
#include "app/window/waves/waves_view.h"

#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace afterbeat::window {

namespace {

const QString kHidden = QStringLiteral("waves/hidden");
const QString kPaper = QStringLiteral("waves/paper");

QStringList quantitiesOf(const Record& record) {
  QStringList all;
  for (const Channel& channel : record.channels) {
    const QString quantity = QString::fromStdString(channel.quantity);
    if (channel.drawable && !channel.blocks.empty() && !all.contains(quantity)) {
      all << quantity;
    }
  }
  return all;
}

QSet<QString> hidden() {
  const QStringList names = remembered::text(kHidden).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return {names.begin(), names.end()};
}

} // namespace

void WavesView::makeTools() {
  const auto tool = [this](const QString& text, const QKeySequence& key,
                           std::function<void()> does) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, std::move(does));
    tools_ << action;
    return action;
  };
  tool(tr("&Ruler from here"), Qt::Key_M, [this] {
    if (hasTracks()) {
      plot_->startRuler();
      plot_->setFocus(Qt::ShortcutFocusReason);
    }
  });
  tool(tr("&Take the ruler away"), Qt::SHIFT | Qt::Key_M,
       [this] { plot_->setRuler(std::nullopt); });
  paper_ = tool(tr("Squares of ECG &paper"), Qt::Key_P, [this] {
    plot_->setPaperGrid(paper_->isChecked());
    remembered::setText(kPaper, paper_->isChecked() ? QStringLiteral("yes") : QStringLiteral("no"));
  });
  paper_->setCheckable(true);
  paper_->setChecked(remembered::text(kPaper) == QLatin1String("yes"));
  plot_->setPaperGrid(paper_->isChecked());
  tool(tr("&25 mm for a second"), Qt::SHIFT | Qt::Key_P, [this] { plot_->usePaperSpeed(); });
  suppressed_ = new SuppressedEcgMaker(session_, this);
  auto* suppress = tool(tr("ECG with compressions &suppressed"), Qt::Key_E, [] {});
  suppress->setCheckable(true);
  connect(suppress, &QAction::toggled, suppressed_, &SuppressedEcgMaker::setWanted);
  connect(suppressed_, &SuppressedEcgMaker::changed, this, [this] {
    plot_->setSuppressed(suppressed_->track());
    emit tracksChanged();
    showSuppressed();
  });
  tool(tr("Working of the r&hythm hint here"), Qt::SHIFT | Qt::Key_H, [this] {
    if (session_.hasRecord()) {
      const Interval& shown = selection_.stretch();
      showHint(selection_.cursor().value_or(shown.begin + shown.length() / 2));
    }
  });
}

/// In a low view the track that was asked for may stand below the edge.
void WavesView::showSuppressed() {
  if (!suppressed_->track()) {
    return;
  }
  // Heights are known only after the layout.
  QTimer::singleShot(0, plot_, [this] {
    if (const auto track = plot_->suppressedTrack()) {
      const int below = track->bottom() + track->height() / 8 - scroll_->viewport()->height();
      scroll_->verticalScrollBar()->setValue(std::max(0, below));
    }
  });
}

void WavesView::showHint(Time t) {
  if (!hintWorking_) {
    hintWorking_ = new HintWorking(session_, selection_, window());
    // At the top, so that the waves stay in view under it.
    constexpr int kFromEdge = 12;
    hintWorking_->move(window()->mapToGlobal(
        QPoint(std::max(0, window()->width() - hintWorking_->width() - kFromEdge), kFromEdge)));
  }
  hintWorking_->showAt(t);
  hintWorking_->show();
  hintWorking_->raise();
  hintWorking_->activateWindow();
}

void WavesView::makeTrackActions() {
  for (int i = 0; i < kMostTracks; ++i) {
    auto* action = new QAction(tr("Track %1").arg(i + 1), this);
    action->setCheckable(true);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+J, %1").arg(i + 1)));
    action->setVisible(false);
    action->setEnabled(false);
    connect(action, &QAction::triggered, this, [this, action] {
      QSet<QString> names = hidden();
      const QString quantity = action->data().toString();
      action->isChecked() ? static_cast<void>(names.remove(quantity))
                          : static_cast<void>(names.insert(quantity));
      remembered::setText(kHidden, QStringList(names.values()).join(QLatin1Char(' ')));
      chooseTracks();
      offerTracks();
    });
    tracks_ << action;
  }
}

void WavesView::fillTracks(QMenu* menu) {
  menu->addActions(tracks_);
}

/// What was hidden once stays hidden in other records, unless nothing would be left.
void WavesView::chooseTracks() {
  plot_->setHidden(hidden());
}

void WavesView::offerTracks() {
  const QStringList all = session_.hasRecord() ? quantitiesOf(session_.record()) : QStringList();
  const QSet<QString> left = hidden();
  const auto shown = std::count_if(all.begin(), all.end(),
                                   [&left](const QString& name) { return !left.contains(name); });
  for (qsizetype i = 0; i < tracks_.size(); ++i) {
    const bool used = i < all.size();
    tracks_[i]->setVisible(used);
    if (!used) {
      tracks_[i]->setEnabled(false);
      continue;
    }
    const bool here = shown == 0 || !left.contains(all[i]);
    tracks_[i]->setText(WavesPlot::quantityWords(all[i]));
    tracks_[i]->setData(all[i]);
    tracks_[i]->setChecked(here);
    // The last one stays.
    tracks_[i]->setEnabled(!here || shown > 1);
  }
}

void WavesView::showScale() {
  QStringList parts;
  if (const QString measured = plot_->rulerText(); !measured.isEmpty()) {
    parts << tr("ruler: %1  ·  drag its ends").arg(measured);
  } else if (const QString scale = plot_->paperScaleText(); !scale.isEmpty()) {
    parts << scale;
  }
  const QString text = parts.join(QString());
  if (scale_->text() != text) {
    scale_->setText(text);
  }
}

} // namespace afterbeat::window
