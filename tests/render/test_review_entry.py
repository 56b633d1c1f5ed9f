"""Entries of the list for review: conditions, facts and sources in words."""

from decimal import Decimal

from builder.model.card import Contested
from builder.model.condition import parse
from builder.render.instructor_condition import Branch
from builder.render.review_entry import Said, condition, given, ground, rests
from tests.render.test_review_list import demonstration


def test_a_condition_keeps_its_tree_and_has_a_line() -> None:
    """Branches for the sheet, brackets for a terminal."""
    node = parse({"all": [{"age": {"below": 18}}, {"guardian_consent": "no"}]})
    said = condition(demonstration(), "When", node)
    assert [part.text for part in said.parts] == ["age below 18 years", "Guardian's consent: no"]
    assert said.line == "all of these (age below 18 years; Guardian's consent: no)"


def test_a_plain_line_is_itself() -> None:
    """Without branches there are no brackets."""
    assert Said("Why", "So.").line == "So."
    assert Said("When", "any", (Branch("a"), Branch("b"))).line == "any (a; b)"


def test_facts_are_told_by_label() -> None:
    """An example reads as a clinician would say it; none is a dash."""
    made = demonstration()
    assert given(made, {"age": Decimal(17), "guardian_consent": "no"}).endswith("Guardian's consent: no")
    assert given(made, {}) == "–"


def test_sources_are_told_whole_or_short() -> None:
    """The strength stands before them, unless they say it themselves."""
    made = demonstration()
    assert rests(made, ["ryan1991"], "study", short=True) == "study: Ryan JB et al, 1991"
    assert "Am J Sports Med 1991" in rests(made, ["ryan1991"], "study")
    assert rests(made, ["common_practice"], "common_practice") == "Common practice, no source"


def test_both_sides_are_told() -> None:
    """Why, on what it rests, and what is contested."""
    both = Contested(point="p", taught="It heals.", other="It eases.")
    labels = [one.label for one in ground(demonstration(), "So.", ["ryan1991"], "study", both)]
    assert labels == ["Why", "Rests on", "Contested"]
