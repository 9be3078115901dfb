#!/usr/bin/python3
"""A second opinion on the published schemas, by another implementation (python3-jsonschema).

The schemas themselves are valid draft 7; the lines in right/ pass and those in wrong/ fail; every
line of every sample passes; and the example that the specification explains line by line is a
correctly sealed log.

Usage: check_schema.py SOURCE_FOLDER
"""
import base64
import hashlib
import json
import pathlib
import re
import sys

import jsonschema

faults = []


def expect(holds, what):
    if not holds:
        faults.append(what)


def validator(path):
    schema = json.loads(path.read_text(encoding="utf-8"))
    jsonschema.Draft7Validator.check_schema(schema)
    return jsonschema.Draft7Validator(schema)


def check_cases(folder, right, validators):
    seen = 0
    for path in sorted(folder.glob("*.jsonl")):
        valid = validators["measure" if path.stem == "measure-output" else "line"]
        for case in path.read_text(encoding="utf-8").splitlines():
            case = json.loads(case)
            seen += 1
            expect(valid.is_valid(case["line"]) == right, f"{path}: {case['why']}")
    expect(seen >= 20, f"{folder}: only {seen} cases")


def check_log(lines, name, valid, sealed):
    """Every line against the schema; counts, blocks and seal by hand."""
    entries = []
    for number, line in enumerate(lines, 1):
        value = json.loads(line)
        for error in valid.iter_errors(value):
            expect(False, f"{name}:{number}: {error.message[:200]}")
        expect(("resuslog" in value) == (number == 1), f"{name}:{number}: a header in line 1 alone")
        entries.append(value)
    channels = {c["id"] for c in entries[0].get("channels", [])}
    for entry in entries[1:]:
        if entry["type"] == "samples":
            expect(entry["channel"] in channels, f"{name}: channel {entry['channel']}")
            expect(len(base64.b64decode(entry["data"], validate=True)) == 2 * entry["count"],
                   f"{name}: count of samples at {entry['t']}")
    if not sealed:
        return
    last = entries[-1]
    before = b"".join(line + b"\n" for line in lines[:-1])
    expect(last["type"] == "end", f"{name}: last line")
    expect(last.get("entries") == len(lines) - 2, f"{name}: number of entries")
    expect(last.get("sha256") == hashlib.sha256(before).hexdigest(), f"{name}: seal")


def check_samples(folder, valid):
    paths = sorted(folder.glob("*.resuslog"))
    expect(len(paths) >= 8, f"{folder}: only {len(paths)} samples")
    for path in paths:
        whole = path.read_bytes()
        lines = whole.split(b"\n")
        # What follows the last line end is nothing, or half a line where the power was lost.
        check_log(lines[:-1], path.name, valid, sealed=lines[-1] == b"")


def check_example(path, valid):
    text = path.read_text(encoding="utf-8")
    examples = re.findall(r"```resuslog\n(.*?)```", text, re.S)
    expect(len(examples) == 1, f"{path}: one example, found {len(examples)}")
    for example in examples:
        lines = example.encode("utf-8").split(b"\n")[:-1]
        expect(len(lines) >= 10, f"{path}: example too short")
        check_log(lines, path.name, valid, sealed=True)
        explained = re.findall(r"^\| (\d+) \|", text, re.M)
        expect([int(n) for n in explained] == list(range(1, len(lines) + 1)),
               f"{path}: every line of the example is explained")


def main():
    source = pathlib.Path(sys.argv[1])
    formats = source / "resources" / "format"
    validators = {
        "line": validator(formats / "resus-log-1.0.schema.json"),
        "measure": validator(formats / "measure-output.schema.json"),
    }
    here = source / "tests" / "core" / "format"
    check_cases(here / "right", True, validators)
    check_cases(here / "wrong", False, validators)
    check_samples(source / "samples", validators["line"])
    check_example(formats / "resus-log-1.0.md", validators["line"])
    for fault in faults:
        print(fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
