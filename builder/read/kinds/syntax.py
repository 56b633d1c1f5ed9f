"""What keeps a file from being read at all: bytes that are no text, and lines that are no YAML."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind

CASE = "cases/fence.yml"
CLASS = "classes/may/class.yml"
OF_THE_CLASS = """
format: 1
id: may
title: The May class
dates: [2026-05-02]
zone: America/New_York
place: The practice tent
"""

_of_visit = partial(kind, where=f"{CASE} visits/0")
_of_case = partial(kind, where=CASE)
_of_class = partial(kind, where=CLASS, good=OF_THE_CLASS)

OF_SYNTAX: tuple[Kind, ...] = (
    _of_visit(
        "not_utf8",
        "Every file is read as UTF-8. In another encoding an accented letter becomes another "
        "letter, or none.",
        bad="story: The caf\udce9 was closed.",
        good="story: The café was closed.",
    ),
    _of_visit(
        "odd_character",
        "Characters that nobody can see can turn words round or hide some. They come with pasted text.",
        bad="story: It \u202ehurts.",
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_too_deep",
        "Nothing in a course needs more than a few levels. Forty are a mishap, or an attempt to "
        "exhaust memory.",
        bad="story: " + "[" * 60 + "]" * 60,
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_too_many",
        "A file with more than 50,000 values is no file that a person wrote.",
        bad="story: [" + "a, " * 50_001 + "]",
        good="story: It hurts.",
    ),
    _of_case(
        "yaml_two_documents",
        "A line of three dashes begins a second document in the same file, and only the first would be read.",
        bad="mechanism: A knock.\n---",
        good="mechanism: A knock.",
    ),
    _of_class(
        "yaml_directive",
        "Lines that begin with a percent sign give orders to other readers of YAML; here they mean nothing.",
        bad="%YAML 1.2\n---" + OF_THE_CLASS,
    ),
    _of_class(
        "yaml_syntax",
        "The lines of this file do not go together, and the reader cannot tell what was meant.",
        bad="%YAML one\n---" + OF_THE_CLASS,
    ),
    _of_visit(
        "yaml_anchor",
        "An anchor lets other lines repeat a value unseen. Written out, every line says what it means.",
        bad="story: &same It hurts.",
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_alias",
        "A reference repeats another line unseen, and a few of them can grow without end. Written out, a "
        "line says what it means.",
        bad="story: *same",
        good='story: "*same"',
    ),
    _of_visit(
        "yaml_tag",
        "A tag tells other readers of YAML what to make of a value. Here the kind of file says that.",
        bad="story: !quote It hurts.",
        good='story: "!quote It hurts."',
    ),
    _of_visit(
        "yaml_merge",
        "A merge key pours another block into this one unseen. Written out, every entry can be read "
        "and placed.",
        bad="<<: {story: It hurts.}",
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_key_not_text",
        "Every key is the name of something. A bare number or truth value is the name of nothing.",
        bad="12: It hurts.",
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_key_twice",
        "Of two lines with one name only the last would count, and nobody would notice that the "
        "first is lost.",
        bad="story: It hurts.\nstory: It hurts less.",
        good="story: It hurts less.",
    ),
    _of_visit(
        "yaml_odd_escape",
        "A backslash in double quotes can make a character that nobody sees.",
        bad=r'story: "It \a hurts."',
        good=r"story: 'It \a hurts.'",
    ),
    _of_visit(
        "yaml_colon",
        "A colon and a space part a key from its value. In the middle of a text they would begin a new key.",
        bad="story: It hurts: here and here.",
        good='story: "It hurts: here and here."',
    ),
    _of_visit(
        "yaml_open_quote",
        "A quotation that is never closed swallows the rest of the file.",
        bad='story: "It hurts.',
        good='story: "It hurts."',
    ),
    _of_visit(
        "yaml_open_bracket",
        "A bracket that is never closed takes the lines below it for its own.",
        bad="story: [It hurts.",
        good='story: "[It hurts."',
    ),
    _of_visit(
        "yaml_escape",
        "In double quotes a backslash begins a special character, and this one does not exist.",
        bad=r'story: "See the folder C:\pictures."',
        good=r"story: 'See the folder C:\pictures.'",
    ),
    _of_visit(
        "yaml_no_colon",
        "Every line is a key, a colon, a space and a value. Without the colon it is only words.",
        bad="story It hurts.",
        good="story: It hurts.",
    ),
    _of_visit(
        "yaml_block_text",
        "After a stroke or an angle bracket the text begins on the next line, indented.",
        bad="story: | It hurts.\n  A lot.",
        good="story: |\n  It hurts.\n  A lot.",
    ),
    _of_case(
        "yaml_tab",
        "Indenting shows what belongs to what. A tab has no width that all programs agree on, so "
        "only spaces count.",
        bad="client:\n\trole: Rider\n\tage: 30",
        good="client:\n  role: Rider\n  age: 30",
    ),
    _of_visit(
        "yaml_start",
        "Some characters have a meaning of their own at the beginning of a value, and need quotes there.",
        bad="story: @home it hurt.",
        good='story: "@home it hurt."',
    ),
    _of_visit(
        "yaml_indentation",
        "What belongs together stands level. A line out of line, or words behind a closing quote, "
        "belong nowhere.",
        bad='story: "It hurts" a lot.',
        good="story: '\"It hurts\" a lot.'",
    ),
)
