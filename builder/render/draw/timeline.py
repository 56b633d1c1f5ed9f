"""The healing timeline of a visit: phases by the calendar, earlier visits, and today.

Time is not to scale from phase to phase: each phase has the same width, time runs evenly within it.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from builder.model.practice import Timeline
from builder.render.draw.pattern import definitions, filled
from builder.render.draw.svg import picture, tag, text
from builder.render.wording import Say, span

TOP, DEEP, SLANT = 62.0, 30.0, 14.0
LETTER = 8.2


@dataclass(frozen=True)
class _Ruler:
    """Turns hours into places along the drawing."""

    line: Timeline
    width: float

    def edge(self, index: int) -> float:
        """The place where a band begins."""
        return 1 + (self.width - 2) * index / len(self.line.bands)

    def place(self, hours: Decimal) -> float:
        """The place of a time, held inside the drawing."""
        for index, band in enumerate(self.line.bands):
            if hours <= band.end:
                share = (
                    float((hours - band.start) / (band.end - band.start)) if band.end > band.start else 0.0
                )
                return self.edge(index) + max(0.0, share) * (self.edge(index + 1) - self.edge(index))
        return self.edge(len(self.line.bands)) - 6


def timelines(line: Timeline, name: str, say: Say) -> str:
    """The timeline twice: drawn for a phone and for a desk; the page shows the one that fits."""
    return _drawn(line, f"{name}-n", 344, "narrow", say) + _drawn(line, f"{name}-b", 656, "broad", say)


def _drawn(line: Timeline, name: str, width: int, size: str, say: Say) -> str:
    ruler = _Ruler(line, width)
    height = TOP + DEEP + (42 if size == "narrow" else 24)
    inside = (
        definitions(name) + _bands(ruler, name) + _words(ruler, narrow=size == "narrow") + _pins(ruler, say)
    )
    return picture(inside + _held(ruler), width, height, line.words, class_=f"drawn timeline {size}")


def _bands(ruler: _Ruler, name: str) -> str:
    return "".join(
        filled(band.phase, _outline(ruler, index), name) for index, band in enumerate(ruler.line.bands)
    )


def _outline(ruler: _Ruler, index: int) -> str:
    start, end = ruler.edge(index), ruler.edge(index + 1)
    left = SLANT if index else 0.0
    right = SLANT if index + 1 < len(ruler.line.bands) else 0.0
    bottom = TOP + DEEP
    return (
        f"M{start - left / 2:.1f} {TOP:.1f}H{end - right / 2:.1f}L{end + right / 2:.1f} {bottom:.1f}"
        f"H{start + left / 2:.1f}z"
    )


def _words(ruler: _Ruler, *, narrow: bool) -> str:
    """The bands' words, without what stands in brackets; on a phone one word a line."""
    parts: list[str] = []
    for index, band in enumerate(ruler.line.bands):
        start = ruler.edge(index) + (SLANT / 2 + 1 if index else 0)
        words = band.word.partition(" (")[0]
        lines = words.split(" ") if narrow else [words]
        last = index + 1 == len(ruler.line.bands)
        at, anchor = (ruler.width - 1, "end") if narrow and last else (start, "start")
        parts += [
            text(one, at, TOP + DEEP + 19 + 18 * row, text_anchor=anchor) for row, one in enumerate(lines)
        ]
    return "".join(parts)


def _pins(ruler: _Ruler, say: Say) -> str:
    today = ruler.place(ruler.line.today)
    words = say("timeline_today", span=span(ruler.line.today, say))
    room = len(words) * LETTER + 14
    left = today + room > ruler.width
    label = text(
        words, today - 14 if left else today + 14, 27, class_="loud", text_anchor="end" if left else "start"
    )
    taken = (today - room, today + 9) if left else (today - 9, today + room)
    return _earlier(ruler, taken, say) + _pin(today, 22.0, 8.0, "go") + label


def _earlier(ruler: _Ruler, taken: tuple[float, float], say: Say) -> str:
    """Pins of earlier visits; a label is left out where it would run into another."""
    parts: list[str] = []
    free = 0.0
    for hours in ruler.line.earlier:
        at, words = ruler.place(hours), span(hours, say)
        half = len(words) * LETTER / 2
        start = max(0.0, at - half)
        parts.append(_pin(at, 36.0, 4.5, "ink"))
        if start >= free and (start + 2 * half < taken[0] or start > taken[1]):
            parts.append(text(words, start, 22, class_="faint"))
            free = start + 2 * half + 6
    return "".join(parts)


def _held(ruler: _Ruler) -> str:
    """An arrow from today back into the phase at which the signs hold it."""
    index = next((at for at, band in enumerate(ruler.line.bands) if band.phase == ruler.line.held), None)
    if index is None:
        return ""
    goal, height = (ruler.edge(index) + ruler.edge(index + 1)) / 2, TOP + DEEP / 2
    line = f"M{ruler.place(ruler.line.today):.1f} {height:.1f}H{goal:.1f}m9-8-9 8 9 8"
    halo = tag("path", d=line, class_="under", stroke_width=8, stroke_linecap="round")
    return halo + tag(
        "path", d=line, class_="go", stroke_width=3.6, stroke_linecap="round", stroke_linejoin="round"
    )


def _pin(at: float, top: float, radius: float, kind: str) -> str:
    stem = tag("path", d=f"M{at:.1f} {top:.1f}V{TOP + DEEP:.1f}", class_=kind, stroke_width=2.2)
    return stem + tag("circle", cx=at, cy=top, r=radius, class_=f"{kind}-full")
