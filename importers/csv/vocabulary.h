/// The words people use for what happened, in English and German.
#pragma once

#include "importers/csv/words.h"

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// What a note can be about.
enum class Topic : unsigned char {
  device,
  electrodes,
  analysis,
  shock,
  compressions,
  singleCompression,
  /// CPR as a whole: its start may be a stretch of compressions or a known moment.
  cpr,
  /// The resuscitation: its end is the end of all efforts.
  resuscitation,
  ventilation,
  airway,
  circulation,
  rhythm,
  crew,
  collapse,
  callReceived,
  handover,
  effortsEnded,
  cprStartedByOthers,
  rescuerChange,
  medication,
  drug,
  patientMode,
  note,
};

/// What a note says about its topic.
enum class State : unsigned char {
  none, ///< only the topic is named
  yes,
  no,
  on,
  off,
  poor,
  start,
  stop,
  advised,
  notAdvised,
  unclear,
  given,
  withheld,
  arrived,
  requested,
  returned,
  lost,
  noAirway,
  mask,
  supraglottic,
  tube,
  shockable,
  organised,
  ventricularTachycardia,
  asystole,
  adult,
  child,
  infant,
};

/// A phrase that names a topic, perhaps with what it says about it ("kein Schock empfohlen").
struct TopicPhrase {
  std::vector<std::string> words;
  Topic topic{};
  State state = State::none;
};

/// A phrase that says something about a topic named elsewhere ("empfohlen").
struct StatePhrase {
  std::vector<std::string> words;
  State state{};
};

/// All phrases, folded as `wordsOf` folds.
[[nodiscard]] const std::vector<TopicPhrase>& topicPhrases();
[[nodiscard]] const std::vector<StatePhrase>& statePhrases();

/// Words that say nothing here: articles, "first", "Nr.".
[[nodiscard]] bool isFiller(std::string_view word);

/// Words after which only a reason or a person follows ("paused for analysis").
[[nodiscard]] bool opensAside(std::string_view word);

/// The role of a column, from its heading.
enum class ColumnRole : unsigned char { time, date, what, value, remark, other };

[[nodiscard]] ColumnRole roleOfHeading(std::string_view heading);

} // namespace afterbeat
