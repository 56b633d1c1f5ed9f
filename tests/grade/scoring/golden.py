"""The shared examples of scoring, as the script's tests read them too."""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path
from typing import Any

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.keyed import Keyed
from builder.grade.scoring.matching import MatchKey
from builder.grade.scoring.number import NumberKey
from builder.grade.scoring.ordering import OrderKey
from builder.grade.scoring.panel import PanelKey
from builder.grade.scoring.registry import score
from builder.model.answers import Given

FILE = Path(__file__).parents[2] / "golden" / "scoring.json"
EXAMPLES: list[dict[str, Any]] = json.loads(FILE.read_text(encoding="utf-8"))["examples"]


def key_of(question: dict[str, Any]) -> Keyed:
    """The key in one example."""
    match question["kind"]:
        case "one" | "many":
            return ChoiceKey(tuple(question["options"]), frozenset(question["right"]))
        case "order":
            return OrderKey(tuple(question["steps"]), tuple((one, two) for one, two in question["must"]))
        case "match":
            return MatchKey(frozenset((left, right) for left, right in question["pairs"]))
        case "number":
            return NumberKey(Fraction(question["least"]), Fraction(question["most"]), question["unit"])
        case _:
            return PanelKey(tuple((option, votes) for option, votes in question["votes"]))


def earned(example: dict[str, Any]) -> Fraction:
    """What the answer of one example earns, read as an answer sheet is."""
    kind = example["question"]["kind"]
    given = Given(q="q", kind="one" if kind == "panel" else kind, value=example["value"])
    return score(key_of(example["question"]), example["policy"], given.value)
