#include "app/papers/rows.h"

#include "app/papers/handover_sheet.h"
#include "app/papers/rows_layout.h"
#include "app/papers/rows_model.h"
#include "app/papers/rows_paint.h"

#include <QPainter>

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// A blank ground under words that lie on a hatch.
bool needsGround(TextRole role, RowDetail detail) {
  return (detail == RowDetail::dense && role == TextRole::circulation) || role == TextRole::pause ||
         role == TextRole::pauseBeyond || role == TextRole::excluded;
}

QColor colorOf(TextRole role, const RowsLook& look) {
  switch (role) {
  case TextRole::flagGiven:
    return look.paper;
  case TextRole::pauseBeyond:
    return look.attention;
  case TextRole::rowClock:
  case TextRole::legend:
    return look.faintInk;
  default:
    return look.ink;
  }
}

void paintFlag(QPainter& painter, const PlacedText& text, const RowsLook& look, double line) {
  painter.setRenderHint(QPainter::Antialiasing, true);
  if (text.role == TextRole::flagGiven) {
    painter.fillRect(text.box, look.ink);
    return;
  }
  painter.setBrush(look.paper);
  painter.setPen(QPen(look.ink, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.drawRect(text.box.adjusted(line / 2, line / 2, -line / 2, -line / 2));
}

void paintTexts(QPainter& painter, const RowsModel& model, const RowsLayout& layout,
                const Lettering& lettering, const RowsLook& look) {
  const double line = std::max(0.4, layout.geometry.sizes.small * 0.09);
  const auto items = legendItems(model);
  std::size_t legendItem = 0;
  for (const PlacedText& text : layout.texts) {
    if (needsGround(text.role, layout.geometry.sizes.detail)) {
      painter.fillRect(text.box, look.paper);
    } else if (text.role == TextRole::flagGiven || text.role == TextRole::flagHollow) {
      paintFlag(painter, text, look, line);
    } else if (text.role == TextRole::legend) {
      paintLegendShape(painter, text.box, items[legendItem++].shape, look, line);
    }
    lettering.paint(painter, text.at, text.text, text.size, text.weight, colorOf(text.role, look));
  }
}

void paintBreaths(QPainter& painter, const RowsLayout& layout, const RowsLook& look) {
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setBrush(look.paper);
  painter.setPen(QPen(look.ink, std::max(0.5, layout.geometry.sizes.small * 0.11)));
  for (const PlacedBreath& breath : layout.breaths) {
    painter.drawEllipse(breath.centre, breath.radius, breath.radius);
  }
}

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
  const Lettering lettering(look.font);
  RowsLayout layout = layOutRows(*model_, lettering, area, look, legend, fit);
  painter.save();
  // What a scrolled view does not show need not be painted.
  if (painter.hasClipping()) {
    const QRectF shown = painter.clipBoundingRect();
    std::erase_if(layout.texts, [&](const PlacedText& text) {
      return text.role != TextRole::legend && !text.box.intersects(shown);
    });
    std::erase_if(layout.geometry.rows, [&](const RowPlace& row) {
      return row.bottom < shown.top() || row.top > shown.bottom();
    });
  }
  RowPainter rows(painter, *model_, layout.geometry, look);
  for (const RowPlace& place : layout.geometry.rows) {
    rows.paintRow(place, overlay);
  }
  paintBreaths(painter, layout, look);
  paintTexts(painter, *model_, layout, lettering, look);
  painter.restore();
}

std::optional<Time> RowsPicture::timeAt(const QPointF& point, const QRectF& area,
                                        const RowsLook& look, bool legend, bool fit) const {
  if (!model_->span) {
    return std::nullopt;
  }
  const RowsGeometry geometry =
      layOutGeometry(*model_, Lettering(look.font), area, look, legend, fit);
  if (point.x() < geometry.left || point.x() > geometry.left + geometry.width) {
    return std::nullopt;
  }
  const auto row =
      std::find_if(geometry.rows.begin(), geometry.rows.end(), [&](const RowPlace& place) {
        return point.y() >= place.top && point.y() < place.bottom;
      });
  if (row == geometry.rows.end()) {
    return std::nullopt;
  }
  const double share = (point.x() - geometry.left) / geometry.width;
  const Time t = model_->row(row->index).begin +
                 Duration{std::llround(share * static_cast<double>(kRowLength.count()))};
  return t <= model_->span->end ? std::optional<Time>(t) : std::nullopt;
}

QRectF RowsPicture::rowRect(int index, const QRectF& area, const RowsLook& look, bool legend,
                            bool fit) const {
  if (!model_->span) {
    return {};
  }
  const RowsGeometry geometry =
      layOutGeometry(*model_, Lettering(look.font), area, look, legend, fit);
  const RowPlace* place = geometry.place(index);
  return place != nullptr ? place->band : QRectF();
}

} // namespace afterbeat::papers
