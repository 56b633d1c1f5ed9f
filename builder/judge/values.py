"""What a case file records of one visit, as one flat set of facts."""

from __future__ import annotations

from decimal import Decimal

from builder.judge.space import Value
from builder.model.case import Case, Visit
from builder.model.fact import ScreeningBook


def values_of(case: Case, visit: Visit, screening: ScreeningBook) -> dict[str, Value]:
    """Every recorded fact of a visit; findings stand over the screen, the screen over the history."""
    latest = visit.since_reinjury if visit.since_reinjury is not None else visit.since_injury
    values: dict[str, Value] = {
        "injury": case.injury,
        "tissue": case.tissue.kind,
        "region": case.tissue.region,
        "age": Decimal(case.client.age),
        "hours": latest,
        "hours_since_first": visit.since_injury,
        "reinjured": "no" if visit.since_reinjury is None else "yes",
    }
    if case.tissue.haematoma is not None:
        values["haematoma"] = case.tissue.haematoma
    if visit.consent is not None:
        values["consent"] = visit.consent
    values.update(case.history)
    if visit.screen is not None:
        values.update(dict.fromkeys(screening.covered_by(visit.screen.set), "no"))
        values.update(visit.screen.all_no_except)
    values.update(visit.findings)
    return values
