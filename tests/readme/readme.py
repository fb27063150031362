#!/usr/bin/env python3
"""Runs every command of README.md as written there, in a copy of the project's folder.

Usage: readme.py HOLDBAND SOURCES

Code blocks are marked `sh` (one command per line) or `console` (a command after "$ ", and its
output below). Every command must exit with status 0 and print the shown output.
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

HOLDBAND = os.path.abspath(sys.argv[1])
SOURCES = pathlib.Path(sys.argv[2]).resolve()
README = (SOURCES / "README.md").read_text(encoding="utf-8")

# These two build the program, so they are not run here: tests/run.sh runs this test, and
# app/start.sh takes minutes. The test checks that they exist.
NOT_RUN = ("./app/start.sh", "./tests/run.sh")


def code_blocks():
    return re.findall(r"^```(\w*)\n(.*?)^```$", README, re.M | re.S)


def without_comment(line):
    return re.sub(r"\s+# .*$", "", line)


def commands():
    """(command, its output or None), in order; a backslash at its end continues a line."""
    found = []
    for kind, text in code_blocks():
        for line in text.replace("\\\n", " ").splitlines():
            if kind == "console" and not line.startswith("$ "):
                found[-1][1].append(line)
            elif kind == "console":
                found.append((line[2:], []))
            elif line.strip():
                found.append((without_comment(line), None))
    return found


class Readme(unittest.TestCase):
    def test_marks_every_code_block(self):
        self.assertTrue(code_blocks())
        self.assertEqual({kind for kind, _ in code_blocks()} - {"sh", "console"}, set())
        self.assertEqual(re.findall(r"^(?: {4}|\t).*$", README, re.M), [],
                         "an indented code block is not run")

    def test_has_the_commands_that_are_not_run(self):
        listed = [command for command, _ in commands()]
        for command in NOT_RUN:
            self.assertIn(command, listed)
            self.assertTrue(os.access(SOURCES / command, os.X_OK), command)

    def test_links_lead_to_files(self):
        links = re.findall(r"\]\(([^)#]+)(?:#[^)]*)?\)", README)
        self.assertGreaterEqual(len(links), 5)
        for link in links:
            self.assertTrue((SOURCES / link).exists(), link)

    def test_commands_run_as_they_stand(self):
        with tempfile.TemporaryDirectory() as scratch:
            scratch = pathlib.Path(scratch)
            project = scratch / "holdband"
            shutil.copytree(SOURCES, project, symlinks=True,
                            ignore=shutil.ignore_patterns("build", "build-*", ".git", ".cache"))
            release = project / "build" / "release"
            release.mkdir(parents=True)
            (release / "holdband").symlink_to(HOLDBAND)
            environment = dict(os.environ, HOME=str(scratch), LANG="C.UTF-8", LC_ALL="C.UTF-8",
                               XDG_CONFIG_HOME=str(scratch / "config"),
                               XDG_DATA_HOME=str(scratch / "data"),
                               PATH=f"{release}:{os.environ['PATH']}")
            environment.pop("DISPLAY", None)
            environment.pop("WAYLAND_DISPLAY", None)
            run = [each for each in commands() if each[0] not in NOT_RUN]
            self.assertGreaterEqual(len(run), 8)
            for command, shown in run:
                done = subprocess.run(["bash", "-c", command], cwd=project, env=environment,
                                      stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                      encoding="utf-8")
                self.assertEqual(done.returncode, 0, f"{command}: {done.stderr}")
                if shown is not None:
                    self.assertEqual(done.stdout.splitlines(), shown, command)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
