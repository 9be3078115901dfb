#include "app/papers/rows.h"

#include "app/papers/handover_sheet.h"
#include "app/papers/rows_layout.h"
#include "app/papers/rows_model.h"

namespace afterbeat::papers {

namespace {

QFont lookFont(int pixelSize) {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(pixelSize);
  return font;
}

} // namespace

RowsLook RowsLook::screenLight() {
  RowsLook look;
  look.paper = QColor(0xFF, 0xFF, 0xFF);
  look.ink = QColor(0x14, 0x18, 0x1C);
  look.faintInk = QColor(0x56, 0x5F, 0x67);
  look.grid = QColor(0xC4, 0xCA, 0xCF);
  look.handsOn = QColor(0x45, 0x6F, 0x93);
  look.target = QColor(0xE2, 0xEF, 0xE6);
  look.hatch = QColor(0x87, 0x8E, 0x95);
  look.attention = QColor(0xA6, 0x3D, 0x00);
  look.excluded = QColor(0x8A, 0x92, 0x99);
  look.highlight = QColor(0xFB, 0xE3, 0xC4);
  look.font = lookFont(12);
  return look;
}

RowsLook RowsLook::screenDark() {
  RowsLook look = screenLight();
  look.paper = QColor(0x16, 0x19, 0x1C);
  look.ink = QColor(0xEC, 0xEF, 0xF1);
  look.faintInk = QColor(0xAA, 0xB3, 0xBB);
  look.grid = QColor(0x4A, 0x52, 0x59);
  look.handsOn = QColor(0x6F, 0xA3, 0xCC);
  look.target = QColor(0x20, 0x34, 0x2B);
  look.hatch = QColor(0x62, 0x6B, 0x73);
  look.attention = QColor(0xFF, 0xA2, 0x66);
  look.excluded = QColor(0x80, 0x89, 0x91);
  look.highlight = QColor(0x55, 0x40, 0x22);
  return look;
}

RowsLook RowsLook::paperLook() {
  RowsLook look = screenLight();
  look.ink = QColor(Qt::black);
  look.faintInk = QColor(0x40, 0x46, 0x4B);
  look.handsOn = QColor(0x3C, 0x61, 0x82);
  look.hatch = QColor(0x8C, 0x93, 0x99);
  // Dark enough to print black.
  look.attention = QColor(0x86, 0x2E, 0x00);
  look.textSize = 7;
  look.rowHeight = 26;
  return look;
}

RowsPicture::RowsPicture(const Record& record, const Figures& figures, Translate translate)
    : model_(std::make_shared<const RowsModel>(
          makeRowsModel(record, figures, Words{std::move(translate)}))) {}

RowsPicture RowsPicture::asOneRow(const Interval& stretch) const {
  auto one = std::make_shared<RowsModel>(*model_);
  one->covered = one->span.value_or(Interval{stretch.begin, stretch.begin});
  one->span = stretch;
  one->rowLength = stretch.length();
  one->labels = {RowLabel{}};
  // It says what the rows before this one would show.
  std::erase_if(one->marks, [](const RowMark& mark) { return mark.kind == MarkKind::deviceOn; });
  return RowsPicture(std::shared_ptr<const RowsModel>(std::move(one)));
}

int RowsPicture::rowCount() const {
  return model_->rowCount();
}

Interval RowsPicture::row(int index) const {
  return model_->row(index);
}

double RowsPicture::heightFor(double width, const RowsLook& look, bool legend) const {
  return neededHeight(*model_, Lettering(look.font), width, look, legend, false);
}

double RowsPicture::leastHeightFor(double width, const RowsLook& look, bool legend) const {
  return neededHeight(*model_, Lettering(look.font), width, look, legend, true);
}

void RowsPicture::paint(QPainter& painter, const QRectF& area, const RowsLook& look,
                        const RowsOverlay& overlay, bool legend, bool fit) const {
  const RowsPlaced placed(*this, area, look, legend, fit);
  placed.paint(painter, overlay.working);
  placed.paintOverlay(painter, overlay);
}

std::optional<Time> RowsPicture::timeAt(const QPointF& point, const QRectF& area,
                                        const RowsLook& look, bool legend, bool fit) const {
  return RowsPlaced(*this, area, look, legend, fit).timeAt(point);
}

QRectF RowsPicture::rowRect(int index, const QRectF& area, const RowsLook& look, bool legend,
                            bool fit) const {
  return RowsPlaced(*this, area, look, legend, fit).rowRect(index);
}

} // namespace afterbeat::papers
