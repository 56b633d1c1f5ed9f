"""Conditions that cannot be asked, and facts and screens that cannot be declared so."""

from __future__ import annotations

from builder.model.kind import Kind, kind
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule

_SESSION = """
format: 1
id: numb_and_rising
title: Numb while it swells
when: %s
session: {urgency: same_day}
why: Both together may mean pressure on a nerve.
source: [common_practice]
strength: expert
examples:
  - {fires: yes, given: {numb_skin: yes, swelling_trend: rising}}
  - {fires: no, given: {numb_skin: no, swelling_trend: rising}}
"""


def _when(written: str) -> str:
    return sample_rule(when=written)


OF_CONDITIONS: tuple[Kind, ...] = (
    kind(
        "condition_malformed",
        "A condition is a fact and its value, or several of them under all, any or not. Nothing "
        "else is understood.",
        FILE,
        bad=_when("{any: {numb_skin: yes}}"),
        good=_when("{any: [{numb_skin: yes}]}"),
    ),
    kind(
        "condition_no_order",
        "Only numbers and scales have more and less. Between words without an order nothing lies.",
        FILE,
        bad=_when("{numb_skin: {at_least: yes}}"),
        good=GOOD_RULE,
    ),
    kind(
        "condition_out_of_reach",
        "What is worked out later cannot be asked before. A referral cannot hang on how an option "
        "is written.",
        "content/severity.yml tables/thigh",
        bad="applies: {injury: contusion, region: thigh, phase: acute}",
        good="applies: {injury: contusion, region: thigh}",
    ),
    kind(
        "fact_name_reserved",
        "Conditions have words of their own. A fact of that name could never be asked for.",
        "content/facts.yml facts",
        bad="any: {kind: yes_no, label: Any other sign, group: history, worse_when: neither}",
        good="swelling_trend: {kind: scale, label: Swelling, group: sign, worse_when: higher, "
        "values: [none, falling, steady, rising], room: true}",
    ),
    kind(
        "screen_not_yes_no",
        "A screen is answered all no, with exceptions. What has no yes and no cannot be answered so.",
        "content/screening.yml sets",
        bad='flags: {name: Red flags, date: "2026-11-01", covers: [fever, swelling_trend]}',
        good='flags: {name: Red flags, date: "2026-11-01", covers: [fever]}',
    ),
)
