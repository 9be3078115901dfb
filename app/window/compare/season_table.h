/// The table of a season's records, with a small picture of each.
#pragma once

#include "app/window/compare/season_table_model.h"

#include <QTableView>

namespace afterbeat::window {

/// Enter opens a record; a heading sorts.
class SeasonTable final : public QTableView {
  Q_OBJECT

public:
  explicit SeasonTable(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] const SeasonTableModel* lines() const { return model_; }
  /// The places of the marked lines.
  [[nodiscard]] std::vector<std::uint32_t> marked() const;

signals:
  void wanted(std::uint32_t place);

protected:
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  void fitColumns();
  void showOrder();
  void sortByColumn(int column);
  SeasonDesk& desk_;
  SeasonTableModel* model_;
};

} // namespace afterbeat::window
