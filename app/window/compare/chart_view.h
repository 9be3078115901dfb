/// A chart of the season with its choosers over it and its sentences under it.
#pragma once

#include "app/window/compare/season_charts.h"
#include "app/window/compare/season_desk.h"

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QScrollArea;

namespace afterbeat::window {

class ChartCanvas;

/// What a worker made.
struct ChartMade {
  std::shared_ptr<const papers::Chart> chart;
  /// Kinds among the chosen records, and the one that is drawn.
  std::vector<KindCount> kinds;
  StatedKind kind;
  /// Instead of a chart: why there is none.
  QString refusal;
};

/// Makes a chart of records of one kind, or says why not. Runs on a worker.
using ChartMaker = std::function<tl::expected<papers::Chart, SeasonRefusal>(
    const Season& season, const Chosen& chosen, const papers::Words& words)>;

/// One for each kind of chart; asks for a new one when the records or the choosers change.
class ChartView : public QWidget {
  Q_OBJECT

public:
  ChartView(SeasonDesk& desk, const QString& name, QWidget* parent = nullptr);
  [[nodiscard]] ChartCanvas* canvas() const { return canvas_; }
  [[nodiscard]] QComboBox* kind() const { return kind_; }
  [[nodiscard]] QString sentences() const;
  /// The chart that is asked for is shown.
  [[nodiscard]] bool upToDate() const { return !outdated_ && !work_.busy(); }
  /// Title, marks, sentences and what is drawn, as text.
  [[nodiscard]] QString asText() const;

signals:
  void wanted(std::uint32_t place);
  void drawn();

protected:
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  /// What the choosers say now.
  [[nodiscard]] virtual ChartMaker maker() const = 0;
  /// The figure they chose, which is defined under the chart; empty: several, or none.
  [[nodiscard]] virtual std::optional<MeasureId> measureDrawn() const { return std::nullopt; }
  /// Adds a chooser over the chart; changing it asks for a new one.
  QComboBox* addChooser(const QString& name);
  /// For more controls.
  [[nodiscard]] QHBoxLayout* choosers() const { return choosers_; }
  /// A new chart is wanted.
  void refresh();
  [[nodiscard]] SeasonDesk& desk() const { return desk_; }

private:
  void deliver(const ChartMade& made);
  void fillKinds(const ChartMade& made);

  SeasonDesk& desk_;
  QHBoxLayout* choosers_;
  QComboBox* kind_;
  ChartCanvas* canvas_;
  QLabel* sentences_;
  /// As they are, without what makes the first one bold.
  QString said_;
  QScrollArea* under_;
  StatedKind wantedKind_;
  bool kindChosen_ = false, outdated_ = true;
  /// Last: waits for its worker.
  LatestWork work_;
};

/// All measures by their titles.
void fillMeasures(QComboBox* box, MeasureId first);

} // namespace afterbeat::window
