/// The place of the handover sheet: the page as it will be printed, and what can be chosen for it.
#pragma once

#include <QList>
#include <QWidget>

class QAction;
class QLabel;

namespace afterbeat::window {

class HandoverActions;
class SheetPreview;
class ToldForm;

class HandoverPage final : public QWidget {
  Q_OBJECT

public:
  /// Of the open record, or of what is typed into a form where there is no recording.
  enum class Kind { record, told };

  explicit HandoverPage(HandoverActions& actions, Kind kind = Kind::record,
                        QWidget* parent = nullptr);
  [[nodiscard]] SheetPreview* preview() const { return preview_; }
  /// Null for the sheet of a record.
  [[nodiscard]] ToldForm* form() const { return form_; }
  /// Back to where the sheet without a recording was asked for; null for the sheet of a record.
  [[nodiscard]] QAction* back() const { return back_; }
  /// The list of what is left to the pen, as shown.
  [[nodiscard]] QString leftToPen() const;

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  QWidget* makeSide();
  void refresh();
  void showLeftToPen();

  HandoverActions& actions_;
  Kind kind_;
  SheetPreview* preview_;
  ToldForm* form_ = nullptr;
  QLabel* pen_ = nullptr;
  QAction* back_ = nullptr;
};

} // namespace afterbeat::window
