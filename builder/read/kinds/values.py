"""What does not fit where it stands: missing, unknown, or of another kind than is meant."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind
from builder.model.sample_rule import FILE, GOOD_RULE
from builder.read.kinds.syntax import CASE, CLASS, OF_THE_CLASS

_of_visit = partial(kind, where=f"{CASE} visits/0")
_of_case = partial(kind, where=CASE)
_of_class = partial(kind, where=CLASS, good=OF_THE_CLASS)
_AGENDA = """
agenda:
  - {day: 1, start: %s, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
"""
_LEVELS = "criteria:\n  - {id: cloth, title: Cloth, levels: [%s]}"

OF_VALUES: tuple[Kind, ...] = (
    _of_class(
        "key_missing",
        "Something that everything else rests on was not written. Nothing is guessed in its place.",
        bad=OF_THE_CLASS.replace("zone: America/New_York\n", ""),
    ),
    _of_visit(
        "key_unknown",
        "A misspelt name would be passed over in silence, and what it says would be lost.",
        bad="storry: It hurts.",
        good="story: It hurts.",
    ),
    _of_visit(
        "yes_or_no_expected",
        "A bare truth value stands where something else is meant, or something else where only yes "
        "or no can be.",
        bad="story: true",
        good='story: "True."',
    ),
    _of_visit(
        "value_empty",
        "A key with nothing behind it says nothing; most often it was meant to be filled in later.",
        bad='title: ""',
        good="title: First hours",
    ),
    kind(
        "word_or_number_expected",
        "Each fact is recorded by one word or one number. A list or a block would leave open which "
        "of them holds.",
        FILE,
        bad=GOOD_RULE.replace("given: {numb_skin: yes}", "given: {numb_skin: [yes]}"),
        good=GOOD_RULE,
    ),
    _of_class(
        "format_unknown",
        "The number says in which form a file is written. A higher one comes from a newer version "
        "of the tool.",
        bad=OF_THE_CLASS.replace("format: 1", "format: 9"),
    ),
    _of_visit(
        "word_unknown",
        "Only the listed words have a meaning here. Another one would be passed over.",
        bad="phase: accute",
        good="phase: acute",
    ),
    _of_visit(
        "text_expected",
        "A bare number is read as a number and loses its leading zeros. Where text is meant it needs quotes.",
        bad="title: 815",
        good='title: "815"',
    ),
    kind(
        "id_malformed",
        "Ids stand in addresses and file names. Small letters, digits and _ are the same on every computer.",
        f"{CASE} visits/1",
        bad="id: Second visit",
        good="id: second_visit",
    ),
    _of_visit(
        "text_too_long",
        "A text of this length does not fit on a phone between two clients, nor on a sheet.",
        bad="story: " + "It hurts. " * 500,
        good="story: It hurts.",
    ),
    _of_visit(
        "list_expected",
        "There may be several here, so they are written as a list even if there is one.",
        bad="wrong: glide",
        good="wrong:\n  - {card: glide}\n  - {card: cold_pack, written: {minutes: 40, barrier: no}}",
    ),
    _of_visit(
        "list_too_short",
        "There has to be something to choose from, and here there is less than that.",
        bad="chosen: []",
        good="chosen:\n  - {card: protect_and_position}",
    ),
    kind(
        "list_too_long",
        "More entries than this cannot be told apart by whoever has to mark or to choose.",
        "stations/cooling.yml",
        bad=_LEVELS % "None, Thin, Damp, Dry, Thick, Folded, Perfect",
        good=_LEVELS % "None, Damp, Dry",
    ),
    _of_case(
        "block_expected",
        "Several things are to be said here, each under its own name.",
        bad="client: A rider of 30",
        good="client:\n  role: Rider\n  age: 30",
    ),
    _of_case(
        "number_expected",
        "Only digits can be compared and counted.",
        bad="client: {role: Rider, age: thirty}",
        good="client: {role: Rider, age: 30}",
    ),
    _of_case(
        "number_out_of_range",
        "A number beyond what can be is a slip of the finger, and would be judged as if it were true.",
        bad="client: {role: Rider, age: 300}",
        good="client: {role: Rider, age: 30}",
    ),
    _of_class(
        "date_expected",
        "Day and month change places from country to country. Year, month and day mean one day everywhere.",
        bad=OF_THE_CLASS.replace("2026-05-02", "May 2"),
    ),
    kind(
        "time_expected",
        "Minutes are counted from these times, so each is written to the minute and in one way.",
        "course.yml",
        bad=_AGENDA % "9 o'clock",
        good=_AGENDA % "09:00",
    ),
    _of_visit(
        "value_refused",
        "What is written can be read, but is not what can stand here.",
        bad="since_injury: this morning",
        good="since_injury: 15 h",
    ),
    _of_visit(
        "fact_value",
        "A fact has the values it was declared with. With any other no rule on it would ever fire.",
        bad="findings: {swelling_trend: stedy, knee_flexion: 100}",
        good="findings: {swelling_trend: steady, knee_flexion: 100}",
    ),
    _of_visit(
        "fact_out_of_range",
        "A measure beyond what a body can do is a slip, and the tables would grade by it.",
        bad="findings: {swelling_trend: steady, knee_flexion: 1000}",
        good="findings: {swelling_trend: steady, knee_flexion: 100}",
    ),
    _of_visit(
        "fact_worked_out",
        "This is worked out from what the case says elsewhere. Written again, the two could differ.",
        bad="findings: {swelling_trend: steady, knee_flexion: 100, age: 30}",
        good="findings: {swelling_trend: steady, knee_flexion: 100}",
    ),
    _of_visit(
        "not_screened",
        "An exception to a screen has to be one of its questions. Otherwise nobody asked it.",
        bad="screen: {set: short, all_no_except: {swelling_trend: steady}}",
        good="screen: {set: short}",
    ),
)
