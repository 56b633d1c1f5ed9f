"""Where the pages of the instructor's side stand, beside the addresses that both sides share."""

from __future__ import annotations

from builder.render.address import of_case, of_test, of_version

COVERAGE = "coverage.md"
MATRIX = "matrix.md"
POLICIES = "policies.md"
RULES = "rules.md"
CARDS = "cards.md"
SOURCES = "sources.md"


def of_visit(case: str, visit: str) -> str:
    """The place of one visit on the page of its case."""
    return f"{of_case(case)}#visit-{visit}"


def of_table(test: str, version: str) -> str:
    """The one-page key table of a version; its whole key stands at `of_version`."""
    return of_version(test, version).replace(".md", "-table.md")


def of_booklet(test: str, version: str, *, large: bool) -> str:
    """The booklet of a version on paper, in plain or large print."""
    return (
        of_version(test, version).replace("tests/", "paper/").replace(".md", "-large.md" if large else ".md")
    )


def of_answers(test: str, version: str) -> str:
    """The answer sheet of a version on paper."""
    return of_booklet(test, version, large=False).replace(".md", "-answers.md")


def of_typing(test: str) -> str:
    """The page on which the answers of a test that were given on paper are typed in."""
    return of_test(test).replace("tests/", "paper/")


def of_room(case: str) -> str:
    """The page of a case that is shown to the whole room."""
    return of_case(case).replace("cases/", "room/")


def of_station(name: str) -> str:
    """The page of a station."""
    return f"stations/{name.replace('_', '-')}.md"


def of_handouts(name: str) -> str:
    """What a station's participant and practice client are given to read."""
    return of_station(name).replace(".md", "-handouts.md")


def of_sheet(name: str) -> str:
    """The check-off sheet of a station."""
    return of_station(name).replace(".md", "-sheet.md")


def of_rule(name: str) -> str:
    """The place of a rule on the page of rules, or of a card where its baseline is the rule."""
    card = name.removeprefix("baseline.")
    return of_rule_card(card) if card != name else f"{RULES}#rule-{name}"


def of_rule_card(name: str) -> str:
    """The place of a card on the page of cards."""
    return f"{CARDS}#card-{name}"


def of_source(name: str) -> str:
    """The place of a source on the page of sources."""
    return f"{SOURCES}#source-{name}"
