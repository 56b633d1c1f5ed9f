"""The key of one version, whole and on one sheet."""

import pytest

from builder.fault import Fault
from builder.render.instructor_key import key_pages
from builder.render.maker import maker
from tests.render.sample_cases import published_test
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import judged_course, ring
from tests.render.sample_site import one, said

KEY = private_page("tests/final-a.md")
TABLE = private_page("tests/final-a-table.md")


@pytest.mark.parametrize("tree", [KEY, TABLE], ids=["whole", "table"])
def test_a_key_says_which_papers_it_fits(tree: object) -> None:
    """Version, edition, key edition, pass mark and how many must be right."""
    text = said(tree)  # type: ignore[arg-type]
    for part in ("Version A", "k7q2m9xa", "p4w8z3tn", "75 %", "Must be right, whatever the total: 1."):
        assert part in text, part


def test_questions_stand_in_the_order_of_the_paper() -> None:
    """Number, id, stem and the scene shortly; what must be right says so."""
    assert [said(node) for node in KEY.select(".question h2")] == [
        "Question 1 of 3 qa1f",
        "Question 2 of 3 qa2f must be right",
        "Question 3 of 3 qa3f",
    ]
    assert said(KEY.select(".question h3")[0]) == "What do you do now? (1)"
    assert "Swelling: still rising; Knee bends to: 72°" in said(KEY.select(".question .small")[0])


def test_every_option_has_word_shape_place_and_reason() -> None:
    """Each option of a question is told, right or not, in the order of the paper."""
    first = KEY.select(".question")[0]
    assert [said(node) for node in first.select(".word")] == [
        "Not right option 1 of 3",
        "Right option 2 of 3",
        "Not right option 3 of 3",
    ]
    assert all(node.select("svg.mark") for node in first.select(".marks > li"))
    assert [said(node.select("p")[-1]) for node in first.select(".marks > li")] == [
        f"Word: reason for {name}. [rule_{name}]" for name in ("glide", "pack", "rub")
    ]
    assert "cloth between" in said(first)


def test_a_question_leads_to_its_visit() -> None:
    """The objective is told in words, and the visit the question was made from is a link."""
    first = KEY.select(".question")[0]
    link = one(first, "a")
    assert (said(link), link["href"]) == (
        "The ring, The next afternoon",
        "../cases/hidden-case.html#visit-v1",
    )
    assert "Tell the phase of healing from time and signs." in said(first)


def test_how_several_are_marked_is_told_once() -> None:
    """Only a question of several answers says how its points are counted."""
    assert [("takes a share away" in said(node)) for node in KEY.select(".question")] == [False, False, True]


def test_the_table_has_a_line_for_every_right_option() -> None:
    """Place and title of each right option; a question of two has two lines."""
    rows = [[said(cell) for cell in row.select("th, td")] for row in TABLE.select("tbody tr")]
    pack = "Cold pack, then felt pad and wrap (time 20 min, cloth between, pad 2½ times the area)"
    glide = "Light gliding strokes (on the injury, time 5 min, pressure 2 of 5)"
    assert rows == [
        ["1 qa1f", "2", pack, "the choice"],
        ["2 qa2f", "2", pack, "the choice must be right"],
        ["3 qa3f", "1", glide, "the choice"],
        ["2", pack],
    ]


def test_a_version_without_key_is_refused() -> None:
    """A paper whose key is missing is a fault, never a page without answers."""
    alone = ring().model_copy(update={"keys": ring().keys[:1]})
    with pytest.raises(Fault, match="no key for final, version B"):
        key_pages(maker(judged_course()), published_test(), alone)
