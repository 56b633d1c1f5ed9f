"""An answer sheet is found in pasted, mailed and quoted text, and only where its checksum proves it whole."""

import json
import textwrap

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.collect.pasted import recovered
from builder.model.answers import AnswerSheet, flat
from builder.model.handed import checksum, sheet_of
from tests.records.made import answers, code_for, sheet_bytes


def as_the_page_makes_it(text: str = "") -> bytes:
    """A sheet without idle white space, with a written answer where one is given."""
    data = json.loads(sheet_bytes(code_for(1), answers()))
    if text:
        data["answers"].append({"q": "qtext", "kind": "text", "value": text})
        data["crc32"] = checksum(AnswerSheet.model_validate(data))
    return json.dumps(data, ensure_ascii=False, separators=(",", ":")).encode()


PLAIN = as_the_page_makes_it()
WRITTEN = as_the_page_makes_it("Cold, then a pad.\nNot “deep” work: it's too early \\ for that, I'd say.")
MAIL = "Hello Isaura,\n\nhere is my sheet {{as you asked}}:\n\n{sheet}\n\n-- \nSent from my phone {}\n"


def wrapped(text: str, width: int, *, at_spaces: bool) -> str:
    """The text in lines of at most `width`, broken at spaces, which go, or anywhere."""
    if at_spaces:
        return "\n".join(textwrap.wrap(text, width, break_on_hyphens=False))
    return "\n".join(text[at : at + width] for at in range(0, len(text), width))


def quoted(text: str, prefix: str = "> ") -> str:
    """The text as an answering mail shows it."""
    return "\n".join(f"{prefix}{line}" for line in text.split("\n"))


@pytest.mark.parametrize("sheet", [PLAIN, WRITTEN], ids=["plain", "written"])
@pytest.mark.parametrize("width", [40, 76])
@pytest.mark.parametrize("at_spaces", [True, False])
@pytest.mark.parametrize("prefix", ["", "> ", ">> ", "> > ", "| "])
def test_a_mail_is_read(sheet: bytes, width: int, prefix: str, *, at_spaces: bool) -> None:
    """Between other words, in short lines, quoted however often: the very bytes that the page made."""
    mail = MAIL.replace("{sheet}", wrapped(sheet.decode(), width, at_spaces=at_spaces))
    assert recovered(quoted(mail, prefix).encode()) == sheet


@pytest.mark.parametrize(
    "spoil",
    [
        lambda text: text.replace('"', "\u201d"),
        lambda text: text.replace('":', "\u201d:").replace('"', "\u201c"),
        lambda text: text.replace('"', "&quot;"),
        lambda text: text.replace(",", ",\u00a0"),
        lambda text: text.replace(":", ":\u200b"),
        lambda text: text.replace("\n", "\r\n"),
        lambda text: "\ufeff" + text,
        lambda text: json.dumps(json.loads(text), indent=4, ensure_ascii=False),
        lambda text: f"{text}\n\n{quoted(text)}",
    ],
    ids=["curly", "both", "entities", "fixed", "unseen", "crlf", "mark", "laid out", "twice"],
)
def test_what_mail_programs_make_of_it_is_undone(spoil: object) -> None:
    """Curly quotes, entities, fixed and unseen spaces, and the same sheet twice in one mail."""
    assert callable(spoil)
    assert recovered(str(spoil(PLAIN.decode())).encode()) == PLAIN


@pytest.mark.parametrize("encoding", ["utf-8", "utf-16", "utf-8-sig", "cp1252"])
def test_any_usual_encoding_is_read(encoding: str) -> None:
    """As editors save a text."""
    sheet = as_the_page_makes_it("Kälte, dann ein Polster")
    assert recovered(f"Grüße\n{sheet.decode()}".encode(encoding)) == sheet


def attempted(text: str) -> bytes | None:
    """What is found, if anything."""
    try:
        return recovered(text.encode())
    except ValueError:
        return None


@given(st.text(st.characters(exclude_categories=["C"]), min_size=1, max_size=40), st.integers(20, 90))
def test_any_answer_comes_through_hard_lines(text: str, width: int) -> None:
    """Whatever was written, broken anywhere: found as it was, or refused, but never found changed."""
    sheet = as_the_page_makes_it(text)
    assert attempted(quoted(wrapped(sheet.decode(), width, at_spaces=False))) in (sheet, None)


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"", "holds no answer sheet"),
        (b"Hello, I was there.", "holds no answer sheet"),
        (PLAIN[:-40], "not whole"),
        (PLAIN.replace(b'"rev":1', b'"rev":1,"rev":1'), "not whole"),
        (PLAIN.replace(b'"answers":[', b'"answers":[ {"q":"x","kind":"one","value":null},'), "not whole"),
        (PLAIN + b"\n" + WRITTEN, "more than one"),
        (b'{"format":"caseloom/answers/1' * 5000, "not whole"),
    ],
    ids=["empty", "words", "cut", "key twice", "altered", "two", "hostile"],
)
def test_what_is_no_whole_sheet_is_refused(data: bytes, said: str) -> None:
    """In plain words."""
    with pytest.raises(ValueError, match=said):
        recovered(data)


def test_the_example_is_a_whole_sheet() -> None:
    """So that the tests above speak of something."""
    sheet = sheet_of(WRITTEN)
    text = flat(sheet.edition, sheet.test, sheet.version, sheet.code, sheet.answers)
    assert "too early" in text
