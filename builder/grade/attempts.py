"""Every attempt of a participant, graded by the key of the edition that was sat."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction

from builder.fault import Fault
from builder.grade.mark import marks_of
from builder.model.code import tidy
from builder.model.key import Key, KeyRing
from builder.model.marking import Marked
from builder.model.records import Attempt, KeptSheet
from builder.model.taught import Participant

Rings = Mapping[tuple[str, str], KeyRing]


def attempts_of(
    person: Participant, sheets: Iterable[KeptSheet], rings: Rings, markings: Sequence[Marked] = ()
) -> tuple[Attempt, ...]:
    """The attempts of one participant, of whom these sheets count; a code's place is the attempt's number."""
    codes = {tidy(code): number for number, code in enumerate(person.codes, start=1)}
    mine = [(kept.sheet.test, codes[tidy(kept.sheet.code)], kept) for kept in sheets]
    ordered = sorted(mine, key=lambda one: one[:2])
    return tuple(_attempt(number, kept, rings, markings) for _, number, kept in ordered)


def decisive(attempts: tuple[Attempt, ...], test: str) -> Attempt | None:
    """The attempt that decides a test, of the tries: the best that passes, else that waits, else the best."""
    open_ones = [one for one in attempts if one.test == test and one.counts]
    passed = [one for one in open_ones if one.passed]
    waiting = [one for one in open_ones if one.waits]
    return max(passed or waiting or open_ones, key=lambda one: (one.total, -one.number), default=None)


def _attempt(number: int, kept: KeptSheet, rings: Rings, markings: Sequence[Marked]) -> Attempt:
    sheet = kept.sheet
    ring, key = _key_of(kept, rings)
    marks = marks_of(sheet, key, markings)
    total = sum((one.mark for one in marks), Fraction(0)) / len(marks)
    whole = not any(one.waits for one in marks)
    return Attempt(
        test=sheet.test,
        number=number,
        code=tidy(sheet.code),
        version=sheet.version,
        sheet=kept.digest,
        edition=ring.edition,
        key_edition=ring.key_edition,
        marks=marks,
        total=total,
        pass_mark=ring.pass_mark,
        counts=number <= ring.tries,
        passed=whole and total >= ring.pass_mark and all(one.mark == 1 for one in marks if one.must_pass),
    )


def _key_of(kept: KeptSheet, rings: Rings) -> tuple[KeyRing, Key]:
    sheet = kept.sheet
    ring = rings.get((sheet.test, sheet.edition))
    key = ring.version(sheet.version) if ring else None
    if ring is None or key is None:
        raise Fault(
            f"The key of edition `{sheet.edition}` of the test `{sheet.test}` is missing.",
            "Grade with the output folder of the build that published it.",
        )
    return ring, key
