/// Every figure of the record, in groups; those not recorded say so.
#pragma once

#include "core/measures/figures.h"

#include <QTreeWidget>

namespace afterbeat::window {

class Selection;
class Session;

class MeasuresList final : public QTreeWidget {
  Q_OBJECT

public:
  MeasuresList(Session& session, Selection& selection, QWidget* parent = nullptr);
  /// The value as it stands in the list.
  [[nodiscard]] QString valueText(MeasureId id) const;

signals:
  /// A figure was activated by double click or Enter.
  void chosen();

protected:
  void changeEvent(QEvent* event) override;

private:
  void build();
  void refresh();
  void markChosen();

  Session& session_;
  Selection& selection_;
  std::vector<QTreeWidgetItem*> items_;
};

} // namespace afterbeat::window
