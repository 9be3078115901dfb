#include "app/window/compare/mark_dialog.h"

#include <QDateEdit>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// Breaks its lines instead of widening the dialog.
QLabel* sentence(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

} // namespace

MarkDialog::MarkDialog(MarkQuestion question, QWidget* parent)
    : QDialog(parent), question_(std::move(question)), day_(new QDateEdit(question_.day, this)),
      counts_(sentence(QString(), this)), words_(new QLineEdit(this)) {
  setWindowTitle(tr("New from here"));
  auto* about = sentence(tr("From this day on the chart gets a centre line of its own, and says "
                            "whether what came after differs clearly from what was before."),
                         this);
  day_->setCalendarPopup(true);
  day_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
  day_->setAccessibleName(tr("From this day on"));
  words_->setText(tr("new training from here"));
  words_->setAccessibleName(tr("What was new"));
  auto* form = new QFormLayout;
  form->addRow(tr("From this day on"), day_);
  form->addRow(QString(), counts_);
  form->addRow(tr("What was new"), words_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* down = new QVBoxLayout(this);
  down->addWidget(about);
  down->addLayout(form);
  down->addWidget(sentence(question_.kept, this));
  down->addWidget(buttons);
  connect(day_, &QDateEdit::dateChanged, this, &MarkDialog::count);
  count();
}

void MarkDialog::count() {
  const QDate day = day_->date();
  const auto before = std::count_if(question_.days.begin(), question_.days.end(),
                                    [&day](const QDate& one) { return one < day; });
  const auto after = std::ssize(question_.days) - before;
  QString text = before == 1 ? tr("1 record before, %1 from this day on.").arg(after)
                             : tr("%1 records before, %2 from this day on.").arg(before).arg(after);
  if (question_.withoutDay > 0) {
    text += QLatin1Char('\n') + tr("Without a day: %1.").arg(question_.withoutDay);
  }
  counts_->setText(text);
  day_->setAccessibleDescription(text);
}

QString MarkDialog::counts() const {
  return counts_->text();
}

QDate MarkDialog::day() const {
  return day_->date();
}

QString MarkDialog::words() const {
  return words_->text();
}

} // namespace afterbeat::window
