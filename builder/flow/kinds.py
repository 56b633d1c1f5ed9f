"""Every kind of fault that can be printed, by name."""

from __future__ import annotations

from builder.check.registry import CHECKS, kind_of
from builder.model.kind import Kind

KINDS: dict[str, Kind] = {
    one.name: one for one in map(kind_of, (check for check in CHECKS if hasattr(check, "WHY")))
}
