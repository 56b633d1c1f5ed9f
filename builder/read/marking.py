"""The marks that a person gave to written answers: rows of `marking.csv`, with what is wrong in them."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping

from builder.diagnostic import Diagnostic
from builder.doors.sheet import Sheet
from builder.model.code import tidy
from builder.model.marking import Marked
from builder.model.question import AuthorQuestion
from builder.model.question_kinds import WrittenAnswer
from builder.place import Place
from builder.read.nearest import quoted, suggest
from builder.read.rows import Row, rows_of, wrong_columns

COLUMNS = ("code", "test", "question", "criterion", "level", "by", "answer")
HELPFUL = ("asked", "levels")


def read_marking(
    sheet: Sheet, questions: Mapping[str, AuthorQuestion], tests: Collection[str], codes: Collection[str]
) -> tuple[tuple[Marked, ...], list[Diagnostic]]:
    """The marks whose rows hold, and all that is wrong with the others; a row without a level waits."""
    found = [*sheet.found, *wrong_columns(sheet, COLUMNS, (*COLUMNS, *HELPFUL))]
    written = {name: one.text for name, one in questions.items() if one.text is not None}
    marks: list[Marked] = []
    first: dict[tuple[str, ...], Place] = {}
    for row in rows_of(sheet) if set(COLUMNS) <= set(sheet.columns) else ():
        faults = [*_wrong_names(row, written, tests, codes), *_wrong_level(row, written), *_twice(row, first)]
        found += faults
        if row["level"] and not faults:
            cells = {name: row[name] for name in COLUMNS}
            marks.append(
                Marked.model_validate({**cells, "code": tidy(row["code"]), "level": int(row["level"])})
            )
    return tuple(marks), found


def _wrong_names(
    row: Row, written: Mapping[str, WrittenAnswer], tests: Collection[str], codes: Collection[str]
) -> Iterator[Diagnostic]:
    if tidy(row["code"]) not in codes:
        words = f"Nobody in the roster has the code {quoted(row['code'])}.", "Compare it with roster.csv."
        yield row.fault("code_unknown", "code", words)
    if row["test"] not in tests:
        words = f"There is no test {quoted(row['test'])}.", suggest(row["test"], tests)
        yield row.fault("test_unknown", "test", words)
    if row["question"] not in written:
        words = (
            f"No written answer is asked for by {quoted(row['question'])}.",
            suggest(row["question"], written),
        )
        yield row.fault("question_unknown", "question", words)


def _wrong_level(row: Row, written: Mapping[str, WrittenAnswer]) -> Iterator[Diagnostic]:
    if (block := written.get(row["question"])) is None:
        return
    levels = {one.id: len(one.levels) for one in block.criteria}
    if row["criterion"] not in levels:
        words = (
            f"The question has no criterion {quoted(row['criterion'])}.",
            suggest(row["criterion"], levels),
        )
        yield row.fault("criterion_unknown", "criterion", words)
    elif row["level"] and row["level"] not in {str(level) for level in range(levels[row["criterion"]])}:
        words = (
            f"`{row['criterion']}` has no level {quoted(row['level'])}.",
            f"Its levels are 0 to {levels[row['criterion']] - 1}; not marked yet, the cell stays empty.",
        )
        yield row.fault("level_unknown", "level", words)
    elif row["level"] and not row["by"]:
        words = "It is not said who marked this.", "Write the name of whoever marked it under `by`."
        yield row.fault("marker_missing", "by", words)


def _twice(row: Row, first: dict[tuple[str, ...], Place]) -> Iterator[Diagnostic]:
    name = (tidy(row["code"]), row["test"], row["question"], row["criterion"])
    before = first.setdefault(name, row.at("criterion"))
    if before != row.at("criterion"):
        words = "This criterion of this answer is marked twice.", "Keep one of the two rows."
        yield row.fault("marked_twice", "criterion", words, first=before)
