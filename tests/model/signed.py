"""Content with all of it signed, and with one entry of it left out."""

from typing import Any

from builder.model.library import Content
from builder.model.review import ReviewBook, fingerprint
from builder.model.reviewable import reviewable, signed_content

WHO = {"who": "A clinician", "licence": "None real", "date": "2026-11-01"}


def signed_but(content: Content, *left_out: str) -> Content:
    """The content signed, but for what is left out, each named as part/id."""
    book: dict[str, Any] = {"format": 1}
    for part, nouns in reviewable(content).items():
        book[part] = {
            name: {**WHO, "fingerprint": fingerprint(noun)}
            for name, noun in nouns.items()
            if f"{part}/{name}" not in left_out
        }
    return signed_content(content, ReviewBook.model_validate(book))
