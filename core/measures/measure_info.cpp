#include "core/measures/figures.h"

#include <algorithm>
#include <array>

namespace afterbeat {
namespace {

constexpr std::string_view kUtsteinQuality =
    "Uniform reporting of measured CPR quality: Kramer-Johansen et al., Resuscitation "
    "2007;74:406-417";
constexpr std::string_view kConsensus =
    "CPR quality consensus statement: Meaney et al., Circulation 2013;128:417-435";
constexpr std::string_view kAdjusted = "After Wik et al., JAMA 2005;293:299-304";
constexpr std::string_view kPeriShock = "Cheskes et al., Circulation 2011;124:58-66";
constexpr std::string_view kUtstein = "Utstein terms for times in resuscitation";
constexpr std::string_view kCommon = kCommonPractice;

using enum MeasureId;
constexpr auto kRead = SourceMark::read;
constexpr auto kSecondary = SourceMark::secondary;
constexpr auto kMemory = SourceMark::memory;

constexpr std::array<MeasureInfo, static_cast<std::size_t>(count_)> kInfo{{
    {arrestTime, "arrest_time", "s", "Time without circulation",
     "Length of the resuscitation window without circulation intervals and excluded stretches.",
     kUtsteinQuality, kSecondary, false},
    {handsOffTime, "hands_off_time", "s", "Hands-off time",
     "Sum of the pauses: gaps without hands on the chest that are longer than the threshold, each "
     "in full.",
     kUtsteinQuality, kSecondary, true},
    {handsOffFraction, "hands_off_fraction", "1", "Hands-off share",
     "Hands-off time divided by the time without circulation (no-flow fraction).", kUtsteinQuality,
     kSecondary, true},
    {chestCompressionFraction, "chest_compression_fraction", "1", "Chest compression fraction",
     "One minus the hands-off share.", kConsensus, kSecondary, true},
    {adjustedHandsOffTime, "adjusted_hands_off_time", "s", "Hands-off time without analyses",
     "Hands-off time minus its overlap with analyses and with the time from an analysis to the "
     "shock that used it.",
     kAdjusted, kMemory, true},
    {compressions, "compressions", "1", "Compressions",
     "Number of chest compressions during the time without circulation.", kUtsteinQuality,
     kSecondary, false},
    {compressionsPerMinute, "compressions_per_minute", "/min", "Compressions delivered a minute",
     "Number of compressions divided by the time without circulation: delivered, not the rate.",
     kUtsteinQuality, kSecondary, false},
    {compressionRate, "compression_rate", "/min", "Compression rate",
     "Sixty times the number of intervals between neighbouring compressions that are no longer "
     "than the threshold, divided by their total length.",
     kUtsteinQuality, kSecondary, true},
    {compressionRateInRange, "compression_rate_in_range", "1", "Rate in target range",
     "Share of the intervals between neighbouring compressions whose rate lies in the target "
     "range, limits included.",
     kConsensus, kSecondary, true},
    {compressionDepth, "compression_depth", "mm", "Compression depth",
     "Mean depth of the compressions whose depth was recorded.", kUtsteinQuality, kSecondary,
     false},
    {compressionDepthInRange, "compression_depth_in_range", "1", "Depth in target range",
     "Share of the compressions with recorded depth whose depth lies in the target range for the "
     "patient.",
     kConsensus, kSecondary, false},
    {fullRelease, "full_release", "1", "Full release",
     "Share of the compressions with known release after which the chest was fully released.",
     kConsensus, kSecondary, false},
    {ventilations, "ventilations", "1", "Breaths",
     "Number of breaths given during the time without circulation.", kUtsteinQuality, kSecondary,
     false},
    {ventilationsPerMinute, "ventilations_per_minute", "/min", "Breaths a minute",
     "Number of breaths divided by the time without circulation.", kUtsteinQuality, kSecondary,
     false},
    {longestPause, "longest_pause", "s", "Longest pause", "Length of the longest pause.",
     kUtsteinQuality, kSecondary, true},
    {pausesOverLimit, "pauses_over_limit", "1", "Pauses over the limit",
     "Number of pauses longer than the guideline's limit for a pause.", kConsensus, kSecondary,
     true},
    {preShockPauseMedian, "pre_shock_pause_median", "s", "Pause before a shock, median",
     "Median, over delivered shocks, of the time from the last hands on the chest to the shock.",
     kPeriShock, kRead, false},
    {preShockPauseWorst, "pre_shock_pause_worst", "s", "Pause before a shock, longest",
     "Longest time from the last hands on the chest to a delivered shock.", kPeriShock, kRead,
     false},
    {postShockPauseMedian, "post_shock_pause_median", "s", "Pause after a shock, median",
     "Median, over delivered shocks, of the time from the shock to the next hands on the chest.",
     kPeriShock, kRead, false},
    {postShockPauseWorst, "post_shock_pause_worst", "s", "Pause after a shock, longest",
     "Longest time from a delivered shock to the next hands on the chest.", kPeriShock, kRead,
     false},
    {periShockPauseMedian, "peri_shock_pause_median", "s", "Pause around a shock, median",
     "Median, over delivered shocks, of the pauses before and after the shock together.",
     kPeriShock, kRead, false},
    {periShockPauseWorst, "peri_shock_pause_worst", "s", "Pause around a shock, longest",
     "Longest pause before and after a delivered shock together.", kPeriShock, kRead, false},
    {shocksDelivered, "shocks_delivered", "1", "Shocks given", "Number of shocks delivered.",
     kUtstein, kMemory, false},
    {shocksWithheld, "shocks_withheld", "1", "Shocks not given",
     "Number of shocks that were advised or charged and not given.", kUtstein, kMemory, false},
    {shocksUnknown, "shocks_unknown", "1", "Shocks, delivery unknown",
     "Number of shocks of which the record does not say whether they were given.", kUtstein,
     kMemory, false},
    {energyTotal, "energy_total", "J", "Energy delivered",
     "Sum of the energies of the delivered shocks, if each is recorded.", kUtstein, kMemory, false},
    {analyses, "analyses", "1", "Rhythm analyses", "Number of rhythm analyses.", kUtstein, kMemory,
     false},
    {analysesAdvisingShock, "analyses_advising_shock", "1", "Analyses that advised a shock",
     "Number of rhythm analyses that advised a shock.", kUtstein, kMemory, false},
    {adviceToShockMedian, "advice_to_shock_median", "s", "Advice to shock, median",
     "Median time from the end of an analysis that advised a shock to the shock that used it.",
     kCommon, kMemory, false},
    {adviceToShockWorst, "advice_to_shock_worst", "s", "Advice to shock, longest",
     "Longest time from the end of an analysis that advised a shock to the shock that used it.",
     kCommon, kMemory, false},
    {powerOnToFirstShock, "power_on_to_first_shock", "s", "Device on to first shock",
     "Time from the first power-on to the first delivered shock.", kUtstein, kMemory, false},
    {electrodesToFirstShock, "electrodes_to_first_shock", "s", "Electrodes to first shock",
     "Time from electrodes first attached to the first delivered shock.", kUtstein, kMemory, false},
    {collapseToFirstShock, "collapse_to_first_shock", "s", "Collapse to first shock",
     "Time from collapse to the first delivered shock.", kUtstein, kMemory, false},
    {callToFirstShock, "call_to_first_shock", "s", "Call to first shock",
     "Time from the emergency call to the first delivered shock.", kUtstein, kMemory, false},
    {firstHandsOnToFirstShock, "first_hands_on_to_first_shock", "s",
     "First compressions to first shock",
     "Time from the first hands on the chest to the first delivered shock.", kUtstein, kMemory,
     false},
    {powerOnToElectrodes, "power_on_to_electrodes", "s", "Device on to electrodes",
     "Time from the first power-on to electrodes first attached.", kUtstein, kMemory, false},
    {powerOnToFirstHandsOn, "power_on_to_first_hands_on", "s", "Device on to first compressions",
     "Time from the first power-on to the first hands on the chest.", kUtstein, kMemory, false},
    {electrodesToFirstAnalysis, "electrodes_to_first_analysis", "s", "Electrodes to first analysis",
     "Time from electrodes first attached to the begin of the first analysis.", kUtstein, kMemory,
     false},
    {collapseToFirstHandsOn, "collapse_to_first_hands_on", "s", "Collapse to first compressions",
     "Time from collapse to the first hands on the chest.", kUtstein, kMemory, false},
    {callToFirstHandsOn, "call_to_first_hands_on", "s", "Call to first compressions",
     "Time from the emergency call to the first hands on the chest.", kUtstein, kMemory, false},
    {callToDeviceArrived, "call_to_device_arrived", "s", "Call to device arrived",
     "Time from the emergency call to the arrival of the defibrillator.", kUtstein, kMemory, false},
    {collapseToCirculationReturned, "collapse_to_circulation_returned", "s",
     "Collapse to return of circulation",
     "Time from collapse to the first return of spontaneous circulation.", kUtstein, kMemory,
     false},
    {circulationTime, "circulation_time", "s", "Time with circulation",
     "Total time with spontaneous circulation, as judged on scene, up to the window's end.",
     kUtstein, kMemory, false},
    {longestCirculation, "longest_circulation", "s", "Longest time with circulation",
     "Longest single time with spontaneous circulation; sustained from 20 minutes.", kUtstein,
     kMemory, false},
    {timeOn, "time_on", "s", "Device on for", "Sum of the periods in which the device was on.",
     kCommon, kMemory, false},
}};

constexpr bool inOrder() {
  for (std::size_t i = 0; i < kInfo.size(); ++i) {
    if (static_cast<std::size_t>(kInfo[i].id) != i) {
      return false;
    }
  }
  return true;
}
static_assert(inOrder());

} // namespace

const MeasureInfo& measureInfo(MeasureId id) {
  return kInfo[static_cast<std::size_t>(id)];
}

const MeasureInfo* measureInfo(std::string_view name) {
  const auto* it = std::find_if(kInfo.begin(), kInfo.end(),
                                [name](const MeasureInfo& info) { return info.name == name; });
  return it != kInfo.end() ? it : nullptr;
}

} // namespace afterbeat
