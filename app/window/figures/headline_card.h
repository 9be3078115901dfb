/// One headline figure: a button that lays its working open.
#pragma once

#include "app/window/look/look.h"

#include <QAbstractButton>

namespace afterbeat::window {

/// What a card says. Together they read as one sentence.
struct CardText {
  QString title, number, note, target;
  /// The whole as a sentence, with target and source.
  QString sentence;
  /// Beyond its target.
  bool attention = false;
  /// A number; otherwise words such as "not recorded", set smaller.
  bool isNumber = true;
};

class HeadlineCard final : public QAbstractButton {
  Q_OBJECT

public:
  explicit HeadlineCard(QWidget* parent = nullptr);
  void setCard(const CardText& text);
  [[nodiscard]] const CardText& card() const { return text_; }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  [[nodiscard]] QFont numberFont() const;
  [[nodiscard]] QFont noteFont() const;
  CardText text_;
};

} // namespace afterbeat::window
