#include "app/window/handover/handover_actions.h"

#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QActionGroup>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QRegularExpression>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr double kPointsPerInch = 72.0;

/// Where Letter is the usual paper.
QString usualPaper() {
  const auto here = QLocale::system().territory();
  return here == QLocale::UnitedStates || here == QLocale::Canada ? QStringLiteral("Letter")
                                                                  : QStringLiteral("A4");
}

/// A record of nothing but what a person knows without one: where, and whether it was a drill.
Record madeUpRecord(const ToldSheet& told) {
  Record record;
  record.header.kind = told.drill ? RecordKind::drill : RecordKind::rescue;
  record.header.site = told.site.trimmed().toStdString();
  return record;
}

} // namespace

HandoverActions::HandoverActions(Session& session, QWidget* parent)
    : QObject(parent), session_(session), window_(parent),
      pdf_(new QAction(tr("&Export the handover sheet as PDF…"), this)),
      print_(new QAction(tr("&Print the handover sheet…"), this)) {
  pdf_->setShortcut(Qt::CTRL | Qt::Key_E);
  connect(pdf_, &QAction::triggered, this, &HandoverActions::askPdf);
  print_->setShortcut(QKeySequence::Print);
  connect(print_, &QAction::triggered, this, &HandoverActions::print);
  languages_ =
      choices(QStringLiteral("sheet/language"), tr("en", "language of the sheet: en or de"),
              {{tr("Sheet in &English"), Qt::CTRL | Qt::SHIFT | Qt::Key_E, "en"},
               {tr("Sheet in &German"), Qt::CTRL | Qt::SHIFT | Qt::Key_G, "de"}});
  papers_ = choices(QStringLiteral("sheet/paper"), usualPaper(),
                    {{tr("Sheet on &A4"), Qt::CTRL | Qt::SHIFT | Qt::Key_A, "A4"},
                     {tr("Sheet on &Letter"), Qt::CTRL | Qt::SHIFT | Qt::Key_L, "Letter"}});
  addZoom(tr("Sheet lar&ger"), Qt::ALT | Qt::Key_Plus, 1);
  addZoom(tr("Sheet s&maller"), Qt::ALT | Qt::Key_Minus, -1);
  addZoom(tr("&Whole sheet"), Qt::ALT | Qt::Key_0, 0);
  connect(&session_, &Session::stateChanged, this, &HandoverActions::follow);
  connect(&session_, &Session::figuresChanged, this, &HandoverActions::changed);
  follow();
}

HandoverActions::~HandoverActions() {
  pool_.waitForDone();
}

QList<QAction*> HandoverActions::choices(const QString& setting, const QString& otherwise,
                                         const std::vector<Choice>& all) {
  auto* group = new QActionGroup(this);
  const QString remembered = remembered::text(setting, otherwise);
  QList<QAction*> actions;
  for (const Choice& one : all) {
    auto* action = new QAction(one.text, group);
    action->setShortcut(one.key);
    action->setCheckable(true);
    action->setData(one.value);
    action->setChecked(one.value == remembered);
    connect(action, &QAction::triggered, this, [this, setting, value = one.value] {
      remembered::setText(setting, value);
      emit changed();
    });
    actions << action;
  }
  if (group->checkedAction() == nullptr) {
    actions.front()->setChecked(true);
  }
  return actions;
}

void HandoverActions::addZoom(const QString& text, const QKeySequence& key, int change) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, [this, change] { emit zoomed(change); });
  zoom_ << action;
}

QString HandoverActions::chosen(const QList<QAction*>& actions) {
  const auto found = std::find_if(actions.begin(), actions.end(),
                                  [](const QAction* action) { return action->isChecked(); });
  return found == actions.end() ? QString() : (*found)->data().toString();
}

void HandoverActions::follow() {
  const bool something = told_ || session_.state() == Session::State::ready;
  pdf_->setEnabled(something);
  print_->setEnabled(something);
  emit changed();
}

void HandoverActions::setTold(const std::optional<ToldSheet>& told) {
  told_ = told;
  follow();
}

papers::SheetOptions HandoverActions::options() const {
  papers::SheetOptions options;
  options.language = chosen(languages_);
  options.paper = chosen(papers_) == "Letter" ? QPageSize::Letter : QPageSize::A4;
  options.printedAt = QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
  if (told_) {
    options.told = told_->figures;
  } else {
    options.fileName = QFileInfo(session_.loaded().path).fileName();
    options.fileSha256 = QString::fromStdString(session_.loaded().file->sha256);
  }
  return options;
}

std::optional<SheetSource> HandoverActions::source() const {
  if (told_) {
    auto record = std::make_shared<const Record>(madeUpRecord(*told_));
    auto figures = std::make_shared<const Figures>(computeFigures(*record, session_.settings()));
    return SheetSource{record, figures, options()};
  }
  if (!session_.hasRecord()) {
    return std::nullopt;
  }
  const Loaded& loaded = session_.loaded();
  return SheetSource{std::shared_ptr<const Record>(loaded.file, &loaded.record()), loaded.figures,
                     options()};
}

QString HandoverActions::suggestedName() const {
  QStringList parts{tr("Handover")};
  if (const auto sheet = source()) {
    if (!sheet->record->header.site.empty()) {
      parts << QString::fromStdString(sheet->record->header.site);
    }
    if (const auto wall = wallTimeAt(*sheet->record, Time{})) {
      parts << QString::fromStdString(formatDate(*wall));
    }
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
  const auto sheet = source();
  if (!sheet) {
    return;
  }
  pool_.start([this, path, sheet] {
    QString error;
    const bool good =
        papers::writeHandoverPdf(path, *sheet->record, *sheet->figures, sheet->options, &error);
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
  if (!printer.isValid() || printer.printerName().isEmpty()) {
    emit problem(tr("No printer is set up on this computer: the print dialog can only write a "
                    "file."));
  }
  printer.setDocName(suggestedName());
  printer.setPageSize(QPageSize(options().paper));
  printer.setFullPage(true);
  QPrintDialog dialog(&printer, window_);
  dialog.setWindowTitle(tr("Print the handover sheet"));
  if (dialog.exec() == QDialog::Accepted) {
    printAndTell(printer);
  }
}

void HandoverActions::printAndTell(QPrinter& printer) {
  if (!printOn(printer)) {
    emit problem(tr("The printer did not accept the sheet. Check that it is switched on, or "
                    "export the sheet as PDF."));
  } else if (!printer.outputFileName().isEmpty()) {
    emit written(QFileInfo(printer.outputFileName()).absoluteFilePath());
  } else {
    emit printed(printer.printerName());
  }
}

bool HandoverActions::printOn(QPrinter& printer) const {
  const auto sheet = source();
  QPainter painter;
  if (!sheet || !painter.begin(&printer)) {
    return false;
  }
  // The page that is set is the chosen one; a printer with other paper gets it whole and smaller.
  const QSizeF page = QPageSize(sheet->options.paper).size(QPageSize::Point);
  const QRectF paper = printer.pageLayout().fullRect(QPageLayout::Point);
  const double fits = std::min(paper.width() / page.width(), paper.height() / page.height());
  const double scale = fits > 0.99 ? 1 : fits;
  painter.scale(printer.logicalDpiX() / kPointsPerInch, printer.logicalDpiY() / kPointsPerInch);
  painter.translate((paper.width() - page.width() * scale) / 2, 0);
  painter.scale(scale, scale);
  papers::paintHandoverSheet(painter, *sheet->record, *sheet->figures, sheet->options);
  return painter.end();
}

} // namespace afterbeat::window
