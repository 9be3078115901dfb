#include "app/window/shell/header_strip.h"

#include "app/window/look/elided_label.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/session/session.h"

#include <QCoreApplication>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>

namespace afterbeat::window {

namespace {

QLabel* badge(const QString& text, const QString& means, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setAlignment(Qt::AlignCenter);
  label->setAccessibleName(means);
  label->setToolTip(means);
  label->setContentsMargins(8, 2, 8, 2);
  label->setAutoFillBackground(true);
  label->hide();
  return label;
}

} // namespace

QString whenWords(const Session& session) {
  const Record& record = session.record();
  const auto wall = wallTimeAt(record, Time{});
  if (!wall) {
    return QCoreApplication::translate("HeaderStrip",
                                       "clock never set: times count from the record's begin");
  }
  const QString when = QStringLiteral("%1, %2").arg(words().date(*wall), words().clock(*wall));
  return clockTrust(record) == ClockTrust::checked
             ? QCoreApplication::translate("HeaderStrip", "%1 (clock checked)").arg(when)
             : QCoreApplication::translate("HeaderStrip", "%1 (device clock)").arg(when);
}

HeaderStrip::HeaderStrip(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), layout_(new QHBoxLayout(this)),
      site_(new ElidedLabel(this)), facts_(new ElidedLabel(this)),
      drill_(badge(tr("DRILL"), tr("Drill: this record never enters rescue statistics"), this)),
      synthetic_(badge(tr("SYNTHETIC"), tr("Synthetic: these data were generated"), this)),
      madeUp_(badge(tr("MADE-UP HEADER"),
                    tr("The file had no usable header and is read under a made-up one"), this)) {
  layout_->setContentsMargins(16, 8, 16, 8);
  layout_->setSpacing(12);
  layout_->addWidget(site_);
  layout_->addWidget(facts_, 1);
  for (QLabel* mark : {drill_, synthetic_, madeUp_}) {
    layout_->addWidget(mark, 0, Qt::AlignVCenter);
  }
  restyle();
  connect(&session_, &Session::recordChanged, this, &HeaderStrip::refresh);
}

void HeaderStrip::refresh() {
  const Header& header = session_.record().header;
  site_->setWhole(header.site.empty() ? tr("Place not recorded")
                                      : QString::fromStdString(header.site));
  const QStringList facts{whenWords(session_), kindWords(header.kind), patientWords(header.patient),
                          QFileInfo(session_.loaded().path).fileName()};
  facts_->setWhole(facts.join(QStringLiteral("  ·  ")));
  drill_->setVisible(header.kind == RecordKind::drill);
  synthetic_->setVisible(header.synthetic);
  madeUp_->setVisible(header.madeUp);
}

void HeaderStrip::addToEnd(QLayout* part) {
  layout_->addLayout(part);
}

void HeaderStrip::addToEnd(QWidget* part) {
  layout_->addWidget(part);
}

QString HeaderStrip::asText() const {
  QStringList parts{site_->whole(), facts_->whole()};
  for (const QLabel* mark : {drill_, synthetic_, madeUp_}) {
    if (!mark->isHidden()) {
      parts << mark->text();
    }
  }
  return parts.join(QStringLiteral("  ·  "));
}

void HeaderStrip::restyle() {
  const Look look = Look::of(palette(), font());
  QFont large = font();
  large.setBold(true);
  large.setPointSizeF(large.pointSizeF() * 1.2);
  site_->setFont(large);
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, look.faintInk);
  facts_->setPalette(faint);
  QPalette inverse = palette();
  inverse.setColor(QPalette::Window, look.badge);
  inverse.setColor(QPalette::WindowText, look.badgeInk);
  QFont bold = font();
  bold.setBold(true);
  for (QLabel* mark : {drill_, synthetic_, madeUp_}) {
    mark->setPalette(inverse);
    mark->setFont(bold);
  }
}

void HeaderStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
