"""The baseline a new card begins with: for each phase and site as strict as the strictest of its family."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from builder.model.card import PHASES, SITES, Card, CellRow, Phase, Site
from builder.model.condition import Node, Within, unparse_limits
from builder.new.fill import as_flow

STRICTER = ("ok", "not_yet", "barred")
TIGHTER = {"at_most": min, "below": min, "at_least": max, "over": max}


def grid_text(family: Sequence[Card]) -> str:
    """The lines of a baseline, a row for each phase and the sites that are answered alike there."""
    rows = []
    for phase in PHASES:
        alike: dict[str, list[Site]] = {}
        for site in SITES:
            alike.setdefault(_said(strictest(family, phase, site)), []).append(site)
        rows += [
            f"  - phase: [{phase}]\n    site: [{', '.join(sites)}]\n{said}" for said, sites in alike.items()
        ]
    return "\n".join(rows)


def strictest(family: Sequence[Card], phase: Phase, site: Site) -> CellRow:
    """The strictest cell of a family; where all allow, with all their limits at their tightest."""
    cells = [card.cell(phase, site) for card in family]
    worst = max(cells, key=lambda cell: STRICTER.index(cell.answer))
    if worst.answer != "ok":
        return worst
    limits: dict[str, Node] = {}
    for name, node in (one for cell in cells for one in cell.limits.items()):
        met = _both(limits[name], node) if name in limits else node
        if met is None:
            why = f"Its family does not agree on the limits of {name} here."
            return worst.model_copy(update={"answer": "barred", "limits": {}, "why": why, "contested": None})
        limits[name] = met
    return worst.model_copy(update={"limits": limits})


def _both(one: Node, other: Node) -> Node | None:
    """Two limits at once, where one condition can say so."""
    if one == other:
        return one
    if not (isinstance(one, Within) and isinstance(other, Within)):
        return None
    bounds = dict(one.bounds)
    for bound, value in other.bounds:
        mine = bounds.get(bound, value)
        if not (isinstance(mine, Decimal) and isinstance(value, Decimal)):
            return None
        bounds[bound] = TIGHTER[bound](mine, value)
    return Within(one.name, tuple(bounds.items()))


def _said(cell: CellRow) -> str:
    lines = [f"answer: {cell.answer}"]
    if cell.limits:
        lines.append(f"limits: {as_flow(unparse_limits(dict(cell.limits)))}")
    lines += [f"why: {as_flow(cell.why)}", f"source: {as_flow(cell.source)}", f"strength: {cell.strength}"]
    if cell.contested:
        lines.append(f"contested: {as_flow(cell.contested.model_dump())}")
    return "\n".join(f"    {line}" for line in lines)
