#include "app/window/compare/save_report.h"

#include "app/window/compare/season_views.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/look/remembered.h"

#include <QAction>
#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace afterbeat::window {

ReportDialog::ReportDialog(QWidget* parent)
    : QDialog(parent),
      withoutIdentity_(new QCheckBox(tr("&Without names, serials and free text"), this)) {
  setWindowTitle(tr("Write a comparison report"));
  const auto sentence = [this](const QString& text) {
    auto* label = new QLabel(text, this);
    label->setWordWrap(true);
    label->setMinimumWidth(420);
    return label;
  };
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
  QPushButton* go = buttons->addButton(tr("Choose a &file…"), QDialogButtonBox::AcceptRole);
  go->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* down = new QVBoxLayout(this);
  down->setSpacing(10);
  down->addWidget(sentence(tr("Of the records that are listed: as pages (.pdf), as one page for a "
                              "browser (.html), or each record as a line of a table (.csv).")));
  down->addWidget(withoutIdentity_);
  down->addWidget(sentence(tr("Sites, teams and records get pseudonyms, days are cut to their "
                              "month. Whoever knows a rescue may still recognise its figures.")));
  down->addWidget(buttons);
}

SaveReport::SaveReport(SeasonDesk& desk, const OverTimeView& overTime, QWidget* window)
    : QObject(window), desk_(desk), overTime_(overTime), window_(window),
      action_(new QAction(tr("Write a &comparison report…"), this)), writing_(*this) {
  action_->setShortcut(Qt::SHIFT | Qt::Key_Q);
  connect(action_, &QAction::triggered, this, &SaveReport::ask);
}

void SaveReport::ask() {
  ReportDialog dialog(window_);
  if (dialog.exec() != QDialog::Accepted) {
    return;
  }
  const QString path =
      QFileDialog::getSaveFileName(window_, tr("Write a comparison report"),
                                   remembered::folder("export") + QStringLiteral("/comparison.pdf"),
                                   tr("Reports and tables (*.pdf *.html *.csv)"));
  if (path.isEmpty() || !desk_.arranged().source) {
    return;
  }
  remembered::setFolder("export", QFileInfo(path).path());
  write({desk_.arranged().source, desk_.arranged().chosen, overTime_.steps(), words().language()},
        path, dialog.withoutIdentity()->isChecked());
}

void SaveReport::write(const ReportOrder& order, const QString& path, bool withoutIdentity) {
  emit said(tr("The report is being written…"));
  writing_.ask(
      [order, path, withoutIdentity, place = desk_.place()] {
        ReportOrder whole = order;
        Result result;
        if (withoutIdentity) {
          const ReportSecret secret = secretFor(place);
          whole.secret = secret.bytes;
          result.remark =
              secret.ofArchive
                  ? tr("It holds no names, serials or free text; its pseudonyms are the same in "
                       "every report of this archive.")
                  : tr("It holds no names, serials or free text; its pseudonyms hold for this "
                       "report alone.");
        }
        result.trouble = writeReport(whole, path);
        return result;
      },
      [this, path](const Result& result) {
        if (result.trouble.isEmpty()) {
          emit written(path, result.remark);
        } else {
          emit failed(result.trouble);
        }
      });
}

} // namespace afterbeat::window
