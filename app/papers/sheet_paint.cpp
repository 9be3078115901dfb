#include "app/papers/sheet_paint.h"

#include "app/papers/facts.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <array>

namespace afterbeat::papers {

namespace {

constexpr double kMarginX = 40;
constexpr double kMarginTop = 30;
constexpr double kMarginBottom = 26;
constexpr double kBody = 10;
constexpr double kLine = 1.42;
constexpr double kLabelColumn = 92;
/// The sheet is set smaller until the rows have this much, or all they want.
constexpr double kRoomForRows = 250;
constexpr double kSmallestScale = 0.8;
/// A long rescue may ask for this much before rows are left out.
constexpr double kMostForRows = 330;

QFont paperFont() {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(10);
  return font;
}

} // namespace

/// Facts joined by dots, none of them broken; more lines than `most` if need be.
static QStringList wrappedAtDots(const Lettering& lettering, const QString& text, double size,
                                 Weight weight, double width) {
  QStringList lines;
  for (const QString& fact : text.split(QStringLiteral(" · "))) {
    const QString longer = lines.isEmpty() ? fact : lines.last() + QStringLiteral(" · ") + fact;
    if (!lines.isEmpty() && lettering.width(longer, size, weight) <= width) {
      lines.last() = longer;
    } else {
      lines << fact;
    }
  }
  return lines;
}

QStringList wrapped(const Lettering& lettering, const QString& text, double size, Weight weight,
                    double width, int most) {
  const QStringList facts = wrappedAtDots(lettering, text, size, weight, width);
  if (facts.size() <= most && std::all_of(facts.begin(), facts.end(), [&](const QString& line) {
        return lettering.width(line, size, weight) <= width;
      })) {
    return facts;
  }
  QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  // A dot between two facts belongs to the line it ends.
  for (qsizetype i = 1; i < words.size(); ++i) {
    if (words[i] == QStringLiteral("·")) {
      words[i - 1] += QStringLiteral(" ·");
      words.removeAt(i--);
    }
  }
  QStringList lines;
  QString line;
  for (qsizetype i = 0; i < words.size(); ++i) {
    const QString longer = line.isEmpty() ? words[i] : line + QLatin1Char(' ') + words[i];
    if (line.isEmpty() || lettering.width(longer, size, weight) <= width) {
      line = longer;
      continue;
    }
    if (lines.size() + 1 == most) {
      line += QLatin1Char(' ') + words.mid(i).join(QLatin1Char(' '));
      break;
    }
    lines << line;
    line = words[i];
  }
  lines << line;
  for (QString& one : lines) {
    if (one.endsWith(QStringLiteral(" ·"))) {
      one.chop(2);
    }
    one = lettering.elided(one, size, weight, width);
  }
  return lines;
}

SheetPainter::SheetPainter(const SheetContent& content, const RowsPicture& rows, const Words& say,
                           const QSizeF& page)
    : content_(content), picture_(rows), say_(say), lettering_(paperFont()), page_(page),
      left_(kMarginX), right_(page.width() - kMarginX), ink_(Qt::black), faint_(0x40, 0x46, 0x4B) {}

void SheetPainter::write(double left, double baseline, const QString& text, double size,
                         Weight weight, const QColor& color) {
  if (painter_ != nullptr) {
    lettering_.paint(*painter_, {left, baseline}, text, size, weight, color);
  }
}

void SheetPainter::rule(double left, double right, double y, double width, const QColor& color) {
  if (painter_ != nullptr && right > left) {
    painter_->setPen(QPen(color, width, Qt::SolidLine, Qt::FlatCap));
    painter_->drawLine(QPointF(left, y), QPointF(right, y));
  }
}

double SheetPainter::paragraph(const QString& text, double left, double top, double width,
                               double size, Weight weight, const QColor& color, int most) {
  for (const QString& line : wrapped(lettering_, text, size, weight, width, most)) {
    write(left, top + size * 1.06, line, size, weight, color);
    top += size * kLine;
  }
  return top;
}

/// Across the page, black on white or white on black, beside the text and never over it.
double SheetPainter::bands(double top) {
  for (qsizetype i = 0; i < content_.bands.size(); ++i) {
    const double height = 19;
    if (painter_ != nullptr) {
      const bool filled = i == 0;
      const QRectF band(0, top, page_.width(), height);
      painter_->fillRect(band, filled ? ink_ : QColor(Qt::white));
      rule(0, page_.width(), band.bottom(), 1.5, ink_);
      const QString text = content_.bands[i];
      const double wide = lettering_.width(text, 12.5, Weight::bold);
      const QColor color = filled ? QColor(Qt::white) : ink_;
      for (const double centre : {0.5}) {
        write(page_.width() * centre - wide / 2, top + height / 2 + 4.6, text, 12.5, Weight::bold,
              color);
      }
    }
    top += height;
  }
  return top;
}

double SheetPainter::header(double top) {
  const double size = scaled(24);
  const double small = scaled(9.5);
  const double titleWidth = lettering_.width(content_.title, size, Weight::bold);
  write(left_, top + size, content_.title, size, Weight::bold, ink_);
  const double middle = left_ + std::max(titleWidth, (right_ - left_) * 0.5) + 12;
  const QString unknownDate = say_(QT_TRANSLATE_NOOP("Papers", "Date"));
  const QString unknownSite = say_(QT_TRANSLATE_NOOP("Papers", "Place"));
  const std::array<std::pair<const QString&, const QString&>, 2> facts{
      {{content_.date, unknownDate}, {content_.site, unknownSite}}};
  double y = top + scaled(3);
  for (std::size_t i = 0; i < facts.size(); ++i) {
    const auto& [text, label] = facts[i];
    const Weight weight = i == 0 ? Weight::bold : Weight::regular;
    if (text.isEmpty()) {
      blanks({label}, middle + (right_ - middle) * 0.35, right_, y);
    } else {
      for (const QString& line : wrapped(lettering_, text, small, weight, right_ - middle, 2)) {
        write(right_ - lettering_.width(line, small, weight), y + small, line, small, weight, ink_);
        y += i == 0 ? 0 : small * 1.3;
      }
      y -= i == 0 ? 0 : small * 1.3;
    }
    y += small * 1.45;
  }
  const QString record =
      lettering_.elided(content_.recordLine, small * 0.9, Weight::regular, right_ - middle);
  write(right_ - lettering_.width(record, small * 0.9, Weight::regular), y + small * 0.9, record,
        small * 0.9, Weight::regular, faint_);
  const double left = paragraph(content_.subtitle, left_, top + size * 1.22, middle - left_ - 12,
                                small, Weight::regular, faint_, 2);
  const double bottom = std::max(left, y + small * 1.4) + scaled(4);
  rule(left_, right_, bottom, 1.6, ink_);
  return bottom + scaled(5);
}

double SheetPainter::figureColumn(const SheetFigure& figure, const QRectF& room) {
  const double label = scaled(9.5);
  const double note = scaled(8.5);
  double y = room.top();
  write(room.left(), y + label, figure.title, label, Weight::medium, ink_);
  y += label * 1.3;
  double size = scaled(27);
  if (figure.value.isEmpty()) {
    y += size * 0.95;
    rule(room.left(), room.right() - 12, y, 0.9, ink_);
    y += size * 0.2;
    write(room.left(), y + note, notRecordedText(say_), note, Weight::medium, ink_);
    y += note * 1.35;
  } else {
    const double wide = lettering_.width(figure.value, size, Weight::bold);
    const double shrunk = std::min(size, size * (room.width() - 14) / wide);
    y += size * 1.0;
    write(room.left(), y, figure.value, shrunk, Weight::bold, ink_);
    y += size * 0.2;
  }
  QStringList lines;
  for (const QString& text : figure.notes) {
    lines << wrapped(lettering_, text, note, Weight::regular, room.width() - 12, 2);
  }
  constexpr qsizetype kMostNotes = 5;
  for (const QString& line : lines.mid(0, kMostNotes)) {
    write(room.left(), y + note, line, note, Weight::regular, ink_);
    y += note * 1.3;
  }
  return y;
}

double SheetPainter::largeFigures(double top) {
  constexpr std::array<double, 4> kShares{0.25, 0.22, 0.3, 0.23};
  double x = left_;
  double bottom = top;
  for (std::size_t i = 0; i < content_.figures.size(); ++i) {
    const double wide = (right_ - left_) * kShares[i];
    bottom = std::max(bottom, figureColumn(content_.figures[i], QRectF(x, top, wide, 0)));
    x += wide;
  }
  bottom += scaled(6);
  rule(left_, right_, bottom, 1, ink_);
  return bottom + scaled(5);
}

/// Framed and bold: nothing here may be overlooked.
double SheetPainter::notices(double top) {
  if (content_.notices.isEmpty()) {
    return top;
  }
  const double size = scaled(9.5);
  const double pad = scaled(5);
  double y = top + pad;
  for (const QString& notice : content_.notices) {
    y = paragraph(notice, left_ + pad * 1.6, y, right_ - left_ - pad * 3.2, size, Weight::bold,
                  ink_, 2);
  }
  y += pad * 0.5;
  if (painter_ != nullptr) {
    painter_->setPen(QPen(ink_, 1.2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter_->setBrush(Qt::NoBrush);
    painter_->drawRect(QRectF(left_, top, right_ - left_, y - top));
  }
  return y + scaled(6);
}

double SheetPainter::blanks(const QStringList& labels, double left, double right, double top) {
  const double size = scaled(kBody * 0.95);
  const double each = (right - left) / static_cast<double>(std::max<qsizetype>(1, labels.size()));
  const double base = top + size * 1.15;
  for (qsizetype i = 0; i < labels.size(); ++i) {
    const double from = left + each * static_cast<double>(i);
    write(from, base, labels[i], size, Weight::regular, faint_);
    rule(from + lettering_.width(labels[i], size, Weight::regular) + 5,
         from + each - (i + 1 < labels.size() ? 10 : 0), base + 1.5, 0.6, faint_);
  }
  return top + size * 1.72;
}

double SheetPainter::section(const SheetSection& section, double top) {
  const double size = scaled(kBody);
  const double column = left_ + kLabelColumn;
  write(left_, top + size * 1.06, section.title, size, Weight::bold, ink_);
  double y = top;
  for (const SheetLine& line : section.lines) {
    if (line.kind == SheetLine::Kind::blank) {
      y = blanks(line.blanks, column, right_, y);
    } else {
      const Weight weight = line.kind == SheetLine::Kind::strong ? Weight::bold : Weight::regular;
      y = paragraph(line.text, column, y, right_ - column, size, weight, ink_, 2);
    }
  }
  return std::max(y, top + size * kLine);
}

double SheetPainter::sections(double top) {
  for (const SheetSection& one : content_.sections) {
    top = section(one, top) + scaled(3);
    rule(left_, right_, top, 0.5, QColor(0xB0, 0xB6, 0xBB));
    top += scaled(3.5);
  }
  return top;
}

double SheetPainter::footer(double top) {
  const double small = scaled(8);
  const double tiny = std::max(5.6, scaled(6.6));
  double y = section(content_.device, top) + scaled(3);
  rule(left_, right_, y, 1, ink_);
  y += scaled(4);
  const double width = right_ - left_;
  y = paragraph(content_.caution, left_, y, width, scaled(9.5), Weight::bold, ink_, 2);
  y = paragraph(content_.notes.join(QLatin1Char(' ')), left_, y, width, small, Weight::regular,
                ink_, 4);
  y = paragraph(content_.made, left_, y + 1, width, tiny * 1.12, Weight::regular, faint_, 2);
  if (!content_.checksum.isEmpty()) {
    y = paragraph(content_.checksum, left_, y, width, tiny, Weight::regular, faint_, 1);
  }
  return y;
}

double SheetPainter::fixedHeight(double scale) {
  scale_ = scale;
  painter_ = nullptr;
  const double upper = sections(notices(largeFigures(header(bands(0)))));
  return kMarginTop + upper + footer(0) + bands(0) + kMarginBottom;
}

void SheetPainter::chooseScale() {
  const RowsLook look = RowsLook::paperLook();
  const double all = picture_.heightFor(right_ - left_, look, true) + scaled(10);
  const double least = picture_.leastHeightFor(right_ - left_, look, true) + scaled(10);
  const double wanted = std::min(all, std::clamp(least, kRoomForRows, kMostForRows));
  for (double scale = 1; scale > kSmallestScale; scale -= 0.04) {
    if (page_.height() - fixedHeight(scale) >= wanted) {
      return;
    }
  }
  static_cast<void>(fixedHeight(kSmallestScale));
}

void SheetPainter::rows(const QRectF& room) {
  RowsLook look = RowsLook::paperLook();
  struct Size {
    double text, row;
  };
  for (const Size size : {Size{8.5, 40}, Size{8, 34}, Size{7.5, 29}, Size{7, 25}}) {
    look.textSize = size.text;
    look.rowHeight = size.row;
    const double height = picture_.heightFor(room.width(), look, true);
    if (height <= room.height()) {
      picture_.paint(*painter_, QRectF(room.left(), room.top(), room.width(), height), look);
      remarks(QRectF(room.left(), room.top() + height, room.width(), room.height() - height));
      return;
    }
  }
  picture_.paint(*painter_, room, look, {}, true, true);
}

/// What the rows leave free is given to the pen.
void SheetPainter::remarks(const QRectF& room) {
  constexpr double kSpacing = 21;
  constexpr int kMost = 14;
  const int lines = std::min(kMost, static_cast<int>((room.height() - 8) / kSpacing));
  for (int i = 0; i < lines; ++i) {
    const double y = room.top() + 10 + i * kSpacing;
    const QString label = i == 0 ? say_(QT_TRANSLATE_NOOP("Papers", "Remarks")) : QString();
    if (i == 0) {
      blanks({label}, left_, right_, y);
    } else {
      rule(left_, right_, y + scaled(kBody * 0.95) * 1.15 + 1.5, 0.6, faint_);
    }
  }
}

void SheetPainter::paint(QPainter& painter) {
  chooseScale();
  const double footerHeight = footer(0);
  const double bandHeight = bands(0);
  painter_ = &painter;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  double y = bands(0);
  y = header(y + kMarginTop);
  y = sections(notices(largeFigures(y)));
  const double bottom = page_.height() - kMarginBottom - bandHeight - footerHeight;
  rows(QRectF(left_, y + scaled(4), right_ - left_, bottom - y - scaled(8)));
  footer(bottom);
  bands(page_.height() - bandHeight);
  painter.restore();
  painter_ = nullptr;
}

} // namespace afterbeat::papers
