#include "app/papers/season/report_page.h"

#include "app/papers/charts/chart_files.h"

namespace afterbeat::papers {

namespace {

constexpr const char* kStyle = R"css(
:root{color-scheme:light}
body{font:16px/1.5 Inter,system-ui,Helvetica,Arial,sans-serif;color:#14181c;background:#fff;
max-width:60rem;margin:0 auto;padding:1rem 1.25rem 4rem}
h1{font-size:1.9rem;line-height:1.2}h2{font-size:1.45rem;margin-top:3rem;border-top:2px solid #14181c;
padding-top:1rem}h3{font-size:1.2rem;margin-top:2.5rem;border-top:1px solid #8c9399;padding-top:.8rem}
.mark{display:inline-block;border:2px solid #14181c;padding:0 .45em;font-weight:700;margin-right:.5em;
font-size:.9rem}
nav li{margin:.15rem 0}nav .site{margin-left:1.5rem}a{color:#1f6391}a:focus-visible{outline:3px solid
#d98a1b;outline-offset:2px}
.wide{overflow-x:auto}table{border-collapse:collapse;font-size:.88rem;width:100%}
caption{text-align:left;font-weight:700;padding:.4rem 0}
th,td{border-bottom:1px solid #c4cacf;padding:.3rem .5rem;text-align:right;vertical-align:top;
font-variant-numeric:tabular-nums}td{white-space:nowrap}th:first-child,td:first-child{text-align:left;padding-left:0}
figure{margin:2rem 0}figure svg{width:100%;height:auto}figcaption p{margin:.15rem 0}
footer{margin-top:3rem;border-top:1px solid #8c9399;font-size:.85rem;color:#565f67}
@media print{h2,h3{break-before:page}figure,table{break-inside:avoid}nav{display:none}}
)css";

QString escaped(const QString& text) {
  return text.toHtmlEscaped();
}

QString element(const char* name, const QString& inside) {
  return QStringLiteral("<%1>%2</%1>\n").arg(QLatin1String(name), inside);
}

QString marksOf(const QStringList& marks) {
  QString made;
  for (const QString& mark : marks) {
    made += QStringLiteral("<span class=\"mark\">%1</span>").arg(escaped(mark));
  }
  return made.isEmpty() ? made : element("p", made);
}

/// The drawing alone, without what stands before it in a file of its own.
QString svgOf(const Chart& chart) {
  ChartLook look = ChartLook::screenLight();
  look.sentences = false;
  const QString file = QString::fromUtf8(chartAsSvg(chart, 900, look, 0));
  return file.mid(file.indexOf(QStringLiteral("<svg")));
}

struct BlockAsPage {
  QString& page;
  void operator()(const QString& paragraph) const { page += element("p", escaped(paragraph)); }
  void operator()(const ReportTable& table) const {
    QString head;
    for (const QString& cell : table.head) {
      head += QStringLiteral("<th scope=\"col\">%1</th>").arg(escaped(cell));
    }
    QString rows;
    for (const QStringList& row : table.rows) {
      QString cells = QStringLiteral("<th scope=\"row\">%1</th>").arg(escaped(row.value(0)));
      for (const QString& cell : row.mid(1)) {
        cells += QStringLiteral("<td>%1</td>").arg(escaped(cell));
      }
      rows += element("tr", cells);
    }
    page += QStringLiteral("<div class=\"wide\"><table><caption>%1</caption><thead><tr>%2</tr>"
                           "</thead>\n<tbody>\n%3</tbody></table></div>\n")
                .arg(escaped(table.caption), head, rows);
  }
  void operator()(const ReportList& list) const {
    QString lines;
    for (const QString& line : list.lines) {
      lines += element("li", escaped(line));
    }
    page += element("h4", escaped(list.head)) + element("ul", lines);
  }
  void operator()(const std::shared_ptr<const Chart>& chart) const {
    QString caption;
    for (const QString& sentence : chart->sentences) {
      caption += element("p", escaped(sentence));
    }
    page += element("figure", svgOf(*chart) + element("figcaption", caption));
  }
};

QString sectionId(std::size_t index) {
  return QStringLiteral("part-%1").arg(index + 1);
}

QString contents(const SeasonReport& report) {
  QString items;
  for (std::size_t i = 0; i < report.sections.size(); ++i) {
    const ReportSection& section = report.sections[i];
    items += QStringLiteral("<li%1><a href=\"#%2\">%3</a></li>\n")
                 .arg(section.level > 1 ? QStringLiteral(" class=\"site\"") : QString(),
                      sectionId(i), escaped(section.title));
  }
  return QStringLiteral("<nav aria-label=\"%1\"><ul>\n%2</ul></nav>\n")
      .arg(escaped(report.words(QT_TRANSLATE_NOOP("Papers", "Contents"))), items);
}

} // namespace

QByteArray reportAsPage(const SeasonReport& report) {
  QString page =
      QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\">\n<head>\n"
                     "<meta charset=\"utf-8\">\n"
                     "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src "
                     "'none'; style-src 'unsafe-inline'\">\n"
                     "<meta name=\"viewport\" content=\"width=device-width, "
                     "initial-scale=1\">\n"
                     "<title>%2</title>\n<style>%3</style>\n</head>\n<body>\n")
          .arg(report.words.language(), escaped(report.title), QString::fromUtf8(kStyle));
  page += element("h1", escaped(report.title)) + marksOf(report.marks);
  for (const QString& text : report.about) {
    page += element("p", escaped(text));
  }
  page += contents(report);
  for (std::size_t i = 0; i < report.sections.size(); ++i) {
    const ReportSection& section = report.sections[i];
    page += QStringLiteral("<section>\n<h%1 id=\"%2\">%3</h%1>\n")
                .arg(QString::number(section.level + 1), sectionId(i), escaped(section.title));
    page += marksOf(section.marks);
    for (const ReportBlock& block : section.blocks) {
      std::visit(BlockAsPage{page}, block);
    }
    page += QStringLiteral("</section>\n");
  }
  page += element("h2", escaped(report.words(QT_TRANSLATE_NOOP("Papers", "How it was made"))));
  for (const QString& text : report.method) {
    page += element("p", escaped(text));
  }
  page += element("footer", element("p", escaped(report.footer)));
  return (page + QStringLiteral("</body>\n</html>\n")).toUtf8();
}

} // namespace afterbeat::papers
