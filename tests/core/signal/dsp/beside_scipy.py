#!/usr/bin/python3
"""Filters, transforms and changes of rate beside scipy and numpy on the same input, to 1e-9.

Usage: beside_scipy.py PROBE
"""
import itertools
import subprocess
import sys
import warnings

import numpy as np
from scipy import misc, signal

warnings.simplefilter("ignore", DeprecationWarning)
PROBE = sys.argv[1]
TOLERANCE = 1e-9
BANDS = "lowpass", "highpass", "bandpass", "bandstop"
WINDOWS = "boxcar", "hann", "hamming", "blackman"
faults = []
checks = 0


def probe(command, *numbers, values=()):
    run = subprocess.run([PROBE, command, *map(repr, map(float, numbers))], check=True,
                         input=np.asarray(values, dtype=float).tobytes(), capture_output=True)
    return np.frombuffer(run.stdout)


def compare(what, found, expected):
    global checks
    checks += 1
    expected = np.asarray(expected, dtype=float).ravel()
    if found.shape != expected.shape:
        faults.append(f"{what}: {found.size} values for {expected.size}")
        return
    scale = max(1.0, np.nanmax(np.abs(expected)))
    if not np.array_equal(np.isnan(found), np.isnan(expected)):
        faults.append(f"{what}: NaN elsewhere")
    elif not np.nanmax(np.abs(found - expected)) <= TOLERANCE * scale:
        faults.append(f"{what}: {np.nanmax(np.abs(found - expected)):.3g} apart")


def edges(band, low, high):
    return {"lowpass": high, "highpass": low}.get(band, (low, high))


def filters():
    """Band, order, edges and rate: usual ones, narrow ones, and ones next to both ends."""
    for band, order, rate in itertools.product(BANDS, (1, 2, 3, 4, 5, 8), (50, 250, 360, 2000)):
        for low, high in ((0.5, 20), (5, 15), (0.3 * rate, 0.45 * rate), (0.001 * rate, 0.49 * rate)):
            yield band, order, low, high, rate


def signals():
    dice = np.random.default_rng(20240611)
    yield "noise", dice.standard_normal(3000)
    yield "walk", np.cumsum(dice.standard_normal(5001)) + 80
    yield "ecg", misc.electrocardiogram()[:10000]
    yield "step", np.repeat([0.0, 5.0, -3.0], 400)
    yield "short", dice.standard_normal(7)


def check_designs():
    for band, order, low, high, rate in filters():
        expected = signal.butter(order, edges(band, low, high), band, fs=rate, output="sos")
        found = probe("design", order, BANDS.index(band), low, high, rate)
        sections = found.reshape(-1, 5)
        full = np.insert(sections, 3, 1.0, axis=1)
        compare(f"design {band} {order} {low}-{high} of {rate}", found, np.delete(expected, 3, axis=1))
        at = np.linspace(0, rate / 2, 500)[1:-1]
        response = np.abs(signal.sosfreqz(full, at, fs=rate)[1])
        compare(f"response {band} {order} {low}-{high} of {rate}", response,
                np.abs(signal.sosfreqz(expected, at, fs=rate)[1]))
    for hz, quality, rate in ((50, 30, 250), (60, 5, 360), (16.7, 1, 100)):
        b, a = signal.iirnotch(hz, quality, rate)
        compare(f"notch {hz}", probe("notch", hz, quality, rate), np.concatenate((b, a[1:])))


def check_filtering():
    chosen = [("bandpass", 2, 5, 15, 250), ("highpass", 4, 0.5, 0, 250), ("lowpass", 5, 0, 30, 250),
              ("bandstop", 2, 48, 52, 250), ("lowpass", 1, 0, 10, 250), ("bandpass", 5, 1, 40, 500),
              ("lowpass", 8, 0, 40, 360)]
    for (band, order, low, high, rate), (name, values) in itertools.product(chosen, signals()):
        sos = signal.butter(order, edges(band, low, high), band, fs=rate, output="sos")
        numbers = order, BANDS.index(band), low, high, rate
        start = signal.sosfilt_zi(sos) * values[0]
        what = f"{band} {order} over {name}"
        for piece in (1, 7, 4097, 100000):
            compare(f"{what}, pieces of {piece}", probe("stream", *numbers, piece, values=values),
                    signal.sosfilt(sos, values))
        compare(f"{what}, settled", probe("settled", *numbers, 512, values=values),
                signal.sosfilt(sos, values, zi=start)[0])
        taps = 2 * len(sos) + 1 - min((sos[:, 2] == 0).sum(), (sos[:, 5] == 0).sum())
        compare(f"{what}, both ways", probe("both-ways", *numbers, values=values),
                signal.sosfiltfilt(sos, values, padlen=min(3 * taps, len(values) - 1)))


def check_spectra():
    for (name, values), length, window in itertools.product(signals(), (1, 2, 7, 500, 501, 1024),
                                                            range(len(WINDOWS))):
        piece = values[:length]
        if len(piece) < length:
            continue
        weights = signal.get_window(WINDOWS[window], length)
        twice = np.full(length // 2 + 1, 2.0)
        twice[0] = 1
        if length % 2 == 0:
            twice[-1] = 1
        compare(f"amplitude {WINDOWS[window]} {length} of {name}",
                probe("amplitude", 250, window, values=piece),
                twice * np.abs(np.fft.rfft(piece * weights)) / weights.sum())
        if length > 1:
            compare(f"power {WINDOWS[window]} {length} of {name}",
                    probe("power", 250, window, values=piece),
                    signal.periodogram(piece, 250, WINDOWS[window], detrend=False)[1])
    for (name, values), length in itertools.product(signals(), (1, 5, 500, 1999)):
        piece = values[:length]
        compare(f"autocorrelation {length} of {name}", probe("autocorrelation", values=piece),
                np.correlate(piece, piece, "full")[len(piece) - 1:])


def check_resampling():
    rates = (360, 250, 25, 36), (250, 360, 36, 25), (1000, 250, 1, 4), (125, 250, 2, 1), \
            (257, 250, 250, 257), (50, 2000, 40, 1), (2000, 50, 1, 40), (128, 250, 125, 64), \
            (250, 250, 1, 1)
    for (name, values), (source, target, up, down) in itertools.product(signals(), rates):
        expected = signal.resample_poly(values, up, down, padtype="edge") if up != down else values
        for piece in (1, 333, 100000):
            compare(f"{source} to {target} Hz, {name}, pieces of {piece}",
                    probe("resample", source, target, piece, values=values), expected)


def check_bridges():
    dice = np.random.default_rng(7)
    values = dice.standard_normal(400)
    values[dice.random(400) < 0.4] = np.nan
    known = np.flatnonzero(~np.isnan(values))
    compare("bridge", probe("bridge", values=values),
            np.interp(np.arange(400), known, values[known]))


def main():
    check_designs()
    check_filtering()
    check_spectra()
    check_resampling()
    check_bridges()
    print(f"{checks} comparisons, {len(faults)} faults")
    for fault in faults[:40]:
        print(fault)
    sys.exit(1 if faults or checks < 500 else 0)


if __name__ == "__main__":
    main()
