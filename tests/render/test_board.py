"""The board of a visit: findings in cells, what was looked for in vain in a line."""

from builder.model.fact import Fact
from builder.model.paper import BoardCell, Scene
from builder.render.board import absent, found

WRITTEN: dict[str, dict[str, object]] = {
    "flare": {"kind": "one_of", "label": "Flare", "values": ["none", "known"], "words": {"none": "no flare"}},
    "heat": {"kind": "scale", "label": "Heat", "values": ["none", "clear"]},
    "fever": {"kind": "yes_no", "label": "Fever"},
    "pain": {"kind": "number", "label": "Pain", "unit": "of 10"},
}
FACTS = {
    name: Fact.model_validate({"group": "sign", "worse_when": "neither", **one})
    for name, one in WRITTEN.items()
}


def cell(fact: str, value: str) -> BoardCell:
    """One finding as a scene tells it."""
    return BoardCell(label=fact, value=value, fact=fact)


def scene(*cells: BoardCell) -> Scene:
    """A scene with nothing but these findings."""
    return Scene(title="", client="", story="", board=cells, screen="")


def test_what_is_there_keeps_its_cell() -> None:
    """In the order of the scene; a number is always found, a fact that is not declared as well."""
    shown = scene(cell("flare", "known"), cell("heat", "none"), cell("pain", "0 of 10"), cell("odd", "none"))
    assert [one.fact for one in found(FACTS)(shown)] == ["flare", "pain", "odd"]


def test_what_is_not_there_stands_in_a_line() -> None:
    """By its own words where they name it, else after its name."""
    shown = scene(cell("flare", "no flare"), cell("heat", "none"), cell("fever", "no"))
    assert found(FACTS)(shown) == []
    assert absent(FACTS)(shown) == ["no flare", "heat: none", "fever: no"]


def test_every_finding_is_shown_once() -> None:
    """Nothing is left out and nothing said twice."""
    shown = scene(*(cell(name, value) for name in FACTS for value in ("none", "no", "no flare", "clear")))
    assert len(found(FACTS)(shown)) + len(absent(FACTS)(shown)) == len(shown.board)
