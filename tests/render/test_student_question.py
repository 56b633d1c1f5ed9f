"""A practice question in a lesson."""

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser

from builder.doors.site import build_site
from builder.fault import Fault
from builder.model.course import Lesson
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from builder.render.maker import maker
from builder.render.student import student_site
from builder.render.student_lesson import lesson_page
from builder.render.student_question import question_part
from tests.axe import violations
from tests.render.sample_cases import practice_case, published_test
from tests.render.sample_site import parsed, said
from tests.render.samples import course

FRAME = {
    "format": 1,
    "id": "asked",
    "objective": "phases",
    "level": "apply",
    "use": "practice",
    "stem": "Is **this** < that?",
    "source": ["example_2020"],
}
EXAMPLES: dict[str, Any] = {kind: AuthorQuestion.model_fields[kind].examples for kind in QUESTION_KINDS}


def asked(kind: str, **more: object) -> AuthorQuestion:
    """The question of one kind, answered as the schema's own example."""
    (block,) = EXAMPLES[kind] or [None]
    return AuthorQuestion.model_validate({**FRAME, kind: block, **more})


def texts_of(value: Any) -> list[str]:  # noqa: ANN401 - an example is plain data of any shape
    """Every `text`, `left`, `right` and `because` of an example, at any depth."""
    if isinstance(value, list):
        return [text for one in value for text in texts_of(one)]
    if not isinstance(value, dict):
        return []
    own = [str(value[key]) for key in ("text", "left", "because") if key in value]
    return own + [text for one in value.values() for text in texts_of(one)]


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_every_kind_shows_all_of_it(kind: str) -> None:
    """Stem, options, reasons and source stand there; the reasons are folded away."""
    tree = parsed(question_part(maker(course()), asked(kind)))
    told = tree.select_one("details > ul")
    assert told is not None
    assert tree.select_one("details summary") is not None
    assert [text for text in texts_of(EXAMPLES[kind]) if text not in said(tree)] == []
    reason = tree.select("details li p")[-1].get_text()
    told.extract()
    assert reason not in said(tree)
    assert "Rests on" in said(tree)


def test_the_stem_is_text_with_bold_words() -> None:
    """Emphasis is marked up and everything else escaped."""
    assert "<p>Is <b>this</b> &lt; that?</p>" in question_part(maker(course()), asked("one"))


@pytest.mark.parametrize("name", ["asked", "b", "c", "d", "e", "f", "g", "h"])
def test_an_order_is_never_shown_as_it_is_right(name: str) -> None:
    """The steps above the fold are drawn, the answer has the order written."""
    question = asked("order", id=name)
    tree = parsed(question_part(maker(course()), question))
    shown = [one.get_text() for one in tree.select(".asked > ul > li")]
    right = [one.get_text() for one in tree.select("details b")]
    assert question.order is not None
    assert right == [one.text for one in question.order.steps]
    assert shown != right
    assert sorted(shown) == sorted(right)


def test_options_in_order_keep_it() -> None:
    """An author who asks for the order written gets it."""
    options = [{"text": text, "because": "So."} for text in ("1", "2", "3")]
    block = {"options": [*options, {"text": "4", "right": "yes", "because": "So."}], "in_order": "yes"}
    tree = parsed(question_part(maker(course()), asked("one", one=block)))
    assert [one.get_text() for one in tree.select(".asked > ul > li")] == ["1", "2", "3", "4"]


def test_a_tolerance_is_told() -> None:
    """Both ends of what is right are named, or the number alone where only it is right."""
    block = {"value": 20, "unit": "minutes", "within_share": "25 %", "because": "So."}
    made = maker(course())
    assert "20 minutes (from 15 to 25 is right)" in question_part(made, asked("number", number=block))
    exact = {"value": 20, "unit": "minutes", "within": 0, "because": "So."}
    assert "from" not in question_part(made, asked("number", number=exact))


@pytest.mark.parametrize("questions", [{}, {"asked": asked("one", use="test")}])
def test_a_question_that_may_not_be_shown_is_a_fault(questions: dict[str, AuthorQuestion]) -> None:
    """Neither an unknown question nor one of a test gets onto a page."""
    sample = replace(course(), lessons={"phases": "[question asked]\n"}, questions=questions)
    with pytest.raises(Fault, match="line 1"):
        lesson_page(maker(sample), Lesson(file="phases.md", title="T"), {})


@pytest.mark.browser
def test_it_is_read_without_a_script(browser: Browser, tmp_path: Path) -> None:
    """From the folder, with scripts off, a click unfolds the reasons; the checker finds nothing."""
    every: dict[str, AuthorQuestion] = {kind: asked(kind, id=kind) for kind in QUESTION_KINDS}
    lesson = "".join(f"[question {kind}]\n\n" for kind in every)
    sample = replace(course(), lessons={"phases": lesson}, questions=every)
    build_site(student_site(sample, (practice_case(),), (published_test(),)), tmp_path)
    at = (tmp_path / "lessons" / "phases.html").as_uri()
    plain = browser.new_page(java_script_enabled=False, viewport={"width": 390, "height": 844})
    plain.goto(at)
    assert plain.locator(".asked").count() == len(every)
    first = plain.locator(".asked details").first
    assert not first.locator("ul").is_visible()
    first.locator("summary").click()
    assert first.locator("ul").is_visible()
    plain.close()
    page = browser.new_page(viewport={"width": 390, "height": 844})
    page.goto(at)
    page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })")
    assert violations(page) == []
    page.close()
