"""The sheet by which written answers are marked: a row for each criterion of each answer, marked or not."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from builder.grade.attempts import Rings
from builder.grade.mark import levels_of
from builder.model.answers import AnswerSheet
from builder.model.code import tidy
from builder.model.key import Key
from builder.model.marking import Marked
from builder.model.records import ClassFolder, KeptSheet
from builder.model.station import Criterion

COLUMNS = ("code", "test", "question", "asked", "answer", "criterion", "levels", "level", "by")
ANSWER, LEVEL = COLUMNS.index("answer"), COLUMNS.index("level")
Row = tuple[str, ...]


def rows_to_mark(folder: ClassFolder, sheets: Iterable[KeptSheet], rings: Rings) -> list[Row]:
    """Every criterion of every written answer that counts; nothing where each of them is marked."""
    rows, open_ones = [], 0
    for kept in sorted(sheets, key=lambda one: (one.sheet.test, tidy(one.sheet.code))):
        ring = rings.get((kept.sheet.test, kept.sheet.edition))
        key = ring.version(kept.sheet.version) if ring else None
        if key is not None:
            mine = [one for one in folder.markings if tidy(one.code) == tidy(kept.sheet.code)]
            made = list(_of_sheet(kept.sheet, key, [one for one in mine if one.test == kept.sheet.test]))
            open_ones += sum(not row[LEVEL] for row in made)
            rows += made
    return rows if open_ones else []


def _of_sheet(sheet: AnswerSheet, key: Key, markings: list[Marked]) -> Iterator[Row]:
    values = {one.q: one.value for one in sheet.answers}
    for answer in key.answers:
        value = values.get(answer.question)
        if answer.rubric is not None and isinstance(value, str):
            levels = levels_of(answer, value, markings)
            by = {one.criterion: one.by for one in markings if one.question == answer.written}
            for criterion in answer.rubric.criteria:
                place = (tidy(sheet.code), sheet.test, answer.written, answer.rubric.asked, value)
                yield (*place, *_of_criterion(criterion, levels, by))


def _of_criterion(criterion: Criterion, levels: Mapping[str, int], by: Mapping[str, str]) -> Row:
    said = "; ".join(f"{level} = {words}" for level, words in enumerate(criterion.levels))
    marked = criterion.id in levels
    return (
        criterion.id,
        f"{criterion.title}: {said}",
        str(levels[criterion.id]) if marked else "",
        by.get(criterion.id, "") if marked else "",
    )
