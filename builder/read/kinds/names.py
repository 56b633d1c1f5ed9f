"""Names that are the name of nothing: every one that is used must be known in another place."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Example, Kind, kind
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule
from builder.read.kinds.syntax import CASE

_of_course = partial(kind, where="course.yml")
_of_visit = partial(kind, where=f"{CASE} visits/0")
_SETS = """
practice:
  - {id: first, title: First cases, cases: [fence]}
  - {id: %s, title: More cases, cases: [fair]}
"""
_REQUIRED = "requirements: {test: %s, stations: [%s], attendance: 90 %%}"

OF_NAMES: tuple[Kind, ...] = (
    kind(
        "objective_unknown",
        "Questions are drawn by objective. One that the course does not have is never drawn for.",
        CASE,
        bad="objectives: [chose]",
        good="objectives: [choose]",
    ),
    _of_visit(
        "card_unknown",
        "An option is judged by its card. Without a card nothing can be said of it.",
        bad="wrong:\n  - {card: glyde}\n  - {card: cold_pack, written: {minutes: 40, barrier: no}}",
        good="wrong:\n  - {card: glide}\n  - {card: cold_pack, written: {minutes: 40, barrier: no}}",
    ),
    _of_visit(
        "screening_set_unknown",
        "A screening set says which questions were asked. A name without a set says that nothing was.",
        bad="screen: {set: shrt}",
        good="screen: {set: short}",
    ),
    _of_visit(
        "fact_unknown",
        "A finding that was never declared is read by no rule: it would look asked and count for nothing.",
        bad="findings: {sweling_trend: steady, knee_flexion: 100}",
        good="findings: {swelling_trend: steady, knee_flexion: 100}",
    ),
    _of_visit(
        "attribute_unknown",
        "Dose and preparation are judged by name. A misspelt one would leave the dose open.",
        bad="wrong:\n  - {card: cold_pack, written: {minuts: 40, barrier: no}}",
        good="wrong:\n  - {card: cold_pack, written: {minutes: 40, barrier: no}}",
    ),
    _of_course(
        "lesson_unknown",
        "The list of lessons makes the pages. One without a file would be an empty page.",
        bad="lessons:\n  - {file: cold.md, title: Cold}\n  - {file: wrap.md, title: Wraps}",
        good="lessons:\n  - {file: cold.md, title: Cold}",
    ),
    _of_course(
        "case_unknown",
        "A pool or a practice set can only hold cases that are there.",
        bad="practice:\n  - {id: first, title: First cases, cases: [fense, fair]}",
        good="practice:\n  - {id: first, title: First cases, cases: [fence, fair]}",
    ),
    _of_course(
        "test_unknown",
        "A certificate asks for a test that the course has to have.",
        bad=_REQUIRED % ("finall", "cooling"),
        good=_REQUIRED % ("final", "cooling"),
    ),
    _of_course(
        "station_unknown",
        "A certificate asks for a station that the course has to have.",
        bad=_REQUIRED % ("final", "coling"),
        good=_REQUIRED % ("final", "cooling"),
    ),
    _of_course(
        "board_unknown",
        "Hours are counted by a board's rules, and of this board none are known.",
        bad="boards: [generik]",
        good="boards: [generic]",
    ),
    _of_course(
        "contested_point_unknown",
        "A position is printed beside the point it is about. On a point that nobody teaches it "
        "would never be.",
        bad="positions: {cold_heal: Cold is taught here for pain alone., cold_heals: For pain alone.}",
        good="positions: {cold_heals: Cold is taught here for pain alone.}",
    ),
    kind(
        "source_unknown",
        "What a rule rests on is printed beside it, from the list of references.",
        FILE,
        bad=sample_rule(source="comon_practice"),
        good=GOOD_RULE,
    ),
    kind(
        "group_unknown",
        "A rule that names a group of cards binds nobody if no card belongs to it.",
        FILE,
        bad=sample_rule(about="groups: [hands_onn]"),
        good=sample_rule(about="groups: [hands_on]"),
    ),
    kind(
        "visit_unknown",
        "A station shows one visit of its case, and the case has no such visit.",
        "stations/cooling.yml",
        bad="visit: frist",
        good="visit: first",
    ),
    kind(
        "question_unknown",
        "A lesson can only place a question that is there.",
        "lessons/cold.md",
        bad="# Cold\n\n[card cold_pack]\n\n[question cold_tme]\n",
        good="# Cold\n\n[card cold_pack]\n\n[question cold_time]\n",
    ),
    kind(
        "figure_unknown",
        "A figure is drawn from a card that shows how it goes, or from the visits of a case.",
        "lessons/cold.md",
        bad="# Cold\n\n[card cold_pack]\n\n[figure cold_pack]\n",
        good="# Cold\n\n[card cold_pack]\n\n[figure fence]\n",
    ),
    kind(
        "tag_unknown",
        "A line in brackets places a card, a case or a question on the page. Misspelt, it is printed as "
        "it stands.",
        "lessons/cold.md",
        bad="# Cold\n\n[crad cold_pack]\n",
        good="# Cold\n\n[card cold_pack]\n",
        level="warning",
    ),
    kind(
        "id_twice",
        "Two of one name cannot be told apart, neither by the tool nor by whoever reads the results.",
        "course.yml",
        bad=_SETS % "first",
        good=_SETS % "second",
    ),
    Kind(
        "id_not_file_name",
        "error",
        "Files are found by their names. With another id inside, one file would be known by two names.",
        Example("rules/glide_numb.yml", GOOD_RULE),
        Example(FILE, GOOD_RULE),
    ),
)
