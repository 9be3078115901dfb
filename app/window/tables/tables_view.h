/// The tables under the rows: minutes, cycles, pauses, shocks, the ECG around them, one at
/// a time.
#pragma once

#include "app/window/tables/table_model.h"

#include <QList>
#include <QWidget>

#include <array>

class QAbstractButton;
class QButtonGroup;
class QLabel;
class QStackedWidget;
class QTableView;

namespace afterbeat::window {

class Selection;
class Session;

class TablesView final : public QWidget {
  Q_OBJECT

public:
  static constexpr std::size_t kKinds = 5;

  TablesView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] TableKind kind() const { return kind_; }
  void showKind(TableKind kind);
  /// The view of a table, also where it is not the one shown.
  [[nodiscard]] QTableView* table(TableKind kind) const {
    return tables_[static_cast<std::size_t>(kind)].view;
  }
  [[nodiscard]] QTableView* currentTable() const { return table(kind_); }
  [[nodiscard]] QAbstractButton* button(TableKind kind) const;

protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  struct Table {
    TableModel* model = nullptr;
    TableSorting* sorting = nullptr;
    QTableView* view = nullptr;
    /// What it shows is not of the present figures.
    bool outdated = true;
  };
  void make(TableKind kind, const QString& name, QWidget* bar);
  void outdate();
  void refresh();
  void fitColumns();
  void restyle();
  void choose(const QModelIndex& index);
  void follow();

  Session& session_;
  Selection& selection_;
  TableKind kind_ = TableKind::minutes;
  std::array<Table, kKinds> tables_;
  QButtonGroup* buttons_;
  QStackedWidget* pages_;
  QLabel *none_, *caution_;
  /// The table itself moves the selection.
  bool choosing_ = false;
};

} // namespace afterbeat::window
