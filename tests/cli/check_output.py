#!/usr/bin/env python3
"""Every sample's `measure --json` against its published schema, by a second implementation of JSON
Schema (python3-jsonschema).

    check_output.py PROGRAM SOURCE_DIR
"""
import json
import pathlib
import subprocess
import sys

import jsonschema

program, source = sys.argv[1], pathlib.Path(sys.argv[2])
schema = json.loads((source / "resources/format/measure-output.schema.json").read_text())
jsonschema.Draft7Validator.check_schema(schema)
validator = jsonschema.Draft7Validator(schema)
samples = sorted(str(p) for p in (source / "samples").glob("*.resuslog"))
assert samples, "no samples found"

faults = 0
runs = [[sample] for sample in samples] + [samples]
settings = [[], ["--window-end", "record_end"], ["--profile", "american-2025"],
            ["--derive", "always"]]
for files in runs:
    for extra in settings:
        run = subprocess.run([program, "measure", "--json", *extra, *files], capture_output=True,
                             text=True)
        output = json.loads(run.stdout)
        if run.returncode not in (0, 1):
            sys.exit(f"{files}: exit {run.returncode}: {run.stderr}")
        if len(files) > 1 and len(output) != len(files):
            sys.exit(f"{len(files)} files gave {len(output)} objects")
        for error in validator.iter_errors(output):
            faults += 1
            print(f"{files} {extra}: {error.json_path}: {error.message}")
broken = json.loads(json.dumps(output if isinstance(output, dict) else output[0]))
del broken["measures"][0]["status"]
if validator.is_valid(broken):
    sys.exit("the schema takes a measure without status")
sys.exit(1 if faults else 0)
