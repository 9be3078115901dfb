"""Files for the pictures: the smallest record, the fullest, and those that are refused. Everything is
made up."""
import json
import os
import pathlib
import shutil
import subprocess


def _write(path, lines):
    path.write_text("".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines),
                    encoding="utf-8")


def _smallest(path):
    _write(path, [{"resuslog": "1.0", "id": "urn:uuid:0b6f9f3e-5f1c-4c5e-9d65-2f0a1c9c1d11",
                   "recorded": "2026-03-14T09:12:30+01:00"}])


def _fullest(path):
    """Forty minutes with everything a log may hold, and much of it."""
    header = {"resuslog": "1.0", "id": "urn:uuid:0b6f9f3e-5f1c-4c5e-9d65-2f0a1c9c1d12",
              "recorded": "2026-03-14T09:12:30+01:00", "kind": "drill", "synthetic": True,
              "patient": {"category": "adult"},
              "site": "Ferry terminal, east pier, waiting hall behind the ticket counters"}
    entries = [(-95, {"type": "milestone", "what": "collapse", "source": "observer"}),
               (-80, {"type": "milestone", "what": "call_received", "source": "observer"}),
               (-60, {"type": "milestone", "what": "cpr_started", "source": "observer"}),
               (-20, {"type": "milestone", "what": "device_arrived", "source": "observer"}),
               (0, {"type": "power_on"}), (0.5, {"type": "patient_mode", "category": "adult"}),
               (8, {"type": "electrodes", "state": "attached", "impedance_ohm": 82})]
    for cycle in range(20):
        begin = 15.0 + 120 * cycle
        advice = ("shock", "no_shock", "inconclusive")[cycle % 3]
        entries += [(begin, {"type": "analysis", "end": begin + 7, "advice": advice}),
                    (begin + 1, {"type": "prompt", "text": "Stand clear"}),
                    (begin + 9, {"type": "charge", "end": begin + 12, "energy_j": 200})]
        if advice == "shock":
            entries.append((begin + 13, {"type": "shock", "delivered": cycle % 6 == 0,
                                         "energy_j": 200,
                                         "reason": "a bystander stood too close"}))
        t = begin + 15 + (cycle % 5) * 3
        while t < begin + 114:
            for press in range(30):
                entries.append((t, {"type": "compression", "depth_mm": 44 + (press + cycle) % 14,
                                    "full_release": press % 9 != 0}))
                t += 0.5 + 0.01 * (cycle % 9)
            for _ in range(2):
                entries.append((t + 1, {"type": "ventilation", "volume_ml": 480}))
                t += 1.7
            t += 1
        entries += [(begin + 40, {"type": "medication", "text": "Adrenaline 1 mg intravenous"}),
                    (begin + 60, {"type": "rescuer_change", "text": "second team"}),
                    (begin + 70, {"type": "mark", "author": "observer",
                                  "text": "A long remark about what the team said to each other "
                                          "while the lift was being held open"})]
    entries += [(300, {"type": "airway", "device": "supraglottic"}),
                (700, {"type": "excluded", "end": 745, "why": "not_observed"}),
                (1400, {"type": "fault", "text": "Battery low", "code": "B2"}),
                (1750, {"type": "circulation", "state": "returned"}),
                (1900, {"type": "circulation", "state": "lost"}),
                (2380, {"type": "circulation", "state": "returned"}),
                (2395, {"type": "milestone", "what": "crew_arrived", "source": "observer"}),
                (2399, {"type": "milestone", "what": "handover", "source": "observer"}),
                (2400, {"type": "power_off"})]
    entries.sort(key=lambda entry: entry[0])
    _write(path, [header] + [dict(t=round(t, 3), **rest) for t, rest in entries])


def _signals_only(path, log):
    """A record whose device kept waveforms and wrote down no compression, breath or rhythm."""
    kept = [line for line in log.splitlines(True)
            if not any(b'"type":"%s"' % kind in line
                       for kind in (b"compression", b"ventilation", b"cpr", b"rhythm", b"end"))]
    path.write_bytes(b"".join(kept))


def seasons(folder, samples, generator):
    """Folders of many: two drills, eight records, invented seasons with a file that is broken."""
    drills = sorted(samples.glob("drill-evening-*.resuslog"))
    for name, chosen in (("two-drills", drills[:2]), ("eight", sorted(samples.glob("*.resuslog")))):
        (folder / name).mkdir()
        for path in chosen:
            shutil.copy(path, folder / name)
    (folder / "season-0").mkdir()
    for count in (1, 4, 40):
        subprocess.run([str(generator), str(folder / f"season-{count}"), "--records", str(count),
                        "--slow-site", "--training"], check=True)
    (folder / "season-40" / "broken.resuslog").write_bytes(b"")


def make(folder, samples):
    """All of them, into `folder`; the records by name."""
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    _smallest(folder / "smallest.resuslog")
    _fullest(folder / "fullest.resuslog")
    ferry = (samples / "ferry-terminal.resuslog").read_bytes()
    (folder / "damaged.resuslog").write_bytes(
        ferry[:200_000].replace(b'"type":"compression"', b'"type":compression"', 4) + b'\n{"t":')
    _signals_only(folder / "signals-only.resuslog", ferry)
    (folder / "unknown.bin").write_bytes(bytes(range(256)) * 16)
    (folder / "no-header.resuslog").write_bytes(b"".join(ferry.splitlines(True)[1:400]))
    (folder / "newer.resuslog").write_text('{"resuslog":"7.0","recorded":"2031-01-01T00:00:00Z"}\n')
    (folder / "empty.resuslog").write_bytes(b"")
    (folder / "not-a-profile.json").write_text('{"name": 3}\n')
    # Almost as long as a file may be, and empty: long enough in reading to be seen.
    (folder / "slow.resuslog").write_bytes((folder / "smallest.resuslog").read_bytes())
    os.truncate(folder / "slow.resuslog", 1900 << 20)
    return {"smallest": folder / "smallest.resuslog", "fullest": folder / "fullest.resuslog",
            "damaged": folder / "damaged.resuslog",
            "signals-only": folder / "signals-only.resuslog",
            **{path.stem: path for path in samples.glob("*.resuslog")}}
