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
  void painted();
  void markedChanged();

protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void selectionChanged(const QItemSelection& now, const QItemSelection& before) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  /// What is chosen and in view.
  struct Looked {
    std::vector<int> marked, widths;
    int row = 0, column = 0, down = 0, across = 0;
  };
  [[nodiscard]] Looked looked() const;
  void lookAgain(const Looked& before);
  void fitColumns();
  void narrowColumns();
  /// What to do first where no line is shown.
  [[nodiscard]] QString emptyText() const;
  void showOrder();
  void sortByColumn(int column);
  SeasonDesk& desk_;
  SeasonTableModel* model_;
  /// The breadth that the columns were fitted to.
  int fittedTo_ = 0;
  Looked before_;
};

} // namespace afterbeat::window
