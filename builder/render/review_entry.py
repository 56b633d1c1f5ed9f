"""One entry of the list for review, and how its parts are told: lines, conditions as trees, and grids."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from decimal import Decimal

from builder.model.card import Contested, Reviewed
from builder.model.condition import Among, Node
from builder.render.instructor_condition import Branch, branch
from builder.render.maker import Maker
from builder.render.source import contested_text


@dataclass(frozen=True)
class Said:
    """One thing it says, under a label; a condition of several parts has them as branches."""

    label: str
    text: str
    parts: tuple[Branch, ...] = ()

    @property
    def line(self) -> str:
        """All of it on one line."""
        return _line(Branch(self.text, self.parts))


@dataclass(frozen=True)
class Grid:
    """Rows that share their heads."""

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True)
class Told:
    """All that one entry says."""

    said: tuple[Said, ...]
    grids: tuple[Grid, ...] = ()


@dataclass(frozen=True)
class Listed:
    """One part of the content as it is read for review."""

    part: str
    id: str
    title: str
    fingerprint: str
    reviewed: Reviewed | None
    told: Told


def condition(made: Maker, label: str, node: Node) -> Said:
    """A condition under a label, as a tree."""
    book = made.course.content.facts
    tree = branch(node, {**book.written, **book.facts}, made.say)
    return Said(label, tree.text, tree.parts)


def given(made: Maker, facts: Mapping[str, str | Decimal]) -> str:
    """Facts with their values, by label, on one line; a dash for none."""
    told = (condition(made, "", Among(name, (value,))).text for name, value in facts.items())
    return "; ".join(told) or "–"


def rests(made: Maker, sources: Iterable[str], strength: str = "", *, short: bool = False) -> str:
    """The strength, unless the sources say it themselves, and the sources, whole or short."""
    known = made.course.content.references.sources
    told = {name: one.short if short else one.cite for name, one in known.items()}
    cited = "; ".join(told.get(one, one) for one in sources)
    word = made.say(f"strength_{strength}") if strength else ""
    return f"{word}: {cited}" if word and word not in cited.lower() else cited


def ground(
    made: Maker, why: str, sources: Iterable[str], strength: str, contested: Contested | None
) -> Iterable[Said]:
    """Why, on what it rests, and both sides where it is contested."""
    yield Said(made.say("review_why"), why)
    yield Said(made.say("review_rests"), rests(made, sources, strength))
    if contested is not None:
        yield Said(made.say("contested").rstrip(":"), contested_text(made, contested))


def _line(tree: Branch) -> str:
    parts = "; ".join(_line(one) for one in tree.parts)
    return f"{tree.text} ({parts})" if parts else tree.text
