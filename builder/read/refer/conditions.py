"""Conditions that ask for what nobody declared, for impossible values, or for what is not known yet."""

from __future__ import annotations

from collections.abc import Iterator

from builder.diagnostic import Diagnostic
from builder.model.fact import FactBook
from builder.read.refer.condition import Fault, atom_faults, condition_faults
from builder.read.refer.scopes import CONDITIONS, LIMITS
from builder.read.select import select
from builder.read.shelf import Shelf
from builder.read.written import Written


def wrong_conditions(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every fault in every condition, and in every mapping of names to what they must be."""
    if FactBook in shelf.unsure:
        return
    for asked in CONDITIONS:
        for written in shelf.of(asked.model):
            scope = asked.scope(shelf, written.value)
            for path, condition in select(written.value, asked.pattern):
                yield from _said(written, condition_faults(condition, path, scope))
    for asked in LIMITS:
        for written in shelf.of(asked.model):
            scope = asked.scope(shelf, written.value)
            for path, limits in select(written.value, asked.pattern):
                for name, value in limits.items() if isinstance(limits, dict) else ():
                    yield from _said(written, atom_faults(name, value, (*path, name), scope))


def _said(written: Written, faults: Iterator[Fault]) -> Iterator[Diagnostic]:
    for fault in faults:
        yield written.fault(fault.told.check, fault.path, fault.told[1:], key=fault.key)
