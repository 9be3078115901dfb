/// The working of a rhythm hint: the features of a window of ECG against what they speak for.
#pragma once

#include "core/signal/derive/derive.h"

#include <QDialog>

#include <cstddef>
#include <memory>
#include <optional>

class QLabel;
class QTreeWidget;

namespace afterbeat::window {

class Selection;
class Session;

/// Stands beside the window and follows it: another record, or hints that are not made, leave a
/// sentence in place of the working.
class HintWorking final : public QDialog {
  Q_OBJECT

public:
  HintWorking(Session& session, Selection& selection, QWidget* parent = nullptr);
  /// The window of ECG that decided about this moment.
  void showAt(Time t);
  /// The hint before or after the one shown; its middle is shown.
  void stepHint(int by);
  /// The window of ECG before or after.
  void stepWindow(int by);
  /// Everything it says.
  [[nodiscard]] QString asText() const;
  /// Index in `Derived::windows` of the one shown.
  [[nodiscard]] std::optional<std::size_t> shown() const { return shown_; }

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  void fillFeatures(const RhythmWindow& window);
  void look();
  void restyle();

  Session& session_;
  Selection& selection_;
  /// What is shown belongs to these.
  std::shared_ptr<const Derived> hints_;
  std::optional<std::size_t> shown_;
  QLabel *title_, *caution_, *decision_, *facts_;
  QTreeWidget* features_;
};

/// The window whose middle is nearest to a moment; empty: there is none within reach of it.
[[nodiscard]] std::optional<std::size_t> windowAt(const Derived& hints, Time t);

/// Why a window was judged as it was, in sentences.
[[nodiscard]] QString decisionWords(const RhythmWindow& window);

} // namespace afterbeat::window
