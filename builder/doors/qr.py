"""The door to square codes that a phone's camera reads."""

from __future__ import annotations

import segno

QUIET = 4  # modules of empty border: ISO/IEC 18004, clause on the quiet zone; from memory


def square(text: str) -> str:
    """The square code of a text as SVG without size or style: dark on light also where the page is dark."""
    made = segno.make_qr(text, error="m")
    return made.svg_inline(
        border=QUIET, omitsize=True, dark="#000", light="#fff", svgclass="square", lineclass=None
    )
