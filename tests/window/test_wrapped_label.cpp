/// Sentences that remember how high they are say so of what they are now.
#include "app/window/look/wrapped_label.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>

namespace afterbeat::window {
namespace {

const QString kSentences =
    QStringLiteral("Hands-off time divided by the time without circulation (no-flow fraction). "
                   "Hands off counts as a pause when longer than 0.5 s, and then in full.");

/// Both labels in all of these widths, twice, so that what is remembered counts too.
void expectSameHeights(const WrappedLabel& label, const QLabel& plain) {
  for (int round = 0; round < 2; ++round) {
    for (int width = 60; width <= 600; width += 45) {
      EXPECT_EQ(label.heightForWidth(width), plain.heightForWidth(width)) << width;
    }
  }
}

template <typename Change>
void changeBoth(WrappedLabel& label, QLabel& plain, const Change& change) {
  // Asked just before, so that something is remembered of what is to change.
  const int before = label.heightForWidth(240);
  change(label);
  change(plain);
  EXPECT_NE(plain.heightForWidth(240), before) << "the change is none";
  expectSameHeights(label, plain);
}

TEST(WrappedLabel, IsAsHighAsAPlainLabelWhateverChanges) {
  for (const bool selectable : {false, true}) {
    WrappedLabel label;
    QLabel plain;
    plain.setWordWrap(true);
    plain.setTextFormat(Qt::PlainText);
    if (selectable) {
      label.setTextInteractionFlags(Qt::TextSelectableByMouse);
      plain.setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    label.show();
    plain.show();
    const auto both = [&](const auto& change) { changeBoth(label, plain, change); };
    both([](QLabel& one) { one.setText(kSentences); });
    both([](QLabel& one) { one.setText(kSentences + QLatin1Char(' ') + kSentences); });
    both([](QLabel& one) {
      QFont large = one.font();
      large.setPointSizeF(large.pointSizeF() * 1.7);
      one.setFont(large);
    });
    both([](QLabel& one) { one.setContentsMargins(16, 8, 16, 8); });
    both([](QLabel& one) { one.setMargin(21); });
    both([](QLabel& one) { one.setIndent(60); });
    both([](QLabel& one) { one.setStyleSheet(QStringLiteral("font-size: 31px")); });
    both([](QLabel& one) { one.setText(QStringLiteral("No figure is chosen")); });
    both([](QLabel& one) { one.clear(); });
  }
}

TEST(WrappedLabel, HearsOfTheProgramsFont) {
  const QFont before = QApplication::font();
  WrappedLabel label;
  QLabel plain;
  plain.setWordWrap(true);
  label.setText(kSentences);
  plain.setText(kSentences);
  label.show();
  plain.show();
  const int small = label.heightForWidth(240);
  QFont large = before;
  large.setPointSizeF(before.pointSizeF() * 2);
  QApplication::setFont(large);
  QCoreApplication::processEvents();
  EXPECT_GT(label.heightForWidth(240), small);
  expectSameHeights(label, plain);
  QApplication::setFont(before);
  QCoreApplication::processEvents();
  expectSameHeights(label, plain);
}

} // namespace
} // namespace afterbeat::window
