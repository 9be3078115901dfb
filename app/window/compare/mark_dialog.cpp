#include "app/window/compare/mark_dialog.h"

#include <QDateEdit>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace afterbeat::window {

MarkDialog::MarkDialog(const QDate& day, QWidget* parent)
    : QDialog(parent), day_(new QDateEdit(day, this)), words_(new QLineEdit(this)) {
  setWindowTitle(tr("New from here"));
  auto* about = new QLabel(tr("From this day on the chart gets a centre line of its own, and says "
                              "whether what came after differs clearly from what was before."),
                           this);
  about->setWordWrap(true);
  day_->setCalendarPopup(true);
  day_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
  day_->setAccessibleName(tr("From this day on"));
  words_->setText(tr("new training from here"));
  words_->setAccessibleName(tr("What was new"));
  auto* form = new QFormLayout;
  form->addRow(tr("From this day on"), day_);
  form->addRow(tr("What was new"), words_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* down = new QVBoxLayout(this);
  down->addWidget(about);
  down->addLayout(form);
  down->addWidget(buttons);
}

QDate MarkDialog::day() const {
  return day_->date();
}

QString MarkDialog::words() const {
  return words_->text();
}

} // namespace afterbeat::window
