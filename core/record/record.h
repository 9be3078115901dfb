/// What one rescue, drill or test left behind, as understood by this program.
#pragma once

#include "core/record/channel.h"
#include "core/record/entry.h"
#include "core/record/wall_clock.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// A drill never enters rescue statistics.
enum class RecordKind : std::uint8_t { rescue, drill, test };
/// The format's word: "rescue", "drill", "test".
[[nodiscard]] std::string_view name(RecordKind kind);
/// Empty: no such word.
[[nodiscard]] std::optional<RecordKind> recordKindFrom(std::string_view word);

/// Whether the device's clock can be believed, as the header says.
enum class ClockState : std::uint8_t { notStated, set, unset, zoneUnknown };

/// The user's own words about the device; all free text.
struct DeviceFacts {
  std::string label, maker, model, serial, software, returnTo;
};

/// What is known about the device clock. `offset` is true time minus device time.
struct ClockFacts {
  ClockState state = ClockState::notStated;
  std::optional<Duration> offset;
  std::optional<WallTime> checked;
  std::string against;
};

/// What is known about the event, in Utstein's words.
struct EventFacts {
  /// `bystander`, `crew`, `no`, `unknown`, or empty.
  std::string witnessed;
  /// Free: the header's value as a word ("true", "yes", ...), or empty.
  std::string bystanderCpr;
  std::string location, cause;
};

/// One source of a merged record.
struct PartFacts {
  std::string id, sha256, label;
  Duration offset{};
  /// Keys this program does not know: `"key":value,...`.
  std::string otherKeys = {};
};

/// Of a salvaged or rewritten record: what it was made from.
struct DerivedFrom {
  std::string id, sha256;
  std::optional<double> problems;
};

/// The first line of a log.
struct Header {
  std::string version = "1.0";
  /// `urn:uuid:...`; empty if the file does not say.
  std::string id;
  std::optional<WallTime> recorded;
  std::optional<RecordKind> kind;
  PatientCategory patient = PatientCategory::unknown;
  std::optional<double> ageYears;
  std::string sex;
  DeviceFacts device;
  ClockFacts clock;
  EventFacts event;
  std::string site, team, caseNumber;
  std::vector<PartFacts> parts;
  std::optional<DerivedFrom> derivedFrom;
  std::string madeBy;
  bool synthetic = false;
  /// Keys this program does not know, or could not use: `"key":value,...`.
  std::string otherKeys;
  /// True: the file had no usable header; this one was made up at the user's wish.
  bool madeUp = false;
};

/// How the file ended.
struct Seal {
  /// An `end` line was found.
  bool present = false;
  /// Its checksum agrees with the bytes before it.
  bool matches = false;
  /// Hex SHA-256 of the bytes before the `end` line (as found; empty where not computed).
  std::string sha256;
};

/// One record. Entries are sorted by `t`, ties as found.
struct Record {
  Header header;
  std::vector<Entry> entries;
  std::vector<Channel> channels;
  Seal seal;
  /// Latest `t` or `end` written in the file, `end` line included; empty if no line has a time.
  std::optional<Time> lastTime;
  /// How many other records the same file holds; what they say is not in this one.
  int otherRecordsInFile = 0;
  /// How many lines of the file could not be read, half a line at a broken-off end apart.
  int lostLines = 0;
};

} // namespace afterbeat
