"""No name can be printed that the list of kinds does not have."""

import ast
import re
from collections.abc import Iterator

from builder.flow.kinds import KINDS
from builder.read.refer.names import REFERENCES
from tests.house.source import modules

SAYS = {"Diagnostic", "Words", "Told", "fault", "_advice", "_refused", "_say", "_stop", "Syntax"}

# Found in the finished folder, where no author's file could show it: the build stops there.
OF_NO_FILE = {"key_published"}


def said() -> Iterator[str]:
    """The first word of every call that makes a fault: a name, or a pattern where a part is put in."""
    for module in modules():
        if module.part in ("flow", "host"):  # what a preview or a hall says of itself is about no file
            continue
        for node in ast.walk(module.tree):
            if isinstance(node, ast.Call) and _called(node.func) in SAYS and node.args:
                yield from _names(node.args[0])


def _called(node: ast.expr) -> str:
    return node.attr if isinstance(node, ast.Attribute) else getattr(node, "id", "")


def _names(node: ast.expr) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        if re.fullmatch(r"[a-z_0-9]+", node.value):
            yield node.value
    elif isinstance(node, ast.JoinedStr):
        parts = (str(one.value) if isinstance(one, ast.Constant) else "[a-z_]+" for one in node.values)
        yield "".join(parts)


def test_every_name_that_is_said_has_its_kind() -> None:
    """Read off the source: each name, and each pattern with at least one kind that fits it."""
    known = "\n".join(KINDS)
    every = set(said()) - OF_NO_FILE
    assert len(every) > 60
    assert [one for one in sorted(every) if not re.search(rf"^{one}$", known, re.MULTILINE)] == []


def test_every_sort_of_name_has_its_kind() -> None:
    """Whatever can be named in one file and be missing in another."""
    assert {f"{one.what.replace(' ', '_')}_unknown" for one in REFERENCES} <= KINDS.keys()
