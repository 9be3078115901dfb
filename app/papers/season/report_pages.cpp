#include "app/papers/season/report_pages.h"

#include "app/papers/charts/chart_placed.h"

#include <algorithm>

namespace afterbeat::papers {

namespace {

constexpr double kMargin = 42, kBody = 8.6, kLineHeight = 1.4, kFooterRoom = 22, kFirstColumn = 105;

class Setter {
public:
  Setter(const SeasonReport& report, const QSizeF& size, const Lettering& lettering)
      : report_(report), size_(size), lettering_(lettering) {}

  std::vector<ReportPage> made() {
    newPage();
    heading(report_.title, report_.marks, 17);
    for (const QString& text : report_.about) {
      paragraph(text);
    }
    for (std::size_t i = 0; i < report_.sections.size(); ++i) {
      section(report_.sections[i], i == 0);
    }
    method();
    footers();
    return std::move(pages_);
  }

private:
  [[nodiscard]] double width() const { return size_.width() - 2 * kMargin; }
  [[nodiscard]] double bottom() const { return size_.height() - kMargin - kFooterRoom; }
  ReportPage& page() { return pages_.back(); }

  void newPage() {
    pages_.emplace_back();
    y_ = kMargin;
  }

  /// Goes on to the next page where less than `height` is left.
  void need(double height) {
    if (y_ + height <= bottom() || fresh_) {
      return;
    }
    newPage();
    if (!title_.isEmpty()) {
      heading(report_.words(QT_TRANSLATE_NOOP("Papers", "%1 (continued)")).arg(title_), marks_, 12);
    }
    fresh_ = true;
  }

  void space(double lines) { y_ += lines * kBody * kLineHeight; }

  void put(const QString& text, double x, double size, Weight weight, bool faint = false) {
    page().lines.push_back({text, {x, y_}, size, weight, faint});
  }

  void line(const QString& text, double size, Weight weight) {
    y_ += kLineHeight * size;
    put(text, kMargin, size, weight);
    fresh_ = false;
  }

  void heading(const QString& title, const QStringList& marks, double size) {
    double right = size_.width() - kMargin;
    for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
      const double wide = lettering_.width(*mark, 10, Weight::bold) + 10;
      page().frames.emplace_back(right - wide, y_, wide, 16);
      page().lines.push_back({*mark, {right - wide + 5, y_ + 11.6}, 10, Weight::bold, false});
      right -= wide + 6;
    }
    for (const QString& part :
         wrapped(title, lettering_, size, Weight::bold, right - kMargin - 10)) {
      y_ += 1.2 * size;
      put(part, kMargin, size, Weight::bold);
    }
    y_ = std::max(y_, pages_.back().frames.empty() ? y_ : kMargin + 16) + 5;
    page().rules.emplace_back(kMargin, y_, size_.width() - kMargin, y_);
    y_ += 3;
  }

  void paragraph(const QString& text) {
    const QStringList lines = wrapped(text, lettering_, kBody, Weight::regular, width());
    need(std::min<double>(3, static_cast<double>(lines.size())) * kBody * kLineHeight);
    for (const QString& part : lines) {
      need(kBody * kLineHeight);
      line(part, kBody, Weight::regular);
    }
    space(0.25);
  }

  double heightOf(const QString& text) const {
    const auto lines = wrapped(text, lettering_, kBody, Weight::regular, width()).size();
    return (static_cast<double>(lines) + 0.25) * kBody * kLineHeight;
  }

  /// Stands under what came last where all of it fits, else on a page of its own.
  void method() {
    constexpr double kHead = 10.5, kSpace = 0.8;
    double height = kSpace * kBody * kLineHeight + kLineHeight * kHead;
    for (const QString& text : report_.method) {
      height += heightOf(text);
    }
    title_ = report_.words(QT_TRANSLATE_NOOP("Papers", "How it was made"));
    marks_.clear();
    if (y_ + height <= bottom()) {
      space(kSpace);
      line(title_, kHead, Weight::bold);
    } else {
      newPage();
      heading(title_, {}, 14);
    }
    for (const QString& text : report_.method) {
      paragraph(text);
    }
  }

  void section(const ReportSection& section, bool first) {
    title_ = section.title;
    marks_ = section.marks;
    dense_ = section.level > 1;
    if (first) {
      space(0.6);
    } else {
      newPage();
    }
    heading(section.title, first ? QStringList() : section.marks, 14);
    for (const ReportBlock& block : section.blocks) {
      std::visit([&](const auto& one) { set(one); }, block);
    }
  }

  void set(const QString& text) { paragraph(text); }

  void set(const ReportList& list) {
    need(4 * kBody * kLineHeight);
    space(0.8);
    line(list.head, 10.5, Weight::bold);
    for (const QString& text : list.lines) {
      const QStringList lines = wrapped(text, lettering_, kBody, Weight::regular, width() - 10);
      need(static_cast<double>(lines.size()) * kBody * kLineHeight);
      for (qsizetype i = 0; i < lines.size(); ++i) {
        y_ += kBody * kLineHeight;
        if (i == 0) {
          put(QStringLiteral("•"), kMargin, kBody, Weight::bold);
        }
        put(lines[i], kMargin + 10, kBody, Weight::regular);
      }
      fresh_ = false;
    }
  }

  void set(const std::shared_ptr<const Chart>& chart) {
    const ChartLook look = ChartLook::paperLook();
    const double least = leastChartHeight(*chart, width(), look);
    need(std::min(least, bottom() - kMargin - 40) + 10);
    y_ += 10;
    // A site's page is one page where that can be read.
    const double height =
        dense_ ? least : std::min(chartHeight(*chart, width(), look), bottom() - y_);
    page().charts.push_back({chart, {kMargin, y_, width(), height}});
    y_ += height + 4;
    fresh_ = false;
  }

  /// Widths of a table's columns: what each needs, the first as wide as is left.
  std::vector<double> columnsOf(const ReportTable& table, double size) const {
    std::vector<double> columns(static_cast<std::size_t>(table.head.size()), 0);
    for (std::size_t i = 1; i < columns.size(); ++i) {
      const auto at = static_cast<qsizetype>(i);
      for (const QString& word : table.head[at].split(QLatin1Char(' '))) {
        columns[i] = std::max(columns[i], lettering_.width(word, size, Weight::bold));
      }
      for (const QStringList& row : table.rows) {
        columns[i] =
            std::max(columns[i], std::min(110.0, lettering_.width(row[at], size, Weight::regular)));
      }
      columns[i] += 9;
    }
    // Where the first column would be too narrow the widest ones give way.
    for (double over = 1; over > 0;) {
      double left = width();
      for (std::size_t i = 1; i < columns.size(); ++i) {
        left -= columns[i];
      }
      columns[0] = left;
      over = kFirstColumn - left;
      if (over > 0) {
        *std::max_element(columns.begin() + 1, columns.end()) -= std::min(over, 2.0);
      }
    }
    return columns;
  }

  /// One row of cells, each broken into lines; the first to the left, the others to the right.
  void row(const QStringList& cells, const std::vector<double>& columns, double size,
           Weight weight) {
    std::vector<QStringList> broken;
    qsizetype most = 1;
    for (qsizetype i = 0; i < cells.size(); ++i) {
      broken.push_back(
          wrapped(cells[i], lettering_, size, weight, columns[static_cast<std::size_t>(i)] - 6));
      most = std::max(most, broken.back().size());
    }
    const double lineHeight = 1.3 * size;
    need(static_cast<double>(most) * lineHeight + 4);
    const double top = y_;
    double x = kMargin;
    for (std::size_t i = 0; i < broken.size(); ++i) {
      y_ = top + 1;
      for (const QString& text : broken[i]) {
        y_ += lineHeight;
        const double wide = lettering_.width(text, size, weight);
        put(text, i == 0 ? x : x + columns[i] - wide, size, weight);
      }
      x += columns[i];
    }
    y_ = top + static_cast<double>(most) * lineHeight + 4;
    page().rules.emplace_back(kMargin, y_, size_.width() - kMargin, y_);
    fresh_ = false;
  }

  void set(const ReportTable& table) {
    constexpr double kSize = 7.8;
    need(5 * kBody * kLineHeight);
    space(0.4);
    line(table.caption, 10.5, Weight::bold);
    const auto columns = columnsOf(table, kSize);
    row(table.head, columns, kSize, Weight::bold);
    for (const QStringList& cells : table.rows) {
      row(cells, columns, kSize, Weight::regular);
    }
    y_ += 3;
  }

  void footers() {
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      const QString number = report_.words(QT_TRANSLATE_NOOP("Papers", "Page %1 of %2"))
                                 .arg(i + 1)
                                 .arg(static_cast<qulonglong>(pages_.size()));
      const double y = size_.height() - kMargin;
      const double wide = lettering_.width(number, 7, Weight::regular);
      double line = y;
      const QStringList lines =
          wrapped(report_.footer, lettering_, 7, Weight::regular, width() - wide - 20);
      for (auto text = lines.rbegin(); text != lines.rend(); ++text, line -= 9.5) {
        pages_[i].lines.push_back({*text, {kMargin, line}, 7, Weight::regular, true});
      }
      pages_[i].lines.push_back(
          {number, {size_.width() - kMargin - wide, y}, 7, Weight::regular, true});
    }
  }

  const SeasonReport& report_;
  QSizeF size_;
  const Lettering& lettering_;
  std::vector<ReportPage> pages_;
  double y_ = 0;
  /// Nothing but a title stands on the page: no use in going on to another.
  bool fresh_ = false, dense_ = false;
  QString title_;
  QStringList marks_;
};

} // namespace

std::vector<ReportPage> setInPages(const SeasonReport& report, const QSizeF& size,
                                   const Lettering& lettering) {
  return Setter(report, size, lettering).made();
}

} // namespace afterbeat::papers
