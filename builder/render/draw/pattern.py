"""The patterns by which a phase is known without colour: hatched, dotted, lined, plain."""

from __future__ import annotations

from builder.model.card import Phase
from builder.render.draw.svg import ornament, tag

GROUND: dict[Phase, str] = {
    "acute": "clay-wash-full",
    "early_repair": "sand-full",
    "late_repair": "sand-full",
    "remodelling": "wash-full",
    "none": "sand-full",
}


def definitions(name: str) -> str:
    """The patterns, under ids that begin with `name`, once in a drawing that uses them."""
    hatch = tag("path", d="M0 8 8 0M-2 2 2-2M6 10 10 6", class_="clay", stroke_width=1.3)
    dots = tag("circle", cx=2.5, cy=2.5, r=1.15, class_="soft-full")
    lines = tag("path", d="M0 4h8", class_="soft", stroke_width=1.2)
    return tag(
        "defs",
        _tile(f"{name}-acute", 8, hatch)
        + _tile(f"{name}-early_repair", 7, dots)
        + _tile(f"{name}-late_repair", 7, lines),
    )


def _tile(name: str, size: int, inside: str) -> str:
    return tag("pattern", inside, id=name, width=size, height=size, patternUnits="userSpaceOnUse")


def filled(phase: Phase, outline: str, name: str) -> str:
    """An outline filled with a phase's ground and pattern."""
    ground = tag("path", d=outline, class_=GROUND[phase])
    if phase in ("acute", "early_repair", "late_repair"):
        return ground + tag("path", d=outline, fill=f"url(#{name}-{phase})")
    return ground + tag("path", d=outline, class_="go" if phase == "remodelling" else "thin")


def swatch(phase: Phase, within: str = "swatch") -> str:
    """A small piece of a phase's pattern, to stand beside its word; `within` keeps ids apart on one page."""
    name = f"{within}-{phase}"
    return ornament(
        definitions(name) + filled(phase, "M0 0h160v32H0z", name), 160, 32, preserveAspectRatio="none"
    )
