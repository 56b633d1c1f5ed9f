"""A question without its answer, and a sound block for every kind of answer."""

from typing import Any

QUESTION: dict[str, Any] = {
    "format": 1,
    "id": "first_aid",
    "objective": "choose",
    "level": "apply",
    "use": "practice",
    "stem": "What comes first?",
    "source": ["common_practice"],
}
WHY = {"because": "So it is taught."}
BLOCKS: dict[str, dict[str, Any]] = {
    "one": {"options": [{"text": "Ask", "right": "yes", **WHY}, {"text": "Cool", **WHY}]},
    "many": {
        "options": [
            {"text": "Ask", "right": "yes", **WHY},
            {"text": "Cool", "right": "yes", **WHY},
            {"text": "Knead", **WHY},
        ]
    },
    "order": {
        "steps": [
            {"id": "pad", "text": "Lay the pad", **WHY},
            {"id": "wrap", "text": "Wrap it", "after": ["pad"], **WHY},
            {"id": "look", "text": "Look at the toes", "after": ["wrap"], **WHY},
        ]
    },
    "match": {
        "pairs": [
            {"left": "acute", "right": "limit the injury", **WHY},
            {"left": "early repair", "right": "clear the swelling", **WHY},
        ],
        "spare": [{"right": "win the race", **WHY}],
    },
    "number": {"value": 20, "unit": "minutes", "within": 5, **WHY},
    "panel": {
        "judges": "Twelve therapists, in the spring",
        "options": [{"text": "Go on", "votes": 3, **WHY}, {"text": "Wait", "votes": 9, **WHY}],
    },
    "text": {
        "example": "It still bleeds.",
        "criteria": [{"id": "reason", "title": "Names the reason", "levels": ["No", "Yes"]}],
    },
}
