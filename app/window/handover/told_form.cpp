#include "app/window/handover/told_form.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace afterbeat::window {

namespace {

/// A whole number from 0 to `most`, or nothing.
std::optional<int> numberIn(const QLineEdit* edit, int most) {
  bool good = false;
  const int number = edit->text().trimmed().toInt(&good);
  return good && number >= 0 && number <= most ? std::optional<int>(number) : std::nullopt;
}

constexpr int kMostMinutes = 600;
constexpr int kMostShocks = 99;

} // namespace

ToldForm::ToldForm(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  auto* form = new QFormLayout;
  column->addLayout(form);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  minutes_ = line(form, tr("&Minutes on"), tr("for example 22"));
  shocks_ = line(form, tr("&Shocks given"), tr("for example 3"));
  lastShock_ = line(form, tr("&Last shock at"), tr("for example 09:31"));
  setting_ =
      choice(form, tr("Device se&tting"), {tr("not told"), tr("adult"), tr("child"), tr("infant")});
  site_ = line(form, tr("&Place"), {});
  kind_ = choice(form, tr("&Kind"), {tr("rescue"), tr("drill")});
  takeBack_ = new QPushButton(tr("Take back what was typed before"), this);
  column->addWidget(takeBack_, 0, Qt::AlignLeft);
  connect(takeBack_, &QPushButton::clicked, this, &ToldForm::takeBack);
  takeBack_->hide();
  hint_ = new QLabel(this);
  hint_->setWordWrap(true);
  hint_->setAccessibleName(tr("What is not on the sheet yet"));
  column->addWidget(hint_);
  hint_->hide();
}

QLineEdit* ToldForm::line(QFormLayout* form, const QString& label, const QString& example) {
  auto* edit = new QLineEdit(this);
  edit->setPlaceholderText(example);
  edit->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  connect(edit, &QLineEdit::textChanged, this, &ToldForm::tell);
  form->addRow(label, edit);
  return edit;
}

QComboBox* ToldForm::choice(QFormLayout* form, const QString& label, const QStringList& words) {
  auto* box = new QComboBox(this);
  box->addItems(words);
  box->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  connect(box, &QComboBox::currentIndexChanged, this, &ToldForm::tell);
  form->addRow(label, box);
  return box;
}

void ToldForm::tell() {
  hint_->setText(hint());
  // A scroll area gives a broken text one line unless it is told.
  hint_->setMinimumHeight(std::max(0, hint_->heightForWidth(width())));
  hint_->setVisible(!hint_->text().isEmpty());
  emit changed();
}

/// "9.31", "09:31", "0931" as "09:31"; empty where it is no time of day.
QString ToldForm::clockTime() const {
  static const QRegularExpression time(
      QStringLiteral("^([01]?\\d|2[0-3])[:.h ]?([0-5]\\d)(?:[:.]([0-5]\\d))?$"));
  const auto match = time.match(lastShock_->text().trimmed());
  if (!match.hasMatch()) {
    return {};
  }
  QString clock = QStringLiteral("%1:%2").arg(match.captured(1).rightJustified(2, QLatin1Char('0')),
                                              match.captured(2));
  return match.captured(3).isEmpty() ? clock : clock + QLatin1Char(':') + match.captured(3);
}

bool ToldForm::contradicts() const {
  return numberIn(shocks_, kMostShocks) == 0 && !lastShock_->text().trimmed().isEmpty();
}

QString ToldForm::hint() const {
  const auto typed = [](const QLineEdit* edit) { return !edit->text().trimmed().isEmpty(); };
  QStringList sentences;
  if (typed(minutes_) && !numberIn(minutes_, kMostMinutes)) {
    sentences << tr("Minutes are a whole number, up to %1.").arg(kMostMinutes);
  }
  if (typed(shocks_) && !numberIn(shocks_, kMostShocks)) {
    sentences << tr("Shocks are a whole number, up to %1.").arg(kMostShocks);
  }
  if (contradicts()) {
    sentences << tr("No shock, but a time of the last one: both are left to the pen until one of "
                    "them is changed.");
  }
  if (typed(lastShock_) && clockTime().isEmpty()) {
    sentences << tr("Write the time of day as 09:31.");
  }
  return sentences.join(QLatin1Char('\n'));
}

ToldSheet ToldForm::told() const {
  ToldSheet sheet;
  sheet.figures.minutesOn = numberIn(minutes_, kMostMinutes);
  if (!contradicts()) {
    sheet.figures.shocks = numberIn(shocks_, kMostShocks);
    sheet.figures.lastShockAt = clockTime();
  }
  constexpr std::array kSettings{PatientCategory::unknown, PatientCategory::adult,
                                 PatientCategory::child, PatientCategory::infant};
  sheet.figures.setting = kSettings[static_cast<std::size_t>(setting_->currentIndex())];
  sheet.site = site_->text();
  sheet.drill = kind_->currentIndex() == 1;
  return sheet;
}

ToldForm::Typed ToldForm::typed() const {
  return {{minutes_->text(), shocks_->text(), lastShock_->text(), site_->text()},
          setting_->currentIndex(),
          kind_->currentIndex()};
}

void ToldForm::put(const Typed& typed) {
  QLineEdit* const edits[] = {minutes_, shocks_, lastShock_, site_};
  for (qsizetype i = 0; i < 4; ++i) {
    edits[i]->setText(typed.lines.value(i));
  }
  setting_->setCurrentIndex(typed.setting);
  kind_->setCurrentIndex(typed.kind);
}

void ToldForm::startAnew() {
  const Typed empty{{QString(), QString(), QString(), QString()}, 0, 0};
  if (typed() != empty) {
    before_ = typed();
  }
  put(empty);
  takeBack_->setVisible(before_ != Typed{});
}

void ToldForm::takeBack() {
  put(before_);
  takeBack_->hide();
  minutes_->setFocus(Qt::OtherFocusReason);
}

} // namespace afterbeat::window
