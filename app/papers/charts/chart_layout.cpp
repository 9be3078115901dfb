#include "app/papers/charts/chart_layout.h"

#include "app/papers/unbroken.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

constexpr double kTitleScale = 1.2;
constexpr double kLine = 1.4;
/// The most of the width that names at the left and labels at the right may take.
constexpr double kMostNames = 0.34, kMostLabels = 0.30;

double textSizeOf(const ChartLook& look, const Lettering& lettering) {
  return look.textSize > 0 ? look.textSize : lettering.size();
}

class Maker {
public:
  Maker(const Chart& chart, const QRectF& area, const ChartLook& look, const Lettering& lettering,
        bool amounts)
      : chart_(chart), look_(look), lettering_(lettering), amounts_(amounts) {
    layout_.area = area;
    layout_.size = textSizeOf(look, lettering);
    layout_.radius = 0.3 * layout_.size;
  }

  ChartLayout made() {
    placeHead();
    const double foot = footHeight();
    const QRectF& area = layout_.area;
    layout_.plot =
        QRectF(area.left(), y_, area.width(), std::max(4 * size(), area.bottom() - foot - y_));
    layout_.axisHeight = axisHeight();
    placeGutters();
    placeTicks();
    placeChartLabels(chart_, lettering_, layout_);
    placePoints(chart_, layout_);
    placeFoot();
    sayAmounts();
    placeBars();
    placeEmpty();
    return std::move(layout_);
  }

  double preferredHeight() {
    placeHead();
    return y_ - layout_.area.top() + footHeight() + preferredPlot();
  }

  double leastHeight() {
    placeHead();
    return y_ - layout_.area.top() + footHeight() + leastPlot();
  }

  double tightHeight() {
    placeHead();
    return y_ - layout_.area.top() + footHeight() + leastPlot(2.0);
  }

private:
  [[nodiscard]] double size() const { return layout_.size; }

  double leastPlot(double lane = 4.0) const {
    const auto lanes = static_cast<double>(std::max<qsizetype>(1, chart_.y.names.size()));
    return chart_.lanes() ? lanes * (chart_.bars.empty() ? lane : 1.6) * size() : 10 * size();
  }

  double preferredPlot() const {
    if (!chart_.lanes()) {
      return std::clamp(0.42 * layout_.area.width(), 14 * size(), 24 * size());
    }
    const auto lanes = static_cast<double>(std::max<qsizetype>(1, chart_.y.names.size()));
    return std::max(6 * size(), lanes * laneSizes() * size());
  }

  /// Piles of many points are higher.
  double laneSizes() const {
    const auto lanes = static_cast<std::size_t>(std::max<qsizetype>(1, chart_.y.names.size()));
    return !chart_.bars.empty() ? 2 : chart_.points.size() / lanes > 12 ? 5.6 : 4.4;
  }

  void add(ChartTextRole role, const QString& text, const QPointF& at,
           Weight weight = Weight::regular, double scale = 1) {
    layout_.texts.push_back({role, text, at, size() * scale, weight});
  }

  double width(const QString& text, Weight weight = Weight::regular) const {
    return lettering_.width(text, size(), weight);
  }

  /// Nothing is drawn: an axis would say nothing.
  bool empty() const { return chart_.points.empty() && chart_.bars.empty(); }

  QString cut(const QString& text, double room, Weight weight = Weight::regular) const {
    return lettering_.elided(text, size(), weight, room);
  }

  void placeHead() {
    y_ = layout_.area.top();
    double right = layout_.area.right();
    for (auto mark = chart_.marks.rbegin(); mark != chart_.marks.rend(); ++mark) {
      const double wide = width(*mark, Weight::bold) + size();
      layout_.markFrames.emplace_back(right - wide, y_, wide, 1.5 * size());
      add(ChartTextRole::mark, *mark, {right - wide + size() / 2, y_ + 1.12 * size()},
          Weight::bold);
      right -= wide + size() / 2;
    }
    for (const QString& line : wrapped(chart_.title, lettering_, kTitleScale * size(), Weight::bold,
                                       right - layout_.area.left() - size() / 2)) {
      y_ += kLine * kTitleScale * size();
      add(ChartTextRole::title, line, {layout_.area.left(), y_ - 0.45 * size()}, Weight::bold,
          kTitleScale);
    }
    y_ += 0.35 * size();
    if (!chart_.lanes()) {
      y_ += kLine * size();
      add(ChartTextRole::axis, chart_.y.title, {layout_.area.left(), y_ - 0.4 * size()});
      y_ += 0.6 * size();
    } else if (hasTopLabels()) {
      y_ += kLine * size();
    }
    // A marked day is named above the plot.
    if (!chart_.dayMarks.empty()) {
      y_ += kLine * size();
    }
  }

  bool hasTopLabels() const {
    return std::any_of(chart_.bands.begin(), chart_.bands.end(),
                       [](const ChartBand& band) { return !band.label.isEmpty(); }) ||
           std::any_of(chart_.lines.begin(), chart_.lines.end(),
                       [](const ChartLine& line) { return !line.label.isEmpty(); });
  }

  /// Keys flow into lines; returns their height and places them from `top` if `place`.
  double flowKeys(double top, bool place) {
    double x = layout_.area.left(), y = top;
    const double sample = 2.2 * size();
    for (const ChartKey& key : chart_.keys) {
      // Where amounts are drawn no point stands for anything; a sentence of their own explains
      // them.
      if (key.shape == KeyShape::usual && !layout_.amounts.empty()) {
        continue;
      }
      const double wide = sample + width(key.text) + 1.6 * size();
      if (x > layout_.area.left() && x + wide - size() > layout_.area.right()) {
        x = layout_.area.left();
        y += kLine * size();
      }
      if (place) {
        layout_.keys.push_back({key, {x, y + 0.2 * size(), sample - 0.6 * size(), size()}});
        add(ChartTextRole::key, cut(key.text, layout_.area.right() - x - sample),
            {x + sample, y + 1.02 * size()});
      }
      x += wide;
    }
    return chart_.keys.empty() ? 0 : y + kLine * size() - top;
  }

  QStringList sentenceLines() const {
    QStringList lines;
    if (look_.sentences) {
      for (const QString& sentence : chart_.sentences) {
        lines += wrapped(sentence, lettering_, size(), Weight::regular, layout_.area.width());
      }
    }
    return lines;
  }

  double axisHeight() const { return (chart_.x.title.isEmpty() ? 1.65 : 1.65 + kLine) * size(); }

  double footHeight() {
    const auto sentences = static_cast<double>(sentenceLines().size());
    // One line more than the keys themselves: amounts explain themselves there.
    const double keys = flowKeys(0, false);
    return axisHeight() + 0.4 * size() + keys + amountLine() +
           (sentences > 0 ? (0.5 + sentences * kLine) * size() : 0);
  }

  /// Room for the sentence of amounts.
  double amountLine() const { return amounts_ ? kLine * size() : 0; }

  void placeGutters() {
    QRectF& plot = layout_.plot;
    double left = 0;
    if (chart_.lanes()) {
      for (const QStringList* list : {&chart_.y.names, &chart_.y.notes}) {
        for (const QString& text : *list) {
          left = std::max(left, width(text, Weight::medium));
        }
      }
      left = std::min(left, kMostNames * layout_.area.width()) + 0.8 * size();
    } else {
      layout_.y =
          tickedAxis(chart_.words, chart_.y, static_cast<int>(plot.height() / (3 * size())));
      for (const ChartTick& tick : layout_.y.ticks) {
        left = std::max(left, width(tick.text));
      }
      left += 0.6 * size();
    }
    double right = 0;
    for (const QString& text : rightLabels()) {
      right = std::max(right, width(text));
    }
    right = std::min(right, kMostLabels * layout_.area.width());
    plot.adjust(left, 0, right > 0 ? -right - 0.8 * size() : -2.2 * size(), 0);
  }

  QStringList rightLabels() const {
    QStringList all;
    for (const ChartBar& bar : chart_.bars) {
      all << bar.label;
    }
    if (!chart_.lanes()) {
      for (const ChartLine& line : chart_.lines) {
        if (!line.labelAtBegin) {
          all << line.label;
        }
      }
      for (const ChartBand& band : chart_.bands) {
        all << band.label;
      }
    }
    return all;
  }

  void placeTicks() {
    const QRectF& plot = layout_.plot;
    layout_.x = tickedAxis(chart_.words, chart_.x, static_cast<int>(plot.width() / (6.5 * size())));
    double last = -1e9;
    for (const ChartTick& tick : layout_.x.ticks) {
      const double wide = width(tick.text);
      const double x = layout_.xAt(tick.at) - wide / 2;
      if (x > last && x + wide <= layout_.area.right() + 1 && !empty()) {
        add(ChartTextRole::tick, tick.text, {x, plot.bottom() + 1.35 * size()});
        last = x + wide + size() / 2;
      }
    }
    if (!chart_.x.title.isEmpty()) {
      const double room = layout_.area.right() - plot.left();
      add(ChartTextRole::axis, cut(chart_.x.title, room),
          {plot.left(), plot.bottom() + (1.35 + kLine) * size()});
    }
    if (chart_.lanes()) {
      layout_.y = tickedAxis(chart_.words, chart_.y, 0);
      placeNames();
      return;
    }
    for (const ChartTick& tick : layout_.y.ticks) {
      if (empty()) {
        break;
      }
      add(ChartTextRole::tick, tick.text,
          {plot.left() - 0.5 * size() - width(tick.text),
           layout_.yAt(tick.at, false) + 0.36 * size()});
    }
  }

  /// What stands under a lane's name: one line, or two where it would be cut else and there is
  /// room; none where a lane is too low.
  QStringList noteLines(const QString& note, double room, double height) const {
    if (note.isEmpty() || height < 2.4 * size()) {
      return {};
    }
    // Between its parts where each fits.
    const qsizetype part = note.lastIndexOf(QLatin1String("; ")) + 1;
    if (part > 0 && height >= 3.7 * size() && width(note) > room &&
        std::max(width(note.left(part)), width(note.mid(part + 1))) <= room) {
      return {note.left(part), note.mid(part + 1)};
    }
    const QStringList lines = wrapped(note, lettering_, size(), Weight::regular, room);
    if (lines.size() == 1 || height < 3.7 * size()) {
      return {cut(note, room)};
    }
    const QString rest = QStringList(lines.mid(1)).join(QLatin1Char(' '));
    return {cut(lines.front(), room), cut(rest, room)};
  }

  void placeNames() {
    const double room = layout_.plot.left() - layout_.area.left() - 0.6 * size();
    for (int lane = 0; lane < chart_.y.names.size(); ++lane) {
      const QRectF box = layout_.lane(lane);
      const QString note = chart_.y.notes.value(lane);
      const QStringList under = noteLines(note, room, box.height());
      double y = box.center().y() + (0.36 - 0.65 * static_cast<double>(under.size())) * size();
      add(ChartTextRole::lane, cut(chart_.y.names[lane], room, Weight::medium),
          {layout_.area.left(), y}, Weight::medium);
      for (const QString& line : under) {
        y += 1.3 * size();
        add(ChartTextRole::note, line, {layout_.area.left(), y});
      }
    }
  }

  void placeFoot() {
    foot_ = layout_.plot.bottom() + axisHeight() + 0.4 * size();
    foot_ += flowKeys(foot_, true);
    double y = foot_ + amountLine() + 0.5 * size();
    for (const QString& line : sentenceLines()) {
      y += kLine * size();
      add(ChartTextRole::sentence, line, {layout_.area.left(), y - 0.4 * size()});
    }
  }

  void sayAmounts() {
    if (layout_.amounts.empty()) {
      return;
    }
    std::uint32_t most = 0;
    for (const ChartAmount& amount : layout_.amounts) {
      most = std::max(most, amount.count);
    }
    const char* const english =
        chart_.lanes()
            ? QT_TRANSLATE_NOOP("Papers", "Too many for single points: a column's height is the "
                                          "number of records there, at most %1.")
            : QT_TRANSLATE_NOOP("Papers", "Too many for single points: the stronger the colour of "
                                          "a spot, the more records lie there, at most %1.");
    add(ChartTextRole::key, cut(chart_.words(english).arg(most), layout_.area.width()),
        {layout_.area.left(), foot_ + 1.02 * size()});
  }

  void placeBars() {
    for (const ChartBar& bar : chart_.bars) {
      const QRectF lane = layout_.lane(bar.lane);
      const double high = std::min(1.3 * size(), 0.8 * lane.height());
      double from = layout_.plot.right(), to = layout_.plot.left();
      for (const ChartPiece& piece : bar.pieces) {
        from = std::min({from, layout_.xAt(piece.from), layout_.xAt(piece.to)});
        to = std::max({to, layout_.xAt(piece.from), layout_.xAt(piece.to)});
      }
      layout_.bars.emplace_back(from, lane.center().y() - high / 2, std::max(0.0, to - from), high);
      if (!bar.label.isEmpty()) {
        add(ChartTextRole::label,
            cut(bar.label, layout_.area.right() - layout_.plot.right() - 0.4 * size()),
            {layout_.plot.right() + 0.5 * size(), lane.center().y() + 0.36 * size()});
      }
    }
  }

  void placeEmpty() {
    if (!empty() || chart_.emptyText.isEmpty()) {
      return;
    }
    double y = layout_.plot.center().y();
    for (const QString& line : wrapped(chart_.emptyText, lettering_, size(), Weight::medium,
                                       layout_.plot.width() - 2 * size())) {
      add(ChartTextRole::empty, line, {layout_.plot.left() + size(), y}, Weight::medium);
      y += kLine * size();
    }
  }

  const Chart& chart_;
  const ChartLook& look_;
  const Lettering& lettering_;
  bool amounts_;
  ChartLayout layout_;
  double y_ = 0, foot_ = 0;
};

} // namespace

QStringList wrapped(const QString& text, const Lettering& lettering, double size, Weight weight,
                    double width) {
  QStringList lines;
  QString line;
  for (const QString& word : unbroken(text).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
    if (line.isEmpty() || lettering.width(longer, size, weight) <= width) {
      line = longer;
    } else {
      lines << line;
      line = word;
    }
  }
  if (!line.isEmpty()) {
    lines << line;
  }
  for (QString& one : lines) {
    one.replace(QChar(QChar::Nbsp), QLatin1Char(' ')); // as it is searched for and copied
  }
  return lines;
}

/// So many points hide each other in most charts.
static bool likelyAmounts(const Chart& chart) {
  return chart.points.size() > 200;
}

ChartLayout layOutChart(const Chart& chart, const QRectF& area, const ChartLook& look,
                        const Lettering& lettering) {
  const bool many = likelyAmounts(chart);
  ChartLayout layout = Maker(chart, area, look, lettering, many).made();
  // Whether points hide each other is known only where they are placed.
  return many || layout.amounts.empty() ? std::move(layout)
                                        : Maker(chart, area, look, lettering, true).made();
}

double leastChartHeight(const Chart& chart, double width, const ChartLook& look) {
  const Lettering lettering(look.font);
  return Maker(chart, {0, 0, width, 0}, look, lettering, likelyAmounts(chart)).leastHeight();
}

double tightChartHeight(const Chart& chart, double width, const ChartLook& look) {
  const Lettering lettering(look.font);
  return Maker(chart, {0, 0, width, 0}, look, lettering, likelyAmounts(chart)).tightHeight();
}

double chartHeight(const Chart& chart, double width, const ChartLook& look) {
  const Lettering lettering(look.font);
  return Maker(chart, {0, 0, width, 0}, look, lettering, likelyAmounts(chart)).preferredHeight();
}

} // namespace afterbeat::papers
