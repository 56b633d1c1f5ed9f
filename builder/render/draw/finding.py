"""Small drawings on a board, where one says more than the value: trend, angle, level."""

from __future__ import annotations

from decimal import Decimal, InvalidOperation
from math import cos, radians, sin

from builder.model.fact import Fact
from builder.model.paper import BoardCell
from builder.render.draw.svg import ornament, tag

WIDTH, HEIGHT = 64, 48
RATED = "of "
ARROWS = {
    "rising": "M6 40C26 38 32 22 56 9M42 9H56V23",
    "steady": "M6 24H56M46 14 56 24 46 34",
    "falling": "M6 8C26 10 32 26 56 39M42 39H56V25",
}


def drawing(cell: BoardCell, fact: Fact | None) -> str:
    """The drawing of one finding, or nothing; the value beside it says the same in words."""
    if fact is None:
        return ""
    if fact.kind == "number":
        return _measured(_number(cell.number), fact)
    step = next((one for one in fact.values if fact.in_words(one) == cell.value), "")
    return _arrow(step) if fact.kind == "scale" and step in ARROWS else ""


def _number(written: str | None) -> Decimal | None:
    try:
        return Decimal(written) if written else None
    except InvalidOperation:
        return None


def _measured(number: Decimal | None, fact: Fact) -> str:
    if number is None:
        return ""
    if fact.unit == "°":
        return _angle(float(number))
    if fact.unit.startswith(RATED) and fact.low is not None and fact.high is not None:
        return _level(float((number - fact.low) / (fact.high - fact.low)))
    return ""


def _angle(degrees: float) -> str:
    """How far a joint bends: 0 is straight."""
    turn = radians(min(max(degrees, 0.0), 175.0))
    tip = f"{24 + 30 * cos(turn):.1f} {40 - 30 * sin(turn):.1f}"
    arc = f"M38 40A14 14 0 0 0 {24 + 14 * cos(turn):.1f} {40 - 14 * sin(turn):.1f}"
    base = tag("path", d="M24 40H58", class_="soft", stroke_width=3, stroke_linecap="round")
    limb = tag("path", d=f"M24 40L{tip}", class_="go", stroke_width=4.5, stroke_linecap="round")
    return ornament(base + tag("path", d=arc, class_="soft", stroke_width=1.6) + limb, WIDTH, HEIGHT)


def _level(share: float) -> str:
    full = max(0.0, min(1.0, share)) * 60
    bar = tag("rect", x=2, y=20, width=60, height=8, rx=4, class_="sand-full")
    done = tag("rect", x=2, y=20, width=max(full, 8.0), height=8, rx=4, class_="go-full") if full else ""
    return ornament(bar + done, WIDTH, HEIGHT)


def _arrow(step: str) -> str:
    line = tag(
        "path", d=ARROWS[step], class_="go", stroke_width=3.6, stroke_linecap="round", stroke_linejoin="round"
    )
    return ornament(line, WIDTH, HEIGHT)
