"""Laying questions out: opaque ids, and an order of options in which neither author nor key can be read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from builder.assess.opaque import Opaque, shortened
from builder.assess.question import Choice, Shown
from builder.model.paper import PaperOption, PaperQuestion


@dataclass(frozen=True)
class Laid:
    """A question as laid out; `ids` and `partners` name its parts in the order of `Shown`."""

    shown: Shown
    question: PaperQuestion
    ids: tuple[str, ...]
    partners: tuple[str, ...] = ()


def laid_out(shown: Sequence[Shown], opaque: Opaque) -> tuple[Laid, ...]:
    """The questions under opaque ids, in the order given; ids are unique among them."""
    names = {one.identity: opaque.token("question", one.identity) for one in shown}
    ids = shortened("q", names.values())
    marks = [_marks(one, "option", one.options, opaque) for one in shown]
    partners = [_marks(one, "partner", one.partners, opaque) for one in shown]
    known = shortened("o", (mark for each in marks for mark in each))
    known |= shortened("r", (mark for each in partners for mark in each))
    parts = zip(shown, marks, partners, strict=True)
    return tuple(_laid(one, ids[names[one.identity]], (own, beside), known) for one, own, beside in parts)


def _marks(shown: Shown, part: str, choices: Sequence[Choice], opaque: Opaque) -> tuple[str, ...]:
    return tuple(opaque.token(part, shown.identity, one.title, *one.chips) for one in choices)


def _laid(
    shown: Shown, name: str, marks: tuple[tuple[str, ...], tuple[str, ...]], ids: dict[str, str]
) -> Laid:
    own, beside = marks
    question = PaperQuestion(
        id=name,
        kind=shown.kind,
        stem=shown.stem,
        hint=shown.hint,
        scene=shown.scene,
        options=_ordered(shown.options, own, ids, in_order=shown.in_order),
        partners=_ordered(shown.partners, beside, ids),
        unit=shown.unit,
        words=shown.words,
    )
    return Laid(shown, question, tuple(ids[mark] for mark in own), tuple(ids[mark] for mark in beside))


def _ordered(
    choices: Sequence[Choice], marks: Sequence[str], ids: dict[str, str], *, in_order: bool = False
) -> tuple[PaperOption, ...]:
    """The parts in the order shown: their own, or that of their marks, which the secret decides."""
    places = range(len(choices))
    order = places if in_order else sorted(places, key=lambda place: marks[place])
    return tuple(
        PaperOption(id=ids[marks[place]], title=choices[place].title, chips=choices[place].chips)
        for place in order
    )
