"""What an answer sheet must satisfy before it is taken, and what to do where it does not."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from builder.collect.fitting import fits
from builder.model.answers import AnswerSheet
from builder.model.code import is_code, tidy, version_of
from builder.model.key import Key, KeyRing
from builder.model.records import ClassFolder

Rings = Mapping[tuple[str, str], KeyRing]


@dataclass(frozen=True)
class Refusal:
    """Why a file is not taken, and what would mend it."""

    fault: str
    remedy: str


@dataclass(frozen=True)
class Expected:
    """What a class expects: its id, the codes of its roster, and the keys by test and edition."""

    klass: str
    codes: Collection[str]
    rings: Rings


def expected(folder: ClassFolder, rings: Rings) -> Expected:
    """What a class expects of every answer sheet."""
    return Expected(folder.taught.id, folder.owners.keys(), rings)


def refusal(sheet: AnswerSheet, due: Expected) -> Refusal | None:
    """The first thing that speaks against an answer sheet, if anything does."""
    return about_people(sheet, due) or _about_papers(sheet, due.rings)


def about_people(sheet: AnswerSheet, due: Expected) -> Refusal | None:
    """What speaks against the code or the class of a sheet, whatever it answers."""
    code = tidy(sheet.code)
    if not is_code(code):
        return Refusal(
            f"`{sheet.code}` is no personal code.", "Ask the participant; one character is mistyped."
        )
    if sheet.klass != due.klass:
        return Refusal(f"This belongs to the class `{sheet.klass}`.", "Move it to the answers of that class.")
    if code not in due.codes:
        return Refusal(
            f"Code {code} is not in the roster.", "Add the code to the participant's row in roster.csv."
        )
    return None


def _about_papers(sheet: AnswerSheet, rings: Rings) -> Refusal | None:
    ring = rings.get((sheet.test, sheet.edition))
    if ring is None:
        return Refusal(
            f"Edition `{sheet.edition}` of the test `{sheet.test}` is not known.",
            "Collect once with the output folder of the build that published it.",
        )
    key = ring.version(sheet.version)
    if key is None:
        return Refusal(
            f"There is no version `{sheet.version}`.", "Ask the participant for the sheet as it was made."
        )
    due = version_of(sheet.code, len(ring.keys))
    if due != key.version:
        return Refusal(
            f"Code {tidy(sheet.code)} belongs to version {due}, this is version {key.version}.",
            "Ask the participant to sit the version of their code.",
        )
    return next(_about_answers(sheet, key), None)


def _about_answers(sheet: AnswerSheet, key: Key) -> Iterator[Refusal]:
    answers = {answer.question: answer for answer in key.answers}
    kinds = {name: answer.kind for name, answer in answers.items()}
    seen: set[str] = set()
    for given in sheet.answers:
        if kinds.get(given.q) != given.kind:
            yield Refusal(
                f"Version {key.version} has no question `{given.q}` of the kind `{given.kind}`.",
                "Ask the participant for the sheet as it was made.",
            )
        elif not fits(answers[given.q], given.value):
            yield Refusal(
                f"What is given for `{given.q}` is no answer to this question of the kind `{given.kind}`.",
                "Ask the participant for the sheet as it was made.",
            )
        if given.q in seen:
            yield Refusal(f"Question `{given.q}` is answered twice.", "Ask for the sheet as it was made.")
        seen.add(given.q)
