/// The place "What happened": a line to type into, and the list it filters.
#pragma once

#include "app/window/finding/happenings_model.h"

#include <QList>
#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QTableView;

namespace afterbeat::window {

class Selection;
class Session;

class HappeningsView final : public QWidget {
  Q_OBJECT

public:
  HappeningsView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] QLineEdit* filter() const { return filter_; }
  [[nodiscard]] QTableView* table() const { return table_; }
  /// "12 of 340".
  [[nodiscard]] QString countText() const;
  /// Brings the line to type into into focus; the view is shown by who owns it.
  [[nodiscard]] QAction* find() const { return find_; }

signals:
  /// The reader wants to look for something: this view should come to the front.
  void wanted();

protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void outdate();
  void refresh();
  void fitColumns();
  void showCount();
  void choose(const QModelIndex& index);
  void follow();

  Session& session_;
  Selection& selection_;
  HappeningsModel model_;
  HappeningsFilter shown_;
  QLineEdit* filter_;
  QLabel* count_;
  QTableView* table_;
  QAction* find_;
  /// What the list shows is not of the present figures.
  bool outdated_ = false;
  /// The list itself moves the selection.
  bool choosing_ = false;
};

} // namespace afterbeat::window
