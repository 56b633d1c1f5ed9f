"""Finds a policy by its name."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeVar

from builder.fault import Fault

Policy = TypeVar("Policy")


def named(policies: Mapping[str, Policy], name: str) -> Policy:
    """The policy of this name; a name that no policy has is a fault."""
    if name not in policies:
        raise Fault(f"There is no scoring policy `{name}` for this kind of question.", _remedy(policies))
    return policies[name]


def _remedy(policies: Mapping[str, Policy]) -> str:
    return f"Use one of {', '.join(policies)}."
