"""The policy for a judgement that is compared with what a panel chose."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from builder.grade.scoring.named import named
from builder.grade.scoring.value import Value, chosen


@dataclass(frozen=True)
class PanelKey:
    """Each option with the votes it had, of which at least one has some."""

    votes: tuple[tuple[str, int], ...]


def aggregate(key: PanelKey, option: str) -> Fraction:
    """The votes of the option chosen, of those of the option with most votes.

    Charlin, Roy, Brailovsky, Goulet & van der Vleuten 2000, Teaching and Learning in Medicine 12:189-195
    (journal and pages from memory).
    """
    votes = dict(key.votes)
    return Fraction(votes.get(option, 0), max(votes.values()))


PanelPolicy = Callable[[PanelKey, str], Fraction]
PANEL_POLICIES: Mapping[str, PanelPolicy] = MappingProxyType({"aggregate": aggregate})


def score_panel(key: PanelKey, policy: str, value: Value) -> Fraction:
    """What the one option chosen earns; several earn nothing."""
    rule, picked = named(PANEL_POLICIES, policy), chosen(value)
    return rule(key, *picked) if len(picked) == 1 else Fraction(0)
