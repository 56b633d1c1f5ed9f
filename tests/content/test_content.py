"""The shipped content holds together: every cell, name, source, example, dose and question."""

from collections import Counter
from collections.abc import Iterator
from itertools import product

import pytest

from builder.judge.examples import failed_examples
from builder.judge.prove import flag_table, holes
from builder.judge.space import Value, holds
from builder.model.card import PHASES, SITES, Aim, Card, CellRow
from builder.model.condition import Among, Within, atoms
from builder.model.rule import Rule, RuleExample
from tests.check.wording.book import wording
from tests.content.library import content, judge

GIVEN_GROUPS = {"hands_on", "techniques", "all"}
CARDS, RULES = sorted(content().cards), sorted(content().rules)
ASKED_APART = {"consent", "guardian_consent"}


def ok_rows(card: Card) -> list[CellRow]:
    """The rows of a card that let it be done."""
    return [row for row in card.baseline if row.answer == "ok"]


def meets(row: CellRow, attribute: str, value: Value) -> bool:
    """Whether a value meets a row's limit on one attribute."""
    node = row.limits[attribute]
    return isinstance(node, Among | Within) and holds(node, value, content().facts.written[attribute])


def sources() -> Iterator[tuple[str, str]]:
    """Every source named by cards, rules, phases, severity tables and wording, with who names it."""
    shipped = content()
    for card in shipped.cards.values():
        yield from ((card.id, name) for row in card.baseline for name in row.source)
    for rule in shipped.rules.values():
        yield from ((rule.id, name) for name in rule.source)
    book = shipped.phases
    for clock in book.clocks:
        yield from ((f"{clock.tissue} {clock.severity}", name) for name in clock.source)
    for sign in (*book.signs, *book.doubt):
        yield from ((sign.id, name) for name in sign.source)
    for title, table in shipped.severity.tables.items():
        yield from ((title, name) for name in table.source)
    for title, listed in shipped.severity.background.items():
        yield from ((title, name) for name in listed.source)
    yield from (("wording", name) for name in wording().source)
    yield from ((key, name) for key, one in wording().thresholds for name in one.source)


def differing(one: RuleExample, other: RuleExample) -> set[str]:
    """The facts in which two examples differ, one that only one of them gives included."""
    names = {*one.given, *other.given}
    return {name for name in names if one.given.get(name) != other.given.get(name)}


@pytest.mark.parametrize("name", CARDS)
def test_the_grid_is_filled_once(name: str) -> None:
    """A card answers every phase and site exactly once, under the name of its file."""
    card = content().cards[name]
    filled = Counter(cell for row in card.baseline for cell in product(row.phase, row.site))
    assert card.id == name
    assert filled == Counter(product(PHASES, SITES))


@pytest.mark.parametrize("name", CARDS)
def test_the_usual_dose_meets_every_limit(name: str) -> None:
    """A card written as usual is OK wherever its cell says so."""
    card = content().cards[name]
    rows = ok_rows(card)
    assert [(row.phase, one) for row in rows for one in row.limits if one not in card.usual] == []
    assert [
        (row.phase, one) for row in rows for one in row.limits if not meets(row, one, card.usual[one])
    ] == []


@pytest.mark.parametrize("name", CARDS)
def test_a_ladder_reaches_past_every_limit(name: str) -> None:
    """Every dose ladder holds a value within each limit and at least two beyond it."""
    card = content().cards[name]
    for attribute, ladder in card.ladder.items():
        limited = [row for row in ok_rows(card) if attribute in row.limits]
        assert limited
        for row in limited:
            within = sum(meets(row, attribute, dose) for dose in ladder)
            assert 1 <= within <= len(ladder) - 2, (attribute, row.phase)


def test_every_source_is_listed() -> None:
    """Nothing rests on a source that the list of references does not hold."""
    known = content().references.sources
    assert [(who, name) for who, name in sources() if name not in known] == []


def test_every_source_is_used() -> None:
    """A listed source is named by its key, or by its author and year in a text of some card."""
    texts = " ".join(card.model_dump_json() for card in content().cards.values())
    used = {name for _, name in sources()} | set(content().phases.source)
    rest = {name: one for name, one in content().references.sources.items() if name not in used}
    assert [name for name, one in rest.items() if f"{one.year})" not in texts] == []


def test_every_name_in_a_rule_is_known() -> None:
    """Rules address cards and groups that exist, and test facts that are declared."""
    shipped = content()
    groups = GIVEN_GROUPS.union(*(card.groups for card in shipped.cards.values()))
    for rule in shipped.rules.values():
        names = {atom.name for atom in atoms(rule.when)}
        assert names <= set(shipped.facts.facts), rule.id
        for effect in rule.options:
            assert set(effect.cards) <= set(shipped.cards), rule.id
            assert set(effect.groups) <= groups, rule.id
            assert set(effect.needs) <= set(shipped.facts.written), rule.id


def test_every_fact_is_used() -> None:
    """A declared fact bears on some rule, sign or severity table; an attribute on some card."""
    shipped = content()
    book = shipped.phases
    nodes = [rule.when for rule in shipped.rules.values()]
    nodes += [sign.when for sign in (*book.signs, *book.doubt)]
    tables = shipped.severity.tables.values()
    used = {atom.name for node in nodes for atom in atoms(node)}
    used |= {name for table in tables for name in (table.measure, table.recalled) if name}
    used |= {atom.name for table in tables for band in table.raised for atom in atoms(band.when)}
    assert set(shipped.facts.facts) - used == set()
    limited = {one for card in shipped.cards.values() for one in card.usual}
    assert set(shipped.facts.written) - limited == {"site"}


@pytest.mark.parametrize("name", RULES)
def test_a_rule_does_what_its_examples_say(name: str) -> None:
    """Every example of a rule comes out as it says, under the name of its file."""
    rule = content().rules[name]
    assert rule.id == name
    assert list(failed_examples({name: rule}, judge().space)) == []


@pytest.mark.parametrize("name", RULES)
def test_a_rule_has_a_near_miss(name: str) -> None:
    """Of a rule's examples, one that fires differs from one that does not in a single fact."""
    rule = content().rules[name]
    fires = [one for one in rule.examples if one.fires == "yes"]
    quiet = [one for one in rule.examples if one.fires == "no"]
    assert any(len(differing(one, other)) == 1 for one, other in product(fires, quiet))


def test_a_wrong_example_is_seen() -> None:
    """An example turned round is reported."""
    rule = content().rules["no_consent"]
    turned = tuple(one.model_copy(update={"fires": "no"}) for one in rule.examples)
    assert list(failed_examples({rule.id: rule.model_copy(update={"examples": turned})}, judge().space))


def test_an_emergency_says_what_to_do() -> None:
    """Every rule that calls an emergency carries a first action: what to do and what not."""
    rules = [
        rule for rule in content().rules.values() if rule.session and rule.session.urgency == "emergency"
    ]
    assert rules
    assert [rule.id for rule in rules if not has_first_action(rule)] == []


def has_first_action(rule: Rule) -> bool:
    """Whether a rule says what to do at once and what to leave."""
    action = rule.session.first_action if rule.session else None
    return bool(action and action.do and action.avoid)


def test_the_rule_set_has_no_hole() -> None:
    """No idle rule, no stop rule that leaves hands-on work open, no aim without an open card."""
    assert holes(content(), judge().space) == []


def test_every_stop_rule_stops_every_hand() -> None:
    """The table of stop rules and hands-on cards has no empty cell."""
    table = flag_table(content(), judge().space)
    cards = list(next(iter(table.values())))
    print()
    print("\n".join(f"{number:>3} {card}" for number, card in enumerate(cards, start=1)))
    print(" " * 30 + "".join(f"{number:>4}" for number in range(1, len(cards) + 1)))
    for rule, row in table.items():
        print(f"{rule:<30}" + "".join("stop".rjust(5) if row[card] else " OPEN" for card in cards)[1:])
    assert len(table) >= 20
    assert [(rule, card) for rule, row in table.items() for card, stopped in row.items() if not stopped] == []


@pytest.mark.parametrize("aim", ["limit", "clear", "restore", "ease", "ask", "refer"])
def test_every_aim_has_an_action_nothing_bars(aim: Aim) -> None:
    """For each aim there is a card that no rule ever answers against."""
    free = [card for card in content().cards.values() if aim in card.serves and not answered_against(card)]
    assert free


def answered_against(card: Card) -> bool:
    """Whether any rule can answer against a card."""
    groups = {*card.groups, *(["hands_on"] if card.hands_on else []), "all"}
    groups |= {"techniques"} if card.kind == "technique" else set()
    effects = [one for rule in content().rules.values() for one in rule.options if one.answer]
    return any(card.id in one.cards or groups & set(one.groups) for one in effects)


def test_every_screening_question_is_in_a_set() -> None:
    """What must be asked before hands-on work is covered by some set, consent apart."""
    sets = content().screening
    covered = {name for one in sets.sets for name in sets.covered_by(one)}
    asked = {name for name, fact in content().facts.facts.items() if fact.screen}
    assert asked - covered == ASKED_APART
    assert [name for name in covered if content().facts.facts[name].kind != "yes_no"] == []
