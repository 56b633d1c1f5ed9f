"""A new case: one client and one visit that hold together, with the questions to ask beside every finding."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from typing import Any

from builder.doors.yaml import read_yaml
from builder.model.case import Case, CaseOption
from builder.model.fact import Fact, plain
from builder.model.library import Content
from builder.model.noun import hours_of
from builder.new.fill import LOOK, as_yaml, filled

FRESH, SETTLED = 72, 336  # hours: the first three days, the first two weeks
WIDTH, COLUMN = 100, 33


@cache
def beginnings() -> dict[str, Any]:
    """What a case begins with, by injury and by how fresh it is."""
    value = read_yaml((LOOK / "beginnings.yml").read_bytes(), "beginnings.yml").value
    return value if isinstance(value, dict) else {}


def usual_since(injury: str) -> str:
    """How long ago such an injury usually was at the first visit."""
    return str(_story(injury)["since"])


def first_case(answers: Mapping[str, str], objectives: tuple[str, ...], screen: str) -> Case:
    """The case before it is judged: what is found on the first visit, and nothing decided yet."""
    told, injury = _story(answers["injury"]), answers["injury"]
    visit = {
        "id": "first_visit", "title": "The first visit", "since_injury": answers["since"],
        "story": told["story"], "consent": "yes", "screen": {"set": screen},
        "findings": beginnings()["found"][_stage(injury, answers["since"])],
        "phase": "none", "chosen": [{"card": "refer"}],
    }  # fmt: skip
    tissue = {"kind": answers["tissue"], "name": answers["region"].replace("_", " "), "side": "left"}
    return Case.model_validate(
        {
            "format": 1, "id": answers["id"], "title": answers["title"], "objectives": objectives,
            "client": {"role": "Stage hand", "age": 31}, "mechanism": told["mechanism"], "injury": injury,
            "tissue": {**tissue, "region": answers["region"]}, "severity": "moderate", "visits": [visit],
        }
    )  # fmt: skip


def with_measures(case: Case, asked: set[str]) -> Case:
    """The case with those measures recorded that the rules ask for and a new case knows."""
    measures = beginnings()["measures"].items()
    known = {name: _exact(value) for name, value in measures if name in asked}
    visit = case.visits[0].model_copy(update={"findings": {**case.visits[0].findings, **known}})
    changes: dict[str, object] = {"visits": (visit,)}
    if "haematoma" in asked:
        changes["tissue"] = case.tissue.model_copy(update={"haematoma": "intermuscular"})
    return case.model_copy(update=changes)


def case_text(case: Case, content: Content, since: str) -> str:
    """The file of a new case; `since` is the time as it was typed."""
    visit, facts = case.visits[0], content.facts.facts
    screen = visit.screen.set if visit.screen else ""
    values = {
        "id": case.id, "title": case.title, "objectives": f"[{', '.join(case.objectives)}]",
        "mechanism": case.mechanism, "injury": case.injury, "tissue": case.tissue.kind,
        "injuries": ", ".join(facts["injury"].values), "part": case.tissue.name, "region": case.tissue.region,
        "bleeding": f", haematoma: {case.tissue.haematoma}" if case.tissue.haematoma else "",
        "since": since, "story": visit.story or "", "screen": screen, "phase": visit.phase,
        "asked": _asked(content, screen),
        "findings": "\n".join(_finding(name, value, facts[name]) for name, value in visit.findings.items()),
        "chosen": "\n".join(_option(one, content) for one in visit.chosen),
        "wrong": "\n".join(_option(one, content) for one in visit.wrong),
    }  # fmt: skip
    return filled("case.yml", values)


def _exact(value: object) -> str | Decimal:
    return Decimal(value) if isinstance(value, int) else str(value)


def _story(injury: str) -> dict[str, str]:
    told: dict[str, str] = beginnings()["injuries"].get(injury, beginnings()["else"])
    return told


def _stage(injury: str, since: str) -> str:
    hours = hours_of(since)
    if injury in beginnings()["overuse"]:
        return "overuse"
    if not isinstance(hours, Decimal) or hours <= FRESH:
        return "fresh"
    return "settling" if hours <= SETTLED else "late"


def _asked(content: Content, screen: str) -> str:
    facts = content.facts.facts
    labels = "; ".join(
        facts[name].in_sentence for name in content.screening.covered_by(screen) if name in facts
    )
    return textwrap.fill(
        f"It asks for: {labels}.", WIDTH, initial_indent="    # ", subsequent_indent="    #   "
    )


def _finding(name: str, value: str | Decimal, fact: Fact) -> str:
    """One finding, with what it may be and the question that finds it out."""
    written = f"      {name}: {value if isinstance(value, str) else plain(value)}"
    may_be = ", ".join(fact.words_of_values) or f"{_bounds(fact)} {fact.unit}".strip()
    return f"{written.ljust(COLUMN)} # {may_be} - ask: {fact.question or fact.label}"


def _bounds(fact: Fact) -> str:
    return (
        f"{plain(fact.low)} to {plain(fact.high)}" if fact.low is not None and fact.high is not None else ""
    )


def _option(option: CaseOption, content: Content) -> str:
    written = ", ".join(
        f"{name}: {as_yaml(value) if isinstance(value, str) else plain(value)}"
        for name, value in option.written.items()
    )
    site = "" if option.site == "on" else f", site: {option.site}"
    return (
        f"      - {{card: {option.card}{site}, written: {{{written}}}}}   # {content.cards[option.card].name}"
    )
