"""Published ways to read an ECG, written plainly with numpy and scipy: what the program's own are
compared with. Nothing in here is shared with them.
"""
import numpy as np
from scipy import signal


def pan_tompkins(ecg, rate):
    """Times of QRS complexes in seconds. Pan and Tompkins, IEEE Trans Biomed Eng 1985;32:230-236 (from
    memory), with filters of today's making; a complex lies at the largest deflection of the filtered
    signal in the integration window that found it.
    """
    band = signal.sosfiltfilt(signal.butter(2, (5, 15), "bandpass", fs=rate, output="sos"), ecg)
    slope = np.gradient(band) * rate
    width = round(0.15 * rate)
    energy = np.convolve(slope ** 2, np.ones(width) / width, "same")
    peaks = signal.find_peaks(energy, distance=round(0.2 * rate))[0]

    signal_level = np.max(energy[:round(2 * rate)]) / 3
    noise_level = np.mean(energy[:round(2 * rate)]) / 2
    found, last_slope, since = [], 0.0, 0
    for i, peak in enumerate(peaks):
        around = slice(max(0, peak - width // 2), peak + width // 2 + 1)
        steepest = np.max(np.abs(slope[around]))
        threshold = noise_level + 0.25 * (signal_level - noise_level)
        is_beat = energy[peak] > threshold
        if is_beat and found and peak - found[-1] < 0.36 * rate and steepest < last_slope / 2:
            is_beat = False
        if len(found) > 2:
            usual = np.mean(np.diff(found[-9:]))
            if peak - found[-1] > 1.66 * usual:
                missed = [p for p in peaks[since:i] if p - found[-1] > 0.36 * rate
                          and energy[p] > threshold / 2]
                if missed:
                    best = max(missed, key=lambda p: energy[p])
                    found.append(best)
                    signal_level = 0.25 * energy[best] + 0.75 * signal_level
        if is_beat:
            found.append(peak)
            since = i + 1
            last_slope = steepest
            signal_level = 0.125 * energy[peak] + 0.875 * signal_level
        else:
            noise_level = 0.125 * energy[peak] + 0.875 * noise_level
    out = []
    for peak in found:
        first = max(0, peak - width // 2)
        out.append((first + np.argmax(np.abs(band[first:peak + width // 2 + 1]))) / rate)
    return np.array(out)


def two_moving_averages(ecg, rate):
    """Times of QRS complexes in seconds. Elgendi, PLoS ONE 2013;8:e73557 (from memory)."""
    band = signal.sosfiltfilt(signal.butter(3, (8, 20), "bandpass", fs=rate, output="sos"), ecg)
    square = band ** 2

    def mean(width):
        return np.convolve(square, np.ones(width) / width, "same")

    short = round(0.097 * rate)
    above = mean(short) > mean(round(0.611 * rate)) + 0.08 * np.mean(square)
    edges = np.flatnonzero(np.diff(np.concatenate(([0], above.astype(int), [0]))))
    out = []
    for begin, end in edges.reshape(-1, 2):
        if end - begin >= short:
            beat = (begin + np.argmax(square[begin:end])) / rate
            if not out or beat - out[-1] >= 0.3:
                out.append(beat)
    return np.array(out)


def amsa(values, rate):
    """Sum of amplitude x frequency over 2 to 48 Hz."""
    size = 2 * np.abs(np.fft.rfft(values)) / len(values)
    hz = np.fft.rfftfreq(len(values), 1 / rate)
    chosen = (hz > 2 - 1e-9) & (hz < 48 + 1e-9)
    return np.sum(size[chosen] * hz[chosen])


def matched(found, truth, within=0.075):
    """How many of both lie within that many seconds of each other, one for one."""
    i = j = count = 0
    while i < len(found) and j < len(truth):
        if abs(found[i] - truth[j]) <= within:
            count, i, j = count + 1, i + 1, j + 1
        elif found[i] < truth[j]:
            i += 1
        else:
            j += 1
    return count
