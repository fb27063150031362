"""Uses the window as a screen reader does: only by names, roles and actions."""

import subprocess
import sys
import time
from collections.abc import Callable, Iterator

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402  (the version has to be asked for first)

PATIENCE_S = 60.0
#: Roles that a person interacts with, which must have a name.
ACTED_ON = {
    Atspi.Role.PUSH_BUTTON,
    Atspi.Role.TOGGLE_BUTTON,
    Atspi.Role.RADIO_BUTTON,
    Atspi.Role.CHECK_BOX,
    Atspi.Role.COMBO_BOX,
    Atspi.Role.SLIDER,
    Atspi.Role.SPIN_BUTTON,
    Atspi.Role.ENTRY,
    Atspi.Role.TEXT,
    Atspi.Role.TABLE,
    Atspi.Role.LIST,
}


def below(node: Atspi.Accessible) -> Iterator[Atspi.Accessible]:
    """`node` and everything in it, itself first; without items that disappear meanwhile."""
    yield node
    try:
        count = node.get_child_count()
    except gi.repository.GLib.Error:
        return
    for index in range(count):
        try:
            child = node.get_child_at_index(index)
        except gi.repository.GLib.Error:
            continue
        if child is not None:
            yield from below(child)


def waited_for(what: str, look: Callable[[], object]) -> object:
    """Calls `look` until its result is true, and returns that; ends the test after PATIENCE_S."""
    until = time.monotonic() + PATIENCE_S
    while time.monotonic() < until:
        try:
            found = look()
        except gi.repository.GLib.Error:
            found = None
        if found:
            return found
        time.sleep(0.2)
    sys.exit(f"not found within {PATIENCE_S:.0f} s: {what}")


def program() -> Atspi.Accessible | None:
    desktop = Atspi.get_desktop(0)
    for index in range(desktop.get_child_count()):
        child = desktop.get_child_at_index(index)
        if child is not None and "holdband" in (child.get_name() or "").lower():
            return child
    return None


def named(root: Atspi.Accessible, begins: str) -> Atspi.Accessible | None:
    """The first visible item whose name begins with `begins`."""
    return next(
        (n for n in below(root) if (n.get_name() or "").startswith(begins) and is_shown(n)), None
    )


def is_shown(node: Atspi.Accessible) -> bool:
    states = node.get_state_set()
    return states.contains(Atspi.StateType.SHOWING) and states.contains(Atspi.StateType.VISIBLE)


def nameless(root: Atspi.Accessible) -> list[str]:
    return [
        f"{node.get_role_name()} in {node.get_parent().get_name()!r}"
        for node in below(root)
        if node.get_role() in ACTED_ON and is_shown(node) and not node.get_name()
    ]


def act(node: Atspi.Accessible) -> None:
    if not Atspi.Action.do_action(node, 0):
        sys.exit(f"nothing can be done with {node.get_name()!r}")


def shown_field(app: Atspi.Accessible, begins: str) -> Atspi.Accessible | None:
    return next(
        (
            node
            for node in below(app)
            if (node.get_name() or "").startswith(begins)
            and "EditableText" in node.get_interfaces()
            and is_shown(node)
        ),
        None,
    )


def main() -> None:
    holdband = subprocess.Popen(sys.argv[1:3])
    try:
        app = waited_for("the program", program)
        # The verdict sentence of the newest batch.
        waited_for("the verdict", lambda: named(app, "Stayed in the band"))
        # Every batch is an item of the lanes, with its verdict as text.
        ales = [f"Ale {number}" for number in range(1, 9)]
        for batch in [*ales, "Saison 1", "Lager 1", "Lager 2", "Lager 3"]:
            waited_for(batch, lambda batch=batch: named(app, batch + ","))
        trouble = nameless(app)
        for page, sign in (
            ("Rounds", "Save the round"),
            ("Side by side", "Swap A and B"),
            ("Equipment", "Add a setup"),
            ("Imports", "Choose files"),
        ):
            act(waited_for(page, lambda page=page: named(app, page)))
            waited_for(sign, lambda sign=sign: named(app, sign))
            trouble += [f"{page}: {each}" for each in nameless(app)]
        act(waited_for("Rounds", lambda: named(app, "Rounds")))
        field = waited_for("the field", lambda: shown_field(app, "Loop meter"))
        Atspi.EditableText.set_text_contents(field, "8.9")
        waited_for(
            "what was typed",
            lambda: Atspi.Text.get_text(field, 0, -1) == "8.9",
        )
        if trouble:
            sys.exit("without a name: " + "; ".join(trouble))
    finally:
        holdband.terminate()
        holdband.wait(PATIENCE_S)


if __name__ == "__main__":
    main()
