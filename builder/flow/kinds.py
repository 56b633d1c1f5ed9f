"""Every kind of fault that can be printed, by name."""

from __future__ import annotations

from builder.assess.shortfalls import KINDS as OF_TESTS
from builder.check.registry import CHECKS, kind_of
from builder.model.kind import Kind
from builder.read.kinds import READ_KINDS

KINDS: dict[str, Kind] = {
    one.name: one for one in sorted((*READ_KINDS, *OF_TESTS, *map(kind_of, CHECKS)), key=lambda one: one.name)
}
