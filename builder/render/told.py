"""What is said after a decision, told once: options with the same answer and reason share a row."""

from __future__ import annotations

from dataclasses import dataclass, replace

from builder.model.paper import PaperOption
from builder.model.practice import Feedback, Mark, PracticeQuestion


@dataclass(frozen=True)
class ToldRow:
    """One answer with its reason, and the options it is said of.

    `key`: they are what is right; `right`: and the word does not say so yet.
    """

    mark: Mark
    word: str
    reason: str
    rests_on: str
    contested: str
    right: bool
    key: bool
    options: tuple[PaperOption, ...]


def told_rows(asked: PracticeQuestion) -> list[ToldRow]:
    """The rows of a question, what is right first, steps in order; no ground is told twice running."""
    shown = {option.id: option for option in asked.question.options}
    alike: dict[tuple[object, ...], list[Feedback]] = {}
    for said in sorted(asked.feedback, key=lambda one: _place(asked, one.option)):
        sign = (said.mark, said.word, said.reason, said.rests_on, said.contested, said.option in asked.right)
        alike.setdefault(sign, []).append(said)
    rows = [_row(some, shown, right=some[0].option in asked.right) for some in alike.values()]
    return [_lighter(row, before) for row, before in zip(rows, [None, *rows], strict=False)]


def changes_of(asked: PracticeQuestion) -> list[str]:
    """What would change an answer, over all options, each once."""
    return list(dict.fromkeys(text for one in asked.feedback for text in one.would_change))


def _place(asked: PracticeQuestion, option: str) -> int:
    """What is right comes first, as shown; steps come in their right order."""
    if option not in asked.right:
        return len(asked.right)
    return asked.right.index(option) if asked.question.kind == "order" else 0


def _row(some: list[Feedback], shown: dict[str, PaperOption], *, right: bool) -> ToldRow:
    first = some[0]
    return ToldRow(
        mark=first.mark,
        word=first.word,
        reason=first.reason,
        rests_on=first.rests_on,
        contested=first.contested,
        right=right and first.mark not in ("right", "refer"),
        key=right,
        options=tuple(shown[one.option] for one in some),
    )


def _lighter(row: ToldRow, before: ToldRow | None) -> ToldRow:
    if before is None or (row.rests_on, row.contested) != (before.rests_on, before.contested):
        return row
    return replace(row, rests_on="", contested="")
