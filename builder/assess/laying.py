"""Laying questions out: opaque ids, and an order of options in which neither author nor key can be read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from builder.assess.opaque import Opaque, shortened
from builder.assess.question import Shown
from builder.model.paper import PaperOption, PaperQuestion


@dataclass(frozen=True)
class Laid:
    """A question as laid out; `ids` names its options in the order of `Shown.options`."""

    shown: Shown
    question: PaperQuestion
    ids: tuple[str, ...]


def laid_out(shown: Sequence[Shown], opaque: Opaque) -> tuple[Laid, ...]:
    """The questions under opaque ids, in the order given; ids are unique among them."""
    names = {one.identity: opaque.token("question", one.identity) for one in shown}
    marks = {one.identity: _marks(one, opaque) for one in shown}
    question_ids = shortened("q", names.values())
    option_ids = shortened("o", (mark for each in marks.values() for mark in each))
    return tuple(
        _laid(one, question_ids[names[one.identity]], marks[one.identity], option_ids) for one in shown
    )


def _marks(shown: Shown, opaque: Opaque) -> tuple[str, ...]:
    return tuple(opaque.token("option", shown.identity, one.title, *one.chips) for one in shown.options)


def _laid(shown: Shown, name: str, marks: tuple[str, ...], ids: dict[str, str]) -> Laid:
    places = range(len(shown.options))
    order = places if shown.in_order else sorted(places, key=lambda place: marks[place])
    options = tuple(
        PaperOption(id=ids[marks[place]], title=shown.options[place].title, chips=shown.options[place].chips)
        for place in order
    )
    question = PaperQuestion(
        id=name, kind=shown.kind, stem=shown.stem, hint=shown.hint, scene=shown.scene, options=options
    )
    return Laid(shown, question, tuple(ids[mark] for mark in marks))
