#include "app/papers/season/season_report.h"

#include "app/papers/charts/season_chart_parts.h"
#include "core/compare/filter.h"
#include "core/compare/stand_out.h"

#include <algorithm>
#include <set>

namespace afterbeat::papers {

namespace {

constexpr std::size_t kMostWorthALook = 7, kMostOfASite = 4;

std::shared_ptr<const Chart> shared(Chart chart) {
  return std::make_shared<const Chart>(std::move(chart));
}

QString values(const SpreadGroup& group, MeasureId measure, const Words& words) {
  QStringList all;
  for (const SpreadPoint& point : group.points) {
    all << said(amountOf(measure, point.value), words);
  }
  return all.join(QStringLiteral("; "));
}

QString interval(const Words& words, MeasureId measure, double low, double high) {
  //: From one value to another.
  return words(QT_TRANSLATE_NOOP("Papers", "%1 to %2"))
      .arg(said(amountOf(measure, low), words), said(amountOf(measure, high), words));
}

/// Figure, records, middle, how far off, middle half, without value; and elsewhere for a site.
QStringList rowOf(const SpreadGroup& group, MeasureId measure, bool elsewhere, const Words& words) {
  QStringList row{titleOf(measure, words), QString::number(group.points.size())};
  if (group.quartiles && group.interval) {
    row << said(amountOf(measure, group.quartiles->median), words)
        << interval(words, measure, group.interval->low, group.interval->high)
        << interval(words, measure, group.quartiles->low, group.quartiles->high);
  } else {
    //: The values themselves, as there are too few for a middle.
    row << words(QT_TRANSLATE_NOOP("Papers", "values: %1")).arg(values(group, measure, words))
        << QStringLiteral("–") << QStringLiteral("–");
  }
  row << QString::number(group.missing.notRecorded) << QString::number(group.missing.notApplicable);
  if (elsewhere) {
    row << (group.against ? said(amountOf(measure, group.against->medianOthers), words)
                          : QStringLiteral("–"));
  }
  return row;
}

/// Each figure is one of those that a report asks at once.
SpreadSettings inReport() {
  SpreadSettings settings;
  settings.figuresAsked = reportMeasures().size();
  return settings;
}

class Maker {
public:
  Maker(const Season& season, const ReportSettings& settings)
      : season_(season), settings_(settings) {
    report_.words = Words::inLanguage(settings.language);
  }

  SeasonReport made(const Chosen& chosen) {
    report_.title = say(QT_TRANSLATE_NOOP("Papers", "Comparison of records"));
    about(chosen);
    for (const KindCount& count : kindsOf(season_, chosen)) {
      part(count.kind, ofKind(season_, chosen, count.kind));
    }
    method();
    if (!report_.sections.empty()) {
      // The first section stands on the first page; a drill further on does not mark it.
      report_.marks = report_.sections.front().marks;
    }
    report_.footer = say(QT_TRANSLATE_NOOP(
        "Papers", "For review after the event: no medical device, no prognosis, no diagnosis. "
                  "Local protocol goes first. Not for ranking people."));
    return std::move(report_);
  }

private:
  QString say(const char* english) const { return report_.words(english); }

  QString dayOf(std::chrono::sys_days day) const {
    return settings_.withoutIdentity ? monthText(day, report_.words) : dayText(day, report_.words);
  }

  void about(const Chosen& chosen) {
    QStringList kinds;
    for (const KindCount& count : kindsOf(season_, chosen)) {
      kinds << say(QT_TRANSLATE_NOOP("Papers", "%1: %2"))
                   .arg(kindWords(count.kind, report_.words))
                   .arg(static_cast<qulonglong>(count.records));
    }
    report_.about << (kinds.isEmpty()
                          ? say(QT_TRANSLATE_NOOP("Papers", "There is no record to compare."))
                          : say(QT_TRANSLATE_NOOP("Papers", "Records by kind – %1. Kinds are never "
                                                            "mixed in one figure."))
                                .arg(kinds.join(QStringLiteral("; "))));
    if (settings_.notRead > 0) {
      report_.about << say(QT_TRANSLATE_NOOP(
                               "Papers",
                               "Sources that could not be read and are in no figure: %1."))
                           .arg(static_cast<qulonglong>(settings_.notRead));
    }
    if (const std::size_t without = withoutFigures(season_, chosen); without > 0) {
      report_.about
          << say(QT_TRANSLATE_NOOP(
                     "Papers",
                     "Records without figures under these settings, in nothing here: %1."))
                 .arg(static_cast<qulonglong>(without));
    }
    if (settings_.withoutIdentity) {
      report_.about << say(QT_TRANSLATE_NOOP(
          "Papers",
          "Without identity: sites, teams and records have pseudonyms made with a secret; "
          "days are cut to their month. All of the month of a marked day counts as after it."));
    }
    report_.about << say(QT_TRANSLATE_NOOP(
        "Papers",
        "How to read it: the middle is the value that half of the records lie below. “May really "
        "be” stands beside it: within these values the true middle may lie, the fewer records the "
        "wider; with fewer than five records only the values themselves are shown. What was not "
        "recorded is counted, never taken as zero."));
  }

  void method() {
    report_.method
        << say(QT_TRANSLATE_NOOP(
               "Papers",
               "Middle: median; middle half: quartiles of type 7 (Hyndman and Fan, The "
               "American Statistician 1996;50:361-365, from memory). What a middle may really "
               "be: with other records of the same kind it would lie elsewhere; a range made "
               "like this holds the true middle about 94 times in 100 (bootstrap percentile "
               "interval, 95 %, 2000 resamples: Efron, The Annals of Statistics 1979;7:1-26, "
               "from memory)."))
        << say(QT_TRANSLATE_NOOP(
               "Papers",
               "Groups: rank test of Mann and Whitney, corrected for the number of groups "
               "after Holm and for the number of figures asked at once (all from memory). Over "
               "time: longest run and crossings after "
               "Anhøj and Olesen, PLoS ONE 2014;9:e113825 (read in a secondary "
               "publication)."))
        << say(QT_TRANSLATE_NOOP("Papers", "Figures computed with: %1."))
               .arg(settingsOf(settings_.figures, report_.words));
    for (const MeasureId measure : reportMeasures()) {
      report_.method << say(QT_TRANSLATE_NOOP("Papers", "%1: %2 %3"))
                            .arg(titleOf(measure, report_.words),
                                 definitionOf(measure, report_.words),
                                 sourceOf(measure, report_.words));
    }
  }

  void part(StatedKind kind, const Chosen& chosen) {
    ReportSection section;
    section.title = say(QT_TRANSLATE_NOOP("Papers", "Season at a glance: %1"))
                        .arg(kindWords(kind, report_.words));
    section.marks = seasonMarks(season_, chosen, report_.words);
    section.blocks.emplace_back(extent(chosen, false));
    addTable(section, table(chosen));
    const std::vector<Spread> spreads = bySite(chosen);
    addDifferences(section, spreads);
    addStages(section, chosen);
    addSpread(section, chosen, MeasureId::longestPause, GroupBy::site);
    addOverTime(section, chosen);
    addSpread(section, chosen, MeasureId::handsOffFraction, GroupBy::quarter);
    const auto standingOut = worthALook(season_, chosen, settings_.figures.profile);
    addWorthALook(section, standingOut, kMostWorthALook);
    addUsual(section, chosen);
    report_.sections.push_back(std::move(section));
    sites(kind, chosen, spreads, standingOut);
  }

  QString extent(const Chosen& chosen, bool ofASite) const {
    std::optional<std::chrono::sys_days> first, last;
    std::set<std::string> sites;
    std::size_t withoutDay = 0, withoutEvidence = 0;
    for (const std::uint32_t place : chosen) {
      const RecordFacts& record = season_.records[place];
      if (record.day) {
        first = std::min(first.value_or(*record.day), *record.day);
        last = std::max(last.value_or(*record.day), *record.day);
      } else {
        ++withoutDay;
      }
      withoutEvidence += record.evidence == Evidence::none ? 1 : 0;
      if (!record.site.empty()) {
        sites.insert(record.site);
      }
    }
    QStringList parts{recordCount(chosen.size(), report_.words)};
    if (first) {
      parts << say(QT_TRANSLATE_NOOP("Papers", "%1 to %2")).arg(dayOf(*first), dayOf(*last));
    }
    const auto count = [&](const char* english, std::size_t number) {
      if (number > 0) {
        parts << say(english).arg(static_cast<qulonglong>(number));
      }
    };
    count(QT_TRANSLATE_NOOP("Papers", "sites: %1"), ofASite ? 0 : sites.size());
    count(QT_TRANSLATE_NOOP("Papers", "without a day: %1"), withoutDay);
    count(QT_TRANSLATE_NOOP("Papers", "without evidence of compressions: %1"), withoutEvidence);
    return parts.join(QStringLiteral("; ")) + QLatin1Char('.');
  }

  QStringList tableHead() const {
    return {say(QT_TRANSLATE_NOOP("Papers", "Figure")),
            say(QT_TRANSLATE_NOOP("Papers", "Records")),
            say(QT_TRANSLATE_NOOP("Papers", "Middle")),
            say(QT_TRANSLATE_NOOP("Papers", "May really be")),
            say(QT_TRANSLATE_NOOP("Papers", "Middle half")),
            say(QT_TRANSLATE_NOOP("Papers", "Not recorded")),
            say(QT_TRANSLATE_NOOP("Papers", "Does not apply"))};
  }

  /// Every figure by site, all asked at once.
  std::vector<Spread> bySite(const Chosen& chosen) const {
    std::vector<Spread> spreads;
    for (const MeasureId measure : reportMeasures()) {
      if (auto found = spread(season_, chosen, measure, GroupBy::site, inReport())) {
        spreads.push_back(std::move(*found));
      }
    }
    return spreads;
  }

  void addDifferences(ReportSection& section, const std::vector<Spread>& spreads) const {
    const std::vector<Saying> differences = whereGroupsDiffer(spreads);
    if (differences.empty()) {
      return;
    }
    ReportList list;
    list.head = say(QT_TRANSLATE_NOOP("Papers", "Differences between sites beyond chance"));
    for (const Saying& difference : differences) {
      list.lines << said(difference, report_.words);
    }
    section.blocks.emplace_back(std::move(list));
  }

  ReportTable table(const Chosen& chosen) const {
    ReportTable made;
    made.caption = say(QT_TRANSLATE_NOOP("Papers", "Figures of these records"));
    made.head = tableHead();
    for (const MeasureId measure : reportMeasures()) {
      const auto found = spread(season_, chosen, measure, GroupBy::nothing);
      if (found && !found->groups.empty()) {
        addRow(made, found->groups.front(), measure, false);
      }
    }
    return made;
  }

  /// A measure without any value is named after the table.
  void addRow(ReportTable& table, const SpreadGroup& group, MeasureId measure,
              bool elsewhere) const {
    if (group.points.empty()) {
      table.without << say(QT_TRANSLATE_NOOP("Papers", "%1 (not recorded: %2, does not apply: %3)"))
                           .arg(titleOf(measure, report_.words))
                           .arg(static_cast<qulonglong>(group.missing.notRecorded))
                           .arg(static_cast<qulonglong>(group.missing.notApplicable));
    } else {
      table.rows.push_back(rowOf(group, measure, elsewhere, report_.words));
    }
  }

  void addTable(ReportSection& section, ReportTable table) const {
    const QStringList without = table.without;
    if (!table.rows.empty()) {
      section.blocks.emplace_back(std::move(table));
    }
    if (!without.isEmpty()) {
      section.blocks.emplace_back(say(QT_TRANSLATE_NOOP("Papers", "Without any value: %1."))
                                      .arg(without.join(QStringLiteral("; "))));
    }
  }

  void addStages(ReportSection& section, const Chosen& chosen) const {
    // From the call where most records know it, else from device on.
    const auto fromCall = stages(season_, chosen, StagesFrom::call);
    const auto fromOn = stages(season_, chosen, StagesFrom::powerOn);
    if (!fromCall || !fromOn) {
      return;
    }
    const Stages& found =
        fromCall->records.size() * 2 >= fromOn->records.size() ? *fromCall : *fromOn;
    section.blocks.emplace_back(shared(stageChart(season_, found, report_.words)));
  }

  void addSpread(ReportSection& section, const Chosen& chosen, MeasureId measure,
                 GroupBy by) const {
    if (const auto found = spread(season_, chosen, measure, by, inReport())) {
      section.blocks.emplace_back(shared(spreadChart(season_, *found, report_.words)));
    }
  }

  void addOverTime(ReportSection& section, const Chosen& chosen) const {
    if (const auto found = overTime(season_, chosen, reportOverTime(settings_))) {
      section.blocks.emplace_back(shared(overTimeChart(season_, *found, report_.words)));
    }
  }

  void addWorthALook(ReportSection& section, const std::vector<StandOut>& found,
                     std::size_t most) const {
    ReportList list;
    list.head = found.size() > most
                    ? say(QT_TRANSLATE_NOOP("Papers", "Worth a look: %1 of %2 that stand out"))
                          .arg(static_cast<qulonglong>(most))
                          .arg(static_cast<qulonglong>(found.size()))
                    : say(QT_TRANSLATE_NOOP("Papers", "Worth a look"));
    for (std::size_t i = 0; i < std::min(found.size(), most); ++i) {
      const RecordFacts& record = season_.records[found[i].place];
      QStringList reasons;
      for (const StandOutReason& reason : found[i].reasons) {
        reasons << said(reason.saying, report_.words);
      }
      const QString day = record.day ? dayOf(*record.day) : QString();
      const QString name = recordName(record, report_.words);
      list.lines << (day.isEmpty() || day == name ? name : name + QStringLiteral(", ") + day) +
                        QStringLiteral(" – ") + reasons.join(QLatin1Char(' '));
    }
    if (found.empty()) {
      list.lines << say(QT_TRANSLATE_NOOP("Papers", "No record stands out."));
    }
    section.blocks.emplace_back(std::move(list));
  }

  /// Goes on the list before it.
  void addUsual(ReportSection& section, const Chosen& chosen) const {
    if (const auto usual = usualHere(season_, chosen, settings_.figures.profile)) {
      for (const Saying& saying : *usual) {
        std::get<ReportList>(section.blocks.back()).lines << said(saying, report_.words);
      }
    }
  }

  void sites(StatedKind kind, const Chosen& chosen, const std::vector<Spread>& spreads,
             const std::vector<StandOut>& standingOut) {
    if (spreads.empty()) {
      return;
    }
    for (std::size_t i = 0; i < spreads.front().groups.size(); ++i) {
      site(kind, chosen, spreads, i, standingOut);
    }
  }

  std::vector<StandOut> ofSite(const std::string& site, const std::vector<StandOut>& all) const {
    std::vector<StandOut> here;
    std::copy_if(all.begin(), all.end(), std::back_inserter(here),
                 [&](const StandOut& one) { return season_.records[one.place].site == site; });
    return here;
  }

  void site(StatedKind kind, const Chosen& chosen, const std::vector<Spread>& spreads,
            std::size_t index, const std::vector<StandOut>& standingOut) {
    const SpreadGroup& group = spreads.front().groups[index];
    Chosen here;
    std::copy_if(chosen.begin(), chosen.end(), std::back_inserter(here),
                 [&](std::uint32_t place) { return season_.records[place].site == group.name; });
    ReportSection section;
    section.level = 2;
    section.title =
        say(QT_TRANSLATE_NOOP("Papers", "%1: %2"))
            .arg(groupName(group, GroupBy::site, report_.words), kindWords(kind, report_.words));
    section.marks = seasonMarks(season_, here, report_.words);
    section.blocks.emplace_back(extent(here, true));
    ReportTable made;
    made.caption = say(QT_TRANSLATE_NOOP("Papers", "Figures of this site"));
    made.head = tableHead() << say(QT_TRANSLATE_NOOP("Papers", "Middle elsewhere"));
    QStringList clear;
    bool compared = false;
    for (const Spread& spread : spreads) {
      const SpreadGroup& one = spread.groups[index];
      addRow(made, one, spread.measure, true);
      compared = compared || one.against.has_value();
      if (one.against && one.against->clear) {
        clear << titleOf(spread.measure, report_.words);
      }
    }
    addTable(section, std::move(made));
    section.blocks.emplace_back(
        !compared ? say(QT_TRANSLATE_NOOP("Papers", "Too few records, here or elsewhere, to hold "
                                                    "this site against the others."))
        : clear.isEmpty()
            ? say(QT_TRANSLATE_NOOP("Papers", "No figure here differs from the other sites by more "
                                              "than chance explains; in few records a real "
                                              "difference can go unseen."))
            : say(QT_TRANSLATE_NOOP("Papers", "More of a difference to the other sites than chance "
                                              "explains: %1. Why, these figures cannot say."))
                  .arg(report_.words.list(clear)));
    addOverTime(section, here);
    addWorthALook(section, ofSite(group.name, standingOut), kMostOfASite);
    report_.sections.push_back(std::move(section));
  }

  const Season& season_;
  const ReportSettings& settings_;
  SeasonReport report_;
};

} // namespace

SeasonReport makeSeasonReport(const Season& season, const Chosen& chosen,
                              const ReportSettings& settings) {
  return Maker(season, settings).made(chosen);
}

} // namespace afterbeat::papers
