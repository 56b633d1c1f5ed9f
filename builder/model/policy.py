"""The names of scoring policies, by kind of question, and which of them holds where nothing is said."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal, get_args

from builder.model.question import QuestionKind

ManyPolicy = Literal["exact", "plus_minus", "per_option", "half_point", "over_half", "limited", "shares"]
OrderPolicy = Literal["exact", "in_place", "pairs", "adjacent", "longest", "longest_beyond_one", "footrule"]
MatchPolicy = Literal["per_pair", "exact"]

# What nothing but one policy was ever written for stands alone; a person marks what is written.
POLICY_NAMES: Mapping[QuestionKind, tuple[str, ...]] = MappingProxyType(
    {
        "one": ("exact",),
        "many": get_args(ManyPolicy),
        "order": get_args(OrderPolicy),
        "match": get_args(MatchPolicy),
        "number": ("within",),
        "panel": ("aggregate",),
        "text": ("rubric",),
    }
)

# Many: Betts, Muntean, Kim & Kao 2022, who found it among the two most promising. Order: Kendall 1938 (from
# memory); a guess earns half of it. Match: common practice, no source. Panel: Charlin et al. 2000.
USUAL: Mapping[QuestionKind, str] = MappingProxyType(
    {
        "one": "exact",
        "many": "plus_minus",
        "order": "pairs",
        "match": "per_pair",
        "number": "within",
        "panel": "aggregate",
        "text": "rubric",
    }
)
