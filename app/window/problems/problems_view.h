/// The problems of the open file: a strip that says how many, and the list behind it.
#pragma once

#include "app/window/problems/problems_model.h"

#include <QTableView>
#include <QWidget>

class QAction;
class QLabel;
class QToolButton;

namespace afterbeat::window {

class Session;

/// Line, severity and sentence of each problem.
class ProblemsView final : public QTableView {
  Q_OBJECT

public:
  explicit ProblemsView(Session& session, QWidget* parent = nullptr);
  [[nodiscard]] const ProblemsModel& problems() const { return model_; }

signals:
  void changed();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  void refresh();
  void fitRows();
  Session& session_;
  ProblemsModel model_;
};

/// Over the rows where something was found; hidden otherwise. Also says that a file holds several
/// records.
class ProblemsStrip final : public QWidget {
  Q_OBJECT

public:
  ProblemsStrip(Session& session, const ProblemsView& view, QAction* showList,
                QWidget* parent = nullptr);
  [[nodiscard]] QString text() const;

private:
  void refresh();
  Session& session_;
  const ProblemsView& view_;
  QLabel *icon_, *text_;
  QToolButton* button_;
};

} // namespace afterbeat::window
