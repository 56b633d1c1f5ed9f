"""Space and type are measured by the tokens alone, as colours are."""

import re
from itertools import pairwise

import pytest

from builder.render.assets import LOOK

TOKENS = LOOK / "css" / "tokens.css"
ALONE = LOOK / "pages" / "review_sheet.css"  # a file by itself, measured in points
SHEETS = sorted(path for path in LOOK.rglob("*.css") if path not in (TOKENS, ALONE))
MEASURED = re.compile(
    r"(?<![\w-])(?:margin|padding|gap|row-gap|column-gap|font-size|border-radius)(?:-[\w-]+)?\s*:\s*([^;{}]+)"
)
RAW = re.compile(r"(?<![\w.-])-?[\d.]+(?:px|rem)\b")
DECLARED = re.compile(r"--([a-z]\d): ([\d.]+)rem;")


def raw(text: str) -> list[str]:
    """The measures that a style sheet takes from nowhere; points are for paper, em follows the type."""
    return [value.strip() for value in MEASURED.findall(text) if RAW.search(value)]


@pytest.mark.parametrize("path", SHEETS, ids=lambda path: path.relative_to(LOOK).as_posix())
def test_space_and_type_come_from_the_tokens(path: object) -> None:
    """Margins, paddings, gaps, letters and corners."""
    assert raw(LOOK.joinpath(str(path)).read_text(encoding="utf-8")) == []


def test_a_raw_measure_would_be_found() -> None:
    """In any part of a value, negative too."""
    text = "a { margin: 0 var(--s1) 3px; } b { font-size: .9rem } c { padding: 1em; margin-top: -.2rem; }"
    assert raw(text) == ["0 var(--s1) 3px", ".9rem", "-.2rem"]


def test_the_steps_grow() -> None:
    """Each step of space, type and corner is larger than the one before."""
    steps = {name: float(size) for name, size in DECLARED.findall(TOKENS.read_text(encoding="utf-8"))}
    for family in "str":
        sizes = [size for name, size in sorted(steps.items()) if name[0] == family]
        assert len(sizes) >= 3
        assert all(small < large for small, large in pairwise(sizes))
