#!/usr/bin/python3
"""What bench_signal does, written plainly with numpy and scipy, on the same samples.

    plain_signal.py --make FILE            three hours of made-up ECG of 250 Hz, doubles in mV
    plain_signal.py FILE RATE              name to {ms, value}, as bench_signal writes it
"""
import json
import math
import pathlib
import sys
import time

import numpy as np
from scipy import signal

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "core" / "signal" / "ecg"))
import plain_ecg  # noqa: E402

HOURS, RATE = 3, 250
# The artefact filter goes through every sample in Python; this many seconds stand for all of them.
SUPPRESSED_SECONDS = 120


def made_ecg():
    """Heartbeats with wandering, hiss and a stretch of fibrillation in each quarter of an hour."""
    dice = np.random.default_rng(11)
    count = HOURS * 3600 * RATE
    ecg = 0.02 * dice.standard_normal(count)
    beats = np.cumsum(0.8 + 0.05 * dice.standard_normal(HOURS * 4800))
    places = (beats[beats < count / RATE - 1] * RATE).astype(int)
    train = np.zeros(count)
    train[places] = 1
    at = np.arange(-100, 150) / RATE
    shape = np.zeros_like(at)
    for middle, mv, width in ((-.16, .12, .02), (-.025, -.12, .008), (0, 1, .011), (.028, -.25, .009),
                              (.26, .3, .045)):
        shape += mv * np.exp(-((at - middle) / width) ** 2 / 2)
    ecg += signal.oaconvolve(train, shape, "full")[100:100 + count]
    for begin in range(600 * RATE, count, 900 * RATE):
        length = min(120 * RATE, count - begin)
        s = np.arange(length) / RATE
        ecg[begin:begin + length] = sum(0.15 * np.sin(2 * np.pi * hz * s + 3 * np.sin(s / hz))
                                        for hz in (3.9, 4.6, 5.2, 5.9))
        ecg[begin:begin + length] += 0.02 * dice.standard_normal(length)
    ecg += 0.3 * np.sin(2 * np.pi * 0.21 * np.arange(count) / RATE)
    return np.round(ecg / 0.005) * 0.005


def effective(values):
    return math.sqrt(np.mean(np.square(values)))


def filtered_both_ways(ecg, rate):
    sections = signal.butter(2, (0.5, 40), "bandpass", fs=rate, output="sos")
    return effective(signal.sosfiltfilt(sections, ecg))


def filtered_forwards(ecg, rate):
    return effective(signal.sosfilt(signal.butter(8, 20, fs=rate, output="sos"), ecg))


def halved_rate(ecg, rate):
    return effective(signal.resample_poly(ecg, 1, 2, padtype="edge"))


def spectra(ecg, rate):
    window = 2 * rate
    return max(plain_ecg.amsa(ecg[begin:begin + window], rate)
               for begin in range(0, len(ecg) - window + 1, window // 2))


def beats(ecg, rate):
    """With the look into gaps and the threshold that follows the amplitude, as the program has."""
    return len(plain_ecg.pan_tompkins(ecg, rate))


def stretches(chosen, join):
    """Begins and ends of runs of True with at most `join` False between them as one."""
    places = np.flatnonzero(chosen)
    if not len(places):
        return []
    cuts = np.flatnonzero(np.diff(places) > join + 1)
    return list(zip(places[np.concatenate(([0], cuts + 1))], places[np.concatenate((cuts, [-1]))] + 1))


def faults(ecg, rate):
    """Missing, clipped and flat stretches, needles and noise, by the definitions of quality.h."""
    found = stretches(np.isnan(ecg), round(0.1 * rate))
    step = np.min(np.abs(np.diff(ecg)[np.diff(ecg) != 0]))
    for sign in (1, -1):
        rail = np.max(sign * ecg)
        runs = stretches(sign * ecg == rail, 0)
        jumps = [max(abs(rail - sign * ecg[max(0, a - 1)]), abs(rail - sign * ecg[min(len(ecg) - 1, b)]))
                 for a, b in runs if b - a >= 3]
        if max(b - a for a, b in runs) >= 0.04 * rate or sum(j >= 5 * step for j in jumps) >= 2:
            found += stretches(sign * ecg == rail, round(0.1 * rate))
    begin = 0
    for place in np.append(np.flatnonzero(np.abs(np.diff(ecg)) > 0.001) + 1, len(ecg)):
        if place - begin >= rate:
            found.append((begin, place))
        begin = place

    width, around = round(0.008 * rate), round(0.02 * rate)
    height = np.zeros(len(ecg))
    height[width:-width] = np.abs(ecg[width:-width] - (ecg[:-2 * width] + ecg[2 * width:]) / 2)
    forget = 1 / (2 * rate)
    usual = signal.lfilter([0, forget], [1, forget - 1], np.minimum(height, 0.3))
    needles = np.zeros(len(ecg), bool)
    for i in np.flatnonzero((height >= 0.3) & (height >= 8 * usual)):
        if around <= i < len(ecg) - around:
            before = ecg[i - around:i - width + 1]
            out = ecg[i] - (before.min() + before.max()) / 2
            back = ecg[i] - ecg[i + width]
            needles[i] = (np.ptp(before) <= 0.25 * abs(out) and out * back > 0
                          and abs(back) >= 0.75 * abs(out) and abs(out) >= 0.3)
    found += stretches(needles, 2 * rate)

    def band(order, edges, kind):
        return signal.sosfilt(signal.butter(order, edges, kind, fs=rate, output="sos"), ecg)

    fast, middle, slow = band(2, 30, "highpass"), band(2, (1, 30), "bandpass"), band(2, 1, "lowpass")
    noisy = np.zeros(len(ecg) // rate, bool)
    for second in range(len(noisy)):
        here = slice(second * rate, (second + 1) * rate)
        least = max(0.05, 0.3 * effective(middle[here]))
        noisy[second] = np.mean(np.abs(fast[here]) > least) > 0.5 or np.ptp(slow[here]) > 5
    return len(found + stretches(noisy, 0))


def suppressed(ecg, rate):
    """Eight harmonics followed by least mean squares, there and back."""
    places = np.arange(1.0, len(ecg) / rate, 0.54) * rate
    begin, end = math.ceil(places[0] - 0.27 * rate), min(len(ecg), math.floor(places[-1] + 0.27 * rate) + 1)
    out = ecg.copy()
    a, b = np.zeros(8), np.zeros(8)
    k = np.arange(1, 9)
    step = 2 / (2 * rate * k)

    def share(i):
        inside = min(i - (places[0] - 0.27 * rate), places[-1] + 0.27 * rate - i) / (0.25 * 0.54 * rate)
        return 1 if inside >= 1 else (1 - math.cos(math.pi * max(0, inside))) / 2

    for half, order in ((0, range(begin, end)), (0.5, range(end - 1, begin - 1, -1)),
                        (0.5, range(begin, end))):
        for i in order:
            angle = 2 * math.pi * k * (i / rate - 1) / 0.54
            cosine, sine = np.cos(angle), np.sin(angle)
            artefact = a @ cosine + b @ sine
            error = ecg[i] - artefact
            a += step * error * cosine
            b += step * error * sine
            out[i] -= half * artefact * share(i)
    return effective(out)


TASKS = {"band filter, both ways": filtered_both_ways, "low-pass filter, 8th order": filtered_forwards,
         "half the rate": halved_rate, "spectrum area, every second": spectra, "beats": beats,
         "faults": faults, "artefact filter": suppressed}


def main():
    if sys.argv[1] == "--make":
        made_ecg().tofile(sys.argv[2])
        return
    ecg, rate = np.fromfile(sys.argv[1]), int(sys.argv[2])
    out = {}
    for name, task in TASKS.items():
        part = ecg[:SUPPRESSED_SECONDS * rate] if task is suppressed else ecg
        begin = time.perf_counter()
        value = task(part, rate)
        ms = 1000 * (time.perf_counter() - begin) * len(ecg) / len(part)
        out[name] = {"ms": ms, "value": value, "seconds": len(part) / rate}
    print(json.dumps(out, indent=1))


if __name__ == "__main__":
    main()
