"""Every kind of fault that can be printed, by name."""

from __future__ import annotations

from builder.assess.balance import KINDS as OF_POOLS
from builder.assess.shortfalls import KINDS as OF_TESTS
from builder.check.accept import KINDS as OF_COMMENTS
from builder.check.registry import CHECKS, kind_of
from builder.diagnostic import Level
from builder.model.kind import Kind
from builder.read.kinds import READ_KINDS

EVERY = (*READ_KINDS, *OF_TESTS, *OF_POOLS, *OF_COMMENTS, *map(kind_of, CHECKS))
KINDS: dict[str, Kind] = {one.name: one for one in sorted(EVERY, key=lambda one: one.name)}
LEVELS: dict[str, Level] = {one.name: one.level for one in KINDS.values()}
