"""What the laws of judging are tried on: rule sets with their judges, and random clients of each."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache, cached_property
from typing import TypeVar

from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from builder.disk import shipped
from builder.judge.frame import Frame
from builder.judge.judge import Judge
from builder.judge.space import Value, Variable
from builder.judge.truth import Truth
from builder.model.card import ANSWERS, SITES, Card, Site
from builder.model.judgement import OptionJudgement, SessionJudgement
from builder.model.library import Content
from builder.model.rule import URGENCIES
from builder.model.tables import SEVERITIES, Severity
from builder.read.course import read_course
from tests.judge import small

DERIVED = ("phase", "severity", "signs_behind", "session_urgency")
BASICS = ("injury", "tissue", "region", "hours", "age")
SESSIONS = ("go_on", "ask_first", "refer")
EXAMPLES = 1000
PICK = 3
LENGTH = PICK + 2 * (len(BASICS) + 2 + 5 + 4 + 4 + 2)
T = TypeVar("T")
Ranks = dict[str, tuple[int, int]]


@dataclass(frozen=True)
class Client:
    """What is recorded of one client, what is declared, and how every card is written for the day."""

    values: dict[str, Value]
    declared: Severity | None
    site: Site
    written: dict[str, Value]
    unwritten: frozenset[str]

    def but(self, **changed: Value | None) -> "Client":
        """The same client with these facts recorded otherwise; None takes the record away."""
        values = {**self.values, **changed}
        return replace(self, values={name: value for name, value in values.items() if value is not None})


@dataclass(frozen=True, eq=False, repr=False)
class World:
    """One rule set, ready to judge clients."""

    content: Content

    @cached_property
    def judge(self) -> Judge:
        """The judge of this rule set."""
        return Judge(self.content)

    @cached_property
    def facts(self) -> dict[str, Variable]:
        """The variables a client is recorded in, as far as nothing works them out."""
        known = self.content.facts.facts.keys() - set(DERIVED)
        return {name: one for name, one in self.judge.space.variables.items() if name in known}

    @cached_property
    def flags(self) -> list[str]:
        """The red flags."""
        return [name for name, one in self.facts.items() if one.fact.group == "red_flag"]

    @cached_property
    def hands_on(self) -> list[Card]:
        """The cards that are work by hand."""
        return [card for card in self.content.cards.values() if card.hands_on]

    def frame(self, client: Client) -> Frame:
        """The client's visit made ready."""
        return self.judge.frame(client.values, client.declared, None)

    def judged(self, client: Client, cards: Iterable[Card]) -> list[OptionJudgement]:
        """Some cards as they are written for a client, with all that is said of them."""
        frame, options = self.frame(client), self.judge.options
        return [options.judge(frame, card, client.site, self.written(card, client)) for card in cards]

    def ranks(self, client: Client, cards: Iterable[Card]) -> Ranks:
        """How strict the two answers of some cards are."""
        frame, options = self.frame(client), self.judge.options
        found = {
            card.id: options.answers(frame, card, client.site, self.written(card, client)) for card in cards
        }
        return {name: (ANSWERS.index(sure), ANSWERS.index(worst)) for name, (sure, worst) in found.items()}

    def written(self, card: Card, client: Client) -> dict[str, Value]:
        """How a card is written for a client: as usual, but for what the client has otherwise or left out."""
        whole = {**card.usual, **client.written}
        return {name: one for name, one in whole.items() if name not in client.unwritten and name != "site"}

    def unasked(self, client: Client, name: str) -> bool:
        """Whether a fact need not be asked of a client, and not recorded means at its safest."""
        where = dict(self.judge.unasked).get(name)
        return where is not None and where(self.judge.space.state(dict(client.values))) is Truth.FALSE

    def contradicts(self, client: Client, name: str) -> bool:
        """Whether something recorded excludes that this fact is a yes."""
        return any(
            name in one.fact.excludes and client.values.get(other) == "yes"
            for other, one in self.facts.items()
        )

    @cached_property
    def findings(self) -> list[tuple[str, Value]]:
        """Every value that any fact may have."""
        return [(name, cell.value) for name, one in self.facts.items() for cell in one.cells]

    @cached_property
    def attributes(self) -> list[tuple[str, Value]]:
        """Every value that any attribute of an option may have."""
        names = {f"written.{name}": name for name in self.content.facts.written if name != "site"}
        variables = self.judge.space.variables
        return [(name, cell.value) for whole, name in names.items() for cell in variables[whole].cells]

    def client(self, drawn: bytes) -> Client:
        """A client at the safest but for who and when it is, a few findings, and a few gaps."""
        draw = Draw(drawn)
        values = {name: safe(one) for name, one in self.facts.items()}
        values.update({name: draw.one(self.facts[name].cells).value for name in BASICS})
        declared: Severity | None = draw.one((None, *SEVERITIES))
        site: Site = draw.one(SITES)
        values.update(draw.some(self.findings, 4))
        gaps = draw.some(list(self.facts), 3)
        written = dict(draw.some(self.attributes, 3))
        unwritten = frozenset(name for name, _ in draw.some(self.attributes, 1))
        known = {name: value for name, value in values.items() if name not in gaps}
        return Client(known, declared, site, written, unwritten)


class Draw:
    """Choices read off a string of bytes; none but the first is made where the bytes are zero."""

    def __init__(self, drawn: bytes) -> None:
        """Start at the first byte."""
        self._bytes = iter(drawn)

    def number(self, below: int) -> int:
        """A number from zero up."""
        return (next(self._bytes) * 256 + next(self._bytes)) % below

    def one(self, of: Sequence[T]) -> T:
        """One of these."""
        return of[self.number(len(of))]

    def some(self, of: Sequence[T], most: int) -> list[T]:
        """None to `most` of these; as many bytes are read whatever is chosen."""
        count = self.number(most + 1)
        return [self.one(of) for _ in range(most)][:count]


def safe(variable: Variable) -> Value:
    """The safest value of a variable; the first where neither end is safer."""
    return variable.cells[-1 if variable.fact.worse_when in ("no", "lower") else 0].value


def worst(variable: Variable) -> Value:
    """The most dangerous value of a variable."""
    return variable.cells[0 if variable.fact.worse_when in ("no", "lower") else -1].value


def strictness(session: SessionJudgement) -> tuple[int, int]:
    """How strict a session is: by its answer, then by its urgency."""
    return SESSIONS.index(session.answer), URGENCIES.index(session.urgency) if session.urgency else -1


def harder(mild: Ranks, hard: Ranks, *, sure: bool = True) -> bool:
    """Whether no answer is milder the second time: at worst, and as it surely is unless `sure` says no."""
    return all(
        before[1] <= hard[name][1] and (not sure or before[0] <= hard[name][0])
        for name, before in mild.items()
    )


SMALL = World(small.content())


@cache
def shipped_world() -> World:
    """The rule set that comes with the tool, read as any course reads it."""
    course, found = read_course(shipped("demo_course"), shipped("content"), shipped("site_config.yml"))
    assert course is not None, found
    return World(course.content)


Law = Callable[[World, Client, int], bool | None]


@dataclass
class Tally:
    """How often a law was tried, and how often its premise was met."""

    tried: int = 0
    met: int = 0


def tried(law: Law, *worlds: World, examples: int = EXAMPLES, shrink: bool = True) -> Tally:
    """The law tried on random clients of each rule set; AssertionError with a plain client that breaks it.

    A law is told a rule set, a client and a number to choose by; it says None where its premise is not met.
    """
    tally = Tally()
    for world in worlds:
        _try(law, world, tally, examples=examples, shrink=shrink)
    return tally


def _try(law: Law, world: World, tally: Tally, *, examples: int, shrink: bool) -> None:
    @settings(
        max_examples=examples,
        phases=[Phase.generate, *([Phase.shrink] if shrink else [])],
        suppress_health_check=list(HealthCheck),
    )
    @given(st.binary(min_size=LENGTH, max_size=LENGTH))
    def run(drawn: bytes) -> None:
        client, pick = world.client(drawn[PICK:]), int.from_bytes(drawn[:PICK])
        verdict = law(world, client, pick)
        tally.tried += 1
        tally.met += verdict is not None
        assert verdict is not False, (client, pick)

    run()
