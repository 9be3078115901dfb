/// Colours and type of the window, from the system's palette: light and dark follow the system.
#pragma once

#include "app/papers/handover_sheet.h"
#include "app/papers/rows.h"
#include "app/papers/words.h"

#include <QColor>
#include <QFont>
#include <QPalette>

namespace afterbeat::window {

/// Whether text of this palette is lighter than its background.
[[nodiscard]] bool isDark(const QPalette& palette);

/// Colours with a meaning. All text colours reach a contrast of 4.5 on `paper` and on `panel`
/// (WCAG 2.2 AA); tested.
struct Look {
  bool dark = false;
  /// Behind the rows and waves, and behind strips and side panels.
  QColor paper, panel;
  QColor ink, faintInk, line;
  /// The chosen thing: frame and soft fill.
  QColor accent, accentSoft;
  /// Beyond a target or limit; always with a word or weight as well.
  QColor attention;
  /// Lines of the waves.
  QColor wave, waveGrid;
  /// Marks of drills and synthetic data.
  QColor badge, badgeInk;
  papers::RowsLook rows;

  [[nodiscard]] static Look of(const QPalette& palette, const QFont& font);
};

/// The program's family where it is installed, else the system's; never smaller than 10 points.
[[nodiscard]] QFont programFont(const QFont& system);

/// The palette of the program's own light or dark appearance, for those who do not follow the
/// system.
[[nodiscard]] QPalette ownPalette(bool dark);

/// Numbers and words of the window's language.
[[nodiscard]] const papers::Words& words();

/// Contrast of two colours after WCAG 2.2: 1 to 21.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace afterbeat::window
