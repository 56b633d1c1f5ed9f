"""Facts: what may be recorded of a client or written of an option, and which way is dangerous."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from pydantic import Field, model_validator

from builder.model.condition import Condition, Recorded, atoms
from builder.model.noun import Format, Id, Noun, Text, Truth

Kind = Literal["yes_no", "one_of", "scale", "number"]
Group = Literal[
    "red_flag", "contraindication", "sign", "measure", "history", "clearance", "consent", "written"
]
WorseWhen = Literal["yes", "no", "higher", "lower", "both", "neither"]
Value = str | Decimal

DAY = 24
DAYS_FROM = 96


def plain(number: Decimal) -> str:
    """A number without needless zeros."""
    return f"{number.normalize():f}"


class Fact(Noun):
    """One declared fact; the values of a scale are listed from first to last in its own order."""

    kind: Kind = Field(
        description="What sort of value: yes_no, one_of, scale (ordered words) or number.",
        examples=["yes_no"],
    )
    label: Text = Field(description="Short name, as on the board of a visit.", examples=["Fever"])
    noun: Text | None = Field(
        default=None,
        description="Its name inside a sentence, where the label does not fit.",
        examples=["fever today"],
    )
    group: Group = Field(description="What sort of fact this is.", examples=["red_flag"])
    worse_when: WorseWhen = Field(description="Which direction is the dangerous one.", examples=["yes"])
    question: Text | None = Field(
        default=None,
        description="How a therapist asks for it.",
        examples=["Have you had a fever since yesterday?"],
    )
    values: tuple[str, ...] = Field(
        default=(),
        description="The words it may have (one_of, scale).",
        examples=[["none", "slight", "clear"]],
    )
    words: dict[str, Text] = Field(
        default_factory=dict,
        description="How a value reads on the page.",
        examples=[{"slight": "slightly warm"}],
    )
    unit: str = Field(default="", description="Unit of a number, such as ° or min.", examples=["min"])
    days: str = Field(
        default="days",
        description="The unit of three whole days and more, for a number of hours.",
        examples=["days"],
    )
    low: Decimal | None = Field(default=None, description="Least number that makes sense.", examples=[0])
    high: Decimal | None = Field(default=None, description="Greatest number that makes sense.", examples=[10])
    screen: Truth = Field(default=False, description="Must be asked before hands-on work.", examples=["yes"])
    room: Truth = Field(
        default=False,
        description="Can change in the room: a sign, time, preparation, dose.",
        examples=["yes"],
    )
    extra: Truth = Field(
        default=False,
        description="A measure that not every visit takes: where it is not recorded, it is at its safest.",
        examples=["yes"],
    )
    asked_where: Condition | None = Field(
        default=None,
        description="For whom it has to be asked; for others, where it is not recorded, it is at its safest. "
        "What is recorded counts for everyone.",
        examples=[{"region": ["ankle", "foot"]}],
    )
    reported: Truth = Field(
        default=False, description="Reported by a clinician, never ours to compute.", examples=["yes"]
    )
    excludes: tuple[Id, ...] = Field(
        default=(),
        description="Yes/no facts that cannot be yes beside a yes here.",
        examples=[["limb_weakness"]],
    )

    @model_validator(mode="after")
    def _has_a_safe_side(self) -> Fact:
        if (self.extra or self.asked_where) and self.worse_when in ("both", "neither"):
            raise ValueError("what need not be asked needs a safe side: say which way is worse")
        return self

    @property
    def asked_of_all(self) -> bool:
        """Whether everyone is asked for it, and the answer stands for the day."""
        return not (self.room or self.extra or self.asked_where)

    @property
    def in_sentence(self) -> str:
        """Its name inside a sentence."""
        return self.noun or self.label[0].lower() + self.label[1:]

    @property
    def words_of_values(self) -> tuple[str, ...]:
        """The values of a fact that is not a number, as written in files."""
        return ("no", "yes") if self.kind == "yes_no" else self.values

    def in_words(self, value: Value) -> str:
        """How a value reads on the page: the fact's own words, or the number with its unit."""
        if isinstance(value, str):
            return self.words.get(value, value.replace("_", " "))
        if self.unit == "h" and value >= DAYS_FROM and value % DAY == 0:
            return f"{plain(value / DAY)} {self.days}"
        unit = self.unit if self.unit in ("°", "%") else f" {self.unit}".rstrip()
        return f"{plain(value)}{unit}"

    def chip(self, value: Value) -> str:
        """A written attribute, short: the value's own words where it has some, else after its label."""
        words = self.in_words(value)
        return words if value in self.words else f"{self.label.lower()} {words}"


class FactBook(Noun):
    """`content/facts.yml`: every fact of a client, and every attribute of a written option."""

    format: Format
    facts: dict[Id, Fact] = Field(
        description="Every fact of a client, by its name.",
        examples=[{"fever": {"kind": "yes_no", "label": "Fever", "group": "red_flag", "worse_when": "yes"}}],
    )
    written: dict[Id, Fact] = Field(
        description="Every attribute of a written option, by its name.",
        examples=[
            {
                "minutes": {
                    "kind": "number",
                    "label": "Time",
                    "group": "written",
                    "worse_when": "higher",
                    "unit": "min",
                }
            }
        ],
    )
    teaching: dict[Id, Text] = Field(
        default_factory=dict,
        description="Facts that no rule reads, each with the reason for having it.",
        examples=[{"clot_score": "It is taught, and judged by nothing."}],
    )

    @model_validator(mode="after")
    def _asks_by_what_is_always_asked(self) -> FactBook:
        for name, fact in self.facts.items():
            for atom in atoms(fact.asked_where) if fact.asked_where else ():
                other = self.facts.get(atom.name)
                if (
                    other is None
                    or isinstance(atom, Recorded)
                    or other.room
                    or other.asked_where
                    or other.extra
                ):
                    raise ValueError(
                        f"`asked_where` of `{name}` may only name declared facts that everyone is asked and "
                        f"that cannot change in the room, not `{atom.name}`"
                    )
        return self


class ScreeningSet(Noun):
    """A named, dated list of facts that are asked together, with those of the sets it includes."""

    name: Text = Field(
        description="The set as it is headed.", examples=["Lower limb: red flags before hands-on work"]
    )
    date: Text = Field(description="The day of this version, in quotes.", examples=["2026-11-25"])
    includes: tuple[Id, ...] = Field(
        default=(), description="Sets whose questions are asked too.", examples=[["trunk_and_neck"]]
    )
    covers: tuple[Id, ...] = Field(
        default=(), description="The yes/no facts this set adds.", examples=[["pitting", "bone_risk"]]
    )


class ScreeningBook(Noun):
    """`content/screening.yml`: the screening sets an author may name."""

    format: Format
    sets: dict[Id, ScreeningSet] = Field(
        description="The sets by name.",
        examples=[{"cold": {"name": "History for cold", "date": "2026-11-25", "covers": ["raynaud"]}}],
    )

    def covered_by(self, name: str) -> tuple[str, ...]:
        """Every fact a set covers, with the sets it includes; nothing for a set that is not there."""
        waiting, met, covered = [name], set[str](), dict[str, None]()
        while waiting:
            if (here := waiting.pop(0)) in met or here not in self.sets:
                continue
            met.add(here)
            waiting += self.sets[here].includes
            covered.update(dict.fromkeys(self.sets[here].covers))
        return tuple(covered)
