/// Compressions and breaths, read off one waveform each.
///
/// All of them take a channel as it is (any rate from 20 Hz, any scale and offset, gaps and missing
/// samples), give nothing for a channel of another quantity or an unusable unit, and cost a fixed
/// amount a sample. Entries are in time order, `derived`, with a quality from 0 to 1 that tells how
/// much a press is like its neighbours. A compression stands at its deepest point; where the chest
/// is held down, in the middle of that time.
///
/// Depth is the way from the release before to the deepest point, as every sensor tells it; what is
/// left at release (leaning) comes beside it where the sensor knows.
///
/// How series are found: pulses in bands for slow, usual and fast presses, then the most likely
/// series of like pulses (see `findSeries`), then what is unlike its neighbours is cut off, and
/// pauses that noise has bridged are cut out (see `trustedTrains` and `withoutPauses`). Fewer than
/// four presses in a row are not found.
#pragma once

#include "core/record/channel.h"
#include "core/record/record.h"
#include "core/signal/findings.h"

#include <span>
#include <vector>

namespace afterbeat {

/// Moment and depth of every compression from acceleration, whichever way gravity points in the
/// channel and whether or not it was removed.
///
/// Depth is measured in two ways. The one that is written is the constrained double integration of
/// each press (see `integratedPress`), because a press differs from the next and a reader asks for
/// each; noise that shows in the shape of the presses (a moving vehicle) draws it towards the mean
/// of the 7 to 13 presses around it (see `meanPressDepth`), as far as that noise goes. The spectral
/// method over 3 s (Gonzalez-Otero et al., BioMed Res Int 2014:865967; see `spectralDepth`) is the
/// check: the further the two are apart, the lower the quality.
///
/// What lies under the chest cannot be told from the chest: on a mattress the depth is that of the
/// surface, which is more than the chest gave way. Leaning cannot be told either.
///
/// Not taken for presses: movement of more than 95 mm, movement that wanders slowly as a hand does,
/// and presses while gravity is not along the sensor's axis; that for 2 s is `off`.
[[nodiscard]] Findings compressionsFromAcceleration(const Channel& channel);

/// Moment, depth and leaning from depth. Leaning is what is left at the release after a press above
/// the level at rest (see `RestingLevel`). Whether that is a full release is for the profile to say
/// that the figures are judged by, so no `full_release` is written.
[[nodiscard]] Findings compressionsFromDepth(const Channel& channel);

/// Moment and full release (up to 2.5 kilograms-force left, limit from memory) from force; no
/// depth, as a chest's stiffness is not known.
[[nodiscard]] Findings compressionsFromForce(const Channel& channel);

/// Moments of compressions from thoracic impedance, which may rise or fall under a press: the way
/// is found for the whole channel (see `polarityOf`). Never a depth: it correlates with r about
/// 0.35 (Alonso et al., Resuscitation 2014;85:637-643). Band-pass and likeness of neighbouring
/// periods as in published detectors (Ruiz de Gauna et al., PLoS ONE 2020;15:e0239950; Kwok et al.,
/// Resuscitation 2016;105:22-28). Electrodes that are off or touch badly make the stretch unusable,
/// never free of compressions.
/// `known`: compressions of another channel, in time order; where twenty of them lie in this one,
/// they tell the way it moves.
/// `beating`: stretches in which the heart is known to beat, in time order. Its beats move
/// impedance too, by 0.05 to 0.2 Ohm (from memory), and as evenly as presses do; there only what is
/// at least half as high as the presses elsewhere, and a quarter of an Ohm, is a press.
[[nodiscard]] Findings compressionsFromImpedance(const Channel& channel,
                                                 std::span<const Time> known = {},
                                                 const std::vector<Interval>& beating = {});

/// A `ventilation` for every breath that raises the impedance, in the middle of its rise: air in
/// the lungs conducts badly. During compressions (`compressions`, in time order, from whatever
/// channel) these are taken out first (see `withoutPresses`).
///
/// After Gonzalez-Otero et al., Computing in Cardiology 2013;40:807-810 [volume and pages from
/// memory]: low-pass, waves with their height, length and slope, fixed limits, then limits that
/// follow the breaths found; there 97 % were found and 94 % were right. Nothing during stretches in
/// which the electrodes do not hold (see `compressionsFromImpedance`).
[[nodiscard]] Findings breathsFromImpedance(const Channel& channel,
                                            std::span<const Time> compressions);

/// Compressions, breaths, and stretches that nothing can be said about, from all channels of a
/// record.
///
/// At any time the best channel that can judge is believed: depth, then acceleration, force,
/// impedance (of two alike the earlier in the record). Acceleration without depth is first settled
/// with impedance where both are there (see `settleTogether`). Where a worse one finds ten presses
/// and more, and is sure of them, before the first of the better ones, after their last, or between
/// two of them 30 s and more apart, the better sensor is not in use and the worse one is believed.
/// Between `circulation` returned and lost, heartbeats in the impedance are not taken for presses.
/// Impedance is not believed while the device's own `electrodes` entries say detached or poor
/// contact.
///
/// What no channel can judge for half a second or more becomes an `excluded` entry, `not_observed`:
/// never hands off. `length` runs from the first sample of these channels to the last, `unusable`
/// holds the stretches that none could judge.
[[nodiscard]] Findings handsFrom(const Record& record);

} // namespace afterbeat
