/// The working of the chosen figure: definition, the stretches it was made from, source.
#pragma once

#include "app/window/figures/working_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace afterbeat::window {

class Selection;
class Session;

class WorkingPanel final : public QWidget {
  Q_OBJECT

public:
  WorkingPanel(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] QTableView* table() const { return table_; }
  [[nodiscard]] QString titleText() const;

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  void jump(const QModelIndex& index);
  void fitColumns();

  Session& session_;
  Selection& selection_;
  WorkingModel model_;
  QLabel *title_, *definition_, *source_, *none_;
  QTableView* table_;
};

/// The parts of a measure's description that the panel shows, in sentences.
[[nodiscard]] QString definitionText(const Figures& figures, MeasureId id);
[[nodiscard]] QString sourceText(const Figures& figures, MeasureId id);

} // namespace afterbeat::window
