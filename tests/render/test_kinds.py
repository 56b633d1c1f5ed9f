"""The folder of each kind of question: template, style, script and examples belong together."""

from typing import Any

import html5lib
import pytest

from builder.model.question import QUESTION_KINDS
from builder.render.assets import KINDS, LOOK
from builder.render.maker import maker
from builder.render.student_paper import paper_pages
from tests.render.kind_examples import EXAMPLES, asked, built, every_kind
from tests.render.sample_site import one, parsed, said
from tests.render.samples import course

BY_NAME = [pytest.param(one, id=one["name"]) for one in EXAMPLES]
PAGE = next(page for page in paper_pages(maker(course()), every_kind()) if page.kind == "version")
TREE = parsed(PAGE.body)


def test_every_kind_has_its_folder() -> None:
    """Template, script and examples; a style where its controls are not those of another kind."""
    assert sorted(path.name for path in (LOOK / "kinds").iterdir()) == sorted(QUESTION_KINDS)
    for folder in (LOOK / kind for kind in KINDS):
        names = {path.name for path in folder.iterdir()}
        assert (
            {"question.html", "script.js", "examples.yml"}
            <= names
            <= {*("question.html", "script.js", "examples.yml", "style.css")}
        )
    assert {one["asked"]["kind"] for one in EXAMPLES} == set(QUESTION_KINDS)


@pytest.mark.parametrize("example", BY_NAME)
def test_everything_of_an_example_is_shown(example: dict[str, Any]) -> None:
    """Stem, hint, every option, chip and partner can be read on the page without a script."""
    question = asked(example)
    fieldset = one(TREE, f'fieldset[data-question="{question.id}"]')
    text = said(fieldset)
    parts = [
        part for option in (*question.options, *question.partners) for part in (option.title, *option.chips)
    ]
    shown = [*question.stem.split("**"), question.hint, question.unit, *parts]
    assert [part for part in shown if part.strip() not in text] == []


@pytest.mark.parametrize("example", BY_NAME)
def test_every_control_has_a_name(example: dict[str, Any]) -> None:
    """A label around it; and every one of a question bears the question's id, so nothing mixes."""
    question = asked(example)
    fieldset = one(TREE, f'fieldset[data-question="{question.id}"]')
    controls = fieldset.select("input, select, textarea")
    assert controls
    assert all(control.find_parent("label") for control in controls)
    assert {str(control["name"]) for control in controls} == {question.id}


@pytest.mark.parametrize("example", BY_NAME)
def test_nothing_is_dragged(example: dict[str, Any]) -> None:
    """No part of any question asks for dragging."""
    fieldset = one(TREE, f'fieldset[data-question="{example["asked"]["id"]}"]')
    assert fieldset.select("[draggable], [ondrop]") == []


def test_the_markup_is_valid() -> None:
    """The strict parser of HTML takes the built page with every kind on it without a word."""
    html = (built() / "tests" / "final-a.html").read_text(encoding="utf-8")
    html5lib.HTMLParser(strict=True).parse(html)
    ids = [str(node["id"]) for node in parsed(html).select("[id]")]
    assert sorted(set(ids)) == sorted(ids)
