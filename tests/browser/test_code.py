"""Personal codes in the page: the tool's own arithmetic, and the way to one's version."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from playwright.sync_api import Page

from builder.model.code import ALPHABET, is_code, tidy, version_of
from tests.browser.codes import code_for
from tests.browser.conftest import Visit

pytestmark = pytest.mark.browser
LOOSE = st.text(alphabet=f"{ALPHABET.lower()}{ALPHABET}IOU01 -\u2010\u2011\u2013\t", max_size=14)
WHOLE = st.builds(code_for, st.sampled_from("AB"), st.text(alphabet=ALPHABET, min_size=7, max_size=7))


def typed(page: Page, code: str) -> None:
    """Type a code and send it."""
    page.locator("#code").fill(code)
    page.locator(".code-form button").click()


@settings(max_examples=5)
@given(st.lists(st.one_of(LOOSE, WHOLE), min_size=200, max_size=200))
def _judge_all(page: Page, codes: list[str]) -> None:
    verdict = "one => [caseloom.tidy(one), caseloom.isCode(one) ? caseloom.versionOf(one) : null]"
    found = page.evaluate(f"codes => codes.map({verdict})", codes)
    assert found == [[tidy(code), version_of(code, 2) if is_code(code) else None] for code in codes]


def test_the_page_reckons_as_the_tool_does(visit: Visit) -> None:
    """Codes whole and broken get the same verdict and the same version in script and in Python."""
    page = visit().go("tests/final.html")
    _judge_all(page)
    whole = [code_for(version, f"3F9K2M{letter}") for letter in ALPHABET for version in "AB"]
    assert page.evaluate("codes => codes.map(caseloom.versionOf)", whole) == [
        version_of(one, 2) for one in whole
    ]
    assert page.evaluate("codes => codes.every(caseloom.isCode)", whole)


@pytest.mark.parametrize("version", ["A", "B"])
def test_a_code_leads_to_its_version(visit: Visit, version: str) -> None:
    """Typed small, with spaces and a dash."""
    page = visit().go("tests/final.html")
    code = code_for(version)
    typed(page, f" {code[:4].lower()} {code[4:7]}-{code[7:]}")
    page.wait_for_url(f"**/final-{version.lower()}.html#code={code}")
    assert page.locator(".where").inner_text() == f"code {code}"


def test_a_class_goes_along(visit: Visit) -> None:
    """A class named in the address of the entry stays in the address of the version."""
    page = visit().go("tests/final.html#class=spring")
    typed(page, code_for("A"))
    page.wait_for_url(f"**/final-a.html#code={code_for('A')}&class=spring")


@pytest.mark.parametrize(("code", "words"), [("", "first"), ("3F9K2MX7", "whole"), ("3F9K2MX70", "whole")])
def test_a_wrong_code_is_told(visit: Visit, code: str, words: str) -> None:
    """The fault is said beside the field, which keeps the focus and what was typed."""
    page = visit().go("tests/final.html")
    typed(page, code)
    assert words in page.locator("#code-problem").inner_text()
    assert page.evaluate("document.activeElement.id") == "code"
    assert page.locator("#code").input_value() == code


def test_a_code_can_be_pasted(visit: Visit) -> None:
    """Pasting is taken like typing (WCAG 2.2, 3.3.8)."""
    page = visit().go("tests/final.html")
    page.evaluate(
        """code => {
            const field = document.getElementById('code');
            field.focus();
            document.execCommand('insertText', false, code);
        }""",
        code_for("B"),
    )
    page.keyboard.press("Enter")
    page.wait_for_url("**/final-b.html#code=*")


@pytest.mark.parametrize(
    "pasted",
    [
        "3f9k 2mx2 h",
        "\u201c3F9K\u20142MX\u00b72H\u201d",
        "\u200b3F9K2MX2H\u00a0",
        "\uff13\uff26\uff19\uff2b2MX2H",
        "3F9\u041a2\u041c\u04252\u041d",
        "3F9K_2MX2/H.",
    ],
)
def test_a_code_is_taken_however_it_comes(visit: Visit, pasted: str) -> None:
    """With dashes, quotes and spaces of every sort, small, wide, or in letters of another alphabet."""
    page = visit().go("tests/final.html")
    typed(page, pasted)
    page.wait_for_url(f"**/final-a.html#code={code_for('A')}")


def test_look_alikes_are_told_apart_by_the_check_character(visit: Visit) -> None:
    """A one for an L and a nought for a Q are mended where the whole then fits, and only there."""
    whole = code_for("A", "LX9K2MQ")
    page = visit().go("tests/final.html")
    typed(page, whole.replace("L", "1").replace("Q", "0"))
    page.wait_for_url(f"**/final-a.html#code={whole}")
    page = visit().go("tests/final.html")
    typed(page, whole[:-1] + ("2" if whole[-1] != "2" else "3"))
    assert "whole code" in page.locator("#code-problem").inner_text()


def test_a_version_without_a_code_asks_for_it(visit: Visit) -> None:
    """Questions wait; a code of the other version leads there."""
    page = visit().go("tests/final-a.html")
    assert not page.locator("#paper").is_visible()
    typed(page, code_for("B"))
    page.wait_for_url("**/final-b.html#code=*")
    assert page.locator("#paper").is_visible()


def test_a_code_of_another_version_is_sent_on(visit: Visit) -> None:
    """A link with the wrong version leads to the right one by itself."""
    page = visit().go(f"tests/final-a.html#code={code_for('B')}")
    page.wait_for_url("**/final-b.html#code=*")
