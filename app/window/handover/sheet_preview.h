/// The handover sheet as it will be printed, drawn away from the window's thread.
#pragma once

#include "app/papers/sheet_layout.h"
#include "app/window/handover/handover_actions.h"

#include <QAbstractScrollArea>
#include <QImage>
#include <QStringList>
#include <QThreadPool>

namespace afterbeat::window {

/// Shows one page, whole or enlarged, sharp at any pixel ratio. Until a new picture is ready the
/// one before is shown.
class SheetPreview final : public QAbstractScrollArea {
  Q_OBJECT

public:
  explicit SheetPreview(QWidget* parent = nullptr);
  ~SheetPreview() override;

  void showSheet(const std::optional<SheetSource>& sheet);
  /// Steps of a quarter; 0 shows the whole page.
  void setZoom(int step);
  [[nodiscard]] int zoom() const { return zoom_; }
  /// What is drawn; in the device's pixels.
  [[nodiscard]] const QImage& picture() const { return image_; }
  /// Nothing is being drawn, and what is shown is what was asked for.
  [[nodiscard]] bool upToDate() const { return !busy_ && !asked_; }
  /// The words of the page that is shown.
  [[nodiscard]] QString text() const;
  /// What the page leaves to the pen, in the window's language.
  [[nodiscard]] const QStringList& leftToPen() const { return leftToPen_; }

signals:
  /// A new picture is shown.
  void drawn();

protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  bool viewportEvent(QEvent* event) override;

private:
  struct Drawn {
    std::shared_ptr<const papers::HandoverSheet> sheet;
    QStringList leftToPen;
    QImage image;
  };
  void request();
  void take(const Drawn& drawn);
  void adjustBars();
  [[nodiscard]] double pixelsPerPoint() const;
  [[nodiscard]] QSizeF pageSize() const;
  /// Where the page lies in the viewport.
  [[nodiscard]] QRectF pageRect() const;

  std::optional<SheetSource> source_;
  std::shared_ptr<const papers::HandoverSheet> sheet_;
  QStringList leftToPen_;
  QImage image_;
  int zoom_ = 0;
  /// A picture is being drawn; another is to follow; the page itself has to be set anew.
  bool busy_ = false, asked_ = false, stale_ = true;
  /// Last: waits for what is being drawn.
  QThreadPool pool_;
};

} // namespace afterbeat::window
