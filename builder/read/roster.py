"""The roster of a class: who takes part, under which name, licence and personal codes."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from builder.diagnostic import Diagnostic
from builder.doors.shape import pour
from builder.doors.sheet import Sheet
from builder.model.code import is_code, tidy
from builder.model.taught import Participant
from builder.place import Place
from builder.read.misfit_words import words_for
from builder.read.nearest import quoted
from builder.read.rows import Row, rows_of, wrong_columns

NEEDED = ("name", "code_1")
TEXTS = ("name", "name_on_licence", "licence", "email")
_CODE = re.compile(r"code_[1-9]\d?")
_ANY_CODE = re.compile(r"code(_[1-9]\d?)?")
_EMAIL = re.compile(r"[^@\s]+@[^@\s]+\.[^@\s.]+")
_TRUTH = {"": False, "no": False, "yes": True}


def read_roster(sheet: Sheet) -> tuple[tuple[Participant, ...], list[Diagnostic]]:
    """The participants whose rows hold, and everything wrong with the others."""
    codes = tuple(name for name in sheet.columns if _CODE.fullmatch(name))
    found = [*sheet.found, *wrong_columns(sheet, NEEDED, (*TEXTS, "report", *codes, "code_1", "code_2"))]
    people: list[Participant] = []
    rows = list(rows_of(sheet))
    for row in rows:
        person, faults = _person(row, sorted(codes, key=lambda name: int(name[5:])))
        found += faults
        people += [person] if person and not faults else []
    found += [*_codes_twice(rows, codes), *_same_person(rows)]
    return tuple(people), found


def codes_in(sheet: Sheet) -> frozenset[str]:
    """Every personal code in a roster, that of a faulty row too."""
    return frozenset(code for row in codes_by_row(sheet) for code in row)


def codes_by_row(sheet: Sheet) -> tuple[frozenset[str], ...]:
    """For each row of a roster or an attendance, every personal code in it."""
    columns = [name for name in sheet.columns if _ANY_CODE.fullmatch(name)]
    return tuple(frozenset(tidy(row.get(name, "")) for name in columns) - {""} for row in sheet.rows)


def _person(row: Row, codes: list[str]) -> tuple[Participant | None, list[Diagnostic]]:
    faults = [*_wrong_codes(row, codes)]
    if row["report"].casefold() not in _TRUTH:
        message = f"`report` is yes or no, not {quoted(row['report'])}."
        faults.append(row.fault("cell_not_yes_no", "report", (message, "Write `yes` or `no`.")))
    data = {name: row[name] for name in TEXTS}
    given = [tidy(row[name]) for name in codes if row[name]]
    person, misfits = pour(
        Participant, {**data, "report": _TRUTH.get(row["report"].casefold(), False), "codes": given}
    )
    for misfit in misfits:
        column = str(misfit.path[0]).replace("codes", "code_1")
        words = words_for(misfit, column)
        faults += [row.fault(words.check, column, words[1:])] if column != "code_1" else []
    return person, faults


def _wrong_codes(row: Row, codes: list[str]) -> Iterator[Diagnostic]:
    if codes and not row[codes[0]]:
        words = (
            "This participant has no first personal code.",
            "Fill in `code_1`, and further codes after it.",
        )
        yield row.fault("code_missing", codes[0], words)
    for name in codes:
        if row[name] and not is_code(row[name]):
            message = f"{quoted(row[name])} is no personal code, or a character in it is wrong."
            yield row.fault("code_wrong", name, (message, "Copy it again from where it was given out."))


def _codes_twice(rows: list[Row], codes: tuple[str, ...]) -> Iterator[Diagnostic]:
    first: dict[str, Place] = {}
    for row in rows:
        for name in codes:
            code = tidy(row[name])
            if code in first:
                words = f"The code {quoted(code)} was already given.", "Give each code once, to one person."
                yield row.fault("code_twice", name, words, first=first[code])
            elif code:
                first[code] = row.at(name)


def _same_person(rows: list[Row]) -> Iterator[Diagnostic]:
    first: dict[tuple[str, str], Place] = {}
    for row in rows:
        for name in ("name", "licence"):
            key = (name, "".join(unicodedata.normalize("NFKC", row[name]).casefold().split()))
            if key in first:
                words = f"This {name} stands in another row too.", "If it is one person, keep one row."
                yield row.fault("person_twice", name, words, level="warning", first=first[key])
            elif key[1]:
                first[key] = row.at(name)
        if row["email"] and not _EMAIL.fullmatch(row["email"]):
            words = (
                f"{quoted(row['email'])} does not look like an address.",
                "Compare it with what was given.",
            )
            yield row.fault("email_odd", "email", words, level="warning")
