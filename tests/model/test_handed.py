"""An answer sheet from a stranger's bytes."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.handed import checksum, sheet_of
from tests.records.made import answers, code_for, sheet_bytes

CODE = code_for(1)
GOOD = sheet_bytes(CODE, answers())
TEXT = GOOD.decode()


def test_a_good_sheet_is_read() -> None:
    """A sheet comes out as it was handed in, with keys nobody knows kept."""
    sheet = sheet_of(sheet_bytes(CODE, answers(), device={"width": 390}))
    assert (sheet.code, len(sheet.answers)) == (CODE, 10)
    assert sheet.model_extra == {"device": {"width": 390}}
    assert checksum(sheet) == sheet.crc32


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "no readable JSON"),
        (b"{" * 30, "no readable JSON"),
        (b"[" * 100_000 + b"]" * 100_000, "recursion limit"),
        (b"\0" * 64, "no readable JSON"),
        (GOOD.replace(b"spring", b"spr\0ng"), "no readable JSON"),
        (GOOD.replace(b"spring", b"spr\xffng"), "no readable JSON"),
        (TEXT.encode("utf-16"), "no readable JSON"),
        (GOOD[: len(GOOD) // 2], "no readable JSON"),
        (b"[]", "no answer sheet"),
        (b"{}", "and 10 more"),
        (b'{"rev": ' + b"9" * 5000 + b"}", "no readable JSON"),
        (GOOD.replace(b'"rev": 1', b'"rev": 0'), "`rev`"),
        (GOOD.replace(b'"rev": 1', b'"rev": 1, "rev": 1'), "`rev` stands twice"),
        (GOOD.replace(b'"q": "a1"', b'"q": "a1", "q": "a1"'), "`q` stands twice"),
        (GOOD.replace(b'"o1"', b'"o2"', 1), "checksum does not fit"),
        (sheet_bytes(CODE, answers(), crc32="deadbeef"), "checksum does not fit"),
        (
            sheet_bytes(CODE, {f"a{n}": "o1" for n in range(500)}).replace(
                b'"answers": [', b'"answers": [{},'
            ),
            "answers",
        ),
    ],
)
def test_a_bad_sheet_is_refused_in_words(data: bytes, words: str) -> None:
    """Whatever is wrong, the message says it in one line and shows nothing long."""
    with pytest.raises(ValueError, match=r"[.]$") as caught:
        sheet_of(data)
    said = str(caught.value)
    assert words in said
    assert len(said) < 400
    assert "\n" not in said


@given(st.binary(max_size=200) | st.text(max_size=50).map(lambda text: json.dumps({text: text}).encode()))
def test_any_bytes_give_words(data: bytes) -> None:
    """No bytes raise anything but words."""
    with pytest.raises(ValueError, match="This is no"):
        sheet_of(data)


@given(st.integers(0, len(TEXT) - 1), st.sampled_from("0123456789abcdefo"))
def test_damage_to_an_answer_is_seen(at: int, letter: str) -> None:
    """A changed character never gives other answers under the same checksum."""
    damaged = TEXT[:at] + letter + TEXT[at + 1 :]
    try:
        sheet = sheet_of(damaged.encode())
    except ValueError:
        return
    good = sheet_of(GOOD)
    assert (sheet.answers, sheet.code, sheet.edition) == (good.answers, good.code, good.edition)
