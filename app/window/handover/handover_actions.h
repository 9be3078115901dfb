/// The handover sheet of the open record: as a PDF, and on a printer.
#pragma once

#include "app/papers/handover_sheet.h"

#include <QList>
#include <QObject>
#include <QThreadPool>

class QAction;
class QWidget;

namespace afterbeat::window {

class Session;

class HandoverActions final : public QObject {
  Q_OBJECT

public:
  HandoverActions(Session& session, QWidget* parent);
  ~HandoverActions() override;
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }
  /// Writes the sheet of the open record; `written` or `problem` follows.
  void writePdf(const QString& path);
  /// A name for the file: site and date, without anything a file system might refuse.
  [[nodiscard]] QString suggestedName() const;

signals:
  void written(const QString& path);
  void problem(const QString& sentence);

private:
  void askPdf();
  void print();
  [[nodiscard]] papers::SheetOptions options() const;

  Session& session_;
  QWidget* window_;
  QList<QAction*> actions_;
  /// Last: waits for a sheet that is being written.
  QThreadPool pool_;
};

} // namespace afterbeat::window
