#include "app/papers/debrief.h"
#include "app/papers/computed_length.h"

#include "app/papers/debrief_words.h"
#include "app/papers/facts.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace afterbeat::papers {

namespace {

QString commonPractice(const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "common practice, no source"));
}

DebriefItem itemOf(const Finding& finding, DebriefKind kind, const Record& record,
                   const Figures& figures, const Words& say) {
  DebriefItem item;
  item.rule = finding.rule;
  item.kind = kind;
  item.figure = debrief::figureFor(finding, say);
  item.sentence = debrief::sentenceFor(finding, figures, say);
  if (const double inside = finding.beside.value_or(0);
      (finding.rule == DebriefRule::beforeShock || finding.rule == DebriefRule::longestPause) &&
      !finding.within && inside >= 1) {
    item.sentence +=
        QLatin1Char(' ') + say(QT_TRANSLATE_NOOP("Papers", "The device's analysis took %1 of it."))
                               .arg(say.length(computedLength(inside)));
  }
  item.target = debrief::targetFor(finding, say);
  item.source = finding.source ? citationWords(figures.settings.profile, *finding.source, say)
                               : commonPractice(say);
  item.citation = finding.source ? plainText(finding.source->text) : QString();
  item.moment = finding.moment;
  item.when = momentWords(record, finding.moment.begin, say);
  return item;
}

DebriefItem effortOf(const BestMinute& minute, const Record& record, const Words& say) {
  DebriefItem item;
  item.rule = DebriefRule::bestMinute;
  item.kind = DebriefKind::effort;
  item.moment = minute.stretch;
  item.when = momentWords(record, minute.stretch.begin, say);
  item.figure = say.length(minute.handsOn);
  item.sentence =
      minute.handsOn == minute.of
          ? say(QT_TRANSLATE_NOOP("Papers",
                                  "The steadiest minute: hands were on the chest all the time."))
          : say(QT_TRANSLATE_NOOP("Papers",
                                  "The steadiest minute: hands were on the chest for %1 of %2."))
                .arg(say.length(minute.handsOn), say.length(minute.of));
  return item;
}

void addWell(Debrief& debrief, const std::vector<Finding>& findings, const DebriefChoice& choice,
             const Record& record, const Figures& figures, const Words& say) {
  for (const std::size_t i : choice.well) {
    debrief.well.push_back(itemOf(findings[i], DebriefKind::within, record, figures, say));
  }
  if (choice.nearest) {
    debrief.well.push_back(
        itemOf(findings[*choice.nearest], DebriefKind::nearest, record, figures, say));
  }
  const auto best = bestMinute(figures);
  const bool effort = choice.effort && best.has_value();
  if (effort) {
    debrief.well.push_back(effortOf(*best, record, say));
  }
  if (!choice.well.empty()) {
    return;
  }
  if (choice.nearest && effort) {
    debrief.wellNote = say(
        QT_TRANSLATE_NOOP("Papers", "Nothing that was measured lies within its target yet. Here "
                                    "is what came nearest, and an effort that shows in the "
                                    "record."));
  } else if (choice.nearest) {
    debrief.wellNote = say(QT_TRANSLATE_NOOP("Papers", "Nothing that was measured lies within its "
                                                       "target yet. Here is what came nearest."));
  } else if (effort) {
    debrief.wellNote = say(QT_TRANSLATE_NOOP("Papers", "An effort that shows in the record."));
  } else {
    debrief.wellNote = say(QT_TRANSLATE_NOOP(
        "Papers",
        "The record cannot tell what went well. The people who were there can: ask them."));
  }
}

void addPractise(Debrief& debrief, const std::vector<Finding>& findings,
                 const DebriefChoice& choice, const Record& record, const Figures& figures,
                 const Words& say) {
  for (const std::size_t i : choice.practise) {
    debrief.practise.push_back(itemOf(findings[i], DebriefKind::beyond, record, figures, say));
  }
  if (!choice.practise.empty()) {
    return;
  }
  if (findings.empty()) {
    debrief.practiseNote = say(QT_TRANSLATE_NOOP(
        "Papers", "There is too little in the record to choose something to practise."));
  } else if (choice.nearest) {
    debrief.practiseNote =
        say(QT_TRANSLATE_NOOP("Papers", "Nothing else that was measured lies beyond its target."));
  } else {
    debrief.practiseNote = say(QT_TRANSLATE_NOOP(
        "Papers",
        "Nothing that was measured lies clearly beyond its target. What would you like to "
        "practise?"));
  }
}

/// How it was, one about what went well, up to two about what to practise, and what next.
void addQuestions(Debrief& debrief, const std::vector<Finding>& findings,
                  const DebriefChoice& choice, const Record& record, const Figures& figures,
                  const Words& say) {
  const auto ask = [&](std::size_t i) {
    const QString question =
        debrief::questionFor(findings[i], momentWords(record, findings[i].moment.begin, say), say);
    if (!question.isEmpty()) {
      debrief.questions << question;
    }
  };
  debrief.questions << say(QT_TRANSLATE_NOOP("Papers", "How are you feeling about it?"));
  if (!choice.well.empty()) {
    ask(choice.well.front());
  } else {
    debrief.questions << say(QT_TRANSLATE_NOOP("Papers", "What are you glad about?"));
  }
  // An advised shock that was not given may be right or not: only those who were there know.
  const auto withheld =
      std::find_if(figures.shocks.begin(), figures.shocks.end(), [](const ShockFigures& shock) {
        return shock.delivered.has_value() && !*shock.delivered;
      });
  if (withheld != figures.shocks.end()) {
    debrief.questions << say(QT_TRANSLATE_NOOP(
                                 "Papers",
                                 "%1: a shock was prepared and not given. What was happening?"))
                             .arg(momentWords(record, withheld->t, say));
  }
  // Five questions at most.
  const std::size_t aboutPractise = withheld != figures.shocks.end() ? 1 : 2;
  for (std::size_t i = 0; i < std::min(aboutPractise, choice.practise.size()); ++i) {
    ask(choice.practise[i]);
  }
  debrief.questions << say(
      QT_TRANSLATE_NOOP("Papers", "What do we do the same way next time, and what do we try?"));
}

} // namespace

Debrief makeDebrief(const Record& record, const Figures& figures, const Words& say) {
  Debrief debrief;
  const std::vector<Finding> findings = debriefFindings(record, figures);
  const DebriefChoice choice = chooseDebrief(findings);
  if (!figures.window && findings.empty()) {
    debrief.nothing = say(QT_TRANSLATE_NOOP(
        "Papers",
        "This record holds no compression, analysis or shock. Open a recording of the "
        "rescue or the drill, or talk from memory: the questions below need no figures."));
  } else {
    addWell(debrief, findings, choice, record, figures, say);
    addPractise(debrief, findings, choice, record, figures, say);
    const QStringList missing = debrief::notTold(record, figures, say);
    if (!missing.isEmpty()) {
      debrief.cannotTell =
          say(QT_TRANSLATE_NOOP("Papers", "Not in the record: %1.")).arg(say.list(missing));
    }
  }
  addQuestions(debrief, findings, choice, record, figures, say);
  return debrief;
}

QString wentWellHeading(const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "Went well"));
}

QString practiseHeading(const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "To practise"));
}

QString questionsHeading(const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "To talk about"));
}

QString targetLine(const DebriefItem& item) {
  return item.target.isEmpty() ? QString() : QStringLiteral("%1, %2").arg(item.target, item.source);
}

Record withoutOwnWords(const Record& record) {
  static constexpr std::array kKnownMilestones{"collapse",         "call_received",  "cpr_started",
                                               "device_requested", "device_arrived", "crew_arrived",
                                               "handover",         "efforts_ended"};
  Record plain;
  plain.header = record.header;
  plain.entries = record.entries;
  plain.seal = record.seal;
  plain.lastTime = record.lastTime;
  for (Entry& entry : plain.entries) {
    entry.note.clear();
    const auto* milestone = std::get_if<entry::Milestone>(&entry.data);
    const bool ownMilestone =
        milestone != nullptr &&
        std::none_of(kKnownMilestones.begin(), kKnownMilestones.end(),
                     [&](const char* word) { return milestone->what == word; });
    if (std::holds_alternative<entry::Mark>(entry.data) || ownMilestone) {
      entry.data = entry::Mark{};
    } else if (auto* given = std::get_if<entry::Medication>(&entry.data)) {
      given->text.clear();
    } else if (auto* change = std::get_if<entry::RescuerChange>(&entry.data)) {
      change->text.clear();
    }
  }
  return plain;
}

} // namespace afterbeat::papers
