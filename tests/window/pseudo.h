/// A language that does not exist, for finding what cannot be translated and what is cut off in a
/// longer one.
#pragma once

#include <QString>
#include <QTranslator>

namespace afterbeat::window {

/// "Open" becomes "[Öpéñ ~~]": every text of the program, and none of Qt's own, in brackets and
/// about 40 % longer. Places for values, marks of menus and formats of dates stay as they are.
class PseudoLanguage final : public QTranslator {
public:
  [[nodiscard]] bool isEmpty() const override { return false; }
  [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                  int) const override;
};

/// What stands outside of all brackets.
[[nodiscard]] QString outsideOfBrackets(const QString& text);

} // namespace afterbeat::window
