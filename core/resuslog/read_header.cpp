#include "core/resuslog/read_header.h"

#include "core/resuslog/header_reader.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {

namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool isHexDigit(char c) {
  return isDigit(c) || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

/// Lengths of time in the header may bridge a clock that was never set: up to some 60 years, which
/// a double holds to the microsecond.
constexpr Range kClockRange{-2e9, 2e9};

std::optional<Duration> lengthOf(std::optional<double> s) {
  return s ? std::optional{Duration{std::llround(*s * 1e6)}} : std::nullopt;
}

void readIdentity(HeaderReader& reader, Header& header) {
  reader.weigh(Severity::error);
  for (const auto key : {"id", "recorded", "kind"}) {
    reader.requireAny(key);
  }
  reader.text("id", header.id);
  if (!header.id.empty() && !isUuidUrn(header.id)) {
    reader.wrong(*reader.object().find("id"));
    header.id.clear();
  }
  reader.wallTime("recorded", header.recorded);
  reader.word("kind", header.kind);
  reader.weigh(Severity::warning);
}

void readPatient(HeaderReader& reader, Header& header) {
  reader.nested("patient", [&](HeaderReader& inner) {
    std::optional<PatientCategory> category;
    inner.word("category", category);
    header.patient = category.value_or(PatientCategory::unknown);
    inner.number("age_years", header.ageYears, Range{});
    inner.text("sex", header.sex);
  });
}

void readDevice(HeaderReader& reader, DeviceFacts& device) {
  reader.nested("device", [&](HeaderReader& inner) {
    inner.text("label", device.label);
    inner.text("maker", device.maker);
    inner.text("model", device.model);
    inner.text("serial", device.serial);
    inner.text("software", device.software);
    inner.text("return_to", device.returnTo);
  });
}

void readClock(HeaderReader& reader, ClockFacts& clock) {
  reader.nested("clock", [&](HeaderReader& inner) {
    std::optional<ClockState> state;
    inner.word("state", state);
    clock.state = state.value_or(ClockState::notStated);
    std::optional<double> offset;
    inner.number("offset_s", offset, kClockRange);
    clock.offset = lengthOf(offset);
    inner.wallTime("checked", clock.checked);
    inner.text("against", clock.against);
  });
}

/// A yes or no that devices write as a word or as a truth value.
void readAnyWord(HeaderReader& reader, std::string_view key, std::string& value) {
  JsonMember* member = reader.object().find(key);
  if (member == nullptr) {
    return;
  }
  member->taken = true;
  if (member->kind == JsonKind::string) {
    value = member->text;
  } else if (member->kind == JsonKind::boolean) {
    value = member->flag ? "true" : "false";
  } else {
    reader.wrong(*member);
  }
}

void readEvent(HeaderReader& reader, EventFacts& event) {
  reader.nested("event", [&](HeaderReader& inner) {
    inner.text("witnessed", event.witnessed);
    constexpr std::array<std::string_view, 5> kWords = {"", "bystander", "crew", "no", "unknown"};
    if (std::find(kWords.begin(), kWords.end(), event.witnessed) == kWords.end()) {
      inner.wrong(*inner.object().find("witnessed"));
      event.witnessed.clear();
    }
    readAnyWord(inner, "bystander_cpr", event.bystanderCpr);
    inner.text("location", event.location);
    inner.text("cause", event.cause);
  });
}

/// Reads each element of an array as an object.
void eachObject(HeaderReader& reader, const std::string& key,
                const std::function<void(HeaderReader&)>& read) {
  ObjectParser parser;
  for (const auto element : reader.elements(key)) {
    const auto object = parser.parse(element);
    if (!object) {
      reader.problems().push_back({reader.line(),
                                   Severity::warning,
                                   ProblemKind::wrongHeaderValue,
                                   {key, std::string(element.substr(0, 60))}});
      continue;
    }
    HeaderReader inner(**object, key + ".", reader.line(), reader.problems());
    read(inner);
  }
}

void readParts(HeaderReader& reader, Header& header) {
  eachObject(reader, "parts", [&](HeaderReader& inner) {
    PartFacts part;
    inner.text("id", part.id);
    inner.text("sha256", part.sha256);
    std::optional<double> offset;
    inner.number("offset_s", offset, kClockRange);
    part.offset = lengthOf(offset).value_or(Duration{});
    inner.text("label", part.label);
    part.otherKeys = inner.rest();
    header.parts.push_back(std::move(part));
  });
}

void readDerivedFrom(HeaderReader& reader, Header& header) {
  reader.nested("derived_from", [&](HeaderReader& inner) {
    DerivedFrom from;
    inner.text("id", from.id);
    inner.text("sha256", from.sha256);
    inner.number("problems", from.problems, Range{});
    header.derivedFrom = std::move(from);
  });
}

/// Times are whole microseconds: samples any closer together could not be told apart.
constexpr double kFastestHz = 1e6;

/// Why a channel cannot be used; nothing if it can.
std::optional<Phrase> channelFault(FlatObject& object, const Channel& channel) {
  if (channel.id.empty()) {
    return phrase(inEnglish("Importers", "it has no id"));
  }
  if (channel.quantity.empty()) {
    return phrase(inEnglish("Importers", "it does not say what was measured"));
  }
  if (!(channel.rateHz > 0 && channel.rateHz <= kFastestHz)) {
    return phrase(inEnglish("Importers", "it has no usable sampling rate"));
  }
  for (const auto key : {"scale", "offset"}) {
    const JsonMember* member = object.find(key);
    if (member != nullptr && member->kind != JsonKind::number) {
      return phrase(inEnglish("Importers", "its %1 is not a number"), key);
    }
  }
  return std::nullopt;
}

/// The arguments of a problem: a channel, and why.
std::vector<std::string> withChannel(const std::string& id, Phrase why) {
  why.parts.insert(why.parts.begin(), id);
  return std::move(why.parts);
}

/// A number without a report of its own: what a wrong one means is said once for the channel.
double numberOr(FlatObject& object, std::string_view key, double otherwise) {
  JsonMember* member = object.find(key);
  if (member == nullptr || member->kind != JsonKind::number) {
    return otherwise;
  }
  member->taken = true;
  return member->number;
}

void readChannel(HeaderReader& inner, HeaderRead& read) {
  Channel channel;
  inner.text("id", channel.id);
  inner.text("quantity", channel.quantity);
  inner.text("unit", channel.unit);
  channel.rateHz = numberOr(inner.object(), "rate_hz", 0);
  channel.scale = numberOr(inner.object(), "scale", 1);
  channel.offset = numberOr(inner.object(), "offset", 0);
  inner.text("encoding", channel.encoding);
  inner.text("label", channel.label);
  ChannelUse use = ChannelUse::decoded;
  const JsonMember* encoding = inner.object().find("encoding");
  if (auto why = channelFault(inner.object(), channel)) {
    use = ChannelUse::unusable;
    read.problems.push_back({inner.line(), Severity::error, ProblemKind::wrongChannel,
                             withChannel(channel.id, std::move(*why))});
  } else if (channel.encoding != "int16le" || (encoding != nullptr && !encoding->taken)) {
    use = ChannelUse::notDrawn;
    read.problems.push_back({inner.line(),
                             Severity::warning,
                             ProblemKind::channelNotDrawn,
                             {channel.id, channel.encoding}});
  }
  channel.drawable = use == ChannelUse::decoded;
  channel.otherKeys = inner.rest();
  read.channels.push_back(std::move(channel));
  read.uses.push_back(use);
}

/// Blocks name their channel by id: of two with one id, neither can be told.
void refuseTwins(HeaderRead& read, int line) {
  for (std::size_t i = 0; i < read.channels.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (read.channels[i].id.empty() || read.channels[i].id != read.channels[j].id) {
        continue;
      }
      read.problems.push_back(
          {line, Severity::error, ProblemKind::wrongChannel,
           withChannel(read.channels[i].id,
                       phrase(inEnglish("Importers", "two channels have this id")))});
      for (const std::size_t k : {i, j}) {
        read.uses[k] = ChannelUse::unusable;
        read.channels[k].drawable = false;
      }
      break;
    }
  }
}

} // namespace

std::optional<std::string> headerVersion(FlatObject& object) {
  const JsonMember* member = object.find("resuslog");
  if (member == nullptr || member->kind != JsonKind::string) {
    return std::nullopt;
  }
  const std::string_view text = member->text;
  const std::size_t dot = text.find('.');
  const auto major = text.substr(0, dot);
  const auto minor = dot == std::string_view::npos ? std::string_view{} : text.substr(dot + 1);
  if (major.empty() || !std::all_of(major.begin(), major.end(), isDigit) ||
      !std::all_of(minor.begin(), minor.end(), isDigit) || (major == "1" && minor.empty())) {
    return std::nullopt;
  }
  return std::string(text);
}

bool isReadableVersion(std::string_view version) {
  return version.substr(0, 2) == "1.";
}

bool isUuidUrn(std::string_view text) {
  constexpr std::string_view kPattern = "urn:uuid:hhhhhhhh-hhhh-hhhh-hhhh-hhhhhhhhhhhh";
  if (text.size() != kPattern.size() || text.substr(0, 9) != kPattern.substr(0, 9)) {
    return false;
  }
  for (std::size_t i = 9; i < text.size(); ++i) {
    if (kPattern[i] == 'h' ? !isHexDigit(text[i]) : text[i] != '-') {
      return false;
    }
  }
  return true;
}

HeaderRead readHeader(FlatObject& object, int line) {
  HeaderRead read;
  Header& header = read.header;
  HeaderReader reader(object, "", line, read.problems);
  reader.text("resuslog", header.version);
  readIdentity(reader, header);
  readPatient(reader, header);
  readDevice(reader, header.device);
  readClock(reader, header.clock);
  readEvent(reader, header.event);
  reader.text("site", header.site);
  reader.text("team", header.team);
  reader.text("case", header.caseNumber);
  eachObject(reader, "channels", [&](HeaderReader& inner) { readChannel(inner, read); });
  refuseTwins(read, line);
  readParts(reader, header);
  readDerivedFrom(reader, header);
  reader.text("made_by", header.madeBy);
  reader.flag("synthetic", header.synthetic);
  header.otherKeys = reader.rest();
  return read;
}

} // namespace afterbeat
