"""The pages of the handbook: all that it is given stands in them, and every link leads somewhere."""

from builder.disk import shipped
from builder.model.course import SiteConfig
from builder.model.manual import Manual, ManualCheck, ManualCommand, ManualExample, ManualField, ManualFile
from builder.read.words import read_words
from builder.render.address import way
from builder.render.manual import manual_site, of_check, of_file
from tests.check.small_course import SITE
from tests.render.sample_site import parsed, said

OPTIONS = (("--json", "As data."),)
AGE = ManualField("client.age", needed=True, says="Age in <years>.", example="26")
MANUAL = Manual(
    commands=(
        ManualCommand("check", "Say what is to fix.", "caseloom check COURSE", "One.\n\nTwo.", OPTIONS),
    ),
    files=(ManualFile("case", "A case", "cases/*.yml", (AGE,)),),
    checks=(
        ManualCheck(
            "agenda_gap", "warning", "No holes.", "Sums go wrong.",
            (ManualExample("course.yml", "", "agenda:\n  - {day: 1}"),),
            (ManualExample("boards/guild.yml", "policies", ""),),
        ),
    ),
)  # fmt: skip
WORDS = read_words(shipped("content")).texts or {}
PLAN = manual_site(MANUAL, WORDS, SiteConfig.model_validate(SITE))
PAGES = {page.address: parsed(page.body) for page in PLAN.pages}


def test_each_thing_has_its_page() -> None:
    """A page to begin, the commands on one, a page for each sort of file and for each check."""
    assert list(PAGES) == [
        "index.md",
        "commands.md",
        of_file("case"),
        "checks/index.md",
        of_check("agenda_gap"),
    ]


def test_every_link_leads_somewhere() -> None:
    """To a page of the handbook, and to a place on it where one is named."""
    for at, page in PAGES.items():
        ways = {way(at, goal): goal for goal in PAGES}
        for link in page.select("a[href]"):
            href, _, anchor = str(link["href"]).partition("#")
            assert href in ways, href
            assert not anchor or PAGES[ways[href]].select(f'[id="{anchor}"]')


def test_a_command_tells_its_usage_text_and_options() -> None:
    """Each paragraph by itself."""
    page = PAGES["commands.md"]
    assert [said(node) for node in page.select("section > p")] == ["Say what is to fix.", "One.", "Two."]
    assert said(page.select("pre")[0]) == "caseloom check COURSE"
    assert said(page.select(".options div")[0]) == "--json As data."


def test_a_field_tells_whether_it_is_needed_and_gives_an_example() -> None:
    """Its way from the top, its words with what looks like markup kept as text, and an example."""
    assert said(PAGES[of_file("case")].select(".options div")[0]) == (
        "client.age needed Age in <years>. For example: 26"
    )


def test_a_check_shows_both_examples() -> None:
    """With the file they stand in; a file that is not there is said to be none."""
    text = said(PAGES[of_check("agenda_gap")])
    assert "Warning agenda_gap What it says No holes. Why Sums go wrong." in text
    assert "Found here In course.yml:" in text
    assert "Not found here In boards/guild.yml, under policies: The file is not there." in text


def test_the_caution_ends_every_page() -> None:
    """As on every site of the tool."""
    assert PLAN.footer == SITE["caution"]
