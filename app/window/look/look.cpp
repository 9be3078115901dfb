#include "app/window/look/look.h"

#include <QFontDatabase>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

double luminance(const QColor& color) {
  const auto linear = [](double c) {
    return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) +
         0.0722 * linear(color.blueF());
}

Look lightLook() {
  Look look;
  look.paper = QColor("#ffffff");
  look.panel = QColor("#f3f4f5");
  look.ink = QColor("#16191c");
  look.faintInk = QColor("#565d64");
  look.line = QColor("#d5d9dc");
  look.accent = QColor("#1f6391");
  look.accentSoft = QColor("#e6eff6");
  look.attention = QColor("#a8410a");
  look.wave = QColor("#16191c");
  look.waveGrid = QColor("#e9ebed");
  look.badge = QColor("#16191c");
  look.badgeInk = QColor("#ffffff");
  look.rows = papers::RowsLook::screenLight();
  return look;
}

Look darkLook() {
  Look look;
  look.dark = true;
  look.paper = QColor("#15181b");
  look.panel = QColor("#1f2327");
  look.ink = QColor("#eceef0");
  look.faintInk = QColor("#a7afb7");
  look.line = QColor("#3a4046");
  look.accent = QColor("#6db3e2");
  look.accentSoft = QColor("#1d3345");
  look.attention = QColor("#f2a15f");
  look.wave = QColor("#eceef0");
  look.waveGrid = QColor("#282d32");
  look.badge = QColor("#eceef0");
  look.badgeInk = QColor("#15181b");
  look.rows = papers::RowsLook::screenDark();
  // The target is seen on a dark screen as well.
  look.rows.target = QColor("#2c5642");
  return look;
}

} // namespace

bool isDark(const QPalette& palette) {
  return luminance(palette.color(QPalette::WindowText)) >
         luminance(palette.color(QPalette::Window));
}

double contrast(const QColor& a, const QColor& b) {
  const double one = luminance(a) + 0.05, other = luminance(b) + 0.05;
  return std::max(one, other) / std::min(one, other);
}

Look Look::of(const QPalette& palette, const QFont& font) {
  Look look = isDark(palette) ? darkLook() : lightLook();
  look.rows.font = font;
  look.rows.paper = look.paper;
  return look;
}

QFont programFont(const QFont& system) {
  constexpr double kSmallest = 10;
  QFont font = system;
  if (QFontDatabase::hasFamily(papers::kPaperFont)) {
    font.setFamily(papers::kPaperFont);
  }
  if (font.pointSizeF() < kSmallest) {
    font.setPointSizeF(kSmallest);
  }
  return font;
}

QPalette ownPalette(bool dark) {
  const Look look = dark ? darkLook() : lightLook();
  QPalette palette(look.ink, look.panel, look.panel.lighter(130), look.line, look.faintInk,
                   look.ink, look.paper);
  palette.setColor(QPalette::Window, look.panel);
  palette.setColor(QPalette::Button, look.panel);
  palette.setColor(QPalette::ButtonText, look.ink);
  palette.setColor(QPalette::BrightText, look.ink);
  palette.setColor(QPalette::AlternateBase, look.panel);
  palette.setColor(QPalette::Highlight, look.accent);
  palette.setColor(QPalette::HighlightedText, look.paper);
  palette.setColor(QPalette::ToolTipBase, look.panel);
  palette.setColor(QPalette::ToolTipText, look.ink);
  palette.setColor(QPalette::PlaceholderText, look.faintInk);
  palette.setColor(QPalette::Link, look.accent);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, look.faintInk);
  }
  return palette;
}

const papers::Words& words() {
  static const papers::Words instance(papers::inOwnLanguage);
  return instance;
}

} // namespace afterbeat::window
