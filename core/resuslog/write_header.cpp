#include "core/resuslog/write_log.h"

#include "core/resuslog/entry_fields.h"
#include "core/resuslog/json_text.h"

namespace afterbeat {

namespace {

template <typename E>
void wordIfAny(ObjectText& text, std::string_view key, E value) {
  text.textIfAny(key, wordOfValue(value));
}

void writePatient(ObjectText& line, const Header& header) {
  ObjectText text = line.inner("patient");
  if (header.patient != PatientCategory::unknown) {
    wordIfAny(text, "category", header.patient);
  }
  if (header.ageYears) {
    text.number("age_years", *header.ageYears);
  }
  text.textIfAny("sex", header.sex);
  line.nested("patient", text);
}

void writeDevice(ObjectText& line, const DeviceFacts& device) {
  ObjectText text = line.inner("device");
  text.textIfAny("label", device.label);
  text.textIfAny("maker", device.maker);
  text.textIfAny("model", device.model);
  text.textIfAny("serial", device.serial);
  text.textIfAny("software", device.software);
  text.textIfAny("return_to", device.returnTo);
  line.nested("device", text);
}

void writeClock(ObjectText& line, const ClockFacts& clock) {
  ObjectText text = line.inner("clock");
  wordIfAny(text, "state", clock.state);
  if (clock.offset) {
    text.raw("offset_s", secondsText(*clock.offset));
  }
  if (clock.checked) {
    text.text("checked", formatWallTime(*clock.checked));
  }
  text.textIfAny("against", clock.against);
  line.nested("clock", text);
}

void writeEvent(ObjectText& line, const EventFacts& event) {
  ObjectText text = line.inner("event");
  text.textIfAny("witnessed", event.witnessed);
  if (event.bystanderCpr == "true" || event.bystanderCpr == "false") {
    text.flag("bystander_cpr", event.bystanderCpr == "true");
  } else {
    text.textIfAny("bystander_cpr", event.bystanderCpr);
  }
  text.textIfAny("location", event.location);
  text.textIfAny("cause", event.cause);
  line.nested("event", text);
}

/// A value that could not be used stays as it was spelled; a default must not take its place.
void numberUnlessKept(ObjectText& text, std::string_view key, double value) {
  if (!text.keeps(key)) {
    text.number(key, value);
  }
}

std::string channelText(const Channel& channel) {
  ObjectText text(channel.otherKeys);
  text.textIfAny("id", channel.id);
  text.textIfAny("quantity", channel.quantity);
  text.textIfAny("unit", channel.unit);
  if (channel.rateHz != 0) {
    text.number("rate_hz", channel.rateHz);
  }
  numberUnlessKept(text, "scale", channel.scale);
  numberUnlessKept(text, "offset", channel.offset);
  if (!text.keeps("encoding")) {
    text.text("encoding", channel.encoding);
  }
  text.textIfAny("label", channel.label);
  return text.close();
}

std::string partText(const PartFacts& part) {
  ObjectText text(part.otherKeys);
  text.textIfAny("id", part.id);
  text.textIfAny("sha256", part.sha256);
  if (!text.keeps("offset_s")) {
    text.raw("offset_s", secondsText(part.offset));
  }
  text.textIfAny("label", part.label);
  return text.close();
}

template <typename T, typename F>
void writeList(ObjectText& line, std::string_view key, const std::vector<T>& list, F textOf) {
  if (list.empty()) {
    return;
  }
  std::string text = "[";
  for (const T& item : list) {
    text += (text.size() > 1 ? "," : "") + textOf(item);
  }
  line.raw(key, text + "]");
}

void writeDerivedFrom(ObjectText& line, const DerivedFrom& from) {
  ObjectText text = line.inner("derived_from");
  text.textIfAny("id", from.id);
  text.textIfAny("sha256", from.sha256);
  if (from.problems) {
    text.number("problems", *from.problems);
  }
  line.raw("derived_from", text.close());
}

} // namespace

std::string headerLine(const Header& header, const std::vector<Channel>& channels) {
  ObjectText line(header.otherKeys);
  line.text("resuslog", header.version);
  line.textIfAny("id", header.id);
  if (header.recorded) {
    line.text("recorded", formatWallTime(*header.recorded));
  }
  if (header.kind) {
    wordIfAny(line, "kind", *header.kind);
  }
  writePatient(line, header);
  writeDevice(line, header.device);
  writeClock(line, header.clock);
  writeEvent(line, header.event);
  line.textIfAny("site", header.site);
  line.textIfAny("team", header.team);
  line.textIfAny("case", header.caseNumber);
  writeList(line, "channels", channels, channelText);
  writeList(line, "parts", header.parts, partText);
  if (header.derivedFrom) {
    writeDerivedFrom(line, *header.derivedFrom);
  }
  line.textIfAny("made_by", header.madeBy);
  if (header.synthetic) {
    line.flag("synthetic", true);
  }
  return line.close();
}

} // namespace afterbeat
