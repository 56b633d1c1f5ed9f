"""A test on paper: every kind can be answered with letters, and nothing tells which are right."""

import json

from bs4 import BeautifulSoup
from bs4.element import Tag

from builder.model.paper import PaperQuestion
from builder.model.question import QUESTION_KINDS
from builder.render.instructor_paper import paper_pages
from builder.render.maker import maker
from tests.render.sample_judged import judged_course
from tests.render.sample_papers import every_kind
from tests.render.sample_site import parsed

TEST = every_kind()
PAGES = {page.address: page for page in paper_pages(maker(judged_course()), TEST)}


def page(address: str) -> BeautifulSoup:
    """The inside of one page."""
    return parsed(PAGES[address].body)


def rows() -> list[Tag]:
    """The lines of the answer sheet of version A."""
    return list(page("paper/final-a-answers.md").select(".answer-rows > li"))


def test_each_version_has_two_booklets_and_an_answer_sheet() -> None:
    """Plain print, large print, the sheet, and one page to type in for the whole test."""
    letters = [f"paper/final-{one}{rest}.md" for one in "ab" for rest in ("", "-large", "-answers")]
    assert list(PAGES) == [*letters, "paper/final.md"]


def test_a_booklet_asks_every_question_of_its_version() -> None:
    """All of them in order, with room for the code; the same in large print."""
    for address in ("paper/final-a.md", "paper/final-a-large.md"):
        asked = [str(one["data-question"]) for one in page(address).select("fieldset")]
        assert asked == [one.id for one in TEST.papers[0].questions]
        assert len(page(address).select(".boxes i")) == 9


def test_the_sheet_has_a_box_for_every_letter_and_place() -> None:
    """Letters where some are chosen, places where letters are written, lines for numbers and words."""
    counts = [(len(row.select(".letters i")), len(row.select(".places i"))) for row in rows()]
    assert counts == [(3, 0), (4, 0), (0, 3), (0, 2), (0, 0), (2, 0), (0, 0)]
    assert "A–C" in rows()[3].get_text()
    assert "minutes" in rows()[4].get_text()
    assert rows()[6].select_one(".lines") is not None


def test_every_kind_can_be_typed_in() -> None:
    """One field for each question of each version, and the letters that its script reads."""
    typed = page("paper/final.md")
    data = json.loads(str(typed.select("#test-data")[0].string))
    for paper in TEST.papers:
        fields = typed.select(f'[data-version="{paper.version}"] .field')
        assert len(fields) == len(data["papers"][paper.version]) == len(QUESTION_KINDS)
        for known, asked in zip(data["papers"][paper.version], paper.questions, strict=True):
            assert known["options"] == [one.id for one in asked.options]


def test_the_page_to_type_in_holds_no_words_of_a_question() -> None:
    """Neither stems nor options: whoever types sees letters alone."""
    text = PAGES["paper/final.md"].body
    shown: list[PaperQuestion] = [one for paper in TEST.papers for one in paper.questions]
    assert not [one.stem for one in shown if one.stem in text]
