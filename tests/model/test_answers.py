"""The answer sheet: its shape, and the flat string that its checksum runs over.

The golden examples in `tests/golden/flat.json` are read by the script's tests too. Each gives what a sheet
says (`edition`, `test`, `version`, `code`, `answers`), the `flat` string of it, and that string's `crc32`
over its UTF-8 bytes, as eight hex digits.
"""

import json
import zlib
from pathlib import Path
from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError

from builder.model.answers import AnswerSheet, Given, flat
from builder.model.question import QUESTION_KINDS

GOLDEN = json.loads((Path(__file__).parents[1] / "golden" / "flat.json").read_text(encoding="utf-8"))
SHEET = {
    "format": "caseloom/answers/1",
    "sheet": "0123456789abcdef" * 2,
    "rev": 2,
    "edition": "k7q2m9xa",
    "test": "final",
    "version": "B",
    "class": "spring",
    "code": "3F9K2MX7Y",
    "started": "2026-11-21T09:02:11-05:00",
    "finished": "2026-11-21T09:41:55-05:00",
    "zone": "America/New_York",
    "answers": [
        {"q": "q8f3a", "kind": "one", "value": "o41c"},
        {"q": "q1", "kind": "number", "value": "7.5"},
    ],
    "crc32": "9b1c22e0",
}


def read(**changed: object) -> AnswerSheet:
    """The sheet with some keys changed, read from JSON."""
    return AnswerSheet.model_validate_json(json.dumps({**SHEET, **changed}))


@pytest.mark.parametrize("example", GOLDEN["examples"], ids=lambda one: one["name"])
def test_the_flat_string_is_the_golden_one(example: dict[str, Any]) -> None:
    """Head, then one answer a line; lists joined by commas, pairs by `>`, nothing for no answer."""
    answers = TypeAdapter(tuple[Given, ...]).validate_json(json.dumps(example["answers"]))
    text = flat(example["edition"], example["test"], example["version"], example["code"], answers)
    assert text == example["flat"]
    assert f"{zlib.crc32(text.encode('utf-8')):08x}" == example["crc32"]


def test_the_golden_examples_cover_every_kind() -> None:
    """No kind of question is left without an example, answered and not."""
    answers = [one for example in GOLDEN["examples"] for one in example["answers"]]
    assert {one["kind"] for one in answers if one["value"] is not None} == set(QUESTION_KINDS)
    assert {one["kind"] for one in answers if one["value"] is None} == set(QUESTION_KINDS)


def test_a_sheet_is_read_as_it_was_written() -> None:
    """The class has its own name on the sheet; times keep their offset."""
    sheet = read()
    assert (sheet.klass, sheet.rev, sheet.answers[0].value) == ("spring", 2, "o41c")
    assert sheet.started.isoformat() == SHEET["started"]


def test_unknown_keys_are_kept() -> None:
    """What a later script adds to a sheet or an answer is not lost."""
    sheet = read(device="phone", answers=[{"q": "q1", "kind": "number", "value": "7.5", "typed": "7,5"}])
    kept = json.loads(sheet.model_dump_json(by_alias=True))
    assert kept["device"] == "phone"
    assert kept["answers"][0]["typed"] == "7,5"


def test_a_sheet_may_be_unfinished_and_unanswered() -> None:
    """A sheet that was handed in early is a sheet."""
    sheet = read(finished=None, answers=[{"q": "q1", "kind": "many", "value": None}])
    assert (sheet.finished, sheet.answers[0].value) == (None, None)


@pytest.mark.parametrize(
    "changed",
    [
        {"format": "caseloom/answers/2"},
        {"sheet": "0123"},
        {"sheet": "0123456789ABCDEF" * 2},
        {"rev": 0},
        {"edition": "x" * 201},
        {"crc32": "9B1C22E0"},
        {"class": None},
        {"started": "yesterday"},
        {"answers": [{"q": "q1", "kind": "essay", "value": "x"}]},
        {"answers": [{"q": "q1", "kind": "one", "value": 7}]},
        {"answers": [{"q": "q1", "kind": "text", "value": "x" * 4001}]},
        {"answers": [{"q": "q1", "kind": "match", "value": [["l1", "r1", "r2"]]}]},
        {"answers": [{"q": "q1", "kind": "one"}]},
        {"answers": [{"q": "q", "kind": "one", "value": None}] * 501},
    ],
)
def test_what_is_no_sheet_is_refused(changed: dict[str, object]) -> None:
    """A wrong shape, and anything without bounds, is refused."""
    assert read().rev == 2
    with pytest.raises(ValidationError):
        read(**changed)
