"""What a site ships beside its pages: the look, its scripts, and the frame around every page."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from pathlib import Path

from builder.model.question import QUESTION_KINDS
from builder.render.tokens import Colours, stylesheet

LOOK = Path(__file__).parent / "look"
STYLES = (
    "tokens",
    "base",
    "bar",
    "board",
    "choice",
    "told",
    "figure",
    "card",
    "case",
    "film",
    "test",
    "after",
    "print",
)
KINDS = tuple(f"kinds/{kind}" for kind in QUESTION_KINDS)
ASKING = "assets/kinds.js"
KEEPING = tuple(f"js/{name}" for name in ("sheet", "merge", "store", "peers", "keeper"))
SITTING = tuple(f"js/{name}" for name in ("draft", "clock", "review", "finish", "hand", "sharing", "test"))
SCRIPTS: dict[str, tuple[str, ...]] = {
    ASKING: ("js/kinds", *(f"{kind}/script" for kind in KINDS)),
    "assets/film.js": ("js/film",),
    "assets/lesson.js": ("js/score", "js/lesson"),
    "assets/look.js": ("js/bar", "js/find"),
    "assets/practice.js": ("js/practised", "js/practice"),
    "assets/after.js": ("js/mine", "js/days"),
    "assets/room.js": ("js/room",),
    "assets/typing.js": ("js/given", "js/code", "js/sheet", "js/draft", "js/typing"),
    "assets/test.js": ("js/given", "js/code", *KEEPING, *SITTING),
}

ASKED_BY = frozenset({"assets/lesson.js", "assets/practice.js", "assets/test.js", "assets/typing.js"})


def with_kinds(scripts: Iterable[str]) -> tuple[str, ...]:
    """The scripts of a page; before one that reads answers the kinds of question, shared by such pages."""
    named = tuple(scripts)
    return (ASKING, *named) if ASKED_BY & set(named) else named


@cache
def frame() -> dict[str, str]:
    """The templates around every page, by the name the site generator knows them under."""
    root = LOOK / "frame"
    return {path.relative_to(root).as_posix(): _read(path) for path in sorted(root.rglob("*.html"))}


def assets(colours: Colours, scripts: Iterable[str]) -> dict[str, bytes]:
    """The style sheet, the scripts asked for and the small mark of the site, by address."""
    own = [LOOK / kind / "style.css" for kind in KINDS]
    sheets = [*(LOOK / "css" / f"{name}.css" for name in STYLES), *(one for one in own if one.exists())]
    styles = [stylesheet(colours), *(_read(path) for path in sheets)]
    made = {address: _joined(SCRIPTS[address]) for address in ("assets/look.js", *scripts)}
    made |= {"assets/look.css": "".join(styles), "assets/mark.svg": _read(LOOK / "mark.svg")}
    return {address: text.encode("utf-8") for address, text in made.items()}


def _joined(names: Iterable[str]) -> str:
    return "".join(_read(LOOK / f"{name}.js") for name in names)


@cache
def _read(path: Path) -> str:
    return path.read_text(encoding="utf-8")
