#!/usr/bin/env python3
"""Checks the layers of the code by its includes.

Usage: layers.py ROOT
A room of the core may include the rooms that it USES in core/CMakeLists.txt, and no others; the rooms
of the window must not include each other in cycles; the core must not include the window. Exits
with 1 if an include breaks a rule, and prints each."""
import pathlib
import re
import sys

INCLUDE = re.compile(r'^#include "((?:core|ui)/[^"]+)"', re.MULTILINE)


def room_of(path):
    """core/store/records/batches.h is in core/store, core/problem.h in core/base."""
    parts = pathlib.PurePosixPath(path).parts
    return "/".join(parts[:2]) if len(parts) > 2 else parts[0] + "/base"


def includes(root):
    """Triples: the file, its room, the room of an included header."""
    for top in ("core", "ui"):
        for path in sorted((root / top).rglob("*")):
            if path.suffix not in (".h", ".cpp"):
                continue
            name = path.relative_to(root).as_posix()
            for included in INCLUDE.findall(path.read_text(encoding="utf-8")):
                if room_of(included) != room_of(name):
                    yield name, room_of(name), room_of(included)


def allowed(root):
    """The rooms of the core and the rooms that each USES."""
    text = (root / "core/CMakeLists.txt").read_text(encoding="utf-8")
    rooms = {}
    for name, body in re.findall(r"^core_room\((\w+)(.*?)^\)", text, re.MULTILINE | re.DOTALL):
        uses = re.search(r"USES ([a-z ]+)\n", body)
        rooms["core/" + name] = {"core/" + used for used in uses.group(1).split()} if uses else set()
    return rooms


def circle(edges):
    """Rooms that include each other in a cycle; empty if there is none."""
    left = dict(edges)
    while True:
        ends = [room for room, known in left.items() if not known & left.keys()]
        if not ends:
            return sorted(left)
        for room in ends:
            del left[room]
        if not left:
            return []


def main():
    root = pathlib.Path(sys.argv[1])
    rooms = allowed(root)
    wrong = []
    if circle(rooms):
        wrong.append("rooms of the core use each other in a circle: " + ", ".join(circle(rooms)))
    window = {}
    seen = 0
    for name, room, known in includes(root):
        seen += 1
        if room.startswith("core/") and known not in rooms.get(room, set()):
            wrong.append(f"{name}: {room} must not include {known}")
        if room.startswith("ui/"):
            window.setdefault(room, set())
            if known.startswith("ui/"):
                window[room].add(known)
                window.setdefault(known, set())
    if circle(window):
        wrong.append("rooms of the window know each other in a circle, among them: " +
                     ", ".join(circle(window)))
    print(*wrong, sep="\n")
    print(f"{len(rooms)} rooms of the core, {len(window)} of the window, {seen} includes between them, "
          f"{len(wrong)} wrong")
    sys.exit(1 if wrong or len(rooms) < 2 or not seen else 0)


if __name__ == "__main__":
    main()
