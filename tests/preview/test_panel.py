"""The panel: everything to fix with file, line and remedy, the worst first, and nothing of it is markup."""

from bs4 import BeautifulSoup

from builder.diagnostic import Diagnostic
from builder.flow.live import Shown
from builder.place import Place, Places
from builder.preview.panel import MOST, bare_page, panel, with_panel

ADVICE = Diagnostic("a", "advice", Place("media/"), "Not read.", "Move it.")
ERROR = Diagnostic("b", "error", Place("cases/a.yml", 2), "<script>alert(1)</script> is wrong.", "Write <b>.")
PLACES = {"cases/a.yml": Places(Place("cases/a.yml"), lines=("id: a", "  phase: <i>acute</i>"))}


def parsed(*found: Diagnostic, behind: bool = False, ways: dict[str, str] | None = None) -> BeautifulSoup:
    """The panel of a state."""
    shown = Shown(version=7, to_fix=found, places=PLACES, behind=behind)
    return BeautifulSoup(panel(shown, ways or {}), "html.parser")


def test_a_fault_is_told_with_file_line_text_and_remedy() -> None:
    """Errors come before advice, and the panel opens by itself."""
    made = parsed(ADVICE, ERROR)
    rows = [" ".join(row.get_text(" ").split()) for row in made.select("li")]
    assert rows[0] == (
        "✕ error cases/a.yml, line 2 phase: <i>acute</i> "
        "<script>alert(1)</script> is wrong. To mend: Write <b>."
    )
    assert "media/" in rows[1]
    assert made.select("details[open]")
    assert made.select_one("summary span:nth-of-type(2)").get_text() == "1 error, 1 advice"  # type: ignore[union-attr]
    assert len(made.select("script")) == 1


def test_advice_alone_leaves_it_closed() -> None:
    """Nothing to fix is said in so many words."""
    assert not parsed(ADVICE).select("details[open]")
    assert "Nothing to fix" in parsed().get_text()
    assert "last good state" not in parsed().get_text()


def test_it_says_when_the_page_is_older_than_the_last_save() -> None:
    """So that nobody waits for a change that cannot come."""
    assert "last good state" in parsed(ERROR, behind=True).get_text()


def test_very_many_faults_are_cut_and_counted() -> None:
    """The rest is a number."""
    made = parsed(*(ERROR for _ in range(MOST + 3)))
    assert len(made.select("li")) == MOST
    assert "And 3 more" in made.get_text()


def test_the_page_around_it_is_as_it_was_built() -> None:
    """The panel stands before the end of the body, once, with the version the page shows."""
    page = b"<html><body><p>x</p></body></html>"
    made = with_panel(page, Shown(version=7), {"instructor": "/instructor/index.html"})
    before, _, after = page.partition(b"</body>")
    assert made.startswith(before)
    assert made.endswith(b"</body>" + after)
    assert made.count(b'data-version="7"') == 1
    assert b'href="/instructor/index.html"' in made
    assert with_panel(b"no page", Shown(), {}) == b"no page"


def test_a_page_without_course_is_a_page_all_the_same() -> None:
    """Its message is no markup."""
    assert b"<h1>&lt;no&gt;</h1>" in bare_page("<no>")
