#include "app/papers/rows_marks.h"

#include "app/papers/facts.h"

#include <QCoreApplication>

#include <map>
#include <tuple>

namespace afterbeat::papers {

namespace {

/// What an analysis advised, longest words first.
std::pair<MarkKind, QStringList> analysisWords(Advice advice, const Words& say) {
  switch (advice) {
  case Advice::shock:
    return {MarkKind::analysisShock,
            {say(QT_TRANSLATE_NOOP("Papers", "analysis: shock advised")),
             say(QT_TRANSLATE_NOOP("Papers", "shock advised")),
             say(QT_TRANSLATE_NOOP("Papers", "shock"))}};
  case Advice::noShock:
    return {MarkKind::analysisNoShock,
            {say(QT_TRANSLATE_NOOP("Papers", "analysis: no shock advised")),
             say(QT_TRANSLATE_NOOP("Papers", "no shock advised")),
             say(QT_TRANSLATE_NOOP("Papers", "no shock"))}};
  case Advice::inconclusive:
    break;
  }
  return {MarkKind::analysisInconclusive,
          {say(QT_TRANSLATE_NOOP("Papers", "analysis: inconclusive")),
           say(QT_TRANSLATE_NOOP("Papers", "inconclusive")), QStringLiteral("?")}};
}

QString own(const std::string& text) {
  return plainText(text);
}

/// A remark with the record's own text, or the words for its kind where it has none.
RowMark remark(const Entry& entry, const QString& text, const QString& kind, int importance) {
  RowMark mark;
  mark.stretch = {entry.t, entry.t};
  mark.importance = importance;
  mark.words = text.isEmpty() || text == kind ? QStringList{kind} : QStringList{text, kind};
  return mark;
}

std::optional<RowMark> remarkOf(const Entry& entry, const Words& say) {
  if (const auto* said = entry.complete<entry::Mark>()) {
    return remark(entry, own(said->text), say(QT_TRANSLATE_NOOP("Papers", "remark")), 20);
  }
  if (const auto* given = entry.complete<entry::Medication>()) {
    RowMark mark =
        remark(entry, own(given->text), say(QT_TRANSLATE_NOOP("Papers", "medication")), 50);
    mark.kind = MarkKind::medication;
    return mark;
  }
  if (const auto* change = entry.complete<entry::RescuerChange>()) {
    return remark(entry, {}, say(QT_TRANSLATE_NOOP("Papers", "rescuer change")),
                  change->text.empty() ? 10 : 11);
  }
  if (const auto* milestone = entry.complete<entry::Milestone>()) {
    return remark(entry, milestoneWords(milestone->what, say), QString(), 40);
  }
  if (const auto* electrodes = entry.complete<entry::Electrodes>();
      electrodes != nullptr && electrodes->state == ElectrodeState::detached) {
    return remark(entry, {}, say(QT_TRANSLATE_NOOP("Papers", "electrodes off")), 35);
  }
  if (entry.complete<entry::PowerOff>() != nullptr) {
    return remark(entry, {}, say(QT_TRANSLATE_NOOP("Papers", "device off")), 30);
  }
  if (entry.complete<entry::Fault>() != nullptr) {
    return remark(entry, {}, say(QT_TRANSLATE_NOOP("Papers", "device fault")), 36);
  }
  return std::nullopt;
}

} // namespace

std::optional<RowMark> markOf(const Entry& entry, const Words& say) {
  RowMark mark;
  mark.stretch = {entry.t, entry.lastTime()};
  if (const auto* analysis = entry.complete<entry::Analysis>(); analysis && analysis->advice) {
    std::tie(mark.kind, mark.words) = analysisWords(*analysis->advice, say);
    mark.importance = 80;
    return mark;
  }
  if (const auto* circulation = entry.complete<entry::Circulation>();
      circulation && circulation->state) {
    const bool returned = circulation->state == CirculationState::returned;
    mark.importance = returned ? 90 : 95; // where one word fits, the later state is the safer one
    mark.kind = returned ? MarkKind::circulationReturned : MarkKind::circulationLost;
    mark.words = returned ? QStringList{say(QT_TRANSLATE_NOOP("Papers", "circulation returned")),
                                        say(QT_TRANSLATE_NOOP("Papers", "returned"))}
                          : QStringList{say(QT_TRANSLATE_NOOP("Papers", "circulation lost")),
                                        say(QT_TRANSLATE_NOOP("Papers", "lost"))};
    return mark;
  }
  return remarkOf(entry, say);
}

bool isShock(MarkKind kind) {
  return kind == MarkKind::shockGiven || kind == MarkKind::shockNotGiven ||
         kind == MarkKind::shockUnknown;
}

bool isRemark(MarkKind kind) {
  return kind == MarkKind::remark || kind == MarkKind::medication;
}

bool isAnalysis(MarkKind kind) {
  return kind == MarkKind::analysisShock || kind == MarkKind::analysisNoShock ||
         kind == MarkKind::analysisInconclusive;
}

QString milestoneWords(const std::string& what, const Words& say) {
  static constexpr std::array<std::pair<const char*, const char*>, 8> kKnown{{
      {"collapse", QT_TRANSLATE_NOOP("Papers", "collapse")},
      {"call_received", QT_TRANSLATE_NOOP("Papers", "call received")},
      {"cpr_started", QT_TRANSLATE_NOOP("Papers", "compressions started")},
      {"device_requested", QT_TRANSLATE_NOOP("Papers", "device requested")},
      {"device_arrived", QT_TRANSLATE_NOOP("Papers", "device arrived")},
      {"crew_arrived", QT_TRANSLATE_NOOP("Papers", "crew arrived")},
      {"handover", QT_TRANSLATE_NOOP("Papers", "handover")},
      {"efforts_ended", QT_TRANSLATE_NOOP("Papers", "efforts ended")},
  }};
  for (const auto& [word, english] : kKnown) {
    if (what == word) {
      return say(english);
    }
  }
  return own(what).replace(QLatin1Char('_'), QLatin1Char(' '));
}

} // namespace afterbeat::papers
