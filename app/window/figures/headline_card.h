/// One headline figure: a button that lays its working open.
#pragma once

#include "app/window/look/look.h"

#include <QAbstractButton>
#include <QList>
#include <QStringList>

namespace afterbeat::window {

/// What a card says. Together they read as one sentence.
struct CardText {
  QString title, number;
  /// Under the number, in the order in which they are read; none of them is ever cut where the card
  /// can wrap it.
  QStringList notes;
  QString target;
  /// The whole as a sentence, with target and source.
  QString sentence;
  /// Beyond its target.
  bool attention = false;
  /// The first note warns of the number.
  bool warned = false;
  /// A number; otherwise words such as "not recorded", set smaller.
  bool isNumber = true;
};

class HeadlineCard final : public QAbstractButton {
  Q_OBJECT

public:
  explicit HeadlineCard(QWidget* parent = nullptr);
  void setCard(const CardText& text);
  [[nodiscard]] const CardText& card() const { return text_; }
  /// Lines that notes and target take at this width.
  [[nodiscard]] int linesFor(int width) const;
  /// Room for so many lines under the number.
  void setLines(int lines);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  struct Line {
    QString text;
    bool strong = false;
  };
  [[nodiscard]] QFont numberFont() const;
  [[nodiscard]] QFont noteFont(bool strong = false) const;
  [[nodiscard]] QList<Line> linesUnder(int width) const;
  CardText text_;
  int lines_ = 2;
};

} // namespace afterbeat::window
