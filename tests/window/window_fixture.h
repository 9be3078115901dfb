/// A window with a record in it.
#pragma once

#include "app/window/figures/headline_card.h"
#include "app/window/figures/headline_strip.h"
#include "app/window/figures/measures_list.h"
#include "app/window/figures/working_panel.h"
#include "app/window/finding/happenings_view.h"
#include "app/window/finding/stepping.h"
#include "app/window/problems/problems_view.h"
#include "app/window/rows/rows_view.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/shell/header_strip.h"
#include "app/window/shell/lower_area.h"
#include "app/window/shell/main_window.h"
#include "app/window/shell/notice_bar.h"
#include "app/window/shell/pages.h"
#include "app/window/shell/places_page.h"
#include "app/window/shell/record_page.h"
#include "app/window/shell/side_panel.h"
#include "app/window/tables/tables_view.h"
#include "app/window/waves/waves_plot.h"
#include "app/window/waves/waves_view.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>

namespace afterbeat::window {

class WindowTest : public testing::Test {
protected:
  static constexpr int kPatience = 20'000;

  WindowTest();
  /// Path of a sample that comes with the program.
  [[nodiscard]] static QString sample(const char* name);
  /// Writes a file into the test's folder.
  QString fileWith(const char* name, const QByteArray& bytes) const;
  /// Opens a file and waits for the complete picture (or the page that refuses) and the hints.
  void open(const QString& path);
  /// Waits for rhythm hints that are being made.
  void untilHints();
  /// Waits until the figures were computed again after `does`.
  void untilFiguresChange(const std::function<void()>& does);
  [[nodiscard]] static Time at(double s) { return *timeFromSeconds(s); }

  QTemporaryDir folder_;
  MainWindow window_;
  RecordPage* page_;
};

/// A small drill of two shocks and two runs of compressions, without an `end` line.
[[nodiscard]] QByteArray smallDrill();

} // namespace afterbeat::window
