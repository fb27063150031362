#!/usr/bin/env python3
"""Types into an interactive bash and zsh and checks the completion with the Tab key; asks fish.

Usage: completion.py COMPLETIONS FOLDER, where FOLDER contains a program "holdband" and the logbook
"l.holdband" with the batches "Pale 1" and "Pale 2" on the setup "Cold box".
"""
import os
import pty
import re
import select
import subprocess
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


# What zsh makes of a line; it quotes like bash.
ZSH_CASES = [
    ("holdband verdict l.holdband Pale\\ 2\t", r"holdband verdict l.holdband Pale\ 2 "),
    ("holdband report l.holdband Co\t", r"holdband report l.holdband Cold\ box "),
    ("holdband import l.holdband x.csv --dec\t", "holdband import l.holdband x.csv --decimal "),
    ("holdband schema des\t", "holdband schema description "),
    ("holdband verdict l.ho\t", "holdband verdict l.holdband "),
]

# The line, and what fish offers for its end.
FISH_CASES = [
    ("holdband verdict l.holdband Pa", ["Pale 1", "Pale 2"]),
    ("holdband report l.holdband Co", ["Cold box"]),
    ("holdband import l.holdband x.csv --dec", ["--decimal"]),
    ("holdband import l.holdband x.csv --date-order ", ["dmy", "mdy", "ymd"]),
    ("holdband schema des", ["description"]),
    ("holdband verdict l.ho", ["l.holdband"]),
]

LONGEST_WAIT = 20.0  # seconds, for a case that fails

SHELLS = {
    "bash": (["/bin/bash", "--norc", "--noprofile", "-i"],
             "bind 'set enable-bracketed-paste off'; bind 'set bell-style none'; "
             ". '{0}/holdband.bash'; PS1='rea''dy> '\n"),
    "zsh": (["/bin/zsh", "-f", "-i"],
            "fpath=('{0}' $fpath); autoload -Uz compinit; compinit -u -D; "
            "unset zle_bracketed_paste; setopt no_beep no_prompt_sp; PS1='rea''dy> '\n"),
}


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


def line_after(shell, completions, folder, typed, wanted):
    arguments, setup = SHELLS[shell]
    child, terminal = pty.fork()
    if child == 0:
        os.chdir(folder)
        environment = {"PATH": f"{folder}:/usr/bin:/bin", "TERM": "dumb",
                       "HOME": folder, "LC_ALL": "C.UTF-8"}
        os.execve(arguments[0], arguments, environment)
    os.write(terminal, setup.format(completions).encode())
    read_until(terminal, lambda text: text.endswith("ready> "))
    os.write(terminal, typed.encode())
    line = read_until(terminal, lambda text: text == wanted)
    os.write(terminal, b"\x03exit\n")
    os.close(terminal)
    os.waitpid(child, 0)
    return line


def offered_by_fish(completions, folder, line):
    environment = {"PATH": f"{folder}:/usr/bin:/bin", "HOME": folder, "LC_ALL": "C.UTF-8"}
    script = f"source '{completions}/holdband.fish'; complete -C '{line}'"
    made = subprocess.run(["fish", "--no-config", "-c", script], cwd=folder, env=environment,
                          capture_output=True, text=True, check=True)
    return sorted(answer.split("\t")[0].strip("'\"").replace("\\ ", " ")
                  for answer in made.stdout.splitlines())


completions, folder = os.path.abspath(sys.argv[1]), sys.argv[2]
wrong = [(shell, typed, line, wanted)
         for shell, cases in (("bash", CASES), ("zsh", ZSH_CASES))
         for typed, wanted in cases
         if (line := line_after(shell, completions, folder, typed, wanted)) != wanted]
wrong += [("fish", line, found, wanted) for line, wanted in FISH_CASES
          if (found := offered_by_fish(completions, folder, line)) != wanted]
for shell, typed, line, wanted in wrong:
    print(f"{shell}: {typed!r} became {line!r}, not {wanted!r}")
sys.exit(1 if wrong else 0)
