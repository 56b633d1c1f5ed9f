"""The panel on every page of a preview: what is to fix, with file, line and remedy; in no built page."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from builder.diagnostic import Diagnostic, count_levels
from builder.doors.page import filler
from builder.flow.live import Shown
from builder.place import Places

LOOK = Path(__file__).parent / "look"
END = b"</body>"
MOST = 200
LONGEST = 160
MARKS = {"error": "✕", "warning": "!", "advice": "i"}
WORDS = {"error": ("error", "errors"), "warning": ("warning", "warnings"), "advice": ("advice", "advice")}
SIDE_WORDS = {"students": "Students’ side", "instructor": "Instructor’s side"}
_fill = filler(LOOK, {})


@dataclass(frozen=True)
class Row:
    """One thing to fix, in words."""

    level: str
    mark: str
    word: str
    where: str
    line: str
    message: str
    remedy: str


def bare_page(message: str) -> bytes:
    """A page that only says why there is nothing else to see."""
    return _fill("bare.html", {"message": message}).encode("utf-8")


def with_panel(page: bytes, shown: Shown, ways: Mapping[str, str]) -> bytes:
    """The page as built, and the panel before its end; `ways` leads to the other side."""
    before, end, after = page.rpartition(END)
    return before + panel(shown, ways).encode("utf-8") + end + after if end else page


def panel(shown: Shown, ways: Mapping[str, str]) -> str:
    """The panel: open by itself where an error or a warning is to fix."""
    left = [one for one in shown.to_fix if not one.accepted]
    counts = count_levels(left)
    worst = next((level for level, count in counts.items() if count), "none")
    ranked = sorted(left, key=lambda one: list(WORDS).index(one.level))
    values = {
        "worst": worst,
        "version": shown.version,
        "opened": worst in ("error", "warning"),
        "summary": _summary(counts),
        "behind": shown.behind,
        "rows": [_row(one, shown.places or {}) for one in ranked[:MOST]],
        "left": max(len(ranked) - MOST, 0),
        "ways": {SIDE_WORDS[side]: way for side, way in ways.items()},
    }
    return _fill("panel.html", values)


def _summary(counts: Mapping[str, int]) -> str:
    said = [f"{count} {WORDS[level][count != 1]}" for level, count in counts.items() if count]
    return ", ".join(said) or "Nothing to fix"


def _row(one: Diagnostic, places: Mapping[str, Places]) -> Row:
    place = one.place
    lines = places[place.file].lines if place.file in places else ()
    line = lines[place.line - 1].strip() if 0 < place.line <= len(lines) else ""
    where = place.file if place.file.endswith("/") else f"{place.file}, line {place.line}"
    word = WORDS[one.level][0]
    return Row(one.level, MARKS[one.level], word, where, line[:LONGEST], one.message, one.remedy)
