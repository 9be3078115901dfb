#!/usr/bin/env python3
"""`compare --json` of the samples against its published schema, and `compare --csv` read back, both
by other implementations (python3-jsonschema, Python's csv).

    compare_output.py PROGRAM SOURCE_DIR
"""
import copy
import csv
import io
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile

import jsonschema

program, source = sys.argv[1], pathlib.Path(sys.argv[2])
schema = json.loads((source / "resources/format/compare-output.schema.json").read_text())
jsonschema.Draft7Validator.check_schema(schema)
validator = jsonschema.Draft7Validator(schema)
samples = sorted(str(p) for p in (source / "samples").glob("*.resuslog"))
assert samples, "no samples found"


def compare(*words):
    run = subprocess.run([program, "compare", *samples, *words], capture_output=True)
    if run.returncode not in (0, 1):
        sys.exit(f"{words}: exit {run.returncode}: {run.stderr.decode()}")
    return run.stdout.decode()


faults = 0
with tempfile.TemporaryDirectory() as folder:
    for words in ([], ["--profile", "american-2025"],
                  ["--step", "2026-04-01=new training", "--step", "2026-05-01"],
                  ["--without-identity", "--secret", folder + "/secret", "--step", "2026-04-01=x"]):
        output = json.loads(compare("--json", *words))
        for error in validator.iter_errors(output):
            faults += 1
            print(f"{words}: {error.json_path}: {error.message}")
        assert len(output["steps"]) == words.count("--step"), words
        for kind in output["kinds"]:
            assert {chart["chart"] for chart in kind["over_time"]} >= {"run", "individuals", "counts"}
            for chart in kind["over_time"]:
                assert len(chart["changes"]) == len(output["steps"]), words
                assert sum(s["last"] - s["first"] + 1 for s in chart["stretches"]) == len(chart["points"])
                values = sum(point["records"] for point in chart["points"])
                assert values + chart["not_recorded"] + chart["not_applicable"] + chart[
                    "without_day"] == kind["records"], (words, chart["figure"])
        hidden = "--without-identity" in words
        for record in output["records"]:
            assert record["day"] is None or (len(record["day"]) == len("2026-04")) == hidden
        rows = list(csv.DictReader(io.StringIO(compare("--csv", *words), newline=""), strict=True))
        assert len(rows) == len(output["records"]), (len(rows), len(output["records"]))
        for row, record in zip(rows, output["records"]):
            assert None not in row and None not in row.values(), "a line of another length"
            for key, of in (("site", "site"), ("team", "team"), ("file", "file"), ("day", "day")):
                assert row[key].lstrip("'") == (record[of] or "").strip(), (key, row[key])
            for name, figure in record["figures"].items():
                assert row[name + "_status"] == figure["status"]
                column = next(key for key in row if key == name or
                              key.startswith(name + "_") and key[len(name):] in
                              ("_s", "_per_min", "_mm", "_j") or
                              key == name and key.endswith(("_s", "_mm", "_j")))
                value = None if row[column] == "" else float(row[column])
                assert value == figure["value"], (name, row[column], figure)

    # A record whose file was gone when figures with other settings were wanted.
    gone = pathlib.Path(folder, "gone.resuslog")
    shutil.copy(samples[0], gone)
    archive = folder + "/archive"
    for words in ([samples[1], str(gone)], ["--pause-threshold", "5"]):
        subprocess.run([program, "take-in", "--archive", archive, *words], capture_output=True)
        gone.unlink(missing_ok=True)
    run = subprocess.run([program, "compare", "--archive", archive, "--pause-threshold", "5", "--json"],
                         capture_output=True)
    without = json.loads(run.stdout)
    assert without["without_figures"] == 1, run.stderr
    for error in validator.iter_errors(without):
        faults += 1
        print(f"without figures: {error.json_path}: {error.message}")

# The schema would notice.
for break_it in (lambda o: o["records"][0]["figures"]["longest_pause"].update(status="fine"),
                 lambda o: o["kinds"][0]["figures"][0].pop("not_recorded"),
                 lambda o: o["kinds"][0]["over_time"][0]["changes"][0].update(compared=True),
                 lambda o: o["records"][0].update(day="2026"),
                 lambda o: o["records"][0].update(kind="exercise")):
    broken = copy.deepcopy(output)
    break_it(broken)
    if validator.is_valid(broken):
        sys.exit("the schema takes what it must not")
sys.exit(1 if faults else 0)
