"""The wrap figure: pad against injured area, where the wrap starts and ends, and its crossing turns."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from math import sqrt

from builder.model.fact import Fact
from builder.render.draw.svg import picture, tag, text
from builder.render.wording import Say, chip

WIDTH, HEIGHT = 320, 226
MIDDLE, HALF = 160.0, 58.0
LEVELS = {"above": 44.0, "at": 108.0, "below": 172.0}
STEPS = {"light": 43.0, "medium": 32.0, "firm": 21.0}
HURT = (17.0, 13.0)

Written = Mapping[str, str | Decimal]


def wrap(name: str, written: Written, facts: Mapping[str, Fact], say: Say) -> str:
    """The figure of a wrap as written, or nothing where no start and end are written."""
    start, end = (LEVELS.get(str(written.get(key))) for key in ("wrap_from", "wrap_to"))
    if start is None or end is None:
        return ""
    words = ", ".join(wrap_words(written, facts, say))
    inside = _limb() + _hurt() + _turns(start, end, STEPS.get(str(written.get("tension")), STEPS["medium"]))
    inside += _pad(written.get("pad_ratio")) + _ends(start, end) + _trunk(say)
    return picture(inside, WIDTH, HEIGHT, f"{name}: {words}", class_="drawn")


def wrap_words(written: Written, facts: Mapping[str, Fact], say: Say) -> list[str]:
    """What the figure shows, one phrase for each thing, in the order in which it is done."""
    known = {key: chip(key, facts.get(key), value) for key, value in written.items()}
    order = ("pad_ratio", "wrap_from", "wrap_to", "tension", "recheck_minutes")
    return [say(f"figure_{key}", what=known[key]) for key in order if key in known]


def _limb() -> str:
    """Two outlines, a little wider towards the trunk."""
    left, right = MIDDLE - HALF, MIDDLE + HALF
    lines = f"M{left - 8} 8Q{left - 2} 108 {left + 10} 208M{right + 8} 8Q{right + 2} 108 {right - 10} 208"
    return tag("path", d=lines, class_="soft", stroke_width=3, stroke_linecap="round")


def _hurt() -> str:
    return tag("ellipse", cx=MIDDLE, cy=LEVELS["at"], rx=HURT[0], ry=HURT[1], class_="clay-full")


def _pad(ratio: object) -> str:
    """A dashed outline whose area is to the injury's as is written."""
    share = sqrt(float(ratio)) if isinstance(ratio, Decimal) else 0.0
    if not share:
        return ""
    return tag(
        "ellipse",
        cx=MIDDLE,
        cy=LEVELS["at"],
        rx=HURT[0] * share,
        ry=HURT[1] * share,
        class_="ink",
        stroke_width=2.6,
        stroke_dasharray="6 4",
    )


def _turns(start: float, end: float, step: float) -> str:
    """Crossing turns from one level to the other, closer together the firmer they are."""
    low, high = max(start, end), min(start, end)
    count = max(1, round((low - high) / step))
    rise = (low - high) / count or step
    foot = low if low > high else low + rise / 2
    left, right = MIDDLE - HALF - 2, MIDDLE + HALF + 2
    rungs = [(foot - rise * turn, foot - rise * (turn + 1)) for turn in range(count)]
    lines = "".join(
        f"M{left} {under:.1f}L{right} {over:.1f}M{right} {under:.1f}L{left} {over:.1f}"
        for under, over in rungs
    )
    return tag("path", d=lines, class_="go turns", stroke_width=7, stroke_linecap="round")


def _ends(start: float, end: float) -> str:
    """Where the wrap starts, marked 1 on the left, and where it ends, marked 2 on the right."""
    return _number("1", MIDDLE - HALF - 30, start) + _number("2", MIDDLE + HALF + 30, end)


def _number(words: str, x: float, y: float) -> str:
    ring = tag("circle", cx=x, cy=y, r=13, class_="go-full")
    return ring + text(words, x, y + 5, class_="on-go", text_anchor="middle")


def _trunk(say: Say) -> str:
    """Which end is the trunk's."""
    arrow = tag(
        "path",
        d="M296 206V180M288 189 296 180 304 189",
        class_="soft",
        stroke_width=2.4,
        stroke_linecap="round",
    )
    return arrow + text(say("figure_trunk"), 314, 222, class_="faint", text_anchor="end")
