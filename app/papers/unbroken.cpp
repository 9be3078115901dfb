#include "app/papers/unbroken.h"

#include <QRegularExpression>

namespace afterbeat::papers {

QString unbroken(QString text) {
  static const QRegularExpression kUnit(
      QStringLiteral("(?<=[0-9]) (?=(?:%|(?:s|min|h|ms|mm|cm|J|mV|Hz|kg|/min|MiB)(?![\\w])))"),
      QRegularExpression::UseUnicodePropertiesOption);
  static const QRegularExpression kAMinute(QStringLiteral("(?<=[0-9]) (a|je|pro) (?=[Mm]inute)"));
  text.replace(kAMinute, QStringLiteral("\u00A0\\1\u00A0"));
  return text.replace(kUnit, QStringLiteral("\u00A0"));
}

} // namespace afterbeat::papers
