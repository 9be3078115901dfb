#include "app/papers/season/season_csv.h"

#include "app/papers/words.h"
#include "core/compare/facts.h"

#include <array>

#include <fmt/format.h>

namespace afterbeat::papers {

namespace {

/// "longest_pause_s", "compression_rate_per_min".
std::string columnName(const MeasureInfo& info) {
  const std::string_view unit = info.unit;
  const std::string_view ending = unit == "s"      ? "_s"
                                  : unit == "/min" ? "_per_min"
                                  : unit == "mm"   ? "_mm"
                                  : unit == "J"    ? "_j"
                                                   : "";
  std::string made(info.name);
  return made.ends_with(ending) ? made : made + std::string(ending);
}

std::string kindName(const std::optional<RecordKind>& kind) {
  return kind ? std::string(name(*kind)) : std::string();
}

std::string heading() {
  std::string line = "record,file,day,kind,site,team,device,evidence,had_shock,"
                     "longest_pause_cause,synthetic,version";
  for (std::size_t i = 0; i < static_cast<std::size_t>(MeasureId::count_); ++i) {
    const MeasureInfo& info = measureInfo(static_cast<MeasureId>(i));
    line += fmt::format(",{},{}_status", columnName(info), info.name);
  }
  return line + "\r\n";
}

const char* yesNo(bool value) {
  return value ? "yes" : "no";
}

std::string facts(const RecordFacts& record) {
  return fmt::format("{},{},{},{},{},{},{},{},{},{},{},{}", csvCell(record.id),
                     csvCell(record.file), isoDay(record), kindName(record.kind),
                     csvCell(record.site), csvCell(record.team), csvCell(record.device),
                     record.hasFigures ? name(record.evidence) : "",
                     record.hadShock ? yesNo(*record.hadShock) : "",
                     record.longestPauseCause ? name(*record.longestPauseCause) : "",
                     yesNo(record.synthetic), record.version);
}

} // namespace

std::string csvCell(const std::string& text) {
  std::string plain = plainText(text).toStdString();
  static constexpr std::array<std::string_view, 8> kFormula{"=",  "+",  "-",  "@",
                                                            "＝", "＋", "－", "＠"};
  for (const std::string_view begin : kFormula) {
    if (plain.starts_with(begin)) {
      plain.insert(0, "'");
      break;
    }
  }
  if (plain.find_first_of(",;\"\r\n\t'") == std::string::npos) {
    return plain;
  }
  std::string quoted = "\"";
  for (const char c : plain) {
    quoted += c;
    if (c == '"') {
      quoted += c;
    }
  }
  return quoted + '"';
}

void writeCsv(const Season& season, const Chosen& chosen,
              const std::function<void(const std::string&)>& line) {
  constexpr auto kMeasures = static_cast<std::size_t>(MeasureId::count_);
  std::array<const FigureColumn*, kMeasures> columns{};
  for (std::size_t i = 0; i < kMeasures; ++i) {
    columns[i] = &season.column(static_cast<MeasureId>(i));
  }
  line(heading());
  for (const std::uint32_t place : chosen) {
    std::string text = facts(season.records[place]);
    for (const FigureColumn* column : columns) {
      const FigureCell& cell = (*column)[place];
      text += cell.ok() ? fmt::format(",{},{}", cell.value, name(cell.status))
                        : fmt::format(",,{}", season.records[place].hasFigures ? name(cell.status)
                                                                               : "no_figures");
    }
    line(text + "\r\n");
  }
}

} // namespace afterbeat::papers
