/// The problems of the open file: a strip that says how many, and the list behind it.
#pragma once

#include "app/window/problems/problems_model.h"

#include <QWidget>

class QAction;
class QFrame;
class QLabel;
class QTextEdit;
class QToolButton;
class QTreeView;

namespace afterbeat::window {

class Selection;
class Session;

/// The problems of the file, folded where several mean the same, and under them what the chosen
/// one means. Enter or a click on a problem whose time is known shows it in rows and waves.
class ProblemsView final : public QWidget {
  Q_OBJECT

public:
  ProblemsView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] const ProblemsModel& problems() const { return model_; }
  [[nodiscard]] QTreeView* tree() const { return tree_; }
  /// What stands under the list, or instead of it.
  [[nodiscard]] QString detailsText() const;

signals:
  void changed();

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  void restyle();
  void showDetails();
  void fitDetails();
  void choose(const QModelIndex& index);

  Session& session_;
  Selection& selection_;
  ProblemsModel model_;
  QTreeView* tree_;
  QFrame* line_;
  QTextEdit* details_;
};

/// Over the rows where something was found; hidden otherwise. Also says that a file holds several
/// records.
class ProblemsStrip final : public QWidget {
  Q_OBJECT

public:
  ProblemsStrip(Session& session, const ProblemsView& view, QAction* showList,
                QWidget* parent = nullptr);
  [[nodiscard]] QString text() const;

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  Session& session_;
  const ProblemsView& view_;
  QLabel *icon_, *text_;
  QToolButton* button_;
};

} // namespace afterbeat::window
