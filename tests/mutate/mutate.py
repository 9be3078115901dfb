"""Applies each mutation of mutations.txt to a copy of the tree, builds and tests it.

A mutation of the list:

    == core/measures/pauses.cpp: a gap of exactly the threshold counts
    - gap.length() > figures.settings.pauseThreshold
    + gap.length() >= figures.settings.pauseThreshold

Several lines of - or + are lines of the file, one after the other; blanks at their begin and end do
not matter. The text must stand in the file exactly once.
"""

import argparse
import os
import re
import shutil
import subprocess
import sys
import time
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
# Quick ones first: most mutants fall at once.
TESTS = ["measures_examples_test", "outside_measures_test", "measures_compare_test"]
TESTS_OF_MANY = ["statistics_test", "compare_test", "outside_statistics_test"]
FOLDERS_OF_MANY = ("core/statistics/", "core/compare/")
SECONDS_PER_TEST = 300


class Mutation:
    def __init__(self, file, what):
        self.file, self.what, self.old, self.new = file, what, [], []

    def pattern(self):
        lines = [re.escape(line.strip()) for line in self.old]
        return re.compile(r"\s*\n\s*".join(lines))

    def found(self, text):
        return len(self.pattern().findall(text))

    def apply(self, text):
        return self.pattern().sub(lambda _: "\n".join(self.new), text)


def read_list(path):
    mutations = []
    for number, line in enumerate(path.read_text().splitlines(), 1):
        if line.startswith("== "):
            file, _, what = line[3:].partition(": ")
            mutations.append(Mutation(file, what))
        elif line.startswith("- "):
            mutations[-1].old.append(line[2:])
        elif line.startswith("+"):
            mutations[-1].new.append(line[2:])
        elif line and not line.startswith("#"):
            sys.exit(f"{path}:{number}: not understood: {line}")
    return mutations


def faults(mutations):
    for m in mutations:
        text = (ROOT / m.file).read_text()
        n = m.found(text) if m.old else 0
        if n != 1:
            yield f"{m.file}: {m.what}: the text is found {n} times, not once"
        elif m.apply(text) == text:
            yield f"{m.file}: {m.what}: changes nothing"


def run(command, cwd, **more):
    return subprocess.run(command, cwd=cwd, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          text=True, errors="replace", **more)


def copy_tree(tree):
    """What git knows, as it stands in the working tree; unchanged files keep their age."""
    names = run(["git", "ls-files", "--cached", "--others", "--exclude-standard"], ROOT).stdout
    for name in names.splitlines():
        source, target = ROOT / name, tree / name
        if not source.is_file():
            continue
        if not target.exists() or target.read_bytes() != source.read_bytes():
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(source, target)


def tests_of(file):
    return TESTS_OF_MANY if file.startswith(FOLDERS_OF_MANY) else TESTS


def build(folder, tests):
    return run(["ninja", "-C", str(folder), *tests], ROOT)


def killer(folder, tests):
    """The test that fails, or None."""
    environment = dict(os.environ)
    environment.pop("RC_PARAMS", None)
    # Shrinking would only cost time: no one reads the example.
    environment["AFTERBEAT_NO_SHRINK"] = "1"
    for test in tests:
        command = [str(folder / "bin" / test), "--gtest_fail_fast", "--gtest_brief=1"]
        try:
            result = run(command, folder, env=environment, timeout=SECONDS_PER_TEST)
        except subprocess.TimeoutExpired:
            return f"{test} (does not end)"
        if result.returncode != 0:
            failed = re.search(r"FAILED  \] (\S+)", result.stdout)
            return f"{test} {failed.group(1) if failed else '(ended badly)'}"
    return None


def try_mutation(m, tree, folder):
    """One word for the outcome, and more about it."""
    path = tree / m.file
    original = path.read_text()
    try:
        path.write_text(m.apply(original))
        tests = tests_of(m.file)
        built = build(folder, tests)
        if built.returncode != 0:
            return "does not compile", built.stdout
        by = killer(folder, tests)
        return ("killed", by) if by else ("SURVIVES", "")
    finally:
        path.write_text(original)


def prepare(base, tests):
    tree, folder = base / "tree", base / "build"
    copy_tree(tree)
    configured = run(["cmake", "-S", str(tree), "-B", str(folder), "-G", "Ninja",
                      "-DCMAKE_BUILD_TYPE=Debug", "-DCMAKE_CXX_FLAGS_DEBUG=-O1"], ROOT)
    built = build(folder, tests) if configured.returncode == 0 else configured
    if built.returncode != 0:
        sys.exit(f"the unchanged tree does not build:\n{built.stdout}")
    by = killer(folder, tests)
    if by:
        sys.exit(f"the unchanged tree fails already: {by}")
    return tree, folder


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("-B", dest="base", default=str(ROOT / "build" / "mutate"))
    arguments.add_argument("--list", action="store_true",
                           help="only see whether every text is still found once")
    arguments.add_argument("words", nargs="*")
    options = arguments.parse_args()
    mutations = read_list(HERE / "mutations.txt")
    wrong = list(faults(mutations))
    print(f"{len(mutations)} mutations listed")
    for fault in wrong:
        print(fault)
    if wrong or options.list:
        return 1 if wrong else 0
    chosen = [m for m in mutations
              if not options.words or any(w in m.file or w in m.what for w in options.words)]
    begin = time.time()
    tree, folder = prepare(Path(options.base).resolve(),
                           sorted({test for m in chosen for test in tests_of(m.file)}))
    print(f"unchanged: passes ({time.time() - begin:.0f} s)", flush=True)
    bad = []
    for number, m in enumerate(chosen, 1):
        start = time.time()
        outcome, more = try_mutation(m, tree, folder)
        print(f"{number}/{len(chosen)} {outcome}: {Path(m.file).name}: {m.what}"
              f"{' [' + more + ']' if outcome == 'killed' else ''} ({time.time() - start:.1f} s)",
              flush=True)
        if outcome != "killed":
            bad.append(m)
            print(more[-2000:])
    print(f"{len(chosen)} mutations, {len(bad)} not killed, {time.time() - begin:.0f} s")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
