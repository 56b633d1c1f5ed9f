"""Wraps over narrowed arteries, by the ankle-brachial index a clinician reported.

Rabe E et al., Phlebology 2020;35:447-460: under 0.6 is severe and bars compression. 0.6 to 0.8 reduced
only, on advice: vascular notes, read second-hand; exactly 0.8 as reduced is our own default.
"""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from builder.model.card import Answer
from tests.content.clients import HOT, client, option, seen
from tests.content.library import content


def wrapped(index: str | None, tension: str = "medium", cleared: str = "yes") -> Answer:
    """The answer at worst for a wrap on a leg with narrowed arteries."""
    reported: dict[str, Value] = {} if index is None else {"ankle_brachial": Decimal(index)}
    values = client(18, HOT, {"arterial_disease": "yes", "cleared": cleared}, reported)
    return option(seen(values), "wrap_pad", {"tension": tension}).at_worst


@pytest.mark.parametrize(
    ("index", "medium", "light"),
    [
        ("0.59", "barred", "barred"),
        ("0.60", "change", "ok"),
        ("0.80", "change", "ok"),
        ("0.81", "ok", "ok"),
    ],
)
def test_the_published_boundaries(index: str, medium: str, light: str) -> None:
    """0.59 bars every wrap; 0.60 to 0.80 allows a light one on advice (Rabe 2020; 0.8 second-hand)."""
    assert (wrapped(index), wrapped(index, "light")) == (medium, light)


def test_an_index_nobody_reported_is_taken_as_severe() -> None:
    """With narrowed arteries and no index, no wrap is right (Rabe 2020; not knowing is never better)."""
    assert wrapped(None, "light") == "barred"


@pytest.mark.parametrize("index", ["0.60", "0.80", "1.0"])
def test_no_index_clears_by_itself(index: str) -> None:
    """Without a clinician's word in writing no index opens a wrap (own default)."""
    assert wrapped(index, "light", cleared="no") == "barred"


def test_without_narrowed_arteries_no_index_is_asked_for() -> None:
    """Whoever has no arterial disease is wrapped without an index."""
    assert option(seen(client(18, HOT)), "wrap_pad").right


def test_the_index_is_reported_never_measured_here() -> None:
    """The fact says that a clinician reports it."""
    assert content().facts.facts["ankle_brachial"].reported


def test_a_weak_heart_bars_wrap_and_lymph_strokes() -> None:
    """Heart failure bars compression (Rabe 2020: classes III and IV; every class here, own default)."""
    frame = seen(client(18, HOT, {"heart_failure": "yes"}))
    assert option(frame, "wrap_pad").answer == option(frame, "lymph", site="proximal").answer == "barred"
