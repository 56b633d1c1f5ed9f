"""The page for an address at which there is nothing."""

from tests.render.sample_site import body, built, page, said


def test_it_leads_on_to_the_start_the_red_flags_and_the_tests() -> None:
    """And says that answers are not lost."""
    tree = body("404.md")
    goals = [str(link["href"]) for link in tree.select("a")]
    assert goals == ["index.html", "red-flags.html", "tests/final.html"]
    assert "Nothing that you have answered is lost" in said(tree)


def test_it_finds_the_root_of_the_site_from_wherever_it_is_shown() -> None:
    """It alone carries a script of its own in its head; it is neither searched nor listed."""
    html = (built() / "404.html").read_text(encoding="utf-8")
    assert html.index("base.href") < html.index("look.css")
    assert "base.href" not in (built() / "index.html").read_text(encoding="utf-8")
    assert not page("404.md").search
    assert 'href="404.html"' not in html
