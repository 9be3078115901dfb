/// What is open: where, when, what kind, which patient, which file; drill and synthetic marks.
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QLayout;

namespace afterbeat::window {

class ElidedLabel;
class Session;

class HeaderStrip final : public QWidget {
  Q_OBJECT

public:
  explicit HeaderStrip(Session& session, QWidget* parent = nullptr);
  /// Everything it says, marks included.
  [[nodiscard]] QString asText() const;
  /// Puts something at the right end.
  void addToEnd(QLayout* part);
  void addToEnd(QWidget* part);

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  void restyle();

  Session& session_;
  QHBoxLayout* layout_;
  ElidedLabel *site_, *facts_;
  QLabel *drill_, *synthetic_, *madeUp_;
};

/// "Saturday 14 March 2026, 09:12:30, device clock"; what the clock is worth is said in words.
[[nodiscard]] QString whenWords(const Session& session);

} // namespace afterbeat::window
