#!/usr/bin/python3
"""Quantiles, bootstrap intervals and the rank test beside numpy's and scipy's, on the same random input.

Usage: beside_scipy.py PROBE
"""
import subprocess
import sys

import numpy as np
from scipy import stats

PROBE = sys.argv[1]
RESAMPLES = 20_000
random = np.random.default_rng(20260417)
failures = []


def ask(lines):
    run = subprocess.run([PROBE], input="\n".join(lines) + "\n", capture_output=True, text=True, check=True)
    return [[float(word) for word in line.split()] for line in run.stdout.splitlines()]


def words(values):
    return " ".join(repr(float(v)) for v in values)


def samples():
    """Even, leaning and tied values of many sizes."""
    for n in (1, 2, 3, 5, 6, 9, 20, 51, 200):
        yield random.normal(50, 10, n)
        yield random.lognormal(2, 0.7, n)
        yield random.integers(0, 6, n).astype(float)


def expect(holds, what):
    if not holds:
        failures.append(what)


def quantiles():
    cases = [(p, v) for v in samples() for p in (0, 0.1, 0.25, 0.5, 0.75, 0.975, 1)]
    answers = ask(f"quantile {p} {words(v)}" for p, v in cases)
    for (p, v), (ours,) in zip(cases, answers):
        theirs = np.quantile(v, p)  # method "linear" is type 7
        expect(abs(ours - theirs) <= 1e-9 * max(1, abs(theirs)), f"quantile {p} of {len(v)}: {ours} {theirs}")
    return len(cases)


def bootstraps():
    cases = [v for v in samples() if len(v) >= 5]
    answers = ask(f"bootstrap {RESAMPLES} {i} {words(v)}" for i, v in enumerate(cases))
    # In one of a thousand comparisons two distributions of N draws each are further apart.
    limit = 1.95 * np.sqrt(2 / RESAMPLES)
    apart_most = 0
    for v, answer in zip(cases, answers):
        low, high, ours = answer[0], answer[1], np.array(answer[2:])
        expect(np.allclose([low, high], np.percentile(ours, [2.5, 97.5]), atol=1e-12), f"percentiles of {len(v)}")
        theirs = stats.bootstrap((v,), np.median, n_resamples=RESAMPLES, method="percentile", vectorized=True,
                                 axis=-1, random_state=random, batch=2000)
        drawn = np.sort(theirs.bootstrap_distribution) if hasattr(theirs, "bootstrap_distribution") else None
        if drawn is None:
            drawn = np.sort(np.median(random.choice(v, (RESAMPLES, len(v))), axis=1))
        # The same number may come out of a different sum of two: round before counting.
        a, b = np.sort(ours.round(9)), drawn.round(9)
        places = np.unique(np.r_[a, b])
        apart = np.max(np.abs(np.searchsorted(a, places, "right") - np.searchsorted(b, places, "right"))) / RESAMPLES
        apart_most = max(apart_most, apart)
        expect(apart < limit, f"bootstrap of {len(v)}: distributions {apart:.4f} apart, limit {limit:.4f}")
        # scipy's limits, seen in our distribution, cut off 2.5 %: 4.5 deviations of two counts. Values
        # repeat, so the share is that below and that up to a limit.
        slack = 4.5 * np.sqrt(2 * 0.025 * 0.975 / RESAMPLES)
        interval = theirs.confidence_interval
        for edge, share in ((interval.low, 0.025), (interval.high, 0.975)):
            below = np.mean(ours < edge - 1e-9)
            up_to = np.mean(ours <= edge + 1e-9)
            expect(below - slack <= share <= up_to + slack,
                   f"bootstrap of {len(v)}: scipy's {edge} at {below:.4f} to {up_to:.4f}, not {share}")
    print(f"bootstrap distributions at most {apart_most:.4f} apart (limit {limit:.4f})")
    return len(cases)


def rank_tests():
    cases = []
    for a in samples():
        for shift in (0, 0.4, 5):
            b = random.permutation(np.r_[a, random.choice(a, max(1, len(a) // 2))]) + shift
            cases.append((a, b))
    answers = ask(f"rank {len(a)} {words(a)} {words(b)}" for a, b in cases)
    compared = 0
    for (a, b), (ours,) in zip(cases, answers):
        if len(np.unique(np.r_[a, b])) < 2:
            expect(ours == 1, "all values equal")
            continue
        theirs = stats.mannwhitneyu(a, b, alternative="two-sided", method="asymptotic").pvalue
        compared += 1
        expect(abs(ours - theirs) <= 1e-9 + 1e-7 * theirs, f"rank test {len(a)} {len(b)}: {ours} {theirs}")
    return compared


print(quantiles(), "quantiles,", bootstraps(), "bootstraps,", rank_tests(), "rank tests compared")
for failure in failures:
    print("DIFFERS:", failure)
sys.exit(1 if failures else 0)
