"""Words are said by id; English that stands in says what it is."""

import pytest

from builder.model.words import as_english, marked, said, unmarked

WORDS = {"days": "{n} days", "days.one": "{n} day", "plain": "{not filled}", "of": "{n} of {all}"}
NEXT = as_english("Next")
SPAN = '<span lang="en">Next</span>'


@pytest.mark.parametrize(("n", "text"), [(1, "1 day"), ("1", "1 day"), (0, "0 days"), ("1.5", "1.5 days")])
def test_exactly_one_has_a_text_of_its_own(n: object, text: str) -> None:
    """Any other number, and a word without a pair, has the other."""
    assert said(WORDS, "days", n=n) == text
    assert said(WORDS, "of", n=1, all=2) == "1 of 2"


def test_a_text_without_blanks_given_stays_as_it_is() -> None:
    """Braces are only filled where there is something to fill them with."""
    assert said(WORDS, "plain") == "{not filled}"


@pytest.mark.parametrize(
    ("html", "shown"),
    [
        (f"<p>a {NEXT} b</p>", '<p>a <span lang="en">Next</span> b</p>'),
        (f'<a title="{NEXT}">{NEXT}</a>', '<a title="Next"><span lang="en">Next</span></a>'),
        (f"<title>{NEXT}</title>", "<title>Next</title>"),
        (
            f"<script>{NEXT} < 3</script><b>{NEXT}</b>",
            '<script>Next < 3</script><b><span lang="en">Next</span></b>',
        ),
        ("<p>nothing</p>", "<p>nothing</p>"),
    ],
)
def test_a_page_says_what_is_english_where_it_can(html: str, shown: str) -> None:
    """In its text; an attribute, a title and a script have no place for it."""
    assert marked(html) == shown


def test_a_mark_leaves_no_trace() -> None:
    """The text reads as it did."""
    assert unmarked(f"a {NEXT}") == "a Next"
