#!/usr/bin/python3
"""Draws the curves of `hands_report --curves FILE` into pictures: hands_pictures.py FILE OUTDIR"""
import csv
import pathlib
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt  # noqa: E402  (the drawing kind is chosen first)

PANELS = {
    "vehicle_m_s2": ("vehicle", "vibration of the vehicle, m/s² RMS", 1.5),
    "tilt_change_deg": ("tilt", "change of tilt, degrees", 30),
    "hiss_share_of_amplitude": ("hiss", "impedance noise, RMS as a share of the compression's amplitude", 0.5),
    "pulls_per_minute": ("pulls", "pulls on an electrode a minute", None),
    "rate_per_min": ("rate", "compressions a minute", None),
    "depth_mm": ("depth", "depth, mm", None),
}
ACCELERATION = ("vehicle_m_s2", "tilt_change_deg", "rate_per_min", "depth_mm")
IMPEDANCE = ("hiss_share_of_amplitude", "pulls_per_minute", "rate_per_min", "depth_mm")
SHARE_LINES = {
    "acceleration": (("acceleration_f1", "compressions, F1", 0.99, "C0"),
                     ("hands_off_acceleration", "hands-off within 0.02, share of scenes", 0.95, "C2"),
                     ("hands_off_both", "the same, impedance beside it", 0.95, "C4")),
    "impedance": (("impedance_f1", "compressions, F1", 0.97, "C0"),
                  ("breath_sensitivity", "breaths, sensitivity", 0.93, "C1"),
                  ("breath_predictivity", "breaths, predictivity", 0.93, "C3"),
                  ("hands_off_impedance", "hands-off within 0.02, share of scenes", 0.95, "C2")),
}


def curves(path):
    """{condition: {column: values in the order of strengths}}"""
    found = {}
    with open(path, newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            columns = found.setdefault(row.pop("condition"), {})
            for name, value in row.items():
                columns.setdefault(name, []).append(float(value))
    return found


def draw_shares(axes, columns, condition, lines):
    for name, label, goal, colour in lines:
        axes.plot(columns["strength"], columns[name], "o-", ms=3, lw=1.2, color=colour, label=label)
        axes.axhline(goal, color=colour, lw=0.7, ls=":")
    lowest = min(min(columns[name]) for name, *_ in lines)
    axes.set_ylim(max(0, min(0.85, lowest - 0.03)), 1.01)
    axes.set_xlabel(PANELS[condition][1])
    edge = PANELS[condition][2]
    if edge is not None:
        axes.axvline(edge, color="0.6", lw=0.8, ls="--")


def save(figure, path):
    figure.tight_layout()
    # Few colours and no date: small, and the same file each time.
    figure.savefig(path, dpi=80, metadata={"Software": None}, pil_kwargs={"optimize": True})
    plt.close(figure)


def draw_acceleration(data, outdir):
    figure, grid = plt.subplots(2, 4, figsize=(14, 6))
    for column, condition in enumerate(ACCELERATION):
        columns = data[condition]
        draw_shares(grid[0][column], columns, condition, SHARE_LINES["acceleration"])
        axes = grid[1][column]
        axes.plot(columns["strength"], columns["acceleration_depth_mm"], "o-", ms=3, lw=1.2, color="C0",
                  label="depth error, mm, median")
        axes.plot(columns["strength"], columns["acceleration_depth_95_mm"], "o--", ms=3, lw=1, color="C0",
                  label="depth error, mm, 95 in 100 below")
        axes.plot(columns["strength"], columns["acceleration_rate_per_min"], "s-", ms=3, lw=1.2, color="C3",
                  label="rate error, a minute, mean")
        axes.axhline(2, color="C0", lw=0.7, ls=":")
        axes.axhline(1.5, color="C3", lw=0.7, ls=":")
        axes.set_ylim(bottom=0)
        axes.set_xlabel(PANELS[condition][1])
    grid[0][0].legend(fontsize=7, loc="lower left")
    grid[1][0].legend(fontsize=7, loc="upper left")
    save(figure, outdir / "accuracy-acceleration.png")


def draw_impedance(data, outdir):
    figure, grid = plt.subplots(2, 2, figsize=(10, 6.5))
    for axes, condition in zip(grid.flat, IMPEDANCE):
        draw_shares(axes, data[condition], condition, SHARE_LINES["impedance"])
    grid[0][0].legend(fontsize=7, loc="lower left")
    save(figure, outdir / "accuracy-impedance.png")


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    data, outdir = curves(sys.argv[1]), pathlib.Path(sys.argv[2])
    draw_acceleration(data, outdir)
    draw_impedance(data, outdir)


if __name__ == "__main__":
    main()
