"""Questions that an author wrote, in the two parts that every question has."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from builder.assess.question import Choice, Ground, Judged, Question, Said, Shown
from builder.assess.wording import citations, say
from builder.model.fact import plain
from builder.model.keyed import NumberRange, Rubric
from builder.model.library import Content, Course
from builder.model.practice import Mark
from builder.model.question import AuthorQuestion
from builder.model.question_kinds import Choices, Matching, Number, Ordering, Panel, WrittenAnswer

# What is said of a part from whether it is right, or None where it is neither, and from its reason.
Told = Callable[[bool | None, str], Said]


@dataclass(frozen=True)
class _Parts:
    """What a kind brings to a question: a hint, what is shown, and what is right."""

    hint: str
    options: tuple[str, ...]
    judged: Judged
    in_order: bool = False
    partners: tuple[str, ...] = ()
    unit: str = ""
    words: int = 0


def written_question(course: Course, question: AuthorQuestion) -> Question:
    """Both parts of an author's question; what it shows stands in no order of the author's."""
    parts = _parts(course, question)
    shown = Shown(
        case="",
        visit="",
        topic="written",
        part=question.id,
        kind=question.kind,
        stem=question.stem,
        hint=parts.hint,
        scene=None,
        options=tuple(Choice(text) for text in parts.options),
        in_order=parts.in_order,
        partners=tuple(Choice(text) for text in parts.partners),
        unit=parts.unit,
        words=parts.words,
    )
    return Question(shown, parts.judged)


def _parts(course: Course, question: AuthorQuestion) -> _Parts:
    told, content = _teller(course, question), course.content
    if (choices := question.choices) is not None:
        return _choices(content, choices, told, one=question.one is not None)
    if question.order is not None:
        return _order(content, question.order, told)
    if question.match is not None:
        return _match(content, question.match, told)
    if question.number is not None:
        return _number(content, question.number, told)
    if question.panel is not None:
        return _panel(content, question.panel, told)
    if question.text is not None:
        return _text(content, question.text, question.stem)
    raise ValueError(question.id)


def _teller(course: Course, question: AuthorQuestion) -> Told:
    """What is said of a part; it rests on its author's sources and on no rule, so no signature is missing."""
    ground = Ground(citations(course.content, question.source), reviewed=True)

    def told(right: bool | None, reason: str) -> Said:  # noqa: FBT001 - what is told is whether it is right
        mark: Mark = "wrong" if right is False else "right"
        word = "" if right is None else say(course.content, "word_correct" if right else "word_incorrect")
        return Said(mark, word, reason, ground)

    return told


def _choices(content: Content, block: Choices, told: Told, *, one: bool) -> _Parts:
    place = _by_text([one.text for one in block.options], keep=block.in_order)
    rows = [block.options[at] for at in place]
    judged = Judged(
        right=tuple(at for at, row in enumerate(rows) if row.right),
        said=tuple(told(row.right, row.because) for row in rows),
    )
    hint = say(content, "hint_one" if one else "hint_many")
    return _Parts(hint, tuple(row.text for row in rows), judged, block.in_order)


def _order(content: Content, block: Ordering, told: Told) -> _Parts:
    place = _by_text([one.text for one in block.steps])
    rows = [block.steps[at] for at in place]
    stands = {step.id: at for at, step in enumerate(rows)}
    judged = Judged(
        right=tuple(stands[step.id] for step in block.steps),
        said=tuple(told(None, one.because) for one in rows),
        must=tuple((stands[first], stands[step.id]) for step in block.steps for first in step.after),
    )
    return _Parts(say(content, "hint_order"), tuple(one.text for one in rows), judged)


def _match(content: Content, block: Matching, told: Told) -> _Parts:
    lefts = _by_text([one.left for one in block.pairs])
    rights = [*(one.right for one in block.pairs), *(one.right for one in block.spare)]
    spare = [*(None for _ in block.pairs), *(told(False, one.because) for one in block.spare)]
    partners = _by_text(rights)
    judged = Judged(
        right=(),
        said=tuple(told(None, block.pairs[at].because) for at in lefts),
        pairs=tuple((at, partners.index(pair)) for at, pair in enumerate(lefts)),
        spare=tuple(spare[at] for at in partners),
    )
    shown = tuple(block.pairs[at].left for at in lefts)
    return _Parts(say(content, "hint_match"), shown, judged, partners=tuple(rights[at] for at in partners))


def _number(content: Content, block: Number, told: Told) -> _Parts:
    least, most = block.bounds
    within = NumberRange(value=block.value, least=least, most=most, unit=block.unit)
    wrong = ((plain(one.value), told(False, one.because)) for one in block.wrong)
    numbers = ((plain(block.value), told(True, block.because)), *wrong)
    judged = Judged((), (), within=within, numbers=numbers)
    return _Parts(say(content, "hint_number", unit=block.unit), (), judged, unit=block.unit)


def _panel(content: Content, block: Panel, told: Told) -> _Parts:
    place = _by_text([one.text for one in block.options], keep=block.in_order)
    rows = [block.options[at] for at in place]
    most = max(one.votes for one in rows)
    judged = Judged(
        right=tuple(at for at, one in enumerate(rows) if one.votes == most),
        said=tuple(told(None, one.because) for one in rows),
        votes=tuple(one.votes for one in rows),
    )
    return _Parts(
        say(content, "hint_panel", judges=block.judges),
        tuple(one.text for one in rows),
        judged,
        block.in_order,
    )


def _text(content: Content, block: WrittenAnswer, asked: str) -> _Parts:
    rubric = Rubric(asked=asked.replace("**", ""), example=block.example, criteria=block.criteria)
    hint = say(content, "hint_text", n=str(block.words))
    return _Parts(hint, (), Judged((), (), rubric=rubric), words=block.words)


def _by_text(texts: Sequence[str], *, keep: bool = False) -> list[int]:
    """The places of the texts in the order in which they are shown, before a secret draws another."""
    places = list(range(len(texts)))
    return places if keep else sorted(places, key=lambda at: texts[at])
