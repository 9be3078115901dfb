#include "app/papers/charts/chart_look.h"

#include "app/papers/handover_sheet.h"
#include "app/papers/rows.h"

namespace afterbeat::papers {

namespace {

/// Charts stand beside rows, in their colours.
ChartLook like(const RowsLook& rows) {
  ChartLook look;
  look.paper = rows.paper;
  look.ink = look.centre = rows.ink;
  look.faintInk = rows.faintInk;
  look.attention = rows.attention;
  look.font = QFont(QString::fromLatin1(kPaperFont));
  look.font.setPixelSize(13);
  return look;
}

} // namespace

ChartLook ChartLook::screenLight() {
  ChartLook look = like(RowsLook::screenLight());
  look.grid = QColor(0xDD, 0xE1, 0xE4);
  look.value = QColor(0x00, 0x66, 0xA1);
  look.attention = QColor(0xB0, 0x44, 0x00);
  look.band = QColor(0xE2, 0xEF, 0xE6);
  look.bandEdge = QColor(0x4E, 0x7A, 0x5E);
  look.highlight = QColor(0xD9, 0x8A, 0x1B);
  look.stages = {QColor(0x1F, 0x3A, 0x52), QColor(0xB9, 0xD3, 0xE6), QColor(0x2E, 0x6E, 0x9E),
                 QColor(0xE8, 0xD6, 0xB4), QColor(0x8A, 0x4B, 0x1C)};
  look.stageInk = {Qt::white, Qt::black, Qt::white, Qt::black, Qt::white};
  return look;
}

ChartLook ChartLook::screenDark() {
  ChartLook look = like(RowsLook::screenDark());
  look.grid = QColor(0x34, 0x3A, 0x40);
  look.value = QColor(0x6F, 0xB4, 0xE6);
  look.band = QColor(0x1E, 0x36, 0x2A);
  look.bandEdge = QColor(0x7F, 0xB8, 0x94);
  look.highlight = QColor(0xF2, 0xC0, 0x5A);
  look.stages = {QColor(0xC6, 0xDD, 0xEF), QColor(0x2A, 0x4D, 0x6B), QColor(0x7F, 0xB4, 0xDC),
                 QColor(0x6A, 0x4B, 0x22), QColor(0xF0, 0xB9, 0x87)};
  look.stageInk = {Qt::black, Qt::white, Qt::black, Qt::white, Qt::black};
  return look;
}

ChartLook ChartLook::paperLook() {
  ChartLook look = screenLight();
  look.ink = QColor(Qt::black);
  look.centre = QColor(Qt::black);
  look.faintInk = QColor(0x40, 0x46, 0x4B);
  look.grid = QColor(0xD2, 0xD7, 0xDA);
  look.value = QColor(0x00, 0x5A, 0x90);
  look.attention = QColor(0x86, 0x2E, 0x00);
  look.textSize = 8;
  return look;
}

} // namespace afterbeat::papers
