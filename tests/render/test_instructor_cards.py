"""The page of cards."""

from tests.render.sample_instructor import private_page
from tests.render.sample_site import one, said

CARDS = private_page("cards.md")


def test_techniques_stand_before_actions() -> None:
    """Each by name, with how many are unreviewed."""
    assert [said(node) for node in CARDS.select("h2")] == ["Techniques", "Actions"]
    assert [said(node) for node in CARDS.select("summary")] == ["Cold pack", "Cross-fibre friction", "Refer"]
    assert "Cards: 3. Not yet reviewed by a clinician: 3." in said(CARDS)


def test_a_card_tells_every_answer_of_its_baseline() -> None:
    """Each row with phases and sites, limits, reason, source and strength, both sides where contested."""
    card = one(CARDS, "#card-friction")
    rows = [said(node) for node in card.select(".rows > li")]
    assert len(rows) == 5
    assert rows[0].startswith("Not yet acute, early repair (subacute) · on the injury")
    assert "Contested: As often taught: Only on fibrous tissue." in rows[0]
    assert "needs: time at most 5 min; pressure at most 3 of 5; warmed first" in rows[2]
    assert "Common practice, no source" in rows[2]
    assert rows[4].startswith("Not here any phase · beside it, above it, below it, elsewhere")
    assert "hands-on" in said(card)
    assert "not yet reviewed" in said(card)


def test_a_strength_that_its_source_says_is_not_said_twice() -> None:
    """`Common practice, no source` needs no `common practice:` before it."""
    assert "common practice: Common practice" not in said(CARDS)
