"""The table of the draft rules in DEVELOPERS.md names what is there, and leaves no draft rule out."""

import re

from builder.disk import shipped
from tests.content.library import content

DRAFT = {"RF": 21, "PH": 18, "LG": 1, "CO": 8, "CP": 6, "FR": 5, "SN": 1, "ST": 5, "HT": 1, "DS": 3, "DC": 2}
ROW = re.compile(r"^\| ([A-Z]{2}\d\d)b? \| (.+?) \| (.+?) \|$", re.MULTILINE)


def rows() -> list[tuple[str, str, str]]:
    """Draft rule, where it went, and why, of every row."""
    text = shipped("DEVELOPERS.md").read_text(encoding="utf-8")
    return ROW.findall(text.split("## The draft rules, weighed")[1].split("\n## ")[0])


def known() -> set[str]:
    """Every name a row may give: rules, cards, attributes, groups, signs, tables and lists."""
    shipped_content = content()
    cards = shipped_content.cards
    names = {*shipped_content.rules, *cards, *shipped_content.facts.written}
    names |= {sign.id for sign in shipped_content.phases.signs}
    names |= {*shipped_content.severity.tables, *shipped_content.severity.background}
    return names | {group for card in cards.values() for group in card.groups} | {"none", "order"}


def test_every_draft_rule_is_weighed() -> None:
    """72 rows, as many of each sort as the draft had."""
    sorts = [name[:2] for name, _, _ in rows()]
    assert {sort: sorts.count(sort) for sort in sorts} == {**DRAFT, "RF": DRAFT["RF"] + 1}
    assert len(sorts) == 72


def test_every_name_is_there() -> None:
    """No row names a rule, card, limit or table that the content does not hold."""
    named = {name for _, where, _ in rows() for name in re.findall(r"`(\w+)`", where)}
    assert named - known() == set()
