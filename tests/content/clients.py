"""Clients of the shipped content at some stage of an injury, and cards as they are written for them."""

from decimal import Decimal

from builder.judge.frame import Frame
from builder.judge.space import Value
from builder.model.card import Site
from builder.model.judgement import OptionJudgement
from builder.model.tables import Severity
from tests.content.library import content, judge

CALM: dict[str, Value] = {
    "swelling_trend": "falling",
    "heat": "none",
    "rest_pain": Decimal(1),
    "pain_with": "movement",
    "flare": "none",
    "range_trend": "improving",
    "tenderness": "firm_pressure",
    "tissue_feel": "doughy",
    "active_contraction": "mild_pain",
    "range": "half",
}
HEALED: dict[str, Value] = {
    **CALM,
    "swelling_trend": "none",
    "rest_pain": Decimal(0),
    "pain_with": "end_range",
    "tenderness": "deep_pressure",
    "tissue_feel": "fibrous",
    "active_contraction": "painless",
    "range": "near_full",
}
HOT: dict[str, Value] = {
    "swelling_trend": "rising",
    "heat": "clear",
    "rest_pain": Decimal(5),
    "flare": "none",
    "range_trend": "same",
}


def client(hours: int, *found: dict[str, Value], screen: str = "lower_limb_with_cold") -> dict[str, Value]:
    """An adult with a bruised thigh who said no to every question of a set and yes to the work."""
    values: dict[str, Value] = dict.fromkeys(content().screening.covered_by(screen), "no")
    values |= {"injury": "contusion", "tissue": "muscle", "region": "thigh", "age": Decimal(24)}
    values |= {"consent": "yes", "reinjured": "no", "haematoma": "intermuscular"}
    values |= {"hours": Decimal(hours), "hours_since_first": Decimal(hours)}
    for one in found:
        values |= one
    return values


def seen(values: dict[str, Value], severity: Severity = "moderate") -> Frame:
    """The visit of such a client, graded before."""
    return judge().frame(values, severity, severity)


def option(
    frame: Frame, card: str, written: dict[str, Value] | None = None, site: Site = "on"
) -> OptionJudgement:
    """A card at its usual dose, changed as written."""
    one = content().cards[card]
    return judge().options.judge(frame, one, site, {**one.usual, **(written or {})})
