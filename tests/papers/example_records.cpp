#include "tests/papers/example_records.h"

#include <algorithm>

namespace afterbeat::test {

namespace {

Time timeOf(double t) {
  return *timeFromSeconds(t);
}

} // namespace

RecordBuilder::RecordBuilder() {
  Header& header = record.header;
  header.id = "urn:uuid:7f3a21c9-5b1e-4c7d-9a0f-2d6c81d3e04b";
  header.recorded = parseWallTime("2026-03-14T09:12:30+01:00");
  header.kind = RecordKind::rescue;
  header.patient = PatientCategory::adult;
  header.device.label = "FT-02";
  header.device.serial = "A1-0042";
  header.device.returnTo = "Harbour office, Lindholm quay 4, phone 0000 000 000";
  header.clock.state = ClockState::set;
  header.site = "Ferry terminal, east pier";
  header.synthetic = true;
  record.seal = {true, true, std::string(64, 'a')};
}

RecordBuilder& RecordBuilder::at(double t, EntryData data) {
  Entry entry;
  entry.t = timeOf(t);
  entry.data = std::move(data);
  record.entries.push_back(std::move(entry));
  return *this;
}

RecordBuilder& RecordBuilder::from(double t, double end, EntryData data) {
  at(t, std::move(data));
  record.entries.back().end = timeOf(end);
  return *this;
}

RecordBuilder& RecordBuilder::compressions(double from, double to, double perMinute) {
  const double step = 60 / perMinute;
  for (int i = 0; from + i * step <= to + 1e-9; ++i) {
    at(from + i * step, entry::Compression{});
  }
  return *this;
}

RecordBuilder& RecordBuilder::thirtyToTwo(double from, double to, double perMinute, double pause) {
  const double run = 29 * 60 / perMinute;
  for (double t = from; t < to; t += run + pause) {
    compressions(t, std::min(to, t + run), perMinute);
    if (t + run + pause < to) {
      at(t + run + pause * 0.3, entry::Ventilation{});
      at(t + run + pause * 0.65, entry::Ventilation{});
    }
  }
  return *this;
}

RecordBuilder& RecordBuilder::analysis(double from_, double to, Advice advice) {
  return from(from_, to, entry::Analysis{advice});
}

RecordBuilder& RecordBuilder::shock(double t, std::optional<bool> delivered,
                                    std::optional<double> joules) {
  at(t, entry::Shock{delivered, joules, std::nullopt, ""});
  record.entries.back().incomplete = !delivered;
  return *this;
}

RecordBuilder& RecordBuilder::remark(double t, const std::string& text) {
  return at(t, entry::Mark{text, ""});
}

Record RecordBuilder::done() {
  std::stable_sort(record.entries.begin(), record.entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
  int line = 2;
  for (Entry& entry : record.entries) {
    entry.line = line++;
    record.lastTime =
        record.lastTime ? std::max(*record.lastTime, entry.lastTime()) : entry.lastTime();
  }
  return record;
}

Record fullRescue() {
  RecordBuilder b;
  b.record.header.event.witnessed = "bystander";
  b.record.header.event.bystanderCpr = "true";
  b.record.header.patient = PatientCategory::adult;
  b.record.header.ageYears = 58;
  b.record.header.sex = "female";
  b.at(0, entry::PowerOn{}).at(0.5, entry::PatientMode{PatientCategory::adult});
  b.at(-150, entry::Milestone{"collapse"}).at(-120, entry::Milestone{"call_received"});
  b.at(31, entry::Electrodes{ElectrodeState::attached, 78.0});
  b.analysis(38, 46, Advice::shock).from(46, 51, entry::Charge{150.0});
  b.shock(53, true, 150).thirtyToTwo(59, 148, 112, 5);
  b.analysis(159, 168, Advice::shock).shock(188, true, 200).thirtyToTwo(193, 306, 124, 7);
  b.remark(240, "second helper takes over");
  b.analysis(318, 326, Advice::noShock).thirtyToTwo(343, 426, 96, 7);
  b.analysis(434, 441, Advice::shock).shock(447, true, 200).thirtyToTwo(451, 560, 108, 6);
  b.at(500, entry::Milestone{"crew_arrived"}).at(520, entry::Medication{"adrenaline 1 mg"});
  b.at(525, entry::Airway{AirwayDevice::supraglottic}).at(530, entry::RescuerChange{""});
  b.analysis(568, 575, Advice::noShock).at(578, entry::Circulation{CirculationState::returned});
  b.record.entries.back().source = Source::observer;
  b.at(662, entry::PowerOff{});
  return b.done();
}

Record emptyRecord() {
  RecordBuilder b;
  b.record.header = Header{};
  b.record.seal = {};
  return b.at(0, entry::PowerOn{}).done();
}

Record notesOnly() {
  RecordBuilder b;
  b.record.header.device = {};
  b.record.header.patient = PatientCategory::unknown;
  b.record.header.site.clear();
  b.from(0, 110, entry::Cpr{}).from(118, 240, entry::Cpr{104.0}).from(262, 420, entry::Cpr{});
  b.at(250, entry::Milestone{"crew_arrived"});
  return b.done();
}

Record childWithoutShock() {
  RecordBuilder b;
  b.record.header.patient = PatientCategory::child;
  b.record.header.ageYears = 6;
  b.at(0, entry::PowerOn{}).at(1, entry::PatientMode{PatientCategory::adult});
  b.at(24, entry::PatientMode{PatientCategory::child});
  b.at(30, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.analysis(36, 44, Advice::noShock).thirtyToTwo(50, 160, 108, 6);
  b.analysis(166, 173, Advice::noShock).thirtyToTwo(178, 290, 112, 6);
  b.analysis(296, 303, Advice::inconclusive).at(360, entry::PowerOff{});
  return b.done();
}

Record drill() {
  RecordBuilder b;
  b.record.header.kind = RecordKind::drill;
  b.record.header.site = "Boathouse, training room";
  b.at(0, entry::PowerOn{}).at(20, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.analysis(25, 33, Advice::shock).shock(41, true, std::nullopt).thirtyToTwo(44, 150, 106, 5);
  b.at(160, entry::PowerOff{});
  return b.done();
}

Record cutOff() {
  RecordBuilder b;
  b.record.header.clock.state = ClockState::unset;
  b.record.seal = {};
  b.at(0, entry::PowerOn{}).at(25, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.analysis(30, 38, Advice::shock).shock(46, true, 200).compressions(52, 131, 118);
  b.shock(140, std::nullopt, std::nullopt);
  return b.done();
}

Record overfull() {
  RecordBuilder b;
  Header& header = b.record.header;
  header.site =
      "Ferry terminal, east pier, waiting hall beside the ticket office, first floor, at the "
      "top of the moving stairs towards the island line and the night boat";
  header.device.label = "Defibrillator of the harbour office, cabinet 2, with the long green label";
  header.device.returnTo = header.site + ", attention of the harbour master on duty";
  header.event.witnessed = "crew";
  b.at(0, entry::PowerOn{}).at(3, entry::Electrodes{ElectrodeState::attached, 90.0});
  for (int i = 0; i < 30; ++i) {
    const double t = 10 + i * 60;
    const auto advice = i % 3 == 0   ? Advice::inconclusive
                        : i % 2 == 0 ? Advice::noShock
                                     : Advice::shock;
    b.analysis(t, t + 7, advice).thirtyToTwo(t + 14, t + 56, 114, 4);
    if (i % 5 < 2) {
      b.shock(t + 11, i != 10, 200);
    }
    b.at(t + 20, entry::Medication{"amiodarone 300 mg into the vein of the left arm"});
    b.at(t + 21, entry::Airway{AirwayDevice::tube});
  }
  b.shock(1811, std::nullopt, std::nullopt)
      .at(1800, entry::Circulation{CirculationState::returned});
  b.at(1850, entry::Circulation{CirculationState::lost}).compressions(1855, 1950, 105);
  b.from(1900, 1930, entry::Excluded{ExclusionReason::notTrusted}).at(2000, entry::PowerOff{});
  return b.done();
}

Record longRescue(double hours) {
  RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(5, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  for (double t = 10; t < hours * 3600; t += 60) {
    b.compressions(t, t + 48 + 5 * std::sin(t), 110 + 12 * std::sin(t / 300));
    if (std::fmod(t - 10, 120) < 1) {
      b.analysis(t + 50, t + 55, Advice::noShock);
    }
  }
  return b.done();
}

Record shortRecord() {
  RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(1, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  return b.analysis(4, 10, Advice::shock).shock(16, true, 150).compressions(20, 31, 110).done();
}

Record crowded() {
  RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(2, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  for (int i = 0; i < 12; ++i) {
    const double t = 5 + i * 9;
    b.analysis(t, t + 3, static_cast<Advice>(i % 3));
    b.shock(t + 4,
            i % 3 == 0   ? std::optional<bool>(true)
            : i % 3 == 1 ? std::optional<bool>(false)
                         : std::nullopt,
            150);
    b.remark(t + 4.2, "a remark that is much too long for its place");
    b.at(t + 4.5, entry::Medication{"adrenaline 1 mg"});
  }
  b.shock(119.9, true, 150).shock(120.2, true, 150).compressions(121, 150, 100);
  b.from(150, 170, entry::Excluded{ExclusionReason::notRescue}).from(172, 200, entry::Cpr{});
  b.from(203, 230, entry::Cpr{134.0}).at(232, entry::Compression{}).at(240, entry::Compression{});
  b.at(241, entry::Circulation{CirculationState::returned});
  b.at(250, entry::Circulation{CirculationState::lost}).compressions(252, 280, 90);
  b.at(281, entry::Electrodes{ElectrodeState::detached, std::nullopt});
  b.shock(300, false, std::nullopt).at(310, entry::PowerOff{});
  return b.done();
}

} // namespace afterbeat::test
