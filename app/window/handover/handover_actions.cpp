#include "app/window/handover/handover_actions.h"

#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QRegularExpression>

namespace afterbeat::window {

HandoverActions::HandoverActions(Session& session, QWidget* parent)
    : QObject(parent), session_(session), window_(parent) {
  auto* pdf = new QAction(tr("&Export the handover sheet as PDF…"), this);
  pdf->setShortcut(Qt::CTRL | Qt::Key_E);
  connect(pdf, &QAction::triggered, this, &HandoverActions::askPdf);
  auto* paper = new QAction(tr("&Print the handover sheet…"), this);
  paper->setShortcut(QKeySequence::Print);
  connect(paper, &QAction::triggered, this, &HandoverActions::print);
  actions_ = {pdf, paper};
  const auto follow = [this] {
    for (QAction* action : actions_) {
      action->setEnabled(session_.state() == Session::State::ready);
    }
  };
  connect(&session_, &Session::stateChanged, this, follow);
  follow();
}

HandoverActions::~HandoverActions() {
  pool_.waitForDone();
}

papers::SheetOptions HandoverActions::options() const {
  papers::SheetOptions options;
  options.language = tr("en", "language of the sheet: en or de");
  options.fileName = QFileInfo(session_.loaded().path).fileName();
  options.fileSha256 = QString::fromStdString(session_.loaded().file->sha256);
  options.printedAt = QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
  return options;
}

QString HandoverActions::suggestedName() const {
  const Record& record = session_.record();
  QStringList parts{tr("Handover")};
  if (!record.header.site.empty()) {
    parts << QString::fromStdString(record.header.site);
  }
  if (const auto wall = wallTimeAt(record, Time{})) {
    parts << QString::fromStdString(formatDate(*wall));
  }
  QString name = parts.join(QLatin1Char(' '));
  static const QRegularExpression unsafe(QStringLiteral("[^\\w\\- .]"),
                                         QRegularExpression::UseUnicodePropertiesOption);
  return name.remove(unsafe) + QStringLiteral(".pdf");
}

void HandoverActions::askPdf() {
  const QString path =
      QFileDialog::getSaveFileName(window_, tr("Export the handover sheet"),
                                   QDir(remembered::folder("export")).filePath(suggestedName()),
                                   tr("PDF (*.pdf);;All files (*)"));
  if (!path.isEmpty()) {
    remembered::setFolder("export", QFileInfo(path).path());
    writePdf(path);
  }
}

void HandoverActions::writePdf(const QString& path) {
  pool_.start([this, path, loaded = session_.loaded(), options = options()] {
    QString error;
    const bool good =
        papers::writeHandoverPdf(path, loaded.record(), *loaded.figures, options, &error);
    QMetaObject::invokeMethod(
        this,
        [this, path, good, error] {
          if (good) {
            emit written(path);
          } else {
            emit problem(tr("The sheet could not be written to %1: %2. Choose another folder.")
                             .arg(path, error));
          }
        },
        Qt::QueuedConnection);
  });
}

void HandoverActions::print() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setDocName(suggestedName());
  printer.setPageSize(QPageSize(QPageSize::A4));
  printer.setFullPage(true);
  QPrintDialog dialog(&printer, window_);
  dialog.setWindowTitle(tr("Print the handover sheet"));
  if (dialog.exec() != QDialog::Accepted) {
    return;
  }
  papers::SheetOptions sheet = options();
  sheet.paper = printer.pageLayout().pageSize().id();
  QPainter painter;
  if (!painter.begin(&printer)) {
    emit problem(tr("The printer did not accept the sheet. Check that it is switched on, or "
                    "export the sheet as PDF."));
    return;
  }
  constexpr double kPointsPerInch = 72.0;
  painter.scale(printer.logicalDpiX() / kPointsPerInch, printer.logicalDpiY() / kPointsPerInch);
  papers::paintHandoverSheet(painter, session_.record(), session_.figures(), sheet);
}

} // namespace afterbeat::window
