/// Sentences that wrap, and remember how high they are.
#pragma once

#include <QLabel>

#include <vector>

namespace afterbeat::window {

/// A label of sentences over several lines. Nested layouts ask such a label for its height in the
/// same few widths dozens of times for one change, and each time QLabel breaks its text into lines
/// anew; this one does so once for each width.
class WrappedLabel final : public QLabel {
  Q_OBJECT

public:
  explicit WrappedLabel(QWidget* parent = nullptr);
  /// As of QLabel.
  [[nodiscard]] int heightForWidth(int width) const override;

protected:
  bool event(QEvent* event) override;

private:
  struct Known {
    int width = 0, height = 0;
  };
  /// Of `knownText_` and the margins below it, oldest first; mutable as what they remember is no
  /// state of the label.
  mutable std::vector<Known> known_;
  mutable QString knownText_;
  mutable int knownMargin_ = 0, knownIndent_ = 0;
};

} // namespace afterbeat::window
