#include "app/window/waves/waves_plot.h"

#include "app/window/look/figure_words.h"
#include "app/window/problems/problem_words.h"
#include "app/window/session/selection.h"
#include "app/window/waves/paper_grid.h"
#include "app/window/waves/wave_lines.h"

#include <algorithm>
#include <limits>
#include <map>

namespace afterbeat::window {

namespace {

constexpr int kSpacing = 6;
constexpr int kRightMargin = 16;
/// Tracks can be compared from the first height on; an ECG can be read from the second one on.
constexpr int kLeastTrack = 36, kReadable = 92, kLeastReadable = 48;
const QString kShadingLayer = QStringLiteral("shading");
const QString kLabelsLayer = QStringLiteral("labels");

QString nameOf(const Channel& channel) {
  if (!channel.label.empty()) {
    return QString::fromStdString(channel.label);
  }
  const QString quantity = QString::fromStdString(channel.quantity);
  return quantity.isEmpty() ? QString::fromStdString(channel.id)
                            : WavesPlot::quantityWords(quantity);
}

/// UCUM as people write it.
QString unitOf(const Channel& channel) {
  if (channel.unit == "Ohm") {
    return QStringLiteral("Ω");
  }
  if (channel.unit == "m/s2") {
    return QStringLiteral("m/s²");
  }
  if (channel.unit == "mm[Hg]") {
    return QStringLiteral("mmHg");
  }
  return QString::fromStdString(channel.unit);
}

/// Problems of the file whose line has a time stand among the moments, after everything else.
void markProblems(const Loaded& loaded, papers::RowsModel& model) {
  for (const std::vector<Problem>* problems : {&loaded.file->problems, &loaded.figures->notices}) {
    const auto times = timesOfProblems(loaded.record(), *problems);
    for (const Problem& problem : *problems) {
      if (const auto at = times.find(problem.line); at != times.end()) {
        papers::RowMark found;
        found.stretch = {at->second, at->second};
        found.words = {WavesPlot::tr("! problem in line %1").arg(problem.line),
                       WavesPlot::tr("! problem")};
        found.importance = std::numeric_limits<int>::min();
        model.marks.push_back(std::move(found));
      }
    }
  }
  std::stable_sort(model.marks.begin(), model.marks.end(),
                   [](const auto& a, const auto& b) { return a.stretch.begin < b.stretch.begin; });
}

/// A hundredth of the usual range can be told apart.
int decimalsFor(const ValueRange& usual) {
  const double size = usual.high - usual.low;
  return size < 5 ? 2 : (size < 50 ? 1 : 0);
}

QCPRange valueRange(const Channel& channel, const ValueRange& usual) {
  double low = usual.low, high = usual.high;
  if (channel.quantity == "depth" || channel.quantity == "force") {
    low = std::min(low, 0.0);
  }
  const double room = high > low ? (high - low) * 0.08 : 1.0;
  return {low - room, high + room};
}

std::vector<Interval> gapsOf(const Channel& channel) {
  std::vector<Interval> gaps;
  for (std::size_t i = 1; i < channel.blocks.size(); ++i) {
    const SampleBlock& before = channel.blocks[i - 1];
    gaps.push_back({channel.timeOf(before, before.count), channel.blocks[i].t});
  }
  return gaps;
}

} // namespace

QString WavesPlot::quantityWords(const QString& quantity) {
  static const std::map<std::string, const char*, std::less<>> names{
      {"ecg", QT_TR_NOOP("ECG")},
      {"impedance", QT_TR_NOOP("Impedance")},
      {"acceleration", QT_TR_NOOP("Acceleration")},
      {"depth", QT_TR_NOOP("Depth")},
      {"force", QT_TR_NOOP("Force")},
      {"capnogram", QT_TR_NOOP("Capnogram")},
      {"pleth", QT_TR_NOOP("Pulse wave")}};
  const auto it = names.find(quantity.toStdString());
  return it != names.end() ? tr(it->second) : quantity;
}

WavesPlot::WavesPlot(Selection& selection, QWidget* parent)
    : QCustomPlot(parent), selection_(selection), ticker_(new TimeTicker), cursor_(scene_) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Waves of the selected stretch"));
  addLayer(kShadingLayer, layer(QStringLiteral("grid")), limBelow);
  addLayer(kLabelsLayer, layer(QStringLiteral("axes")), limAbove);
  new WaveShading(this, kShadingLayer, scene_);
  new WaveLines(this, layer(QStringLiteral("main"))->name(), scene_);
  new WaveLabels(this, kLabelsLayer, scene_);
  // Everything in the window that changed is painted at once.
  setPlottingHint(QCP::phImmediateRefresh, false);
  setMouseTracking(true);
  grabGesture(Qt::PinchGesture);
  connect(&selection_, &Selection::cursorChanged, this, &WavesPlot::followCursor);
  plotLayout()->clear();
  plotLayout()->setRowSpacing(kSpacing);
  connect(this, &QCustomPlot::afterReplot, this, [this] { replotted_ = true; });
  connect(this, &QCustomPlot::afterLayout, this, &WavesPlot::fitTicks);
  clearAll();
}

void WavesPlot::clearAll() {
  plotLayout()->clear();
  drawn_.clear();
  scene_.tracks.clear();
  scene_.lane = nullptr;
  scene_.marks.reset();
  scene_.record = nullptr;
  scene_.ruler.reset();
  loaded_ = {};
  ticker_->setRecord(nullptr);
}

void WavesPlot::show(const Loaded& loaded) {
  const bool same = loaded.file == loaded_.file && loaded.shown == loaded_.shown;
  if (!same) {
    clearAll();
  }
  loaded_ = loaded;
  papers::RowsModel model = loaded.rows->model();
  markProblems(loaded, model);
  scene_.marks = std::make_shared<const WaveMarks>(WaveMarks{std::move(model), loaded.figures});
  if (same) {
    follow();
    return;
  }
  ticker_->setRecord(&loaded_.record());
  scene_.record = &loaded_.record();
  addLane();
  addTracks();
  restyle();
  setMargins();
  follow();
}

void WavesPlot::addTracks() {
  std::vector<std::size_t> drawable, all;
  for (std::size_t i = 0; i < loaded_.record().channels.size(); ++i) {
    const Channel& channel = loaded_.record().channels[i];
    if (channel.drawable && !channel.blocks.empty()) {
      all.push_back(i);
      if (!hidden_.contains(QString::fromStdString(channel.quantity))) {
        drawable.push_back(i);
      }
    }
  }
  if (drawable.empty()) {
    drawable = all;
  }
  for (const std::size_t i : drawable) {
    addTrack(i, i == drawable.front());
    if (suppressed_ && suppressed_->of == i) {
      addSuppressed();
    }
  }
}

void WavesPlot::setHidden(const QSet<QString>& quantities) {
  if (quantities == hidden_) {
    return;
  }
  hidden_ = quantities;
  showAnew();
}

/// With other tracks.
void WavesPlot::showAnew() {
  if (!scene_.lane) {
    return;
  }
  const Loaded loaded = loaded_;
  clearAll();
  show(loaded);
}

void WavesPlot::addLane() {
  auto* lane = new QCPAxisRect(this);
  lane->setAutoMargins(QCP::msNone);
  for (QCPAxis* axis : lane->axes()) {
    axis->setVisible(false);
    axis->grid()->setVisible(false);
  }
  plotLayout()->addElement(0, 0, lane);
  scene_.lane = lane;
}

void WavesPlot::addTrack(std::size_t channel, bool first) {
  addFrame(loaded_.record().channels[channel], (*loaded_.waves)[channel], first);
}

void WavesPlot::addFrame(const Channel& source, const Wave& wave, bool first) {
  auto* rect = new QCPAxisRect(this);
  rect->setAutoMargins(QCP::msNone);
  plotLayout()->addElement(plotLayout()->rowCount(), 0, rect);
  plotLayout()->setRowStretchFactor(plotLayout()->rowCount() - 1,
                                    source.quantity == "ecg" ? 2.0 : 1.0);
  rect->setMinimumSize(50, kLeastTrack);
  QCPAxis* time = rect->axis(QCPAxis::atBottom);
  QCPAxis* value = rect->axis(QCPAxis::atLeft);
  time->setTicker(ticker_);
  time->setTickLabels(false);
  if (first) {
    // Clock times stand over the first track, in view however low the window is.
    QCPAxis* clock = rect->axis(QCPAxis::atTop);
    clock->setVisible(true);
    clock->setTicker(ticker_);
    clock->setTickLabels(true);
  }
  value->setRange(valueRange(source, wave.usual));
  // Pressed down is down.
  value->setRangeReversed(source.quantity == "depth");
  auto ticks = QSharedPointer<QCPAxisTicker>(new QCPAxisTicker);
  ticks->setTickCount(3);
  value->setTicker(ticks);
  drawn_.push_back(&wave);
  scene_.tracks.push_back(
      {rect, &source, nameOf(source), unitOf(source), decimalsFor(wave.usual), gapsOf(source)});
}

int WavesPlot::neededLeftMargin() const {
  QFont bold = font();
  bold.setBold(true);
  const QFontMetrics metrics(bold);
  // The words for a value and for none find room under a name.
  int widest = metrics.horizontalAdvance(QStringLiteral("no signal mm"));
  for (const TrackFrame& track : scene_.tracks) {
    widest = std::max(
        {widest, metrics.horizontalAdvance(track.name), metrics.horizontalAdvance(track.unit)});
  }
  const int values = QFontMetrics(font()).horizontalAdvance(QStringLiteral("−00.0"));
  return std::min(widest, width() / 4) + values + 32;
}

void WavesPlot::setMargins() {
  if (!scene_.lane) {
    return;
  }
  left_ = neededLeftMargin();
  const int axisHeight = fontMetrics().height() + 12;
  scene_.lane->setMargins({left_, 2, kRightMargin, 0});
  const int lane = laneHeight(font(), scene_.rhythms->lines()) + 2;
  scene_.lane->setMinimumSize(50, lane);
  scene_.lane->setMaximumSize(QWIDGETSIZE_MAX, lane);
  for (std::size_t i = 0; i < scene_.tracks.size(); ++i) {
    scene_.tracks[i].rect->setMargins({left_, i == 0 ? axisHeight : 0, kRightMargin, 0});
  }
  fitTracks();
}

int WavesPlot::heightAround() const {
  return laneHeight(font(), scene_.rhythms->lines()) + 2 + fontMetrics().height() + 12 + 8;
}

int WavesPlot::goodHeight() const {
  int height = heightAround();
  for (const TrackFrame& track : scene_.tracks) {
    height += kSpacing + (isEcg(*track.channel) ? kReadable : kLeastTrack);
  }
  return height;
}

int WavesPlot::leastHeight() const {
  // What is left over is shared out among all tracks, so that the first is a little higher.
  return heightAround() + 2 * kSpacing + kLeastReadable;
}

void WavesPlot::setViewHeight(int height) {
  if (height != viewHeight_) {
    viewHeight_ = height;
    fitTracks();
  }
}

/// In a low view the first track that matters most is whole, and the others are scrolled to.
void WavesPlot::fitTracks() {
  const int alone = viewHeight_ - heightAround() - 3 * kSpacing;
  const int readable = std::clamp(alone, kLeastReadable, kReadable);
  const int axisHeight = fontMetrics().height() + 12;
  int height = heightAround();
  for (std::size_t i = 0; i < scene_.tracks.size(); ++i) {
    const int least = isEcg(*scene_.tracks[i].channel) ? readable : kLeastTrack;
    // The clock times stand in the first track's margin.
    scene_.tracks[i].rect->setMinimumSize(50, least + (i == 0 ? axisHeight : 0));
    height += kSpacing + least;
  }
  setMinimumHeight(height);
}

void WavesPlot::restyle() {
  scene_.look = Look::of(palette(), font());
  const Look& look = scene_.look;
  setBackground(QBrush(look.paper));
  QFont small = font();
  small.setPointSizeF(small.pointSizeF() * 0.88);
  for (TrackFrame& track : scene_.tracks) {
    const Channel& channel = *track.channel;
    track.color = isEcg(channel) ? look.wave : look.rows.handsOn;
    for (QCPAxis* axis : track.rect->axes()) {
      // Of itself a new axis draws its grid among the waves, over their lines.
      axis->grid()->setLayer(QStringLiteral("grid"));
      axis->setBasePen(QPen(look.line, 1));
      axis->setTickPen(QPen(look.faintInk, 1));
      axis->setSubTickPen(QPen(look.line, 1));
      axis->setTickLabelColor(look.faintInk);
      axis->setTickLabelFont(small);
      axis->grid()->setPen(scene_.paperGrid && isEcg(channel) ? QPen(Qt::NoPen)
                                                              : QPen(look.waveGrid, 1));
      axis->grid()->setZeroLinePen(Qt::NoPen);
    }
  }
}

void WavesPlot::setWorking(std::vector<Interval> working) {
  scene_.working = std::move(working);
  replot(rpQueuedReplot);
}

void WavesPlot::follow() {
  if (!scene_.lane) {
    return;
  }
  const QCPRange range(seconds(selection_.stretch().begin), seconds(selection_.stretch().end));
  scene_.lane->axis(QCPAxis::atBottom)->setRange(range);
  for (const TrackFrame& track : scene_.tracks) {
    track.rect->axis(QCPAxis::atBottom)->setRange(range);
    track.rect->axis(QCPAxis::atTop)->setRange(range);
  }
  const int plotWidth = std::max(50, width() - left_ - kRightMargin);
  const double label = fontMetrics().horizontalAdvance(QStringLiteral("00:00:00.0")) * 1.5;
  ticker_->setLeastStep(range.size() * label / plotWidth);
  feed();
  replotted_ = false;
  replot(rpQueuedReplot);
}

void WavesPlot::feed() {
  const int plotWidth = std::max(50, width() - left_ - kRightMargin);
  const int pixels = static_cast<int>(std::ceil(plotWidth * devicePixelRatioF()));
  for (std::size_t i = 0; i < drawn_.size(); ++i) {
    scene_.tracks[i].points =
        traceOf(*scene_.tracks[i].channel, drawn_[i]->pyramid, selection_.stretch(), pixels);
  }
}

const std::vector<TracePoint>& WavesPlot::points(int track) const {
  return scene_.tracks[static_cast<std::size_t>(track)].points;
}

QString WavesPlot::asText() const {
  if (!scene_.marks) {
    return {};
  }
  QStringList names;
  for (const TrackFrame& track : scene_.tracks) {
    names << (track.unit.isEmpty() ? track.name : tr("%1 in %2").arg(track.name, track.unit));
  }
  const Interval& shown = selection_.stretch();
  return tr("From %1 to %2: %3. %4")
             .arg(momentWords(loaded_.record(), shown.begin),
                  momentWords(loaded_.record(), shown.end), names.join(QStringLiteral(", ")),
                  scene_.marks->asText(loaded_.record(), shown)) +
         QLatin1Char(' ') + rhythmsIn(*scene_.rhythms, shown);
}

/// Heights are known only after the layout.
void WavesPlot::fitTicks() {
  bool changed = false;
  for (const TrackFrame& track : scene_.tracks) {
    // In a low track three labels would run into each other.
    constexpr int kLow = 58, kFew = 1, kUsual = 3;
    const int count = track.rect->height() < kLow ? kFew : kUsual;
    const auto ticker = track.rect->axis(QCPAxis::atLeft)->ticker();
    changed |= ticker->tickCount() != count;
    ticker->setTickCount(count);
  }
  if (changed) {
    replot(rpQueuedReplot);
  }
}

void WavesPlot::resizeEvent(QResizeEvent* event) {
  QCustomPlot::resizeEvent(event);
  setMargins();
  follow();
}

void WavesPlot::changeEvent(QEvent* event) {
  QCustomPlot::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
    setMargins();
    follow();
  }
}

void WavesPlot::paintEvent(QPaintEvent* event) {
  QCustomPlot::paintEvent(event);
  QPainter painter(this);
  cursor_.paint(painter);
  if (scene_.lane && replotted_) {
    emit painted();
  }
}

} // namespace afterbeat::window
