"""Every chosen option must be right: OK as written, even at worst, and serving today's aim."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.judgement import OptionJudgement, VisitJudgement

LEVEL: Level = "error"
WORDS = {"change": "only if changed", "not_yet": "not yet", "barred": "not here", "ok": "OK as written"}


def check(evidence: Evidence) -> Iterator[Finding]:
    """Chosen options that are not right, with the rule and what would mend them."""
    for case, index, _, judged in evidence.visits():
        for number, option in enumerate(judged.chosen):
            if option.right:
                continue
            name = evidence.course.content.cards[option.card].name
            yield Finding(
                case_file(case),
                ("visits", index, "chosen", number),
                f"{name} is chosen, but the rules say {_says(option)}.",
                _remedy(option, judged),
                tuple(rule.id for rule in option.rules if rule.effect != "ok"),
            )


def _says(option: OptionJudgement) -> str:
    if option.at_worst == "ok":
        return "it does not serve today's aim"
    reason = next((rule for rule in option.rules if rule.effect == option.at_worst), None)
    at_worst = "" if option.answer == option.at_worst else " at worst"
    return f"{WORDS[option.at_worst]}{at_worst}" + (
        f" ({reason.id}: {reason.why.rstrip('.')})" if reason else ""
    )


def _remedy(option: OptionJudgement, judged: VisitJudgement) -> str:
    if option.at_worst == "ok":
        return f"Choose a card that serves the aim: {', '.join(judged.aims)}."
    if option.at_worst == "change" and option.change:
        return f"Write: {option.change}."
    if option.answer != option.at_worst and option.ask:
        return f"Record: {', '.join(one.fact for one in option.ask)}."
    return "Choose another card, or correct what was found."
