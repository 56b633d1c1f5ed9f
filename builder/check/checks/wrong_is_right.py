"""Every wrong option must be wrong for a named reason; one as good as the key makes the key ambiguous."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "A participant who chooses a wrong option must learn why it was wrong. One that the rules accept "
    "makes the key unfair."
)
BAD = Example(
    "cases/fence.yml",
    """
    wrong:
      - {card: protect_and_position}
      - {card: cold_pack, written: {minutes: 40, barrier: no}}
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/fence.yml",
    """
    wrong:
      - {card: glide}
      - {card: cold_pack, written: {minutes: 40, barrier: no}}
    """,
    at="visits/0",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Wrong options that the rules would accept, surely or as far as is recorded."""
    for case, index, _, judged in evidence.visits():
        for number, option in enumerate(judged.wrong):
            if option.answer != "ok" or not option.serves_aim:
                continue
            name = evidence.course.content.cards[option.card].name
            if option.right:
                message, remedy = (
                    "is offered as wrong, but is as good as the key",
                    "Move it to `chosen`, or change it.",
                )
            else:
                facts = ", ".join(one.fact for one in option.ask) or option.change or "what is open"
                message = "is offered as wrong, but is wrong only at worst, for want of a record"
                remedy = f"Record or write: {facts}."
            path = ("visits", index, "wrong", number)
            rules = tuple(rule.id for rule in option.rules if option.right or rule.effect != "ok")
            yield Finding(case_file(case), path, f"{name} {message}.", remedy, rules)
