/// The handover sheet of what is open: its language and paper, on a printer and as a PDF.
#pragma once

#include "app/papers/handover_sheet.h"

#include <QKeySequence>
#include <QList>
#include <QObject>
#include <QThreadPool>

#include <memory>
#include <optional>
#include <vector>

class QAction;
class QPrinter;
class QWidget;

namespace afterbeat::window {

class Session;

/// Everything one sheet is made of. Cheap to copy; may be read in any thread.
struct SheetSource {
  std::shared_ptr<const Record> record;
  std::shared_ptr<const Figures> figures;
  papers::SheetOptions options;
};

/// What was typed where there is no recording.
struct ToldSheet {
  papers::ToldFigures figures;
  QString site;
  bool drill = false;
};

class HandoverActions final : public QObject {
  Q_OBJECT

public:
  HandoverActions(Session& session, QWidget* parent);
  ~HandoverActions() override;
  /// Export and print.
  [[nodiscard]] QList<QAction*> actions() const { return {pdf_, print_}; }
  [[nodiscard]] QAction* pdfAction() const { return pdf_; }
  [[nodiscard]] QAction* printAction() const { return print_; }
  /// Language and paper of the sheet; remembered.
  [[nodiscard]] const QList<QAction*>& languages() const { return languages_; }
  [[nodiscard]] const QList<QAction*>& paperSizes() const { return papers_; }
  /// Larger, smaller, whole page; `zoomed` follows.
  [[nodiscard]] const QList<QAction*>& zoomActions() const { return zoom_; }

  /// The sheet of the open record, or of what was told; nothing without either.
  [[nodiscard]] std::optional<SheetSource> source() const;
  /// While set, the sheet is that of what was told, whatever is open.
  void setTold(const std::optional<ToldSheet>& told);

  /// Writes the sheet; `written` or `problem` follows.
  void writePdf(const QString& path);
  /// Prints, and says where: `printed`, `written` (into a file) or `problem` follows.
  void printAndTell(QPrinter& printer);
  /// Puts the sheet on a printer's page, whatever that page's size. False: it did not accept it.
  [[nodiscard]] bool printOn(QPrinter& printer) const;
  /// A name for the file: site and date, without anything a file system might refuse.
  [[nodiscard]] QString suggestedName() const;

signals:
  /// The sheet would now look different.
  void changed();
  /// By so many steps; 0: the whole page.
  void zoomed(int change);
  void written(const QString& path);
  /// The sheet went to a printer of this name.
  void printed(const QString& printer);
  void problem(const QString& sentence);

private:
  void addZoom(const QString& text, const QKeySequence& key, int change);
  void askPdf();
  void print();
  void follow();
  struct Choice {
    QString text;
    QKeySequence key;
    QString value;
  };
  /// Actions of which one is chosen, as remembered under `setting`.
  QList<QAction*> choices(const QString& setting, const QString& otherwise,
                          const std::vector<Choice>& all);
  [[nodiscard]] static QString chosen(const QList<QAction*>& actions);
  [[nodiscard]] papers::SheetOptions options() const;

  Session& session_;
  QWidget* window_;
  QAction *pdf_, *print_;
  QList<QAction*> languages_, papers_, zoom_;
  std::optional<ToldSheet> told_;
  /// Last: waits for a sheet that is being written.
  QThreadPool pool_;
};

} // namespace afterbeat::window
