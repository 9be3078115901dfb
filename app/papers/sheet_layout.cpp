#include "app/papers/sheet_layout.h"

#include "app/papers/facts.h"
#include "app/papers/sheet_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace afterbeat::papers {

namespace {

constexpr double kMarginX = 40;
constexpr double kMarginTop = 26;
constexpr double kMarginBottom = 22;
constexpr double kBody = 10;
constexpr double kLine = 1.42;
constexpr double kLabelColumn = 92;
/// Less cannot be written on.
constexpr double kShortestLine = 70;
/// What the reader needs first is set in this size, and never smaller than the second.
constexpr double kFold = 30;
constexpr double kSmallestFold = 24;
/// The sheet is set smaller until the rows have this much, or all they want.
constexpr double kRoomForRows = 250;
constexpr double kSmallestScale = 0.76;
/// A long rescue may ask for this much before rows are left out.
constexpr double kMostForRows = 320;

QFont paperFont() {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(10);
  return font;
}

} // namespace

SheetLayout::SheetLayout(const SheetContent& content, const RowsPicture& rows, const Words& say,
                         const QSizeF& page)
    : content_(content), picture_(rows), say_(say), lettering_(paperFont()), left_(kMarginX),
      right_(page.width() - kMarginX) {
  page_.size = page;
}

void SheetLayout::write(SheetRole role, double left, double baseline, const QString& text,
                        double size, Weight weight, SheetInk ink) {
  if (text.isEmpty()) {
    return;
  }
  constexpr double kAbove = 0.78;
  constexpr double kBelow = 0.22;
  const QRectF box(left, baseline - size * kAbove, lettering_.width(text, size, weight),
                   size * (kAbove + kBelow));
  page_.texts.push_back({role, text, box, {left, baseline}, size, weight, ink});
}

void SheetLayout::rule(double left, double right, double y, double width, SheetInk ink) {
  page_.rules.push_back({false, QLineF(left, y, right, y), width, ink});
}

void SheetLayout::toFill(double left, double right, double y) {
  page_.rules.push_back({true, QLineF(left, y, right, y), 0.6, SheetInk::faint});
}

double SheetLayout::paragraph(SheetRole role, const QString& text, double left, double top,
                              double width, double size, Weight weight, SheetInk ink, int most) {
  for (const QString& line : wrapped(lettering_, text, size, weight, width, most)) {
    write(role, left, top + size * 1.06, line, size, weight, ink);
    top += size * kLine;
  }
  return top;
}

/// Across the page, white on black, beside the text and never over it.
double SheetLayout::bands(double top) {
  constexpr double kHeight = 19;
  constexpr double kSize = 12.5;
  if (content_.bands.isEmpty()) {
    return top;
  }
  // One bar for all of them: the page's height belongs to the rows.
  const QString text = content_.bands.join(QStringLiteral("   ·   "));
  page_.boxes.push_back({true, QRectF(0, top, page_.size.width(), kHeight), 0});
  const double wide = lettering_.width(text, kSize, Weight::bold);
  write(SheetRole::band, (page_.size.width() - wide) / 2, top + kHeight / 2 + 4.6, text, kSize,
        Weight::bold, SheetInk::white);
  return top + kHeight;
}

double SheetLayout::dateAndPlace(double left, double top) {
  const double size = scaled(9.5);
  const auto atRight = [&](const QString& text, double letters, Weight weight, SheetInk ink) {
    write(SheetRole::head, right_ - lettering_.width(text, letters, weight), top + letters, text,
          letters, weight, ink);
    top += letters * 1.4;
  };
  if (content_.date.isEmpty()) {
    top = blanks({content_.labelOfDate}, left, right_, top);
  } else {
    atRight(content_.date, size, Weight::bold, SheetInk::black);
  }
  if (content_.site.isEmpty()) {
    top = blanks({content_.labelOfPlace}, left, right_, top);
  } else {
    for (const QString& line :
         wrapped(lettering_, content_.site, size, Weight::regular, right_ - left, 2)) {
      atRight(line, size, Weight::regular, SheetInk::black);
    }
  }
  const double small = size * 0.9;
  if (!content_.recordLine.isEmpty()) {
    atRight(lettering_.elided(content_.recordLine, small, Weight::regular, right_ - left), small,
            Weight::regular, SheetInk::faint);
  }
  return top;
}

double SheetLayout::header(double top) {
  const double size = scaled(22);
  write(SheetRole::head, left_, top + size * 0.9, content_.title, size, Weight::bold);
  const double middle = left_ + std::max(lettering_.width(content_.title, size, Weight::bold) + 12,
                                         (right_ - left_) * 0.52);
  const double left =
      paragraph(SheetRole::head, content_.subtitle, left_, top + size * 1.15, middle - left_ - 12,
                scaled(9.5), Weight::regular, SheetInk::faint, 2);
  return std::max(left, dateAndPlace(middle, top)) + scaled(5);
}

/// One cell of the fold: a title, a large value or a line for the pen, and small notes.
double SheetLayout::figure(const SheetFigure& figure, bool large, const QRectF& room,
                           double label) {
  const double note = std::max(7.0, scaled(8.5));
  double y = room.top() + label * 1.25;
  write(SheetRole::figureTitle, room.left(), y, figure.title, label, Weight::medium);
  const double size = std::max(kSmallestFold, scaled(kFold));
  if (figure.value.isEmpty()) {
    y += size;
    toFill(room.left(), room.right(), y);
    write(SheetRole::figureNote, room.left(), y + note * 1.35, figure.unknown, note,
          Weight::medium);
    y += figure.unknown.isEmpty() ? 0 : note * 1.35;
  } else {
    if (!figure.doubt.isEmpty() && !figure.doubtAfter) {
      const double doubt =
          std::min(size * 0.5, room.width() / lettering_.width(figure.doubt, 1, Weight::bold));
      y += doubt * 1.2;
      write(SheetRole::figureDoubt, room.left(), y, figure.doubt, doubt, Weight::bold);
    }
    const double wide = lettering_.width(figure.value, 1, Weight::bold);
    const double fits = std::min({size, room.width() / wide, large ? size : kSmallestFold * 0.9});
    y += size * 0.98;
    write(SheetRole::figureValue, room.left(), y, figure.value, fits, Weight::bold);
    if (figure.doubtAfter) {
      const double from = room.left() + wide * fits + note;
      const double doubt = std::min(
          size * 0.5, (room.right() - from) / lettering_.width(figure.doubt, 1, Weight::bold));
      write(SheetRole::figureDoubt, from, y, figure.doubt, doubt, Weight::bold);
    }
    y += size * 0.14;
  }
  // Whole notes only, the most important first: half a warning is none.
  constexpr qsizetype kMostLines = 7;
  qsizetype used = 0;
  for (const QString& text : figure.notes) {
    const QStringList lines = wrapped(lettering_, text, note, Weight::regular, room.width(), 2);
    used += lines.size();
    for (const QString& line : used <= kMostLines ? lines : QStringList()) {
      y += note * 1.3;
      write(SheetRole::figureNote, room.left(), y, line, note, Weight::regular);
    }
  }
  return y + note * 0.75;
}

double SheetLayout::foldLine(std::size_t first, std::size_t count, const double* shares,
                             double top) {
  constexpr double kPad = 7;
  constexpr std::size_t kSetting = 3;
  std::vector<double> edges;
  double x = left_;
  double bottom = top;
  // One size for all titles of a line.
  double label = std::max(8.0, scaled(9));
  for (std::size_t i = 0; i < count; ++i) {
    const double room = (right_ - left_) * shares[i] - 2 * kPad;
    const QString& title = content_.figures[first + i].title;
    label = std::min(label, room / lettering_.width(title, 1, Weight::medium));
  }
  for (std::size_t i = 0; i < count; ++i) {
    const double wide = (right_ - left_) * shares[i];
    const std::size_t which = first + i;
    bottom = std::max(bottom, figure(content_.figures[which], which != kSetting,
                                     QRectF(x + kPad, top, wide - 2 * kPad, 0), label));
    x += wide;
    edges.push_back(x);
  }
  edges.pop_back();
  for (const double edge : edges) {
    page_.rules.push_back({false, QLineF(edge, top, edge, bottom), 0.8, SheetInk::black});
  }
  return bottom;
}

/// What a crew asks in the first ten seconds, framed, in two lines.
double SheetLayout::fold(double top) {
  constexpr std::array<double, 4> kUpper{0.267, 0.2, 0.3, 0.233};
  constexpr std::array<double, 2> kLower{0.42, 0.58};
  const double middle = foldLine(0, kUpper.size(), kUpper.data(), top);
  rule(left_, right_, middle, 0.8);
  const double bottom = foldLine(kUpper.size(), kLower.size(), kLower.data(), middle);
  page_.boxes.push_back({false, QRectF(left_, top, right_ - left_, bottom - top), 1.8});
  return bottom + scaled(8);
}

/// Framed and bold: nothing here may be overlooked.
double SheetLayout::notices(double top) {
  if (content_.notices.isEmpty()) {
    return top;
  }
  const double size = scaled(9.5);
  const double pad = scaled(5);
  double y = top + pad;
  for (const QString& notice : content_.notices) {
    y = paragraph(SheetRole::notice, notice, left_ + pad * 1.6, y, right_ - left_ - pad * 3.2, size,
                  Weight::bold, SheetInk::black, 2);
  }
  y = ticks(left_ + pad * 1.6, y);
  y += pad * 0.5;
  page_.boxes.push_back({false, QRectF(left_, top, right_ - left_, y - top), 1.2});
  return y + scaled(6);
}

/// Words with an empty box before each.
double SheetLayout::ticks(double left, double top) {
  if (content_.ticks.isEmpty()) {
    return top;
  }
  const double size = scaled(kBody);
  for (const QString& words : content_.ticks) {
    page_.boxes.push_back({false, QRectF(left, top + size * 0.2, size, size), 0.8});
    write(SheetRole::label, left + size * 1.5, top + size * 1.06, words, size, Weight::regular);
    left += size * 3.5 + lettering_.width(words, size, Weight::regular);
  }
  return top + size * 1.6;
}

double SheetLayout::blanks(const QStringList& labels, double left, double right, double top) {
  const double size = scaled(kBody * 0.95);
  const double each = (right - left) / static_cast<double>(std::max<qsizetype>(1, labels.size()));
  const double base = top + size * 1.15;
  const bool tooShort = std::any_of(labels.begin(), labels.end(), [&](const QString& label) {
    return each - lettering_.width(label, size, Weight::regular) - 15 < kShortestLine;
  });
  if (tooShort && labels.size() > 1) {
    const qsizetype half = labels.size() / 2;
    return blanks(labels.mid(half), left, right, blanks(labels.mid(0, half), left, right, top));
  }
  for (qsizetype i = 0; i < labels.size(); ++i) {
    const double from = left + each * static_cast<double>(i);
    write(SheetRole::label, from, base, labels[i], size, Weight::regular, SheetInk::faint);
    toFill(from + lettering_.width(labels[i], size, Weight::regular) + 5,
           from + each - (i + 1 < labels.size() ? 10 : 0), base + 1.5);
  }
  return top + size * 1.72;
}

/// What is known and the lines for the rest beside it where there is room, else below each other.
double SheetLayout::knownAndBlanks(const SheetLine& line, double left, double top) {
  const double size = scaled(kBody);
  const double wide = lettering_.width(line.text, size, Weight::regular);
  const bool beside = wide < (right_ - left) * 0.45;
  if (!line.text.isEmpty() && beside) {
    write(SheetRole::text, left, top + size * 1.06, line.text, size, Weight::regular);
    return blanks(line.blanks, left + wide + 14, right_, top);
  }
  const double y = blanks(line.blanks, left, right_, top);
  return line.text.isEmpty() ? y
                             : paragraph(SheetRole::text, line.text, left, y, right_ - left, size,
                                         Weight::regular, SheetInk::black, 2);
}

double SheetLayout::section(const SheetSection& section, double top) {
  const double size = scaled(kBody);
  const double column = left_ + kLabelColumn;
  write(SheetRole::section, left_, top + size * 1.06, section.title, size, Weight::bold);
  double y = top;
  for (const SheetLine& line : section.lines) {
    if (line.kind == SheetLine::Kind::blank) {
      y = knownAndBlanks(line, column, y);
    } else {
      const Weight weight = line.kind == SheetLine::Kind::strong ? Weight::bold : Weight::regular;
      y = paragraph(SheetRole::text, line.text, column, y, right_ - column, size, weight,
                    SheetInk::black, 3);
    }
  }
  return std::max(y, top + size * kLine);
}

double SheetLayout::sections(double top) {
  for (const SheetSection& one : content_.sections) {
    top = section(one, top) + scaled(2.5);
    rule(left_, right_, top, 0.4, SheetInk::faint);
    top += scaled(2.5);
  }
  return top;
}

double SheetLayout::footer(double top) {
  const double small = std::max(6.4, scaled(8));
  const double tiny = std::max(5.6, scaled(6.6));
  double y = top;
  if (!content_.device.lines.empty()) {
    y = section(content_.device, top) + scaled(3);
  }
  rule(left_, right_, y, 1);
  y += scaled(3);
  const double width = right_ - left_;
  y = paragraph(SheetRole::footer, content_.caution, left_, y, width, scaled(9.5), Weight::bold,
                SheetInk::black, 2);
  y = paragraph(SheetRole::footer, content_.notes.join(QLatin1Char(' ')), left_, y, width, small,
                Weight::regular, SheetInk::black, 5);
  y = paragraph(SheetRole::footer, content_.made, left_, y + 1, width, tiny * 1.12, Weight::regular,
                SheetInk::faint, 2);
  if (!content_.checksum.isEmpty()) {
    y = paragraph(SheetRole::footer, content_.checksum, left_, y, width, tiny, Weight::regular,
                  SheetInk::faint, 1);
  }
  return y;
}

double SheetLayout::fixedHeight(double scale) {
  const SheetPage kept = page_;
  page_.scale = scale;
  const double upper = sections(notices(fold(header(bands(0)))));
  const double all = kMarginTop + upper + footer(0) + bands(0) + kMarginBottom;
  page_ = kept;
  return all;
}

void SheetLayout::chooseScale() {
  double wanted = 60; // for the pen
  if (content_.hasRows) {
    const RowsLook look = RowsLook::paperLook();
    const double all = picture_.heightFor(right_ - left_, look, true) + scaled(26);
    const double least = picture_.leastHeightFor(right_ - left_, look, true) + scaled(26);
    wanted = std::min(all, std::clamp(least, kRoomForRows, kMostForRows));
  }
  double scale = 1;
  while (scale > kSmallestScale && page_.size.height() - fixedHeight(scale) < wanted) {
    scale -= 0.04;
  }
  page_.scale = scale;
}

void SheetLayout::rows(const QRectF& whole) {
  const double top = paragraph(SheetRole::caption, content_.rowsCaption, whole.left(), whole.top(),
                               whole.width(), scaled(8.5), Weight::medium, SheetInk::black, 1);
  const QRectF room(whole.left(), top + 2, whole.width(), whole.bottom() - top - 2);
  page_.rowsLook = RowsLook::paperLook();
  struct Size {
    double text, row;
  };
  for (const Size size : {Size{8.5, 40}, Size{8, 34}, Size{7.5, 29}, Size{7, 25}}) {
    page_.rowsLook.textSize = size.text;
    page_.rowsLook.rowHeight = size.row;
    const double height = picture_.heightFor(room.width(), page_.rowsLook, true);
    if (height <= room.height()) {
      page_.rows = QRectF(room.left(), room.top(), room.width(), height);
      remarks(QRectF(room.left(), room.top() + height, room.width(), room.height() - height));
      return;
    }
  }
  page_.rows = room;
  page_.rowsFit = true;
}

/// What the rows leave free is given to the pen.
void SheetLayout::remarks(const QRectF& room) {
  constexpr double kSpacing = 21;
  constexpr int kMost = 14;
  const int lines = std::min(kMost, static_cast<int>((room.height() - 8) / kSpacing));
  for (int i = 0; i < lines; ++i) {
    const double y = room.top() + 10 + i * kSpacing;
    if (i == 0) {
      blanks({say_(QT_TRANSLATE_NOOP("Papers", "Remarks"))}, left_, right_, y);
    } else {
      toFill(left_, right_, y + scaled(kBody * 0.95) * 1.15 + 1.5);
    }
  }
}

SheetPage SheetLayout::made() {
  chooseScale();
  const SheetPage blank = page_;
  const double footerHeight = footer(0);
  const double bandHeight = bands(0);
  page_ = blank;
  const double top = sections(notices(fold(header(bands(0) + kMarginTop))));
  const double bottom = page_.size.height() - kMarginBottom - bandHeight - footerHeight;
  const QRectF room(left_, top + scaled(3), right_ - left_, bottom - top - scaled(8));
  if (content_.hasRows) {
    rows(room);
  } else {
    remarks(room);
  }
  footer(bottom);
  bands(page_.size.height() - bandHeight);
  return page_;
}

} // namespace afterbeat::papers
