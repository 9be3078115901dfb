/// Which records of a season are meant, and in which order: typing, choosers, and the sentence that
/// says how many are left.
#pragma once

#include "app/window/compare/season_desk.h"

#include <QWidget>

class QAction;
class QComboBox;
class QLabel;
class QLineEdit;
class QTimer;
class QToolButton;

namespace afterbeat::window {

class FilterBar final : public QWidget {
  Q_OBJECT

public:
  explicit FilterBar(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QLineEdit* words() const { return words_; }
  [[nodiscard]] QComboBox* kind() const { return kind_; }
  [[nodiscard]] QComboBox* site() const { return site_; }
  [[nodiscard]] QComboBox* period() const { return period_; }
  [[nodiscard]] QComboBox* sortBy() const { return sortBy_; }
  /// Whether what is in view has an order: a table has one, a chart none.
  void setOrdered(bool ordered);
  /// Goes to the typing, takes the filter away, turns the order round.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
  /// How many lines of the table are marked: said is how to lay them side by side.
  void setMarked(std::size_t marked);
  /// "312 of 400 records"; what is left out and why; that not all are there yet.
  [[nodiscard]] QString sentence() const;

private:
  QComboBox* chooser(const QString& name);
  void fill();
  void fillNames(QComboBox* box, std::string RecordFacts::*fact);
  void fillPeriods();
  /// Those of the whole season.
  [[nodiscard]] const std::vector<RecordFacts>& records() const;
  void fillOrders();
  void ask();
  void clear();
  void askOrder();
  void follow();
  void turnRound();

  SeasonDesk& desk_;
  QLineEdit* words_;
  QComboBox *kind_, *site_, *team_, *period_, *shock_, *cause_, *sortBy_;
  QLabel* sortWords_;
  QToolButton* direction_;
  QLabel* sentence_;
  QTimer* typing_;
  bool ordered_ = true;
  std::size_t marked_ = 0;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
