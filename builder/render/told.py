"""What is said after a decision, told once: options with the same answer and reason share a row."""

from __future__ import annotations

from dataclasses import dataclass

from builder.model.practice import Feedback, Mark, PracticeQuestion


@dataclass(frozen=True)
class ToldRow:
    """One answer with its reason, and the options (id, title) it is said of."""

    mark: Mark
    word: str
    reason: str
    rests_on: str
    contested: str
    right: bool
    options: tuple[tuple[str, str], ...]


def told_rows(asked: PracticeQuestion) -> list[ToldRow]:
    """The rows of a question, what is right first; grounds that only repeat the row before are left out."""
    titles = {option.id: option.title for option in asked.question.options}
    alike: dict[tuple[object, ...], list[Feedback]] = {}
    for said in sorted(asked.feedback, key=lambda one: one.option not in asked.right):
        sign = (said.mark, said.word, said.reason, said.rests_on, said.contested, said.option in asked.right)
        alike.setdefault(sign, []).append(said)
    rows = [_row(some, titles, right=some[0].option in asked.right) for some in alike.values()]
    return [_lighter(row, before) for row, before in zip(rows, [None, *rows], strict=False)]


def _row(some: list[Feedback], titles: dict[str, str], *, right: bool) -> ToldRow:
    first = some[0]
    return ToldRow(
        mark=first.mark,
        word=first.word,
        reason=first.reason,
        rests_on=first.rests_on,
        contested=first.contested,
        right=right and first.mark not in ("right", "refer"),
        options=tuple((one.option, titles[one.option]) for one in some),
    )


def _lighter(row: ToldRow, before: ToldRow | None) -> ToldRow:
    if before is None or (row.rests_on, row.contested) != (before.rests_on, before.contested):
        return row
    return ToldRow(row.mark, row.word, row.reason, "", "", row.right, row.options)
