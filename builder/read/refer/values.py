"""Values that must be ones a declared fact may have: every place where one may stand."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import NamedTuple

from builder.diagnostic import Diagnostic
from builder.model.card import Card
from builder.model.case import Case
from builder.model.fact import Fact, FactBook
from builder.model.noun import Noun
from builder.place import Path
from builder.read.nearest import quoted, suggest
from builder.read.select import select
from builder.read.shelf import Shelf
from builder.read.written import Written


class Told(NamedTuple):
    """A fault of one value: the check, what is wrong, and what mends it."""

    check: str
    message: str
    remedy: str


class Recorded(NamedTuple):
    """A place in a sort of file where a mapping from names to values stands."""

    model: type[Noun]
    pattern: str
    attributes: bool


RECORDED = (
    Recorded(Case, "history", attributes=False),
    Recorded(Case, "visits/*/findings", attributes=False),
    Recorded(Case, "visits/*/screen/all_no_except", attributes=False),
    Recorded(Case, "visits/*/chosen/*/written", attributes=True),
    Recorded(Case, "visits/*/wrong/*/written", attributes=True),
    Recorded(Card, "usual", attributes=True),
    Recorded(Card, "ladder", attributes=True),
)
FROM_CASE = {"injury": "injury", "tissue/region": "region", "tissue/haematoma": "haematoma"}
WORKED_OUT = frozenset(
    {"injury", "tissue", "region", "haematoma", "age", "consent", "hours", "hours_since_first", "reinjured"}
    | {"phase", "severity", "signs_behind", "session_urgency"}
)


def misfit(name: str, fact: Fact | None, value: object) -> Told | None:
    """What is wrong with a value of a fact, if anything."""
    if fact is None:
        return None
    if value is None or isinstance(value, list | dict):
        return Told(
            "fact_value", f"`{name}` needs one value, not {quoted(value)}.", "Write one word or number."
        )
    if fact.kind == "number":
        return _number_misfit(name, fact, value)
    if isinstance(value, str) and value in fact.words_of_values:
        return None
    if fact.kind == "yes_no" and not isinstance(value, str):
        return Told("fact_value", f"`{name}` is yes or no, not {quoted(value)}.", "Write `yes` or `no`.")
    remedy = suggest(str(value), fact.words_of_values)
    return Told("fact_value", f"{quoted(value)} is no value of `{name}`.", remedy)


def _number_misfit(name: str, fact: Fact, value: object) -> Told | None:
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        unit = f" ({fact.unit})" if fact.unit else ""
        remedy = "Write digits alone, without quotes or unit."
        return Told("fact_value", f"`{name}` is a number{unit}, not {quoted(value)}.", remedy)
    if (fact.low is None or value >= fact.low) and (fact.high is None or value <= fact.high):
        return None
    least = f" from {fact.low}" if fact.low is not None else ""
    most = f" to {fact.high}" if fact.high is not None else " upwards"
    remedy = f"Write a number{least}{most}{f' ({fact.unit})' if fact.unit else ''}."
    return Told("fact_out_of_range", f"{quoted(value)} is not possible for `{name}`.", remedy)


def wrong_values(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every recorded name that is not declared, and every value that its fact cannot have."""
    if FactBook in shelf.unsure:
        return
    for recorded in RECORDED:
        known = shelf.attributes if recorded.attributes else shelf.facts
        for written in shelf.of(recorded.model):
            for path, values in select(written.value, recorded.pattern):
                yield from _wrong_in(
                    written, path, values, known, "attribute" if recorded.attributes else "fact"
                )
    for written in shelf.of(Case):
        for pattern, name in FROM_CASE.items():
            yield from _wrong_basic(written, pattern, name, shelf.facts)


def _wrong_in(
    written: Written, path: Path, values: object, known: Mapping[str, Fact | None], what: str
) -> Iterator[Diagnostic]:
    for name, value in values.items() if isinstance(values, dict) else ():
        at = (*path, name)
        if what == "fact" and name in WORKED_OUT:
            remedy = "Remove it here; write it where the case says who, what and when."
            yield written.fault(
                "fact_worked_out", at, (f"`{name}` is worked out from the case.", remedy), key=True
            )
        elif name not in known:
            message = f"There is no {what} {quoted(name)}."
            yield written.fault(f"{what}_unknown", at, (message, suggest(name, known)), key=True)
        else:
            for place, one in _values(at, value):
                if told := misfit(name, known[name], one):
                    yield written.fault(told.check, place, (told.message, told.remedy))


def _values(path: Path, value: object) -> list[tuple[Path, object]]:
    """A value, or each rung of a ladder of doses."""
    if isinstance(value, list) and path[0] == "ladder":
        return [((*path, at), rung) for at, rung in enumerate(value)]
    return [(path, value)]


def _wrong_basic(
    written: Written, pattern: str, name: str, facts: Mapping[str, Fact | None]
) -> Iterator[Diagnostic]:
    for path, value in select(written.value, pattern):
        if name in facts and value is not None and (told := misfit(name, facts[name], value)):
            yield written.fault(told.check, path, (told.message, told.remedy))
