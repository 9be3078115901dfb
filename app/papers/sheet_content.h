/// What the handover sheet says, line by line, before it has a place on paper.
#pragma once

#include "app/papers/handover_sheet.h"
#include "app/papers/words.h"

#include <QStringList>

#include <array>
#include <vector>

namespace afterbeat::papers {

/// One of the large figures.
struct SheetFigure {
  QString title;
  /// Empty: not recorded; a ruled line is drawn in its place.
  QString value;
  /// Before the value and nearly as loud: "at least"; empty where the value is whole.
  QString doubt;
  /// The doubt reads after the value: "44 % of what was recorded".
  bool doubtAfter = false;
  /// What stands below that line: "not recorded".
  QString unknown;
  /// Small lines below, most important first.
  QStringList notes;
};

/// A line of a section.
struct SheetLine {
  enum class Kind : unsigned char {
    text,
    strong,
    /// Labels with a ruled line after each, to be filled in by pen.
    blank,
  };
  Kind kind = Kind::text;
  /// Of a blank line: what is known beside it.
  QString text;
  QStringList blanks;
};

struct SheetSection {
  QString title;
  std::vector<SheetLine> lines;
};

/// The whole sheet in words. Every text is complete; the painter shortens what does not fit.
struct SheetContent {
  QString title, subtitle;
  /// Empty: not known, a ruled line is drawn after the label.
  QString date, site;
  QString labelOfDate, labelOfPlace;
  QString recordLine;
  /// "DRILL ...", "SYNTHETIC ...": across the page, none for a rescue with real data.
  QStringList bands;
  /// Device on, shocks, last shock, setting; hands off, circulation.
  std::array<SheetFigure, 6> figures;
  /// In the order crews are trained to hear: patient, time, what happened, findings, treatment.
  std::vector<SheetSection> sections;
  /// Words with a box before each, to be ticked by pen: rescue, drill or test.
  QStringList ticks;
  /// What must not be overlooked: a wrong setting, a damaged file, a fault of the device.
  QStringList notices;
  /// From when the rows are drawn.
  QString rowsCaption;
  /// False: there is no recording to draw.
  bool hasRows = true;
  SheetSection device;
  QString caution;
  /// How the figures were made, in sentences.
  QStringList notes;
  QString made, checksum;
};

[[nodiscard]] SheetContent makeSheetContent(const Record& record, const Figures& figures,
                                            const SheetOptions& options, const Words& say);

/// Parts of the above, each in its own file.
[[nodiscard]] std::array<SheetFigure, 4> largeFigures(const Record& record, const Figures& figures,
                                                      const SheetOptions& options,
                                                      const Words& say);
[[nodiscard]] SheetFigure handsOffFigure(const Record& record, const Figures& figures,
                                         const Words& say);
[[nodiscard]] SheetFigure circulationFigure(const Record& record, const Figures& figures,
                                            const Words& say);
[[nodiscard]] std::vector<SheetSection> sheetSections(const Record& record, const Figures& figures,
                                                      const Words& say);
/// Sentences on how the figures were made.
[[nodiscard]] QStringList sheetNotes(const Record& record, const Figures& figures,
                                     const Words& say);
/// What must not be overlooked.
[[nodiscard]] QStringList sheetNotices(const Record& record, const Figures& figures,
                                       const Words& say);
/// "Adult", as a large figure; empty for unknown.
[[nodiscard]] QString settingValue(PatientCategory category, const Words& say);
/// Where there is no recording: turns the sheet of an empty record into one of what was told.
void tell(SheetContent& content, const ToldFigures& told, bool drill, const Words& say);

/// What the sheet leaves to the pen, in its order: "Last shock", "Patient: Name".
[[nodiscard]] QStringList leftToPen(const SheetContent& content);

/// The moment the figures are counted from and what happened there: "09:13:01 (electrodes on)".
[[nodiscard]] QString windowBeginWords(const Record& record, const Figures& figures,
                                       const Words& say);
/// "(noted by an observer)" where an entry is one, with a space before it.
[[nodiscard]] QString observerWords(const Entry& entry, const Words& say);
[[nodiscard]] SheetSection treatmentSection(const Record& record, const Figures& figures,
                                            const Words& say);

/// The device's setting through the record.
struct SettingHistory {
  /// In force at the end; unknown where no setting is recorded.
  PatientCategory last = PatientCategory::unknown;
  PatientCategory before = PatientCategory::unknown;
  std::optional<Time> changedAt;
  int changes = 0;
};
[[nodiscard]] SettingHistory settingHistory(const Record& record);

/// The first `most` of a list and "and 4 more".
[[nodiscard]] QString shortened(const QStringList& parts, int most, const Words& say);
/// A text of the record's own on one line, cut after `most` characters.
[[nodiscard]] QString ownText(const std::string& text, int most);

} // namespace afterbeat::papers
