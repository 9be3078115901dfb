#include "app/window/compare/season_views.h"

#include <QComboBox>

namespace afterbeat::window {

SpreadView::SpreadView(SeasonDesk& desk, QWidget* parent)
    : ChartView(desk, tr("Spread"), parent), measure_(addChooser(tr("Figure"))),
      by_(addChooser(tr("Apart by"))) {
  fillMeasures(measure_, MeasureId::powerOnToFirstShock);
  by_->addItem(tr("by site"), static_cast<int>(GroupBy::site));
  by_->addItem(tr("by team"), static_cast<int>(GroupBy::team));
  by_->addItem(tr("by quarter"), static_cast<int>(GroupBy::quarter));
  by_->addItem(tr("all together"), static_cast<int>(GroupBy::nothing));
}

ChartMaker SpreadView::maker() const {
  const auto id = static_cast<MeasureId>(measure_->currentData().toInt());
  const auto by = static_cast<GroupBy>(by_->currentData().toInt());
  return [id, by](const Season& season, const Chosen& chosen, const papers::Words& words) {
    return spread(season, chosen, id, by).map([&](const Spread& made) {
      return papers::spreadChart(season, made, words);
    });
  };
}

std::optional<MeasureId> SpreadView::measureDrawn() const {
  return static_cast<MeasureId>(measure_->currentData().toInt());
}

StagesView::StagesView(SeasonDesk& desk, QWidget* parent)
    : ChartView(desk, tr("Where the time goes"), parent), from_(addChooser(tr("Counted from"))),
      shape_(addChooser(tr("Drawn as"))) {
  from_->addItem(tr("from device on"), static_cast<int>(StagesFrom::powerOn));
  from_->addItem(tr("from the call"), static_cast<int>(StagesFrom::call));
  shape_->addItem(tr("stage by stage"), 0);
  shape_->addItem(tr("record by record"), 1);
}

ChartMaker StagesView::maker() const {
  const auto from = static_cast<StagesFrom>(from_->currentData().toInt());
  const bool each = shape_->currentData().toInt() == 1;
  return [from, each](const Season& season, const Chosen& chosen, const papers::Words& words) {
    return stages(season, chosen, from).map([&](const Stages& made) {
      return each ? papers::stageBarsChart(season, made, words)
                  : papers::stageChart(season, made, words);
    });
  };
}

} // namespace afterbeat::window
