"""A question of each kind, answered as the schema's own examples are, for tests that show them."""

from typing import Any

from builder.model.question import QUESTION_KINDS, AuthorQuestion

FRAME = {
    "format": 1,
    "id": "asked",
    "objective": "phases",
    "level": "apply",
    "use": "practice",
    "stem": "Is **this** < that?",
    "source": ["example_2020"],
}
EXAMPLES: dict[str, Any] = {kind: AuthorQuestion.model_fields[kind].examples for kind in QUESTION_KINDS}


def asked(kind: str, **more: object) -> AuthorQuestion:
    """The question of one kind, its block or anything else changed."""
    (block,) = EXAMPLES[kind] or [None]
    return AuthorQuestion.model_validate({**FRAME, kind: block, **more})
