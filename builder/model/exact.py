"""Exact numbers in print: cut, never rounded up, so that no printed mark passes where the real one fails."""

from __future__ import annotations

from fractions import Fraction


def places(value: Fraction, count: int) -> str:
    """A number at least 0 with exactly `count` decimals, cut."""
    whole = value * 10**count // 1
    digits = str(whole).rjust(count + 1, "0")
    return f"{digits[:-count]}.{digits[-count:]}" if count else digits


def percent(share: Fraction) -> str:
    """A share of at least 0 in percent, cut to three decimals, without idle zeros: 32/46 is `69.565 %`."""
    return places(share * 100, 3).rstrip("0").rstrip(".") + " %"


def number(value: Fraction) -> str:
    """A number at least 0, whole or cut to two decimals."""
    return str(value) if value.denominator == 1 else places(value, 2)
