"""The board of a visit: what is found in cells of its own, what was looked for in vain in one line."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from builder.model.fact import Fact
from builder.model.paper import BoardCell, Scene

NOTHING = ("no", "none")


def found(facts: Mapping[str, Fact]) -> Callable[[Scene], list[BoardCell]]:
    """Gives the findings of a scene that say of something that it is there."""

    def cells(scene: Scene) -> list[BoardCell]:
        return [cell for cell in scene.board if not _is_absent(facts.get(cell.fact), cell)]

    return cells


def absent(facts: Mapping[str, Fact]) -> Callable[[Scene], list[str]]:
    """Gives what was looked for in a scene and is not there, each in a few words."""

    def texts(scene: Scene) -> list[str]:
        named = ((facts.get(cell.fact), cell) for cell in scene.board)
        return [_in_words(fact, cell) for fact, cell in named if fact and _is_absent(fact, cell)]

    return texts


def _is_absent(fact: Fact | None, cell: BoardCell) -> bool:
    if fact is None or fact.kind == "number":
        return False
    nothing = (fact.in_words(one) for one in NOTHING if one in fact.words_of_values)
    return cell.value in nothing


def _in_words(fact: Fact, cell: BoardCell) -> str:
    """Words that name the thing stand alone; a bare no or none stands after its name."""
    named = cell.value not in NOTHING and fact.words.get("no", fact.words.get("none", "")) == cell.value
    return cell.value if named and " " in cell.value else f"{fact.in_sentence}: {cell.value}"
