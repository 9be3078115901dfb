#include "app/window/look/look.h"

#include "app/papers/rows.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace afterbeat::window {
namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

/// How somebody sees. The matrices are those of Machado, Oliveira and Fernandes, "A
/// physiologically-based model for simulation of color vision deficiency", IEEE Transactions on
/// Visualization and Computer Graphics 2009;15:1291-1298, at severity 1, for linear RGB.
struct Sight {
  const char* name;
  Matrix matrix;
};
constexpr std::array<Sight, 3> kSights{{
    {"usual", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
    {"protanopia",
     {{{0.152286, 1.052583, -0.204868},
       {0.114503, 0.786281, 0.099216},
       {-0.003882, -0.048116, 1.051998}}}},
    {"deuteranopia",
     {{{0.367322, 0.860646, -0.227968},
       {0.280085, 0.672501, 0.047413},
       {-0.011820, 0.042940, 0.968881}}}},
}};

/// The least distance of two colours that mean different things. No source: common practice is to
/// ask for far more than the 2.3 that can just be told apart side by side.
constexpr double kApart = 20;

double linear(double c) {
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

Triple times(const Matrix& matrix, const Triple& v) {
  Triple out{};
  for (std::size_t i = 0; i < 3; ++i) {
    out[i] = matrix[i][0] * v[0] + matrix[i][1] * v[1] + matrix[i][2] * v[2];
  }
  return out;
}

/// CIE L*a*b* of what `sight` makes of a colour (sRGB, D65).
Triple labOf(const QColor& color, const Sight& sight) {
  Triple rgb =
      times(sight.matrix, {linear(color.redF()), linear(color.greenF()), linear(color.blueF())});
  for (double& c : rgb) {
    c = std::clamp(c, 0.0, 1.0);
  }
  constexpr Matrix kXyz{
      {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
  const Triple xyz = times(kXyz, rgb);
  const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116; };
  const double x = f(xyz[0] / 0.95047), y = f(xyz[1]), z = f(xyz[2] / 1.08883);
  return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double distance(const QColor& a, const QColor& b, const Sight& sight) {
  const Triple one = labOf(a, sight), other = labOf(b, sight);
  return std::hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

struct Palette {
  const char* name;
  papers::RowsLook rows;
};
std::vector<Palette> palettes() {
  return {{"light", Look::of(ownPalette(false), QFont()).rows},
          {"dark", Look::of(ownPalette(true), QFont()).rows},
          {"paper", papers::RowsLook::paperLook()}};
}

TEST(Palette, TheSimulationKeepsGreysAndMergesRedWithGreen) {
  for (const Sight& sight : kSights) {
    EXPECT_LT(distance(QColor(128, 128, 128), QColor(128, 128, 128), sight), 1e-9);
    // A grey stays a grey: rows of the matrices sum to one.
    const Triple grey = labOf(QColor(128, 128, 128), sight);
    EXPECT_NEAR(grey[1], 0, 0.5) << sight.name;
    EXPECT_NEAR(grey[2], 0, 0.5) << sight.name;
  }
  // L*a*b* of sRGB red (D65) is published as 53.24, 80.09, 67.20.
  const Triple red = labOf(QColor(255, 0, 0), kSights[0]);
  EXPECT_NEAR(red[0], 53.24, 0.05);
  EXPECT_NEAR(red[1], 80.09, 0.1);
  EXPECT_NEAR(red[2], 67.20, 0.1);
  // A red and a green of the same lightness are far apart for most, and one colour for some.
  const QColor brick(178, 86, 60), moss(106, 122, 50);
  EXPECT_GT(distance(brick, moss, kSights[0]), 45);
  EXPECT_LT(distance(brick, moss, kSights[2]), 25);
}

TEST(Palette, WordsOfTheRowsReachTheContrastOfText) {
  for (const Palette& palette : palettes()) {
    const papers::RowsLook& rows = palette.rows;
    for (const QColor& text : {rows.ink, rows.faintInk, rows.attention}) {
      for (const QColor& ground : {rows.paper, rows.highlight}) {
        EXPECT_GE(contrast(text, ground), 4.5) << palette.name << ": " << text.name().toStdString()
                                               << " on " << ground.name().toStdString();
      }
    }
    // Words on a flag of a shock that was given.
    EXPECT_GE(contrast(rows.paper, rows.ink), 7) << palette.name;
  }
}

TEST(Palette, ShapesWithAMeaningStandOutFromTheirPaper) {
  for (const Palette& palette : palettes()) {
    const papers::RowsLook& rows = palette.rows;
    const std::pair<const char*, QColor> shapes[] = {{"hands on", rows.handsOn},
                                                     {"hands off", rows.hatch},
                                                     {"excluded", rows.excluded},
                                                     {"beyond a limit", rows.attention},
                                                     {"shock and analysis", rows.ink}};
    for (const auto& [name, color] : shapes) {
      EXPECT_GE(contrast(color, rows.paper), 3) << palette.name << ": " << name;
    }
    // The band lies over the target and over the working as well.
    EXPECT_GE(contrast(rows.handsOn, rows.target), 3) << palette.name;
    EXPECT_GE(contrast(rows.handsOn, rows.highlight), 3) << palette.name;
  }
  for (const bool dark : {false, true}) {
    const Look look = Look::of(ownPalette(dark), QFont());
    EXPECT_GE(contrast(look.wave, look.paper), 3);
    EXPECT_GE(contrast(look.accent, look.paper), 3);
    EXPECT_GE(contrast(look.accent, look.accentSoft), 3);
  }
}

TEST(Palette, ColoursWithAMeaningAreToldApartByEverySight) {
  for (const Palette& palette : palettes()) {
    const papers::RowsLook& rows = palette.rows;
    // "hands off" and "excluded" are the same grey: one is hatched, the other crossed.
    const std::vector<std::pair<const char*, QColor>> meanings{{"hands on", rows.handsOn},
                                                               {"hands off", rows.hatch},
                                                               {"beyond a limit", rows.attention},
                                                               {"ink", rows.ink},
                                                               {"paper", rows.paper}};
    for (const Sight& sight : kSights) {
      for (std::size_t i = 0; i < meanings.size(); ++i) {
        for (std::size_t j = i + 1; j < meanings.size(); ++j) {
          EXPECT_GE(distance(meanings[i].second, meanings[j].second, sight), kApart)
              << palette.name << ", " << sight.name << ": " << meanings[i].first << " and "
              << meanings[j].first;
        }
      }
    }
  }
  for (const bool dark : {false, true}) {
    const Look look = Look::of(ownPalette(dark), QFont());
    for (const Sight& sight : kSights) {
      EXPECT_GE(distance(look.accent, look.attention, sight), kApart) << sight.name;
      EXPECT_GE(distance(look.accent, look.ink, sight), kApart) << sight.name;
      EXPECT_GE(distance(look.attention, look.ink, sight), kApart) << sight.name;
    }
  }
}

TEST(Palette, WhatPrintsBlackIsStillToldApart) {
  // Grey values, 0 black to 100 white, of what lies side by side on a sheet from a mono printer.
  const papers::RowsLook paper = papers::RowsLook::paperLook();
  const auto grey = [](const QColor& color) { return labOf(color, kSights[0])[0]; };
  EXPECT_GE(grey(paper.paper) - grey(paper.handsOn), 40);
  EXPECT_GE(grey(paper.handsOn) - grey(paper.ink), 20);
  EXPECT_LE(grey(paper.attention), 35);
}

} // namespace
} // namespace afterbeat::window
