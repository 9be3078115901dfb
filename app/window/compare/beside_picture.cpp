#include "app/window/compare/beside_picture.h"

#include "app/papers/rows_model.h"
#include "app/window/compare/beside_words.h"
#include "app/window/look/figure_words.h"

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

/// More records than this have lower rows with fewer words.
constexpr std::size_t kRoomy = 4;

long long floorDiv(Duration a, Duration b) {
  return a.count() / b.count() - (a.count() % b.count() < 0 ? 1 : 0);
}

QString clock(Duration d) {
  return words().length(std::chrono::abs(d));
}

/// What the record's rows cover, from the moment aligned at.
std::optional<Interval> rowsOf(const BesideOrder& order, std::size_t record) {
  const auto& offset = order.compared.offsets[record];
  const papers::RowsPicture& rows = *order.records[record].rows;
  if (!offset || rows.rowCount() == 0) {
    return std::nullopt;
  }
  const Interval all = *rows.model().span;
  return Interval{all.begin - *offset, all.end - *offset};
}

/// At the moment aligned at, or on a tick of the row before or after it.
Duration originOf(Duration begin, Duration rowLength) {
  const Duration step = begin < Duration{} ? rowLength / 6 : rowLength;
  return floorDiv(begin, step) * step;
}

std::optional<Duration> firstBegin(const BesideOrder& order) {
  std::optional<Duration> first;
  for (std::size_t i = 0; i < order.records.size(); ++i) {
    if (const auto rows = rowsOf(order, i)) {
      first = std::min(first.value_or(rows->begin - Time{}), rows->begin - Time{});
    }
  }
  return first;
}

} // namespace

Duration fittingRowLength(const BesideOrder& order, const std::vector<Duration>& lengths) {
  const Duration first = firstBegin(order).value_or(Duration{});
  for (const Duration length : lengths) {
    std::size_t within = 0, all = 0;
    for (std::size_t i = 0; i < order.records.size(); ++i) {
      if (const auto rows = rowsOf(order, i)) {
        ++all;
        within += rows->end - Time{} <= originOf(first, length) + length ? 1U : 0U;
      }
    }
    if (within * 2 >= all) {
      return length;
    }
  }
  return lengths.back();
}

BesidePicture::BesidePicture(BesideOrder order, double width, const Look& look)
    : order_(std::move(order)), look_(look) {
  text_ = QFontInfo(look.rows.font).pixelSize();
  gutter_ = text_ * 2.2;
  layOut(width);
}

/// With what is marked of it, as far as it lies in the rows.
std::optional<Interval> BesidePicture::covered(std::size_t record) const {
  auto all = rowsOf(order_, record);
  if (const auto stretch = marked(record); all && stretch) {
    const Duration offset = *order_.compared.offsets[record];
    if (stretch->end - offset > Time{} + origin_) {
      all->begin = std::min(all->begin, std::max(stretch->begin - offset, Time{} + origin_));
      all->end = std::max(all->end, stretch->end - offset);
    }
  }
  return all;
}

std::optional<Interval> BesidePicture::marked(std::size_t record) const {
  return record < order_.marked.size() ? order_.marked[record] : std::nullopt;
}

QString BesidePicture::markedWords(std::size_t record) const {
  return order_.markedWords.value(static_cast<qsizetype>(record));
}

void BesidePicture::layOut(double width) {
  const auto first = firstBegin(order_);
  if (!first) {
    return;
  }
  origin_ = originOf(*first, order_.rowLength);
  Duration end = origin_;
  for (std::size_t i = 0; i < order_.records.size(); ++i) {
    if (const auto part = covered(i)) {
      end = std::max(end, part->end - Time{});
    }
  }
  double top = addWaiting(0, width);
  for (Duration from = origin_; from < end; from += order_.rowLength) {
    BesideBlock block;
    block.from = from;
    block.to = block.from + order_.rowLength;
    top += top == 0 ? 0 : text_ * 0.8;
    block.heading = QRectF(0, top, width, text_ * 2);
    top = block.heading.bottom() + text_ * 0.2;
    for (std::size_t record = 0; record < order_.records.size(); ++record) {
      top = addRow(block, record, top, width);
    }
    blocks_.push_back(std::move(block));
  }
  height_ = top;
}

double BesidePicture::addWaiting(double top, double width) {
  for (std::size_t record = 0; record < order_.records.size(); ++record) {
    std::vector<std::pair<double, KeyMoment>> before;
    for (const MomentRow& row : order_.compared.moments) {
      const auto& at = row.seconds[record];
      if (at && *at < seconds(origin_) && row.moment != order_.compared.alignedAt) {
        before.emplace_back(*at, row.moment);
      }
    }
    if (before.empty()) {
      continue;
    }
    std::sort(before.begin(), before.end());
    QStringList parts;
    for (const auto& [at, moment] : before) {
      const QString length = lengthWords(Duration{std::llround(std::fabs(at) * 1e6)});
      const QString aligned = momentName(order_.compared.alignedAt);
      // The first says from where it is counted.
      parts << (!parts.isEmpty() ? tr("%1 %2").arg(momentName(moment), offsetWords(at))
                : at < 0         ? tr("%1 %2 before %3").arg(momentName(moment), length, aligned)
                                 : tr("%1 %2 after %3").arg(momentName(moment), length, aligned));
    }
    BesideWaiting waiting;
    waiting.record = record;
    waiting.words = parts.join(QStringLiteral(", "));
    const auto stretch = marked(record);
    waiting.marked =
        stretch && stretch->begin - *order_.compared.offsets[record] < Time{} + origin_;
    waiting.box = QRectF(0, top, width, text_ * 1.7);
    top = waiting.box.bottom();
    waiting_.push_back(std::move(waiting));
  }
  return top;
}

double BesidePicture::addRow(BesideBlock& block, std::size_t record, double top, double width) {
  const auto part = covered(record);
  if (!part) {
    return top;
  }
  const auto& offset = *order_.compared.offsets[record];
  BesideRow row;
  row.record = record;
  row.stretch = {Time{} + block.from + offset, Time{} + block.to + offset};
  const bool nothing = part->end <= Time{} + block.from || part->begin >= Time{} + block.to;
  if (part->end <= Time{} + block.from - order_.rowLength) {
    return top; // that nothing more comes was said in the block before
  }
  papers::RowsLook look = look_.rows;
  look.smallestShare = 1;
  double high = text_ * 1.5, above = 0;
  if (!nothing) {
    const auto picture = order_.records[record].rows->asOneRow(row.stretch);
    const bool roomy = order_.records.size() <= kRoomy;
    look.rowHeight = text_ * (order_.records.size() <= 2 ? 3.2 : 2.4);
    const double left = width - gutter_;
    const auto stretch = marked(record);
    const bool begins = stretch && stretch->touches(row.stretch) &&
                        (stretch->begin >= row.stretch.begin || blocks_.empty());
    if (begins && !markedWords(record).isEmpty()) {
      above = text_ * 1.4;
      row.label = QRectF(gutter_, top, left, above);
    }
    high = roomy ? picture.heightFor(left, look, false)
                 : std::max(text_ * 2.9, picture.leastHeightFor(left, look, false));
    row.placed = std::make_shared<const papers::RowsPlaced>(
        picture, QRectF(gutter_, top + above, left, high), look, false, !roomy);
  }
  row.box = QRectF(0, top, width, above + high);
  block.rows.push_back(std::move(row));
  return top + above + high;
}

void BesidePicture::paint(QPainter& painter, const QRectF& shown) const {
  for (const BesideWaiting& waiting : waiting_) {
    if (waiting.box.intersects(shown)) {
      paintWaiting(painter, waiting);
    }
  }
  for (const BesideBlock& block : blocks_) {
    if (block.heading.top() <= shown.bottom() && block.rows.back().box.bottom() >= shown.top()) {
      paintBlock(painter, block);
    }
  }
}

void BesidePicture::paintBlock(QPainter& painter, const BesideBlock& block) const {
  QFont bold = look_.rows.font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(look_.faintInk);
  painter.drawText(block.heading, Qt::AlignLeft | Qt::AlignVCenter, headingText(block));
  painter.fillRect(QRectF(0, block.heading.top(), block.heading.width(), 1), look_.line);
  for (const BesideRow& row : block.rows) {
    paintRow(painter, row);
  }
  // The moment that all are aligned at, where it begins a stretch or lies within one.
  if (block.from > Duration{} || block.to <= Duration{}) {
    return;
  }
  for (const BesideRow& row : block.rows) {
    if (row.placed) {
      const QRectF band = row.placed->rowRect(0);
      const double share =
          -static_cast<double>(block.from.count()) / static_cast<double>(order_.rowLength.count());
      const double x = band.left() + band.width() * share;
      painter.setPen(QPen(look_.accent, 2, Qt::DashLine));
      painter.drawLine(QPointF(x, block.heading.bottom()),
                       QPointF(x, block.rows.back().box.bottom()));
      return;
    }
  }
}

void BesidePicture::paintRow(QPainter& painter, const BesideRow& row) const {
  QFont bold = look_.rows.font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(row.placed ? look_.ink : look_.faintInk);
  const QString letter = letterOf(row.record);
  if (!row.placed) {
    painter.drawText(row.box, Qt::AlignLeft | Qt::AlignVCenter, letter);
    painter.setFont(look_.rows.font);
    const bool before = row.stretch.end <= order_.records[row.record].rows->row(0).begin;
    painter.drawText(row.box.adjusted(gutter_ + text_ * 0.8, 0, 0, 0),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     before ? tr("not begun") : tr("nothing more"));
    return;
  }
  const QRectF band = row.placed->rowRect(0);
  painter.drawText(QRectF(0, band.top(), gutter_, band.height()), Qt::AlignLeft | Qt::AlignVCenter,
                   letter);
  std::vector<Interval> stretches;
  if (const auto stretch = marked(row.record)) {
    stretches.push_back(*stretch);
  }
  row.placed->paint(painter, stretches);
  paintLabel(painter, row);
}

/// At the begin of what is marked, or as near to it as the words find room.
void BesidePicture::paintLabel(QPainter& painter, const BesideRow& row) const {
  if (row.label.isEmpty()) {
    return;
  }
  painter.setFont(look_.rows.font);
  const QRectF band = row.placed->rowRect(0);
  const Duration into = std::max(marked(row.record)->begin, row.stretch.begin) - row.stretch.begin;
  const double share =
      static_cast<double>(into.count()) / static_cast<double>(order_.rowLength.count());
  const QFontMetricsF metrics(look_.rows.font);
  const QString text =
      metrics.elidedText(markedWords(row.record), Qt::ElideRight, row.label.width());
  const double wide = metrics.horizontalAdvance(text) + 1;
  const double left = std::min(band.left() + band.width() * share, row.label.right() - wide);
  painter.setPen(look_.attention);
  painter.drawText(QRectF(left, row.label.top(), wide, row.label.height()),
                   Qt::AlignLeft | Qt::AlignVCenter, text);
}

void BesidePicture::paintWaiting(QPainter& painter, const BesideWaiting& waiting) const {
  QFont bold = look_.rows.font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(look_.ink);
  painter.drawText(waiting.box, Qt::AlignLeft | Qt::AlignVCenter, letterOf(waiting.record));
  painter.setFont(look_.rows.font);
  const QFontMetricsF metrics(look_.rows.font);
  double left = gutter_;
  if (const QString what = markedWords(waiting.record); waiting.marked && !what.isEmpty()) {
    const double wide = metrics.horizontalAdvance(what) + text_;
    const QRectF ground = QRectF(left, waiting.box.top(), wide, waiting.box.height())
                              .adjusted(0, text_ * 0.1, 0, -text_ * 0.1);
    painter.fillRect(ground, look_.rows.highlight);
    painter.setPen(look_.ink);
    painter.drawText(ground, Qt::AlignCenter, what);
    left += wide + text_ * 0.8;
  }
  painter.setPen(look_.faintInk);
  const double room = waiting.box.right() - left;
  painter.drawText(QRectF(left, waiting.box.top(), room, waiting.box.height()),
                   Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(waiting.words, Qt::ElideRight, room));
}

const BesideRow* BesidePicture::rowAt(const QPointF& point) const {
  for (const BesideRow* row : rows()) {
    if (row->box.contains(point)) {
      return row;
    }
  }
  return nullptr;
}

std::vector<const BesideRow*> BesidePicture::rows() const {
  std::vector<const BesideRow*> all;
  for (const BesideBlock& block : blocks_) {
    for (const BesideRow& row : block.rows) {
      if (row.placed) {
        all.push_back(&row);
      }
    }
  }
  return all;
}

QRectF BesidePicture::markedPlace() const {
  QRectF place;
  for (const BesideRow* row : rows()) {
    if (const auto stretch = marked(row->record); stretch && stretch->touches(row->stretch)) {
      place = place.isNull() ? row->box : place.united(row->box);
    }
  }
  return place;
}

QString BesidePicture::rowText(const BesideRow& row) const {
  const BesideRecord& one = order_.records[row.record];
  const QString what = one.rows->asOneRow(row.stretch).rowAsText(0);
  const QString text = tr("%1, %2: %3").arg(letterOf(row.record), shortNameOf(*one.record), what);
  return row.label.isEmpty() ? text : text + QLatin1Char(' ') + markedWords(row.record);
}

QString BesidePicture::waitingText(const BesideWaiting& waiting) const {
  const QString letter = letterOf(waiting.record);
  return waiting.marked ? tr("%1: %2 (%3)").arg(letter, waiting.words, markedWords(waiting.record))
                        : tr("%1: %2").arg(letter, waiting.words);
}

QRectF BesidePicture::alignedPlace() const {
  for (const BesideBlock& block : blocks_) {
    if (block.from <= Duration{} && block.to > Duration{}) {
      return block.rows.empty() ? block.heading : block.heading.united(block.rows.back().box);
    }
  }
  return {};
}

QString BesidePicture::headingText(const BesideBlock& block) const {
  const QString moment = momentName(order_.compared.alignedAt);
  if (block.from.count() == 0) {
    return tr("From %1 to %2 after").arg(moment, clock(block.to));
  }
  if (block.from.count() < 0 && block.to.count() > 0) {
    return tr("%1 before %2 to %3 after").arg(clock(block.from), moment, clock(block.to));
  }
  if (block.to.count() == 0) {
    return tr("From %1 before %2 on").arg(clock(block.from), moment);
  }
  return block.from.count() > 0
             ? tr("%1 to %2 after %3").arg(clock(block.from), clock(block.to), moment)
             : tr("%1 to %2 before %3").arg(clock(block.from), clock(block.to), moment);
}

QString BesidePicture::asText() const {
  QStringList lines;
  for (const BesideWaiting& waiting : waiting_) {
    lines << waitingText(waiting);
  }
  for (const BesideBlock& block : blocks_) {
    lines << headingText(block);
    for (const BesideRow& row : block.rows) {
      lines << (row.placed ? rowText(row) : tr("%1: nothing here").arg(letterOf(row.record)));
    }
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace afterbeat::window
