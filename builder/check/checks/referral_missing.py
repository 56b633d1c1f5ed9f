"""Where the session is stop and refer, a referral must be chosen; where it is ask first, asking."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "Where a visit must stop for a referral or a question, that is the right answer. Another choice "
    "would teach to work on."
)
BAD = Example(
    "cases/fair.yml",
    """
    chosen:
      - {card: protect_and_position}
    """,
    at="visits/1",
)
GOOD = Example(
    "cases/fair.yml",
    """
    chosen:
      - {card: refer, written: {urgency: same_day}}
    """,
    at="visits/1",
)
AIMS = {"refer": "refer", "ask_first": "ask"}


def check(evidence: Evidence) -> Iterator[Finding]:
    """Visits whose session calls for one action and whose chosen options leave it out."""
    cards = evidence.course.content.cards
    for case, index, visit, judged in evidence.visits():
        aim = AIMS.get(judged.session.answer)
        if aim is None or any(set(cards[option.card].serves) == {aim} for option in visit.chosen):
            continue
        rules = tuple(rule.id for rule in judged.session.rules)
        asked = ", ".join(one.fact for one in judged.session.ask)
        yield Finding(
            case_file(case),
            ("visits", index, "chosen"),
            f"The session is to {aim} first, but no chosen option does."
            + (f" Not recorded: {asked}." if asked else ""),
            f"Choose the card `{aim}`" + (", or record what is missing." if asked else ", with its urgency."),
            rules,
        )
