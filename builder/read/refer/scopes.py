"""What each condition may ask about, by where it stands."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import NamedTuple

from builder.model.card import Card
from builder.model.fact import Fact, FactBook
from builder.model.noun import Noun
from builder.model.rule import URGENCIES, Rule
from builder.model.tables import PhaseBook, SeverityBook
from builder.read.refer.condition import Scope
from builder.read.shelf import Shelf

_URGENCY = "session_urgency"
_URGENCIES = Fact(
    kind="scale", label="Urgency", group="history", worse_when="higher", values=("none", *URGENCIES)
)


class Asked(NamedTuple):
    """A place in a sort of file where a condition stands, and what it may ask about."""

    model: type[Noun]
    pattern: str
    scope: Callable[[Shelf, object], Scope]


def _client(shelf: Shelf, _: object) -> Scope:
    return Scope(
        shelf.facts, _options(shelf, "Here only the client can be asked about, not an option or the session.")
    )


def _before_phase(shelf: Shelf, _: object) -> Scope:
    return _without(shelf, ("phase", "signs_behind"))


def _before_severity(shelf: Shelf, _: object) -> Scope:
    return _without(shelf, ("phase", "signs_behind", "severity"))


def _without(shelf: Shelf, later: Iterable[str]) -> Scope:
    closed = {name: f"`{name}` is worked out from this, so it cannot be asked here." for name in later}
    open_ = {name: fact for name, fact in shelf.facts.items() if name not in closed}
    return Scope(open_, {**_client(shelf, None).closed, **closed})


def _rule(shelf: Shelf, rule: object) -> Scope:
    if not isinstance(rule, dict) or "session" not in rule:
        return _everything(shelf, rule)
    closed = _options(shelf, "A rule about the session cannot ask how an option is written.")
    return Scope(
        shelf.facts,
        {**closed, _URGENCY: "The session's urgency comes from this, so it cannot be asked here."},
    )


def _everything(shelf: Shelf, _: object) -> Scope:
    return Scope(with_options(shelf.facts, shelf.attributes))


def with_options(
    facts: Mapping[str, Fact | None], attributes: Mapping[str, Fact | None]
) -> dict[str, Fact | None]:
    """Everything a rule may ask about: the client, how an option is written, and the session's urgency."""
    return {**facts, **_written(attributes), _URGENCY: _URGENCIES}


def attributes(shelf: Shelf, _: object) -> Scope:
    """The attributes of a written option, by their own names."""
    return Scope(shelf.attributes, what="attribute")


def _written(known: Mapping[str, Fact | None]) -> dict[str, Fact | None]:
    return {f"written.{name}": fact for name, fact in known.items()}


def _options(shelf: Shelf, why: str) -> dict[str, str]:
    return dict.fromkeys((*_written(shelf.attributes), _URGENCY), why)


CONDITIONS = (
    Asked(Rule, "when", _rule),
    Asked(FactBook, "facts/*/asked_where", _before_severity),
    Asked(PhaseBook, "does_not_apply", _before_phase),
    Asked(PhaseBook, "signs/*/when", _before_phase),
    Asked(PhaseBook, "doubt/*/when", _before_phase),
    Asked(SeverityBook, "tables/*/applies", _before_severity),
    Asked(SeverityBook, "tables/*/bands/*/when", _before_severity),
    Asked(SeverityBook, "tables/*/raised/*/when", _before_severity),
)
LIMITS = (
    Asked(Card, "baseline/*/limits", attributes),
    Asked(Rule, "options/*/needs", attributes),
    Asked(Rule, "examples/*/given", _everything),
)
