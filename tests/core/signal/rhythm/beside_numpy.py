#!/usr/bin/python3
"""The features of the rhythm hint, written plainly with numpy and scipy, beside the program's.

Usage: beside_numpy.py PROBE
"""
import subprocess
import sys
import warnings

import numpy as np
from scipy import misc, signal

warnings.simplefilter("ignore", DeprecationWarning)
PROBE = sys.argv[1]
RATE = 125
WINDOW, STEP = 8 * RATE, 2 * RATE


def bands(x):
    wide = signal.sosfiltfilt(signal.butter(2, (1, 30), "bandpass", fs=RATE, output="sos"), x)
    narrow = signal.sosfiltfilt(signal.butter(2, 2, "highpass", fs=RATE, output="sos"), wide)
    sos = signal.butter(2, (13, 16.5), "bandpass", fs=RATE, output="sos")
    qrs = signal.sosfilt(sos, x, zi=signal.sosfilt_zi(sos) * x[0])[0]
    squares = np.r_[0, (np.diff(wide) * RATE) ** 2]
    slope = [np.sqrt(squares[max(0, i - 6):i + 7].mean()) for i in range(len(x))]
    return wide, narrow, qrs, np.array(slope)


def correlations(v):
    pairs = (v[0::2] + v[1::2]) / 2
    pairs = pairs - pairs.mean()
    n = len(pairs)
    r = [(pairs[:n - lag] * pairs[lag:]).sum() / (n - lag) for lag in range(158)]
    return np.array(r) / r[0]


def first_peak(r):
    peaks = [i for i in range(10, 157) if r[i] > r[i - 1] and r[i] >= r[i + 1]]
    if not peaks or max(r[peaks]) <= 0:
        return 0, 0
    at = next(i for i in peaks if r[i] >= 0.8 * max(r[peaks]))
    below, here, above = r[at - 1:at + 2]
    return here, 60 * RATE / 2 / (at + 0.5 * (below - above) / (below - 2 * here + above))


def slow(repetition):
    return repetition[0] * np.clip((190 - repetition[1]) / (190 - 110), 0, 1)


def leakage(v):
    v = v - v.mean()
    half = np.floor(np.pi * np.abs(v).sum() / np.abs(np.diff(v)).sum() + 0.5)
    lag = int(np.clip(half, 1, 2 * RATE))
    return np.abs(v[lag:] + v[:-lag]).sum() / (np.abs(v[lag:]) + np.abs(v[:-lag])).sum()


def tcsc(v):
    rise = 0.5 * (1 - np.cos(np.pi * np.arange(31) / 30))
    weights = np.ones(3 * RATE)
    weights[:31], weights[-31:] = rise, rise[::-1]
    shares = []
    for s in range(6):
        part = np.abs(v[s * RATE:(s + 3) * RATE] * weights)
        shares.append((part >= 0.2 * part.max()).mean())
    return np.mean(shares)


def complexity(v):
    mobility = lambda w: np.sqrt(np.diff(w).var() / w.var())
    return mobility(np.diff(v)) / mobility(v)


def likeness(wide, slope):
    least, kept = 0.4 * np.percentile(slope, 98), []
    for i in range(1, WINDOW - 1):
        if slope[i] >= least and slope[i] > slope[i - 1] and slope[i] >= slope[i + 1]:
            if kept and i - kept[-1] < 25:
                if slope[i] > slope[kept[-1]]:
                    kept[-1] = i
            else:
                kept.append(i)
    tops = [max(0, k - 8) + np.argmax(np.abs(wide[max(0, k - 8):k + 9])) for k in kept]
    tops = [t for t in tops if 15 <= t < WINDOW - 15]
    if len(tops) < 2:
        return 0, len(tops), 0
    beats = np.array([wide[t - 15:t + 16] - wide[t - 15:t + 16].mean() for t in tops])
    middle = np.median(beats, axis=0)
    sizes = np.linalg.norm(beats, axis=1) * np.linalg.norm(middle)
    return np.median(beats @ middle / sizes), len(tops), 60 * RATE / np.median(np.diff(tops))


def measures(wide, narrow, qrs, slope):
    seconds = [np.ptp(band.reshape(8, RATE), axis=1) for band in (wide, narrow)]
    large = np.abs(qrs).reshape(8, RATE)
    changes = np.abs(np.diff(wide))
    r = correlations(wide)
    repeat, slope_repeat = first_peak(r), first_peak(correlations(slope))
    like, beats, beat_rate = likeness(wide, slope)
    return [leakage(wide), slow(slope_repeat), like,
            (large >= 0.5 * large.max(axis=1, keepdims=True)).mean(),
            max(np.log(seconds[1].min() / seconds[1].max()), -1.5),
            tcsc(narrow), complexity(narrow), r[3:38].min(),
            np.percentile(changes, 50) / np.percentile(changes, 98),
            slow(first_peak(correlations(narrow))),
            np.median(seconds[0]), seconds[0].min(), seconds[0].max(),
            *repeat, *slope_repeat, beats, beat_rate]


def signals():
    ecg = misc.electrocardiogram()
    yield "ecg", ecg[3:3 + 90 * RATE]
    yield "ecg stretched", ecg[:108000:9] * -0.3
    dice = np.random.RandomState(7)
    t = np.arange(60 * RATE) / RATE
    phase = 2 * np.pi * np.cumsum(5 + dice.randn(t.size).cumsum() / 50) / RATE
    yield "waves", np.sin(phase) * (1 + 0.5 * np.sin(t)) + 0.02 * dice.randn(t.size)
    yield "noise", 0.2 * dice.randn(t.size)
    yield "swings", np.convolve(dice.randn(t.size), np.ones(20) / 20, "same")
    yield "steps", np.sign(np.sin(2 * np.pi * 1.7 * t)) + 0.3 * np.sin(2 * np.pi * 0.2 * t)


faults, checks = [], 0
for name, x in signals():
    text = f"{RATE} {len(x)}\n" + "\n".join(map(repr, map(float, x)))
    lines = subprocess.run([PROBE], input=text, check=True, capture_output=True, text=True).stdout
    rows = [list(map(float, line.split()[1:])) for line in lines.splitlines()
            if line.startswith("window")]
    whole = bands(x)
    begins = range(0, len(x) - WINDOW + 1, STEP)
    if len(rows) != len(begins):
        faults.append(f"{name}: {len(rows)} windows for {len(begins)}")
    for begin, row in zip(begins, rows):
        expected = np.array(measures(*(band[begin:begin + WINDOW] for band in whole)))
        found = np.array(row[1:1 + len(expected)])
        checks += len(expected)
        apart = np.abs(found - expected) / np.maximum(1, np.abs(expected))
        for k in np.flatnonzero(~(apart <= 1e-9)):
            faults.append(f"{name} at {begin / RATE} s, value {k}: {found[k]} for {expected[k]}")
print(f"{checks} values compared")
print("\n".join(faults[:20]))
sys.exit(bool(faults) or checks < 1000)
