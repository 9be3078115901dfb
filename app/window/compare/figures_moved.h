/// What is another figure under other definitions or settings, of the archive that is open.
#pragma once

#include "app/window/compare/latest_work.h"
#include "app/window/compare/season_source.h"
#include "app/window/tables/table_content.h"

#include <QDialog>
#include <QObject>

class QAction;
class QLabel;
class QPushButton;
class QTableView;

namespace afterbeat::window {

class SeasonDesk;
class TableModel;

/// What was found in an archive.
struct MovedFound {
  TableContent content;
  /// Stands above the table, or alone where that has no rows.
  QString sentence;
};
/// Each making with figures against each later one that is in use. Takes long with many records:
/// for a worker.
[[nodiscard]] MovedFound findMoved(const archive::ArchivePlace& place, const SharedSource& source);

/// The list: a record's figure in each row. Sorted by a click on a heading, copied as text.
class MovedDialog final : public QDialog {
  Q_OBJECT

public:
  explicit MovedDialog(QWidget* parent = nullptr);
  /// What was found; until then it says that the archive is being asked.
  void tell(const MovedFound& found);
  [[nodiscard]] QString sentence() const;
  [[nodiscard]] QTableView* table() const { return view_; }

private:
  QLabel* sentence_;
  QTableView* view_;
  QPushButton* copy_ = nullptr;
  TableModel* model_;
};

class FiguresMoved final : public QObject {
  Q_OBJECT

public:
  FiguresMoved(SeasonDesk& desk, QWidget* window);
  [[nodiscard]] QAction* action() const { return action_; }

private:
  void ask();

  SeasonDesk& desk_;
  QWidget* window_;
  QAction* action_;
  /// Last: waits for its worker.
  LatestWork work_;
};

} // namespace afterbeat::window
