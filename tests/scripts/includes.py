#!/usr/bin/env python3
"""Compiles each source file separately, without precompiled headers and without writing anything:
finds headers that a file uses but doesn't include, which a unity build would hide.

Usage: includes.py SOURCES [--all]
Without --all only the files that the last ten commits changed or that are not committed, and at most
40 of them: all take about eight minutes on two cores. Exits with 1 if a file fails."""
import json
import os
import shlex
import shutil
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor

MOST = 40


def changed_files(root):
    """Paths relative to the root; empty if unknown: no git, or fewer commits."""
    if not shutil.which("git"):
        return set()
    names = []
    for command in (["git", "diff", "--name-only", "HEAD~10"],
                    ["git", "ls-files", "--others", "--exclude-standard"]):
        listed = subprocess.run(command, cwd=root, capture_output=True, text=True)
        names += listed.stdout.splitlines() if listed.returncode == 0 else []
    return set(names)


def wanted_units(root, everything):
    """The compile commands of the files to check, by their path."""
    with open(os.path.join(root, "build/includes/compile_commands.json")) as file:
        units = {os.path.relpath(unit["file"], root): unit for unit in json.load(file)}
    units = {path: unit for path, unit in units.items() if not path.startswith("build/")}
    if everything:
        return units
    changed = sorted(changed_files(root) & units.keys())
    if len(changed) > MOST:
        print(f"{len(changed)} files changed; these are the first {MOST}. All: --all")
    return {path: units[path] for path in changed[:MOST]}


def complaints(unit):
    arguments = shlex.split(unit["command"])
    arguments = arguments[next(i for i, word in enumerate(arguments) if "++" in word):]
    output = arguments.index("-o")
    del arguments[output:output + 2]
    # -w: only missing includes matter here; the normal build checks warnings.
    ran = subprocess.run(arguments + ["-fsyntax-only", "-w"], cwd=unit["directory"],
                         capture_output=True, text=True)
    return ran.stderr if ran.returncode else ""


def main():
    root = os.path.abspath(sys.argv[1])
    configured = subprocess.run(["cmake", "--preset", "includes"], cwd=root, capture_output=True,
                                text=True)
    if configured.returncode:
        sys.exit(configured.stdout + configured.stderr)
    units = wanted_units(root, "--all" in sys.argv[2:])
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        found = dict(zip(units, pool.map(complaints, units.values())))
    for path, text in found.items():
        if text:
            print(f"{path} does not compile by itself:\n{text}")
    failed = sum(bool(text) for text in found.values())
    print(f"{len(found)} files compiled by themselves, {failed} failed")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
