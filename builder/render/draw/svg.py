"""The few pieces of SVG that every drawing is made of."""

from __future__ import annotations

from html import escape


def tag(name: str, inside: str = "", **attributes: object) -> str:
    """An element; `_` in an attribute's name stands for `-`, a trailing one is dropped."""
    written = "".join(f' {_named(key)}="{escape(_value(one))}"' for key, one in attributes.items())
    return f"<{name}{written}>{inside}</{name}>" if inside else f"<{name}{written}/>"


def text(words: str, x: float, y: float, **attributes: object) -> str:
    """A line of text."""
    return tag("text", escape(words, quote=False), x=x, y=y, **attributes)


def picture(inside: str, width: float, height: float, name: str, **attributes: object) -> str:
    """A drawing that carries its meaning as a name for those who do not see it."""
    size = f"0 0 {_value(width)} {_value(height)}"
    return tag("svg", inside, viewBox=size, role="img", aria_label=name, **attributes)


def ornament(inside: str, width: float, height: float, **attributes: object) -> str:
    """A drawing beside a text that says the same."""
    size = f"0 0 {_value(width)} {_value(height)}"
    return tag("svg", inside, viewBox=size, aria_hidden="true", focusable="false", **attributes)


def _named(key: str) -> str:
    return (
        key if key == "viewBox" or key.endswith(("Units", "Transform")) else key.rstrip("_").replace("_", "-")
    )


def _value(one: object) -> str:
    return f"{one:.1f}".rstrip("0").rstrip(".") if isinstance(one, float) else str(one)
