#include "app/papers/charts/chart_placed.h"

#include "app/papers/charts/chart_painter.h"

#include <QLineF>
#include <QPainter>

#include <algorithm>

namespace afterbeat::papers {

namespace {

const char* nameOf(ChartTextRole role) {
  switch (role) {
  case ChartTextRole::title:
    return "title";
  case ChartTextRole::mark:
    return "MARK";
  case ChartTextRole::axis:
    return "axis";
  case ChartTextRole::tick:
    return "tick";
  case ChartTextRole::lane:
    return "lane";
  case ChartTextRole::note:
    return "note";
  case ChartTextRole::label:
    return "label";
  case ChartTextRole::inside:
    return "inside";
  case ChartTextRole::key:
    return "key";
  case ChartTextRole::sentence:
    return "sentence";
  case ChartTextRole::empty:
    break;
  }
  return "empty";
}

} // namespace

ChartPlaced::ChartPlaced(std::shared_ptr<const Chart> chart, const QRectF& area,
                         const ChartLook& look)
    : chart_(std::move(chart)), look_(look),
      layout_(std::make_shared<const ChartLayout>(
          layOutChart(*chart_, area, look_, Lettering(look_.font)))) {}

void ChartPlaced::paint(QPainter& painter) const {
  ChartPainter(painter, *chart_, *layout_, look_).paint(Lettering(look_.font));
}

void ChartPlaced::paintHighlight(QPainter& painter, const std::vector<ChartHit>& hits) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look_.highlight, 0.22 * layout_->size));
  for (const ChartHit& hit : hits) {
    if (hit.bar && hit.index < layout_->bars.size()) {
      const double out = 0.2 * layout_->size;
      painter.drawRect(layout_->bars[hit.index].adjusted(-out, -out, out, out));
    } else if (!hit.bar) {
      const double radius = layout_->radius + 0.3 * layout_->size;
      painter.drawEllipse(hit.at, radius, radius);
    }
  }
  painter.restore();
}

std::vector<ChartHit> ChartPlaced::at(const QPointF& place, double reach) const {
  std::vector<ChartHit> hits;
  const ChartLayout& layout = *layout_;
  for (std::size_t i = 0; i < layout.bars.size(); ++i) {
    if (layout.bars[i].adjusted(-reach, -2, reach, 2).contains(place)) {
      hits.push_back({i, true, layout.bars[i].center()});
    }
  }
  for (std::size_t i = 0; i < chart_->points.size(); ++i) {
    if (crowded()) {
      const QRectF& box = layout.amounts[layout.amountOf[i]].box;
      if (box.adjusted(0, chart_->lanes() ? -reach : 0, 0, 0).contains(place)) {
        hits.push_back(*point(i));
      }
    } else if (QLineF(layout.points[i], place).length() <= layout.radius + reach) {
      hits.push_back({i, false, layout.points[i]});
    }
  }
  std::stable_sort(hits.begin(), hits.end(), [&](const ChartHit& a, const ChartHit& b) {
    return QLineF(a.at, place).length() < QLineF(b.at, place).length();
  });
  return hits;
}

std::optional<ChartHit> ChartPlaced::point(std::size_t index) const {
  if (index >= chart_->points.size()) {
    return std::nullopt;
  }
  if (!crowded()) {
    return ChartHit{index, false, layout_->points[index]};
  }
  const ChartPoint& one = chart_->points[index];
  const QRectF& box = layout_->amounts[layout_->amountOf[index]].box;
  return ChartHit{index, false,
                  chart_->lanes() ? QPointF(layout_->xAt(one.x), box.center().y())
                                  : QPointF(layout_->xAt(one.x), layout_->yAt(one.y, false))};
}

std::optional<ChartHit> ChartPlaced::bar(std::size_t index) const {
  if (index >= layout_->bars.size()) {
    return std::nullopt;
  }
  return ChartHit{index, true, layout_->bars[index].center()};
}

std::optional<std::uint32_t> ChartPlaced::record(const ChartHit& hit) const {
  std::optional<std::uint32_t> at;
  if (hit.bar && hit.index < chart_->bars.size()) {
    at = chart_->bars[hit.index].record;
  } else if (!hit.bar && hit.index < chart_->points.size()) {
    at = chart_->points[hit.index].first;
  }
  return at && *at < chart_->records.size() ? std::optional(chart_->records[*at]) : std::nullopt;
}

QRectF ChartPlaced::plot() const {
  return layout_->plot;
}

QRectF ChartPlaced::axis() const {
  // With its line.
  const double top = layout_->plot.bottom() - 0.1 * layout_->size;
  return {layout_->area.left(), top, layout_->area.width(),
          layout_->plot.bottom() + layout_->axisHeight - top};
}

bool ChartPlaced::crowded() const {
  return !layout_->amounts.empty();
}

QString ChartPlaced::layoutAsText() const {
  QStringList lines;
  for (const ChartText& text : layout_->texts) {
    lines << QStringLiteral("[%1] %2").arg(QLatin1String(nameOf(text.role)), text.text);
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

QString asText(const Chart& chart) {
  QStringList lines{chart.title};
  if (!chart.marks.isEmpty()) {
    lines << chart.marks.join(QStringLiteral(", "));
  }
  lines << chart.sentences;
  if (chart.points.empty() && chart.bars.empty() && !chart.emptyText.isEmpty()) {
    lines << chart.emptyText;
  }
  for (qsizetype lane = 0; lane < chart.y.names.size(); ++lane) {
    QString line = chart.y.names[lane];
    for (const QString& more : {chart.y.notes.value(lane)}) {
      line += more.isEmpty() ? QString() : QStringLiteral(": ") + more;
    }
    for (const ChartBar& bar : chart.bars) {
      line +=
          bar.lane == lane && !bar.label.isEmpty() ? QStringLiteral(": ") + bar.label : QString();
    }
    lines << line;
  }
  for (const ChartLine& line : chart.lines) {
    if (!line.label.isEmpty()) {
      lines << line.label;
    }
  }
  for (const ChartBand& band : chart.bands) {
    if (!band.label.isEmpty()) {
      lines << band.label;
    }
  }
  for (const ChartMark& mark : chart.dayMarks) {
    lines << QStringLiteral("%1: %2").arg(valueText(chart.words, chart.x, mark.x), mark.label);
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace afterbeat::papers
