#include "recordings.h"

#include "core/bytes/byte_source.h"
#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/spectrum.h"
#include "core/signal/ecg/quality.h"
#include "core/signal/rhythm/hints.h"
#include "importers/wfdb/read_wfdb.h"
#include "importers/wfdb/wfdb_annotations.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>

namespace afterbeat {

namespace {

namespace fs = std::filesystem;

constexpr double kWindowS = 8;
/// Labels end on a sample.
constexpr double kHalfSample = 0.002;

struct Line {
  double from = 0, to = 0;
  std::string label;
};

std::vector<Line> labelLines(const fs::path& table) {
  std::ifstream stream{table};
  std::vector<Line> lines;
  std::string text;
  std::getline(stream, text);
  while (std::getline(stream, text)) {
    std::istringstream fields{text};
    std::string from, to, label;
    std::getline(fields, from, ',');
    std::getline(fields, to, ',');
    std::getline(fields, label, '\r');
    lines.push_back({std::stod(from), std::stod(to), label});
  }
  return lines;
}

/// Stretches whose label is disputed, by looking at the signals.
struct Disputed {
  const char* record;
  double from, to;
};
constexpr Disputed kDisputed[] = {{"cu15", 405, 455},
                                  {"cu23", 411, 1e9},
                                  {"424", 1542, 1578},
                                  {"607", 1714, 1790},
                                  {"430", 379, 398.228}};

bool isDisputed(const std::string& record, double begin, const std::string& label) {
  if ((record == "610" && label == "HGEA") || (record == "418" && label == "N")) {
    return true;
  }
  return std::any_of(std::begin(kDisputed), std::end(kDisputed), [&](const Disputed& d) {
    return record == d.record && begin + kWindowS > d.from && begin < d.to;
  });
}

/// The frequency of the largest line of the window's spectrum between 1 and 10 Hz.
double dominantHz(const SignalView& run, double beginS) {
  const auto length = static_cast<std::size_t>(kWindowS * run.rateHz);
  const auto first = static_cast<std::size_t>(beginS * run.rateHz);
  std::vector<double> values(run.values.begin() + static_cast<std::ptrdiff_t>(first),
                             run.values.begin() + static_cast<std::ptrdiff_t>(first + length));
  bridgeMissing(values);
  Spectrum spectrum(length, run.rateHz, Window::hamming);
  const auto power = spectrum.power(values);
  const auto from = static_cast<std::size_t>(1 / spectrum.hzPerBin());
  const auto to = static_cast<std::size_t>(10 / spectrum.hzPerBin());
  const auto top = std::max_element(power.begin() + static_cast<std::ptrdiff_t>(from),
                                    power.begin() + static_cast<std::ptrdiff_t>(to));
  return static_cast<double>(top - power.begin()) * spectrum.hzPerBin();
}

/// How the rate of a tachycardia is measured: by the first large peak of the window's
/// autocorrelation if that is 0.5 or more, else by the largest line of its spectrum.
double tachycardiaRate(const SignalView& run, const LabelledWindow& w) {
  const auto& repeat = w.window.measures.repeat;
  return repeat.correlation >= 0.5 ? repeat.ratePerMin : 60 * dominantHz(run, w.beginS);
}

RhythmClass classOf(const SignalView& run, const LabelledWindow& w) {
  const auto is = [&](std::initializer_list<const char*> labels) {
    return std::find(labels.begin(), labels.end(), w.label) != labels.end();
  };
  if (w.label.empty()) {
    return RhythmClass::unscored;
  }
  if (is({"VF", "VFIB", "VFL"})) {
    return w.window.measures.amplitudeMv >= rhythm_limits::kCoarseMv
               ? RhythmClass::fibrillation
               : RhythmClass::fineFibrillation;
  }
  if (is({"VT"})) {
    return tachycardiaRate(run, w) >= rhythm_limits::kShockableRatePerMin
               ? RhythmClass::fastTachycardia
               : RhythmClass::slowTachycardia;
  }
  return is({"N", "NSR"}) ? RhythmClass::normal
         : is({"NOISE"})  ? RhythmClass::noise
         : is({"ASYS"})   ? RhythmClass::asystole
                          : RhythmClass::otherOrganised;
}

/// Moments of the marks of one code, in seconds.
std::vector<double> marks(const WfdbAnnotations& annotations, double rateHz, int code) {
  std::vector<double> at;
  for (const auto& annotation : annotations.all) {
    if (annotation.code == code) {
      at.push_back(static_cast<double>(annotation.sample) / rateHz);
    }
  }
  return at;
}

/// Whether marked beats run through a window without a hole and below 150/min.
bool marksAllBeats(const std::vector<double>& beats, double begin) {
  const auto from = std::lower_bound(beats.begin(), beats.end(), begin - 1.5);
  const auto to = std::lower_bound(beats.begin(), beats.end(), begin + kWindowS + 1.5);
  if (to - from < 5 || *from > begin + 1 || *(to - 1) < begin + kWindowS - 1) {
    return false;
  }
  std::vector<double> apart;
  for (auto beat = from + 1; beat != to; ++beat) {
    apart.push_back(*beat - *(beat - 1));
  }
  std::sort(apart.begin(), apart.end());
  return apart.back() < 2.2 && apart[1] > 0.33 && apart[apart.size() / 2] > 60.0 / 150;
}

std::string readAll(const fs::path& path) {
  std::ifstream stream{path, std::ios::binary};
  return {std::istreambuf_iterator<char>{stream}, {}};
}

void label(LabelledSignal& signal, const SignalView& run, const std::vector<Line>& lines) {
  for (auto& w : signal.windows) {
    for (const auto& line : lines) {
      if (w.beginS >= line.from && w.beginS + kWindowS <= line.to + kHalfSample) {
        w.label = line.label;
      }
    }
    w.scored = classOf(run, w);
    w.disputed = isDisputed(signal.record, w.beginS, w.label);
  }
}

void labelByBeats(LabelledSignal& signal, const fs::path& annotationFile, double rateHz) {
  const auto annotations = parseAnnotations(readAll(annotationFile));
  const auto beats = marks(annotations, rateHz, 1);
  const auto begins =
      marks(annotations, rateHz, static_cast<int>(AnnotationCode::fibrillationBegins));
  const double until = begins.empty() ? 400 : begins.front();
  for (auto& w : signal.windows) {
    if (w.label.empty() && w.beginS + kWindowS < until - 30 && marksAllBeats(beats, w.beginS)) {
      w.scored = RhythmClass::beatsMarked;
    }
  }
}

LabelledSignal signalOf(const Channel& channel, const fs::path& header, int index) {
  LabelledSignal signal{
      header.parent_path().filename().string(), header.stem().string(), index, {}};
  std::vector<double> values;
  const auto& block = channel.blocks.front();
  readValues(channel, block, 0, block.count, factorToUsual("ecg", channel.unit).value_or(1),
             values);
  const SignalView run{block.t, channel.rateHz, values};
  const auto faults = ecgFaults(run);
  for (auto& window : measuredWindows({.runs = {&run, 1}, .faults = faults})) {
    LabelledWindow w;
    w.beginS = seconds(window.where.begin);
    w.window = window;
    signal.windows.push_back(std::move(w));
  }
  auto lines = labelLines(fs::path{header}.replace_extension(".rhythm.csv"));
  if (signal.database == "mitdb") {
    lines.push_back({0, 1e9, "N"});
  }
  label(signal, run, lines);
  if (signal.database == "cudb") {
    labelByBeats(signal, fs::path{header}.replace_extension(".atr"), channel.rateHz);
  }
  return signal;
}

} // namespace

std::vector<LabelledSignal> labelledSignals(const fs::path& ecg) {
  std::set<fs::path> headers;
  for (const auto* folder : {"cudb", "mitdb", "vfdb"}) {
    for (const auto& file : fs::directory_iterator(ecg / folder)) {
      if (file.path().extension() == ".hea") {
        headers.insert(file.path());
      }
    }
  }
  std::vector<LabelledSignal> signals;
  for (const auto& header : headers) {
    const auto imported = readWfdb(header);
    if (!imported) {
      continue;
    }
    int index = 0;
    for (const auto& channel : imported->record.channels) {
      if (!channel.blocks.empty()) {
        signals.push_back(signalOf(channel, header, index));
      }
      ++index;
    }
  }
  return signals;
}

} // namespace afterbeat
