"""What a participant writes for themselves."""

from bs4 import BeautifulSoup

from builder.render.maker import maker
from builder.render.student_own import changes_page, own_sheet_page
from tests.demo.built import opened
from tests.render.sample_site import parsed, said


def sheet() -> BeautifulSoup:
    """The sheet for one's own board, of the demonstration."""
    course = opened().course
    assert course is not None
    return parsed(own_sheet_page(maker(course)).body)


def test_every_field_has_its_words_and_its_name() -> None:
    """Each can be found by a screen reader, and is kept under a name of its own."""
    course = opened().course
    assert course is not None
    for page in (changes_page(maker(course)), own_sheet_page(maker(course))):
        tree = parsed(page.body)
        fields = tree.select("[data-field]")
        assert len(fields) >= 9
        assert len({field["data-field"] for field in fields}) == len(fields)
        for field in fields:
            named = field.get("aria-label") or tree.select(f"label[for='{field.get('id')}']")
            assert named or field.find_parent("label")


def test_three_lines_ask_what_by_when_and_how_it_shows() -> None:
    """Written by hand on paper as on screen."""
    course = opened().course
    assert course is not None
    tree = parsed(changes_page(maker(course)).body)
    assert [said(one) for one in tree.select("legend")] == ["Change 1", "Change 2", "Change 3"]
    assert [said(one) for one in tree.select("fieldset")[0].select("label")] == [
        "What I will change", "By when", "How I shall notice",
    ]  # fmt: skip


def test_the_sheet_says_what_was_taken_and_its_hours_by_body() -> None:
    """From the course itself; the agenda comes to twelve hours of sixty minutes."""
    told = said(sheet())
    for part in ("LF-CE-02", "LF-0417", "Isaura Penhallow", "12 contact hours", "name the phase of healing"):
        assert part in told
    assert len(sheet().select(".learned input")) == 4
