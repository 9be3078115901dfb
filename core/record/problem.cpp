#include "core/record/problem.h"

#include "core/record/phrase.h"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

namespace afterbeat {

namespace {

/// Written values can be long; a sentence shows their beginning.
constexpr std::size_t kLongestShown = 60;

std::string shown(const std::string& text) {
  if (text.size() <= kLongestShown) {
    return text;
  }
  std::size_t cut = kLongestShown;
  while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0U) == 0x80U) {
    --cut;
  }
  return text.substr(0, cut) + "…";
}

std::string lineSentence(ProblemKind kind, const std::string& a, const std::string& b) {
  switch (kind) {
  case ProblemKind::notClosed:
    return "The recording stopped without being closed; all complete lines are kept.";
  case ProblemKind::brokenLine:
    return fmt::format("This line could not be read and is lost: {}.", a);
  case ProblemKind::repeatedLine:
    return fmt::format("This line repeats line {} exactly and was dropped.", a);
  case ProblemKind::endBeforeBegin:
    return fmt::format("This “{}” ends before it begins; it is kept but counts in no figure.", a);
  case ProblemKind::outOfOrder:
    return fmt::format("This line is out of order: {} s earlier than the line above it. It was "
                       "sorted into its place.",
                       a);
  case ProblemKind::valueOutOfRange:
    return fmt::format("The value of “{}” is too large or not a number ({}); it is treated as "
                       "missing.",
                       a, b);
  case ProblemKind::wrongValue:
    return fmt::format("“{}” has a value that this program does not understand ({}); it is kept "
                       "and treated as missing.",
                       a, b);
  case ProblemKind::missingKey:
    return fmt::format("This “{}” lacks “{}”; it is kept but counts in no figure.", a, b);
  case ProblemKind::deliveryUnknown:
    return "It is not recorded whether this shock was delivered; it is counted neither as given "
           "nor as withheld.";
  case ProblemKind::neverClosedStretch:
    return fmt::format("This “{}” began and its end was never recorded; it is taken to last until "
                       "the last time in the file.",
                       a);
  default:
    return {};
  }
}

std::string channelSentence(ProblemKind kind, const std::string& a, const std::string& b) {
  switch (kind) {
  case ProblemKind::unknownChannel:
    return fmt::format("These samples belong to channel “{}”, which the first line does not "
                       "describe; they are lost.",
                       a);
  case ProblemKind::badBlock:
    return fmt::format("These samples of channel “{}” could not be used: {}; they are lost.", a, b);
  case ProblemKind::overlappingBlocks:
    return fmt::format("Samples of channel “{}” overlap earlier ones by {} s; the earlier ones are "
                       "kept.",
                       a, b);
  case ProblemKind::gapInChannel:
    return fmt::format("Channel “{}” has a gap of {} s before these samples.", a, b);
  case ProblemKind::longBlock:
    return fmt::format("These samples of channel “{}” span {} s, longer than the 5 s a line "
                       "should hold; they are kept.",
                       a, b);
  case ProblemKind::channelNotDrawn:
    return fmt::format("Channel “{}” is stored in a way this program does not know ({}); it is "
                       "kept and not drawn.",
                       a, b);
  case ProblemKind::wrongChannel:
    return fmt::format("Channel “{}” cannot be used: {}; its samples are lost.", a, b);
  default:
    return {};
  }
}

std::string fileSentence(ProblemKind kind, const std::string& a, const std::string& b) {
  switch (kind) {
  case ProblemKind::checksumDiffers:
    return "The file does not match its checksum: it was damaged or edited after it was closed.";
  case ProblemKind::countDiffers:
    return fmt::format("The closing line speaks of {} lines, but {} were found.", a, b);
  case ProblemKind::anotherRecord:
    return "Here another recording begins in the same file; it is read as a separate record.";
  case ProblemKind::missingHeaderKey:
    return fmt::format("The first line of the recording lacks “{}”.", a);
  case ProblemKind::wrongHeaderValue:
    return fmt::format("In the first line of the recording, “{}” has a value that this program "
                       "does not understand ({}); it is treated as missing.",
                       a, b);
  case ProblemKind::madeUpHeader:
    return "The file has no usable first line; it was read under a made-up one, so date, place "
           "and device are unknown.";
  case ProblemKind::doubleDetection:
    return fmt::format("{} chest compressions were detected twice and are counted once.", a);
  case ProblemKind::categoryDiffers:
    return fmt::format("The record speaks of the patient as “{}”, but the device was set to “{}”.",
                       a, b);
  case ProblemKind::importNote:
    return a;
  default:
    return {};
  }
}

} // namespace

const char* severityName(Severity severity) {
  switch (severity) {
  case Severity::error:
    return "error";
  case Severity::warning:
    return "warning";
  case Severity::info:
    break;
  }
  return "info";
}

std::optional<std::size_t> phraseBegin(ProblemKind kind) {
  switch (kind) {
  case ProblemKind::importNote:
  case ProblemKind::brokenLine:
    return 0;
  case ProblemKind::badBlock:
  case ProblemKind::wrongChannel:
    return 1;
  default:
    return std::nullopt;
  }
}

std::string sentence(const Problem& problem) {
  std::vector<std::string> args = problem.args;
  args.resize(std::max<std::size_t>(args.size(), 2));
  const auto begin = phraseBegin(problem.kind);
  // Written values are shortened; clauses and sentences of our own are not.
  for (std::size_t i = 0; i < begin.value_or(args.size()); ++i) {
    args[i] = shown(args[i]);
  }
  if (begin && *begin < problem.args.size()) {
    args[*begin] = sentence(
        Phrase{{problem.args.begin() + static_cast<std::ptrdiff_t>(*begin), problem.args.end()}});
  }
  for (const auto part : {lineSentence, channelSentence, fileSentence}) {
    if (std::string text = part(problem.kind, args[0], args[1]); !text.empty()) {
      return text;
    }
  }
  return problem.kind == ProblemKind::importNote
             ? std::string{}
             : "Something in this file could not be understood.";
}

} // namespace afterbeat
