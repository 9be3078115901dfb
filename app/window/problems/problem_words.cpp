#include "app/window/problems/problem_words.h"

#include "app/papers/phrase_words.h"
#include "app/papers/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <span>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// The argument is a length in seconds.
bool isLength(ProblemKind kind, std::size_t index) {
  switch (kind) {
  case ProblemKind::outOfOrder:
    return index == 0;
  case ProblemKind::overlappingBlocks:
  case ProblemKind::gapInChannel:
  case ProblemKind::longBlock:
    return index == 1;
  default:
    return false;
  }
}

/// Written values can be long; a sentence shows their beginning. Clauses are shown whole.
QString shown(const Problem& problem, std::size_t index) {
  if (phraseBegin(problem.kind) == index) {
    return papers::phraseWords(
        std::span(problem.args).subspan(std::min(index, problem.args.size())));
  }
  if (isLength(problem.kind, index) && index < problem.args.size()) {
    return papers::decimalWords(problem.args[index]);
  }
  constexpr qsizetype kLongestShown = 60;
  const QString text =
      index < problem.args.size() ? papers::plainText(problem.args[index]) : QString();
  return text.size() <= kLongestShown ? text : text.left(kLongestShown) + QStringLiteral("…");
}

/// One sentence with up to two places to fill.
QString filled(const char* english, const Problem& problem) {
  QString text = tr(english);
  // Filled in one go: an argument may itself hold "%2".
  if (text.contains(QLatin1String("%2"))) {
    return text.arg(shown(problem, 0), shown(problem, 1));
  }
  return text.contains(QLatin1String("%1")) ? text.arg(shown(problem, 0)) : text;
}

const char* sentenceOf(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::notClosed:
    return QT_TRANSLATE_NOOP("afterbeat::window", "The recording stopped without being closed.");
  case ProblemKind::brokenLine:
    return QT_TRANSLATE_NOOP("afterbeat::window", "This line could not be read: %1.");
  case ProblemKind::repeatedLine:
    return QT_TRANSLATE_NOOP("afterbeat::window", "This line repeats line %1 exactly.");
  case ProblemKind::endBeforeBegin:
    return QT_TRANSLATE_NOOP("afterbeat::window", "This “%1” ends before it begins.");
  case ProblemKind::outOfOrder:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "This line is %1 s earlier than the line above it.");
  case ProblemKind::valueOutOfRange:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "The value of “%1” is too large or not a number (%2).");
  case ProblemKind::wrongValue:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "“%1” has a value that this program does not understand (%2).");
  case ProblemKind::missingKey:
    return QT_TRANSLATE_NOOP("afterbeat::window", "This “%1” lacks “%2”.");
  case ProblemKind::deliveryUnknown:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "It is not recorded whether this shock was delivered.");
  case ProblemKind::neverClosedStretch:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "This “%1” began, and its end was never recorded.");
  case ProblemKind::unknownChannel:
    return QT_TRANSLATE_NOOP(
        "afterbeat::window",
        "These samples belong to channel “%1”, which the first line does not describe.");
  case ProblemKind::badBlock:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "These samples of channel “%1” could not be used: %2.");
  case ProblemKind::overlappingBlocks:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "Samples of channel “%1” overlap earlier ones by %2 s.");
  case ProblemKind::gapInChannel:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "Channel “%1” has a gap of %2 s before these samples.");
  case ProblemKind::longBlock:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "These samples of channel “%1” span %2 s, longer than the 5 s a line "
                             "should hold.");
  case ProblemKind::channelNotDrawn:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "Channel “%1” is stored in a way this program does not know (%2).");
  case ProblemKind::wrongChannel:
    return QT_TRANSLATE_NOOP("afterbeat::window", "Channel “%1” cannot be used: %2.");
  case ProblemKind::checksumDiffers:
    return QT_TRANSLATE_NOOP("afterbeat::window", "The file does not match its checksum.");
  case ProblemKind::countDiffers:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "The closing line speaks of %1 lines, but %2 were found.");
  case ProblemKind::anotherRecord:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "Here another recording begins in the same file.");
  case ProblemKind::missingHeaderKey:
    return QT_TRANSLATE_NOOP("afterbeat::window", "The first line of the recording lacks “%1”.");
  case ProblemKind::wrongHeaderValue:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "In the first line of the recording, “%1” has a value that this "
                             "program does not understand (%2).");
  case ProblemKind::madeUpHeader:
    return QT_TRANSLATE_NOOP("afterbeat::window", "The file has no usable first line.");
  case ProblemKind::doubleDetection:
    return QT_TRANSLATE_NOOP("afterbeat::window", "%1 chest compressions were detected twice.");
  case ProblemKind::categoryDiffers:
    return QT_TRANSLATE_NOOP(
        "afterbeat::window",
        "The record speaks of the patient as “%1”, but the device was set to “%2”.");
  case ProblemKind::importNote:
    break;
  }
  return nullptr;
}

struct English {
  const char *heading, *meaning;
};

English lineWords(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::brokenLine:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Lines that could not be read"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "What these lines said is lost; all other lines are used. Counts "
                              "may be too low.")};
  case ProblemKind::repeatedLine:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Repeated lines"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The repetition was dropped, so that nothing is counted twice.")};
  case ProblemKind::endBeforeBegin:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Ends before it begins"),
            QT_TRANSLATE_NOOP("afterbeat::window", "The entry is kept and counts in no figure.")};
  case ProblemKind::outOfOrder:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Lines out of order"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "They were sorted into their place by time; nothing is lost.")};
  case ProblemKind::valueOutOfRange:
  case ProblemKind::wrongValue:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Values that could not be used"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The value is kept as it was written and treated as missing.")};
  case ProblemKind::missingKey:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Incomplete entries"),
            QT_TRANSLATE_NOOP("afterbeat::window", "The entry is kept and counts in no figure.")};
  case ProblemKind::deliveryUnknown:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Shocks that may or may not have been given"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "They are counted neither as given nor as not given. Ask the crew.")};
  case ProblemKind::neverClosedStretch:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Ends that were not recorded"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The entry is taken to last until the last time in the file.")};
  default:
    return {nullptr, nullptr};
  }
}

English sampleWords(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::unknownChannel:
  case ProblemKind::badBlock:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Samples that are lost"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "This part of the waves is missing and shown as a gap. Entries are "
                              "not affected.")};
  case ProblemKind::overlappingBlocks:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Samples recorded twice"),
            QT_TRANSLATE_NOOP("afterbeat::window", "The earlier samples are kept.")};
  case ProblemKind::gapInChannel:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Gaps in the waves"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The waves are drawn with the gap. Entries are not "
                              "affected.")};
  case ProblemKind::longBlock:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Long lines of samples"),
            QT_TRANSLATE_NOOP("afterbeat::window", "They are used; nothing is lost.")};
  case ProblemKind::channelNotDrawn:
    return {
        QT_TRANSLATE_NOOP("afterbeat::window", "Channels that cannot be drawn"),
        QT_TRANSLATE_NOOP("afterbeat::window", "The samples are kept in the file and not shown.")};
  case ProblemKind::wrongChannel:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Channels that cannot be used"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Their samples are lost.")};
  default:
    return {nullptr, nullptr};
  }
}

English fileWords(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::notClosed:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "The recording was not closed"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "All complete lines are kept. What happened after the last of them "
                              "is not known.")};
  case ProblemKind::checksumDiffers:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "The checksum differs"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The file was damaged or edited after it was closed. Everything that "
                              "can be read is shown.")};
  case ProblemKind::countDiffers:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "The number of lines differs"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "Lines are missing or were added. What is there is shown.")};
  case ProblemKind::anotherRecord:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Several recordings in one file"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "Each is read as a record of its own; see the menu Record.")};
  case ProblemKind::missingHeaderKey:
  case ProblemKind::wrongHeaderValue:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "The first line is incomplete"),
            QT_TRANSLATE_NOOP("afterbeat::window", "What it lacks is treated as not recorded.")};
  case ProblemKind::madeUpHeader:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "No first line"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "The file was read under a made-up one; date, place and device are "
                              "unknown.")};
  case ProblemKind::doubleDetection:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Compressions detected twice"),
            QT_TRANSLATE_NOOP("afterbeat::window", "Each is counted once.")};
  case ProblemKind::categoryDiffers:
    return {QT_TRANSLATE_NOOP("afterbeat::window", "Patient and device setting differ"),
            QT_TRANSLATE_NOOP("afterbeat::window",
                              "Targets follow the record's patient. Check which of the two is "
                              "right.")};
  default:
    return {nullptr, nullptr};
  }
}

} // namespace

QString problemWords(const Problem& problem) {
  if (problem.kind == ProblemKind::importNote) {
    return papers::phraseWords(problem.args);
  }
  if (const char* english = sentenceOf(problem.kind)) {
    return filled(english, problem);
  }
  return tr("Something in this file could not be understood.");
}

ProblemKindWords kindWords(ProblemKind kind) {
  for (const auto part : {lineWords, sampleWords, fileWords}) {
    const English english = part(kind);
    if (english.heading != nullptr) {
      return {tr(english.heading), tr(english.meaning)};
    }
  }
  return {tr("Notes from reading the source"), {}};
}

std::map<int, Time> timesOfProblems(const Record& record, std::span<const Problem> problems) {
  // A record has tens of thousands of entries, and mostly few problems.
  std::vector<int> lines;
  for (const Problem& problem : problems) {
    if (problem.line > 0) {
      lines.push_back(problem.line);
    }
  }
  std::sort(lines.begin(), lines.end());
  std::map<int, Time> times;
  if (lines.empty()) {
    return times;
  }
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && std::binary_search(lines.begin(), lines.end(), entry.line)) {
      times.emplace(entry.line, entry.t);
    }
  }
  return times;
}

} // namespace afterbeat::window
