"""What is told of a question of any kind once it may be, line by line: right or not, and why."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Any

from builder.model.exact import percent
from builder.model.fact import plain
from builder.model.keyed import KeyedParts, NumberRange
from builder.model.paper import PaperOption, PaperQuestion
from builder.render.wording import Say

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


@dataclass(frozen=True)
class KeyLine:
    """One line: right, wrong or neither; its word, what it is of, and why.

    `where` is its place on the paper, or its weight; `given` what is written or ticked where it is right,
    shortly; `part` names what an answer sheet gives where this line was meant.
    """

    mark: str
    word: str
    title: str
    reason: str
    where: str = ""
    given: str = ""
    part: str = ""
    chips: tuple[str, ...] = ()


def key_lines(
    say: Say, asked: PaperQuestion, held: KeyedParts, reasons: Mapping[str, str]
) -> tuple[KeyLine, ...]:
    """The lines of a question; `reasons` are by the id of a part, or by a number as it reads."""
    told = _Told(say, asked, held, reasons)
    makers = {"order": _order, "match": _match, "number": _number, "panel": _panel, "text": _text}
    return tuple(makers.get(asked.kind, _choice)(told))


@dataclass(frozen=True)
class _Told:
    """A question with all that is told of it."""

    say: Say
    asked: PaperQuestion
    held: KeyedParts
    reasons: Mapping[str, str]

    def line(self, title: str, name: str, *, right: bool, **more: Any) -> KeyLine:  # noqa: ANN401 - fields of a line
        """A line that is right or wrong, with the reason under a name."""
        mark = "right" if right else "wrong"
        return KeyLine(mark, self.say(f"placed_{mark}"), title, self.reasons.get(name, ""), **more)

    def place(self, number: int) -> str:
        """Where an option stands."""
        return self.say("i_place", n=number, of=len(self.asked.options))


def _choice(told: _Told) -> Iterator[KeyLine]:
    for number, option in enumerate(told.asked.options, start=1):
        more = {"where": told.place(number), "given": str(number), "part": option.id, "chips": option.chips}
        yield told.line(option.title, option.id, right=option.id in told.held.right, **more)


def _order(told: _Told) -> Iterator[KeyLine]:
    steps = _by_id(told.asked.options)
    for number, name in enumerate(told.held.right, start=1):
        before = [steps[first].title for first, then in told.held.must if then == name]
        must = told.say("order_must_follow", steps="; ".join(before)) if before else ""
        reason = " ".join(part for part in (told.reasons.get(name, ""), must) if part)
        word = told.say("order_place", n=number)
        yield KeyLine("right", word, steps[name].title, reason, given=str(number), part=f"{name}@{number}")


def _match(told: _Told) -> Iterator[KeyLine]:
    partners, pairs = _by_id(told.asked.partners), dict(told.held.pairs)
    letters = {one.id: letter for one, letter in zip(told.asked.partners, LETTERS, strict=False)}
    for left in told.asked.options:
        partner = pairs[left.id]
        title = f"{left.title} – {partners[partner].title}"
        more = {"given": letters[partner], "part": f"{left.id}>{partner}"}
        yield told.line(title, left.id, right=True, **more)
    for partner in [one for one in partners if one not in pairs.values()]:
        yield told.line(partners[partner].title, partner, right=False, given=letters[partner])


def _number(told: _Told) -> Iterator[KeyLine]:
    if (within := told.held.within) is None:
        return
    for value in told.reasons:
        right = value == plain(within.value)
        title = _in_words(told.say, within) if right else f"{value} {within.unit}"
        yield told.line(title, value, right=right, given=f"{value} {within.unit}", part=value)


def _panel(told: _Told) -> Iterator[KeyLine]:
    votes = dict(told.held.votes)
    most, every = max(votes.values()), sum(votes.values())
    for number, option in enumerate(told.asked.options, start=1):
        count = votes[option.id]
        word = told.say("placed_votes", n=count, of=every)
        share = told.say("i_votes", share=percent(Fraction(count, most)))
        mark, reason = "right" if count == most else "", told.reasons.get(option.id, "")
        where = f"{told.place(number)}, {share}"
        yield KeyLine(mark, word, option.title, reason, where, given=str(number), part=option.id)


def _text(told: _Told) -> Iterator[KeyLine]:
    if (rubric := told.held.rubric) is None:
        return
    yield KeyLine("right", told.say("placed_example"), "", rubric.example, given=told.say("i_by_a_person"))
    for one in rubric.criteria:
        levels = "; ".join(f"{level} = {words}" for level, words in enumerate(one.levels))
        yield KeyLine("", "", one.title, levels, where=told.say("i_weighted", n=one.weight))


def _in_words(say: Say, within: NumberRange) -> str:
    low, high = (Decimal(one.numerator) / Decimal(one.denominator) for one in (within.least, within.most))
    value = f"{plain(within.value)} {within.unit}"
    return value if low == high else say("placed_between", value=value, low=plain(low), high=plain(high))


def _by_id(parts: tuple[PaperOption, ...]) -> Mapping[str, PaperOption]:
    return {one.id: one for one in parts}
