"""What speaks against an answer sheet."""

from collections.abc import Mapping

import pytest

from builder.collect.verify import expected, refusal
from builder.model.handed import sheet_of
from tests.records.made import Value, answers, code_for, folder, person, ring, sheet_bytes

ANN = person(1)
SPRING = folder(ANN)
RINGS = {("final", "k7q2m9xa"): ring()}
MISTYPED = ANN.code[:-1] + ("X" if ANN.code[-1] != "X" else "Z")


def fault(given: Mapping[str, Value] | None = None, /, **changed: object) -> str:
    """What is said against a sheet of Ann's, changed."""
    found = refusal(sheet_of(sheet_bytes(ANN.code, given or answers(), **changed)), expected(SPRING, RINGS))
    return f"{found.fault} {found.remedy}" if found else ""


def test_a_right_sheet_is_let_pass() -> None:
    """Nothing speaks against a sheet of this class, whole or not, however the code is typed."""
    spaced = f"{ANN.code[:4]}-{ANN.code[4:].lower()}"
    assert fault() == ""
    assert fault({"a1": None}) == ""
    assert fault(code=spaced) == ""


@pytest.mark.parametrize(
    ("said", "words"),
    [
        (fault(code=MISTYPED), "no personal code"),
        (fault(code="Ann"), "no personal code"),
        (fault(**{"class": "autumn"}), "class `autumn`"),
        (fault(code=code_for(999)), "not in the roster"),
        (fault(edition="unknown"), "Edition `unknown` of the test `final` is not known"),
        (fault(test="quiz"), "is not known"),
        (fault(version="C"), "no version `C`"),
        (fault(version="B"), "belongs to version A, this is version B"),
        (fault({"b1": "o1"}), "no question `b1`"),
        (fault({"a1": ["o1"]}), "of the kind `many`"),
        (fault(answers=[{"q": "a1", "kind": "one", "value": None}] * 2), "`a1` is answered twice"),
    ],
)
def test_what_does_not_fit_is_named(said: str, words: str) -> None:
    """The fault names what does not fit, and a remedy follows it."""
    assert words in said
    assert said.count(".") >= 2


def test_a_retake_brings_its_own_version() -> None:
    """The second code of a participant belongs to the version it says."""
    ben = person(2, "A", "B")
    sheet = sheet_of(sheet_bytes(ben.codes[1], answers("B")))
    assert refusal(sheet, expected(folder(ben), RINGS)) is None
