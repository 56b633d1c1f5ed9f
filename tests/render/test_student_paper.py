"""The pages of a test: an entry that takes a code, a version without any key."""

import json
from typing import Any

from bs4 import BeautifulSoup

from builder.model.code import ALPHABET, LENGTH, VERSIONS
from builder.render.maker import maker
from builder.render.student_paper import paper_pages
from tests.render.sample_cases import published_test
from tests.render.sample_site import body, one, parsed, said
from tests.render.samples import course

VERSION = body("tests/final-a.md")
ENTRY = body("tests/final.md")


def inline(tree: BeautifulSoup) -> dict[str, Any]:
    """What the page tells its script."""
    read: dict[str, Any] = json.loads(one(tree, "#test-data").get_text())
    return read


def test_a_version_shows_every_question_with_its_scene() -> None:
    """Each question stands alone: number, scene, board, options."""
    questions = VERSION.select("section.question")
    assert [said(one(node, "h2")) for node in questions] == [f"Question {n} of 3" for n in (1, 2, 3)]
    assert all(
        len(node.select(".board")) == 1 and len(node.select("label.option")) == 3 for node in questions
    )


def test_the_script_knows_questions_and_no_more() -> None:
    """Ids and kinds of questions, the edition, codes: nothing of what is right."""
    data = inline(VERSION)
    assert data["questions"] == [
        {"q": f"qa{n}f", "kind": kind} for n, kind in ((1, "one"), (2, "one"), (3, "many"))
    ]
    assert set(data) == {
        *("entry", "version", "class", "questions", "edition", "test", "alphabet", "length", "letters"),
        *("versions", "pages", "say", "between", "alike", "minutes", "back"),
    }


def test_the_script_has_the_arithmetic_of_codes() -> None:
    """Alphabet, length and letters are those of the tool itself."""
    data = inline(ENTRY)
    assert (data["alphabet"], data["length"], data["letters"]) == (ALPHABET, LENGTH, VERSIONS)
    assert data["pages"] == {"A": "final-a.html", "B": "final-b.html"}


def test_the_data_cannot_end_its_element() -> None:
    """A title with an end tag in it stays data."""
    test = published_test().model_copy(update={"test": "</script><b>"})
    page = paper_pages(maker(course()), test)[0]
    assert "</script><b>" not in page.body
    assert inline(parsed(page.body))["test"] == "</script><b>"


def test_a_version_can_be_done_on_paper() -> None:
    """There are boxes for the code and a place for the date, shown on paper alone."""
    paper = one(VERSION, ".paper-only")
    assert len(paper.select(".boxes i")) == LENGTH + 1
    assert "Date" in said(paper)


def test_the_entry_works_without_script() -> None:
    """The code field waits for the script; the versions are linked for those who have none."""
    assert one(ENTRY, ".code-form").has_attr("hidden")
    assert [str(link["href"]) for link in ENTRY.select(".plain-versions a")] == [
        "final-a.html",
        "final-b.html",
    ]


def test_a_code_may_be_pasted() -> None:
    """The field is labelled, takes any length and forbids nothing."""
    field = one(ENTRY, "#code")
    assert one(ENTRY, "label[for=code]")
    assert not {"maxlength", "pattern", "onpaste"} & field.attrs.keys()
