#!/usr/bin/env python3
"""Types into an interactive bash and checks the completion with the Tab key.

Usage: completion.py COMPLETION FOLDER, where FOLDER contains a program "holdband" and the logbook
"l.holdband" with the batches "Pale 1" and "Pale 2" on the setup "Cold box".
"""
import os
import pty
import re
import select
import sys
import time

# The typed text, and a pattern of the resulting line.
CASES = [
    ("holdband verdict l.holdband Pa\t", r"holdband verdict l.holdband Pale\ "),
    ("holdband verdict l.holdband Pale\\ 2\t", r"holdband verdict l.holdband Pale\ 2 "),
    ('holdband verdict l.holdband "Pale 2\t', 'holdband verdict l.holdband "Pale 2" '),
    ("holdband verdict l.holdband Co\t", "holdband verdict l.holdband Co"),
    ("holdband report l.holdband Co\t", r"holdband report l.holdband Cold\ box "),
    ("holdband report l.holdband --pap\t", "holdband report l.holdband --paper "),
    ("holdband import l.holdband x.csv --dec\t", "holdband import l.holdband x.csv --decimal "),
    ("holdband sch\t", "holdband schema "),
    ("holdband schema des\t", "holdband schema description "),
    ("holdband verdict l.ho\t", "holdband verdict l.holdband "),
]


LONGEST_WAIT = 20.0  # seconds, for a case that fails


def read_until(terminal, wanted):
    """The text of the terminal, once `wanted` accepts it or the wait is over."""
    text = ""
    until = time.monotonic() + LONGEST_WAIT
    while not wanted(text) and time.monotonic() < until:
        ready, _, _ = select.select([terminal], [], [], 0.5)
        if ready:
            text += os.read(terminal, 65536).decode("utf-8", "replace")
            text = re.sub(r"\x1b\[[0-9;?]*[a-zA-Z]|[\r\x07]", "", text)
    return text


def line_after(completion, folder, typed, wanted):
    child, terminal = pty.fork()
    if child == 0:
        os.chdir(folder)
        environment = {"PATH": f"{folder}:/usr/bin:/bin", "TERM": "dumb",
                       "HOME": folder, "LC_ALL": "C.UTF-8"}
        os.execve("/bin/bash", ["bash", "--norc", "--noprofile", "-i"], environment)
    os.write(terminal, f"bind 'set enable-bracketed-paste off'; bind 'set bell-style none'; "
                       f". '{completion}'; PS1='rea''dy> '\n".encode())
    read_until(terminal, lambda text: text.endswith("ready> "))
    os.write(terminal, typed.encode())
    line = read_until(terminal, lambda text: text == wanted)
    os.write(terminal, b"\x03exit\n")
    os.close(terminal)
    os.waitpid(child, 0)
    return line


wrong = [(typed, line, wanted)
         for typed, wanted in CASES
         if (line := line_after(sys.argv[1], sys.argv[2], typed, wanted)) != wanted]
for typed, line, wanted in wrong:
    print(f"{typed!r} became {line!r}, not {wanted!r}")
sys.exit(1 if wrong else 0)
