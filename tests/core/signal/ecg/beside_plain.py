#!/usr/bin/python3
"""Beats in a real ECG beside published detectors written plainly, and the amplitude spectrum area beside
numpy's on the same input, to 1e-9. The ECG (5 minutes, many ventricular extra beats, artefacts) is
the one that scipy brings along.

Usage: beside_plain.py PROBE
"""
import subprocess
import sys
import warnings

import numpy as np
from scipy import misc, signal

import plain_ecg

PROBE = sys.argv[1]
RATE = 360
faults = []


def probe(command, values, *numbers):
    run = subprocess.run([PROBE, command, *map(repr, map(float, numbers))], check=True,
                         input=np.asarray(values, dtype=float).tobytes(), capture_output=True)
    return np.frombuffer(run.stdout)


def expect(holds, what):
    print(("ok    " if holds else "FAULT ") + what)
    if not holds:
        faults.append(what)


def check_beats():
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)
        ecg = misc.electrocardiogram()
    # The older detector places wide beats anywhere in the 150 ms it integrates over.
    others = (("two moving averages", plain_ecg.two_moving_averages, 0.075),
              ("Pan and Tompkins", plain_ecg.pan_tompkins, 0.150))
    for rate, sign in ((RATE, 1), (RATE, -1), (100, 1), (250, 1), (1000, 1)):
        values = sign * (ecg if rate == RATE else signal.resample_poly(ecg, rate, RATE))
        found = probe("beats", values, rate)
        for name, detect, within in others:
            truth = detect(ecg, RATE)
            both = plain_ecg.matched(found, truth, within)
            expect(both >= 0.985 * len(truth) and both >= 0.985 * len(found),
                   f"{rate} Hz, {'upright' if sign > 0 else 'inverted'}: {both} of {len(found)} beats "
                   f"are among the {len(truth)} of {name}")


def check_amsa():
    dice = np.random.default_rng(3)
    for rate in (100, 125, 250, 257, 500, 1000):
        values = np.cumsum(dice.standard_normal(round(2 * rate))) * 0.05 + 0.3
        found = probe("amsa", values, rate)
        expected = plain_ecg.amsa(values, rate)
        expect(found.size == 1 and abs(found[0] - expected) <= 1e-9 * max(1, expected),
               f"amplitude spectrum area of noise at {rate} Hz")


check_beats()
check_amsa()
sys.exit(1 if faults else 0)
