"""Every chosen option must be right: OK as written, even at worst, and serving today's aim."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.judgement import OptionJudgement, VisitJudgement
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "What a case calls right is what a participant will do by hand. So the rules must agree with it, "
    "even if everything that was not recorded were at its worst."
)
BAD = Example(
    "cases/fence.yml",
    """
    chosen:
      - {card: cold_pack, written: {minutes: 30, barrier: yes}}
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/fence.yml",
    """
    chosen:
      - {card: cold_pack, written: {minutes: 20, barrier: yes}}
    """,
    at="visits/0",
)
WORDS = {"change": "only if changed", "not_yet": "not yet", "barred": "not here", "ok": "OK as written"}


def check(evidence: Evidence) -> Iterator[Finding]:
    """Chosen options that are not right, with the rule and what would mend them."""
    for case, index, _, judged in evidence.visits():
        for number, option in enumerate(judged.chosen):
            if option.right or _said_elsewhere(option, judged):
                continue
            name = evidence.course.content.cards[option.card].name
            yield Finding(
                case_file(case),
                ("visits", index, "chosen", number),
                f"{name} is chosen, but the rules say {_says(option)}.",
                _remedy(option, judged),
                _rules(option, judged),
            )


def _rules(option: OptionJudgement, judged: VisitJudgement) -> tuple[str, ...]:
    """The rules that speak against it; where none does, today's aims."""
    against = tuple(rule.id for rule in option.rules if rule.effect != "ok")
    return against if option.at_worst != "ok" else tuple(f"aim.{aim}" for aim in judged.aims)


def _said_elsewhere(option: OptionJudgement, judged: VisitJudgement) -> bool:
    """Whether only a record is wanting (`not_recorded`), or the session's own action (`referral_missing`)."""
    if option.at_worst == "ok":
        action = judged.session.answer in ("refer", "ask_first")
        return action and not any(one.serves_aim for one in judged.chosen)
    return option.answer == "ok" and option.serves_aim and bool(option.ask) and not option.change


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
