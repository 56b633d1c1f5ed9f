"""A practice question in a lesson: what is asked, and folded away the answer with its reasons."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from builder.disk import fingerprint
from builder.model.fact import plain
from builder.model.question import AuthorQuestion
from builder.model.question_kinds import (
    BestAnswer,
    Choices,
    Matching,
    Number,
    Ordering,
    Panel,
    WrittenAnswer,
)
from builder.render.emphasis import emphasised
from builder.render.maker import Maker
from builder.render.wording import Say

Block = Choices | Ordering | Matching | Number | Panel | WrittenAnswer


@dataclass(frozen=True)
class Line:
    """One line of the answer: a mark and its word where it has them, what it is about, and why."""

    text: str
    reason: str
    word: str = ""
    mark: str = ""


@dataclass(frozen=True)
class LaidQuestion:
    """What stands under the stem, list by list, and what is told once it is unfolded."""

    hint: str
    shown: tuple[tuple[str, ...], ...]
    told: tuple[Line, ...]


def question_part(made: Maker, question: AuthorQuestion) -> str:
    """The question as a part of a page; it can be read and unfolded without a script."""
    sources = made.course.content.references.sources
    cited = [sources[one].cite for one in question.source if one in sources]
    values = {"stem": emphasised(question.stem), "laid": _laid(made.say, question), "cited": cited}
    return made.fill("parts/question.html", values).strip()


def _laid(say: Say, question: AuthorQuestion) -> LaidQuestion:
    blocks: tuple[Block | None, ...] = (
        question.choices,
        question.order,
        question.match,
        question.number,
        question.panel,
        question.text,
    )
    match next(one for one in blocks if one is not None):
        case Choices() as block:
            return _choices(say, block, question.id)
        case Ordering() as block:
            return _ordering(say, block, question.id)
        case Matching() as block:
            return _matching(say, block, question.id)
        case Number() as block:
            return _number(say, block)
        case Panel() as block:
            return _panel(say, block)
        case WrittenAnswer() as block:
            return _written(say, block)


def _choices(say: Say, block: Choices, name: str) -> LaidQuestion:
    options = {one.text: one for one in block.options}
    texts = tuple(options) if block.in_order else _drawn(name, tuple(options))
    told = [
        Line(text, options[text].because, *(_right(say) if options[text].right else _wrong(say)))
        for text in texts
    ]
    hint = say("q_hint_one") if isinstance(block, BestAnswer) else say("placed_many")
    return LaidQuestion(hint, (texts,), tuple(told))


def _ordering(say: Say, block: Ordering, name: str) -> LaidQuestion:
    told = [Line(one.text, one.because, f"{number}.") for number, one in enumerate(block.steps, start=1)]
    shown = _drawn(name, tuple(one.text for one in block.steps))
    return LaidQuestion(say("placed_order"), (shown,), tuple(told))


def _matching(say: Say, block: Matching, name: str) -> LaidQuestion:
    lefts = tuple(one.left for one in block.pairs)
    rights = (*(one.right for one in block.pairs), *(one.right for one in block.spare))
    told = [Line(f"{one.left} – {one.right}", one.because, *_right(say)) for one in block.pairs]
    told += [Line(one.right, one.because, *_wrong(say)) for one in block.spare]
    return LaidQuestion(say("placed_match"), (lefts, _drawn(name, rights)), tuple(told))


def _number(say: Say, block: Number) -> LaidQuestion:
    low, high = (_decimal(bound) for bound in block.bounds)
    value = f"{plain(block.value)} {block.unit}"
    if low != high:
        value = say("placed_between", value=value, low=plain(low), high=plain(high))
    told = [Line(value, block.because, *_right(say))]
    told += [Line(f"{plain(one.value)} {block.unit}", one.because, *_wrong(say)) for one in block.wrong]
    return LaidQuestion(say("placed_number", unit=block.unit), (), tuple(told))


def _panel(say: Say, block: Panel) -> LaidQuestion:
    every = sum(one.votes for one in block.options)
    told = [Line(one.text, one.because, say("placed_votes", n=one.votes, of=every)) for one in block.options]
    shown = tuple(one.text for one in block.options)
    return LaidQuestion(say("placed_panel", judges=block.judges), (shown,), tuple(told))


def _written(say: Say, block: WrittenAnswer) -> LaidQuestion:
    told = [Line("", block.example, say("placed_example"))]
    told += [Line(one.title, one.levels[-1]) for one in block.criteria]
    return LaidQuestion(say("placed_text", n=block.words), (), tuple(told))


def _right(say: Say) -> tuple[str, str]:
    return say("placed_right"), "right"


def _wrong(say: Say) -> tuple[str, str]:
    return say("placed_wrong"), "wrong"


def _drawn(name: str, texts: tuple[str, ...]) -> tuple[str, ...]:
    """The texts in an order that follows from the question's name, and never in the one written."""
    drawn = tuple(sorted(texts, key=lambda text: fingerprint(f"{name} {text}")))
    return (*drawn[1:], drawn[0]) if drawn == texts else drawn


def _decimal(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / Decimal(value.denominator)
