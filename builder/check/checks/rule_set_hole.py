"""The rule set as a whole must have no dead end, no warning that changes nothing, and no contradiction."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "Cards, rules and tables are proven together: no client may be left without a right choice, no "
    "warning may change nothing, and no value may fall between two rows."
)
BAD = Example(
    "content/severity.yml",
    """
    bands:
      - {grade: mild, when: {knee_flexion: {over: 90}}}
      - {grade: moderate, when: {knee_flexion: {at_least: 45, at_most: 80}}}
      - {grade: severe, when: {knee_flexion: {below: 45}}}
    """,
    at="tables/thigh",
)
GOOD = Example(
    "content/severity.yml",
    """
    bands:
      - {grade: mild, when: {knee_flexion: {over: 90}}}
      - {grade: moderate, when: {knee_flexion: {at_least: 45, at_most: 90}}}
      - {grade: severe, when: {knee_flexion: {below: 45}}}
    """,
    at="tables/thigh",
)
OF_FACTS = {"flag_goes_on", "fact_changes_nothing"}
OF_TABLES = {"bands_overlap", "bands_gap", "bands_of_another", "clock_runs_back"}
OF_CARDS = {"consent_leaves_open", "contradiction"}
SAYS = {
    "never_fires": ("Rule {about} can never fire.", "Correct its condition, or delete it."),
    "flag_leaves_open": (
        "A stop rule leaves hands-on work open ({about}).",
        "Bar the card in the rule's options.",
    ),
    "consent_leaves_open": (
        "Without consent a hands-on card is open ({about}).",
        "Bar the card where `consent` is `no`.",
    ),
    "flag_goes_on": (
        "The red flag `{about}` never refers by itself.",
        "Write a rule that refers on it, or give the fact another group.",
    ),
    "fact_changes_nothing": (
        "The fact `{about}` warns of something and changes no answer.",
        "Write a rule on it, or give the fact another group.",
    ),
    "contradiction": (
        "What must be written for a card can not be met ({about}).",
        "Bar the card there, or let the limits and needs agree.",
    ),
    "bands_overlap": ("Two rows of a table hold for one value ({about}).", "Move a bound of one of them."),
    "bands_gap": ("A table leaves a value without a row ({about}).", "Move a bound, or add a row."),
    "bands_of_another": (
        "The table `{about}` measures one fact and bounds another.",
        "Let them be the same.",
    ),
    "clock_runs_back": ("A clock ends a phase before the one before it ({about}).", "Put its ends in order."),
    "dead_end": (
        "No card is open for the aim `{about}` in some situation.",
        "Add or open a card that serves it.",
    ),
}


def check(evidence: Evidence) -> Iterator[Finding]:
    """The holes that the proof found, each with its witness."""
    for hole in (one for one in evidence.holes if one.sort in SAYS):
        message, remedy = SAYS[hole.sort]
        said = f"{message.format(about=hole.about)} Witness: {hole.witness}"
        name = hole.about.partition(":")[0].partition(",")[0]
        if hole.sort == "dead_end":
            yield Finding("course.yml", (), said, remedy)
        elif hole.sort in OF_FACTS:
            yield Finding(content_file(evidence, "facts.yml"), ("facts", name), said, remedy)
        elif hole.sort in OF_TABLES:
            in_phases = name == "clocks" or hole.sort == "clock_runs_back"
            file, path = ("phases.yml", ("clocks",)) if in_phases else ("severity.yml", ("tables", name))
            yield Finding(content_file(evidence, file), path, said, remedy)
        elif hole.sort in OF_CARDS:
            yield Finding(content_file(evidence, f"cards/{name}.yml"), (), said, remedy)
        else:
            yield Finding(content_file(evidence, f"rules/{name}.yml"), (), said, remedy, (name,))
