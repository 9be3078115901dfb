#include "app/window/compare/beside_picture.h"

#include "app/papers/rows_model.h"
#include "app/window/compare/beside_words.h"
#include "app/window/look/figure_words.h"

#include <QCoreApplication>
#include <QFontInfo>
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
  return words().shortLength(std::chrono::abs(d));
}

} // namespace

BesidePicture::BesidePicture(BesideOrder order, double width, const Look& look)
    : order_(std::move(order)), look_(look) {
  text_ = QFontInfo(look.rows.font).pixelSize();
  gutter_ = text_ * 2.2;
  layOut(width);
}

std::optional<Interval> BesidePicture::covered(std::size_t record) const {
  const auto& offset = order_.compared.offsets[record];
  const papers::RowsPicture& rows = *order_.records[record].rows;
  if (!offset || rows.rowCount() == 0) {
    return std::nullopt;
  }
  Interval all = *rows.model().span;
  if (order_.marked.size() > record && order_.marked[record]) {
    all.begin = std::min(all.begin, order_.marked[record]->begin);
    all.end = std::max(all.end, order_.marked[record]->end);
  }
  return Interval{all.begin - *offset, all.end - *offset};
}

void BesidePicture::layOut(double width) {
  std::optional<long long> first, last;
  for (std::size_t i = 0; i < order_.records.size(); ++i) {
    if (const auto part = covered(i)) {
      const Duration begin = part->begin - Time{}, end = part->end - Time{};
      const long long from = floorDiv(begin, order_.rowLength);
      const long long to = floorDiv(end - Duration{1}, order_.rowLength);
      first = first ? std::min(*first, from) : from;
      last = last ? std::max(*last, to) : to;
    }
  }
  double top = 0;
  for (long long i = first.value_or(0); last && i <= *last; ++i) {
    BesideBlock block;
    block.from = i * order_.rowLength;
    block.to = block.from + order_.rowLength;
    top += blocks_.empty() ? 0 : text_ * 0.8;
    block.heading = QRectF(0, top, width, text_ * 2);
    top = block.heading.bottom() + text_ * 0.2;
    for (std::size_t record = 0; record < order_.records.size(); ++record) {
      top = addRow(block, record, top, width);
    }
    blocks_.push_back(std::move(block));
  }
  height_ = top;
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
  papers::RowsLook look = look_.rows;
  look.smallestShare = 1;
  double high = text_ * 1.5;
  if (!nothing) {
    const auto picture = order_.records[record].rows->asOneRow(row.stretch);
    const bool roomy = order_.records.size() <= kRoomy;
    look.rowHeight = text_ * (order_.records.size() <= 2 ? 3.2 : 2.4);
    const double left = width - gutter_;
    high = roomy ? picture.heightFor(left, look, false)
                 : std::max(text_ * 2.9, picture.leastHeightFor(left, look, false));
    row.placed = std::make_shared<const papers::RowsPlaced>(
        picture, QRectF(gutter_, top, left, high), look, false, !roomy);
  }
  row.box = QRectF(0, top, width, high);
  block.rows.push_back(std::move(row));
  return top + high;
}

void BesidePicture::paint(QPainter& painter, const QRectF& shown) const {
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
  std::vector<Interval> marked;
  if (row.record < order_.marked.size() && order_.marked[row.record]) {
    marked.push_back(*order_.marked[row.record]);
  }
  row.placed->paint(painter, marked);
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
    const bool has = row->record < order_.marked.size() && order_.marked[row->record] &&
                     order_.marked[row->record]->touches(row->stretch);
    if (has) {
      place = place.isNull() ? row->box : place.united(row->box);
    }
  }
  return place;
}

QString BesidePicture::rowText(const BesideRow& row) const {
  const BesideRecord& one = order_.records[row.record];
  const QString what = one.rows->asOneRow(row.stretch).rowAsText(0);
  return tr("%1, %2: %3").arg(letterOf(row.record), shortNameOf(*one.record), what);
}

QString BesidePicture::headingText(const BesideBlock& block) const {
  const QString moment = momentName(order_.compared.alignedAt);
  if (block.from.count() == 0) {
    return tr("From %1 to %2 after").arg(moment, clock(block.to));
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
  for (const BesideBlock& block : blocks_) {
    lines << headingText(block);
    for (const BesideRow& row : block.rows) {
      lines << (row.placed ? rowText(row) : tr("%1: nothing here").arg(letterOf(row.record)));
    }
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace afterbeat::window
