"""What a key says of one question, line by line: what is right, what is not, and why."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from builder.model.exact import percent
from builder.model.fact import plain
from builder.model.key import KeyAnswer
from builder.model.keyed import NumberRange
from builder.model.paper import PaperOption, PaperQuestion
from builder.render.wording import Say

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


@dataclass(frozen=True)
class KeyLine:
    """One line: right, wrong or neither; its word, where it stands on the paper, what it is of, and why.

    `given` is what a participant writes or ticks where it is right, shortly.
    """

    mark: str
    word: str
    title: str
    reason: str
    where: str = ""
    given: str = ""
    chips: tuple[str, ...] = ()


def key_lines(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> tuple[KeyLine, ...]:
    """The lines of a question of any kind."""
    makers = {"order": _order, "match": _match, "number": _number, "panel": _panel, "text": _text}
    return tuple(makers.get(asked.kind, _choice)(say, asked, answer))


def _choice(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    for place, option in enumerate(asked.options, start=1):
        mark = "right" if option.id in answer.right else "wrong"
        where = say("i_place", n=place, of=len(asked.options))
        yield _line(say, mark, option, answer.reasons[option.id], where=where, given=str(place))


def _order(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    steps = _by_id(asked.options)
    for place, name in enumerate(answer.right, start=1):
        before = [steps[first].title for first, then in answer.must if then == name]
        must = say("i_must_follow", steps="; ".join(before)) if before else ""
        reason = " ".join(part for part in (answer.reasons.get(name, ""), must) if part)
        yield KeyLine("right", say("i_in_place", n=place), steps[name].title, reason, given=str(place))


def _match(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    partners, pairs = _by_id(asked.partners), dict(answer.pairs)
    letters = {one.id: letter for one, letter in zip(asked.partners, LETTERS, strict=False)}
    for left in asked.options:
        partner = pairs[left.id]
        title = f"{left.title} – {partners[partner].title}"
        yield _titled(say, "right", title, answer.reasons.get(left.id, ""), letters[partner])
    for partner in [one for one in partners if one not in pairs.values()]:
        yield _titled(
            say, "wrong", partners[partner].title, answer.reasons.get(partner, ""), letters[partner]
        )


def _number(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    if (within := answer.within) is None:
        return
    right = plain(within.value)
    for value, reason in answer.reasons.items():
        if value == right:
            yield _titled(say, "right", _in_words(say, within), reason, f"{value} {asked.unit}")
        else:
            yield _titled(say, "wrong", f"{value} {asked.unit}", reason, value)


def _panel(say: Say, asked: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    votes = dict(answer.votes)
    most, every = max(votes.values()), sum(votes.values())
    for place, option in enumerate(asked.options, start=1):
        count = votes[option.id]
        word = say("i_votes", n=count, of=every, share=percent(Fraction(count, most)))
        where = say("i_place", n=place, of=len(asked.options))
        mark = "right" if count == most else ""
        yield KeyLine(mark, word, option.title, answer.reasons.get(option.id, ""), where, str(place))


def _text(say: Say, _: PaperQuestion, answer: KeyAnswer) -> Iterator[KeyLine]:
    if (rubric := answer.rubric) is None:
        return
    yield KeyLine("right", say("placed_example"), "", rubric.example, given=say("i_by_a_person"))
    for one in rubric.criteria:
        levels = "; ".join(f"{level} = {words}" for level, words in enumerate(one.levels))
        yield KeyLine("", say("i_weighted", n=one.weight), one.title, levels)


def _in_words(say: Say, within: NumberRange) -> str:
    low, high = (Decimal(one.numerator) / Decimal(one.denominator) for one in (within.least, within.most))
    value = f"{plain(within.value)} {within.unit}"
    return value if low == high else say("placed_between", value=value, low=plain(low), high=plain(high))


def _line(say: Say, mark: str, option: PaperOption, reason: str, **more: str) -> KeyLine:
    word = say("i_right" if mark == "right" else "i_not_right")
    return KeyLine(mark, word, option.title, reason, chips=option.chips, **more)


def _titled(say: Say, mark: str, title: str, reason: str, given: str) -> KeyLine:
    return KeyLine(mark, say("i_right" if mark == "right" else "i_not_right"), title, reason, given=given)


def _by_id(parts: tuple[PaperOption, ...]) -> Mapping[str, PaperOption]:
    return {one.id: one for one in parts}
