"""What is held right: written to disk and read again it is still exactly the same."""

from decimal import Decimal
from fractions import Fraction

from builder.model.keyed import KeyedParts, NumberRange


def test_a_range_reads_back_exactly() -> None:
    """Bounds are fractions, and stay so."""
    within = NumberRange(value=Decimal(45), least=Fraction(171, 4), most=Fraction(-1, 3), unit="minutes")
    parts = KeyedParts(kind="number", options=(), right=(), within=within)
    assert KeyedParts.model_validate_json(parts.model_dump_json()) == parts
