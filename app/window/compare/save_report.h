/// Writing the comparison report: what is asked first, and what is said then.
#pragma once

#include "app/window/compare/report_writing.h"

#include <QDialog>
#include <QObject>

class QAction;
class QCheckBox;

namespace afterbeat::window {

class OverTimeView;
class SeasonDesk;

/// Asks what goes into the report.
class ReportDialog final : public QDialog {
  Q_OBJECT

public:
  explicit ReportDialog(QWidget* parent = nullptr);
  [[nodiscard]] QCheckBox* withoutIdentity() const { return withoutIdentity_; }

private:
  QCheckBox* withoutIdentity_;
};

class SaveReport final : public QObject {
  Q_OBJECT

public:
  SaveReport(SeasonDesk& desk, const OverTimeView& overTime, QWidget* window);
  [[nodiscard]] QAction* action() const { return action_; }

signals:
  void said(const QString& sentence);
  void failed(const QString& sentence);
  /// `remark` is one more sentence about it, or empty.
  void written(const QString& path, const QString& remark);

private:
  struct Result {
    QString trouble, remark;
  };
  void ask();
  void write(const ReportOrder& order, const QString& path, bool withoutIdentity);

  SeasonDesk& desk_;
  const OverTimeView& overTime_;
  QWidget* window_;
  QAction* action_;
  /// Last: waits for its worker.
  LatestWork writing_;
};

} // namespace afterbeat::window
