"""The one markup that an author may use inside a sentence: `**bold**`."""

from __future__ import annotations

import re
from html import escape

from builder.doors.page import markup


def emphasised(text: str) -> str:
    """A text with its `**bold**` words as markup, and everything else as it was written."""
    return markup(re.sub(r"\*\*(.+?)\*\*", r"<b>\1</b>", escape(text)))
