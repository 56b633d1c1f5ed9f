"""The colour tokens of the look, and the contrast they give."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Literal

from builder.fault import Fault

LIGHT = {
    "paper": "#faf6ee",
    "card": "#fffdf8",
    "ink": "#26221d",
    "soft": "#6a6156",
    "line": "#ddd2bf",
    "sand": "#efe6d6",
    "accent": "#0d5757",
    "accent_wash": "#e2efec",
    "clay": "#9a431d",
    "clay_wash": "#f6e6da",
}
DARK = {
    "paper": "#1c1a17",
    "card": "#262320",
    "ink": "#f1e9dc",
    "soft": "#b5a996",
    "line": "#443e36",
    "sand": "#332e28",
    "accent": "#7cc7be",
    "accent_wash": "#1f3835",
    "clay": "#e9a27c",
    "clay_wash": "#40281c",
}
PRINT = LIGHT | {
    "paper": "#ffffff",
    "card": "#ffffff",
    "ink": "#000000",
    "soft": "#444444",
    "line": "#999999",
}

Colours = Mapping[Literal["light", "dark"], Mapping[str, str]]

TEXT = 4.5
SHAPE = 3.0
KNEE = 0.04045
# Which token stands on which, and the contrast it needs: WCAG 2.2, success criteria 1.4.3 and 1.4.11.
PAIRS: tuple[tuple[str, str, float], ...] = (
    *((text, ground, TEXT) for text in ("ink", "soft", "accent", "clay") for ground in ("paper", "card")),
    *(("ink", ground, TEXT) for ground in ("sand", "accent_wash", "clay_wash")),
    *(("accent", ground, TEXT) for ground in ("accent_wash", "sand")),
    *(("soft", ground, SHAPE) for ground in ("accent_wash", "sand")),
    ("clay", "clay_wash", TEXT),
    ("paper", "accent", TEXT),
    ("paper", "clay", TEXT),
)


def contrast(one: str, other: str) -> float:
    """The contrast of two colours written `#rrggbb`, from 1 to 21 (WCAG 2.2, relative luminance)."""
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    red, green, blue = (_linear(int(colour[at : at + 2], 16) / 255) for at in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _linear(share: float) -> float:
    return share / 12.92 if share <= KNEE else float(((share + 0.055) / 1.055) ** 2.4)


def too_faint(tokens: Mapping[str, str]) -> list[tuple[str, str, float]]:
    """The pairs that miss their contrast, with the contrast they have."""
    found = [(text, ground, contrast(tokens[text], tokens[ground]), least) for text, ground, least in PAIRS]
    return [(text, ground, has) for text, ground, has, least in found if has < least]


def stylesheet(colours: Colours) -> str:
    """The tokens as CSS; a provider's own colours stand before the defaults."""
    light, dark = _checked(LIGHT, colours.get("light", {})), _checked(DARK, colours.get("dark", {}))
    return (
        f":root {{ color-scheme: light dark; {_declared(light)} }}\n"
        f"@media screen and (prefers-color-scheme: dark) {{ :root {{ {_declared(dark)} }} }}\n"
        f"@media print {{ :root {{ color-scheme: light; {_declared(PRINT)} }} }}\n"
    )


def _checked(defaults: Mapping[str, str], own: Mapping[str, str]) -> dict[str, str]:
    tokens = {**defaults, **own}
    for name, colour in tokens.items():
        if name not in defaults or not re.fullmatch(r"#[0-9a-fA-F]{6}", colour):
            raise Fault(
                f"The colour {name}: {colour} cannot be used.",
                f"Write #rrggbb for one of {', '.join(defaults)}.",
            )
    for text, ground, has in too_faint(tokens):
        raise Fault(
            f"The colour {text} is too faint on {ground} (contrast {has:.1f}).",
            "Choose colours further apart.",
        )
    return tokens


def _declared(tokens: Mapping[str, str]) -> str:
    return " ".join(f"--{name}: {tokens[name]};" for name in LIGHT)
