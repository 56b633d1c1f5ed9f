"""The faults of a YAML file in plain words: what is wrong, and what mends it."""

from __future__ import annotations

from dataclasses import dataclass

from builder.diagnostic import Diagnostic, Related
from builder.place import Place

FAULTS = {
    "yaml_too_deep": (
        "More than 40 levels are nested here.",
        "Write it flatter.",
    ),
    "yaml_too_many": (
        "This file holds more than 50,000 values.",
        "Split it into several files.",
    ),
    "yaml_two_documents": (
        "A second document begins here.",
        "Remove the `---` line, or make it a file of its own.",
    ),
    "yaml_directive": (
        "A line that begins with `%` gives orders to the reader.",
        "Remove it.",
    ),
    "yaml_anchor": (
        "An anchor (`&name`) stands here.",
        "Remove it, and write the value out wherever it is needed; text that begins with & needs quotes.",
    ),
    "yaml_alias": (
        "A reference (`*name`) stands here.",
        "Write the value out; text that begins with * needs quotes.",
    ),
    "yaml_tag": (
        "A tag (`!name`) stands here.",
        "Remove it; text that begins with ! needs quotes.",
    ),
    "yaml_merge": (
        "A merge key (`<<`) stands here.",
        "Write the entries out.",
    ),
    "yaml_key_not_text": (
        "This key is no word.",
        "Write a word, or put the key in quotes.",
    ),
    "yaml_key_twice": (
        "This key stands twice in one block.",
        "Keep one of the two.",
    ),
    "yaml_odd_escape": (
        "A backslash makes an invisible character here.",
        "Use single quotes, or remove it.",
    ),
    "yaml_colon": (
        "A colon followed by a space stands inside a value, or a line is indented too far.",
        "Put the whole value in quotes, or line the key up with its neighbours.",
    ),
    "yaml_open_quote": (
        "A quotation mark is opened here and never closed.",
        "Close it; inside single quotes an apostrophe is written twice.",
    ),
    "yaml_open_bracket": (
        "A bracket is opened here and not closed, or what it holds is not parted by commas.",
        "Close it, or put commas between the entries.",
    ),
    "yaml_escape": (
        "A backslash in double quotes begins something unknown.",
        "Use single quotes, or write the backslash twice.",
    ),
    "yaml_no_colon": (
        "This line is no `key: value`.",
        "Add the colon and a space; if it goes on from the line above, indent it.",
    ),
    "yaml_block_text": (
        "Something stands behind the `|` or `>`.",
        "Begin the text on the next line, indented.",
    ),
    "yaml_tab": (
        "A tab stands where spaces must.",
        "Indent with spaces.",
    ),
    "yaml_start": (
        "A value cannot begin with this character.",
        "Put the value in quotes, or remove the character.",
    ),
    "yaml_indentation": (
        "This does not fit here: the line is not level with its neighbours, or text follows a closing quote.",
        "Line it up with its neighbours; a text that holds quotes needs quotes around the whole of it.",
    ),
    "yaml_syntax": (
        "This cannot be read as YAML.",
        "Compare it with a file that works.",
    ),
}


@dataclass(frozen=True)
class Syntax:
    """What a parser's words mean: the fault, and whether it is shown at the opening mark."""

    check: str
    at_opening: bool = False


_HEARD: tuple[tuple[tuple[str, ...], Syntax], ...] = (
    (("nesting depth",), Syntax("yaml_too_deep")),
    (("mapping values",), Syntax("yaml_colon")),
    (
        ("end of stream", "document indicator", "document separator"),
        Syntax("yaml_open_quote", at_opening=True),
    ),
    (("',' or",), Syntax("yaml_open_bracket", at_opening=True)),
    (("escape", "hexadecimal", "hexdecimal"), Syntax("yaml_escape")),
    (("comment or line break", "chomping", "indentation indicator"), Syntax("yaml_block_text")),
    (("incompatible", "directive"), Syntax("yaml_directive")),
    (("tag handle", "expected '>'"), Syntax("yaml_tag", at_opening=True)),
    (("expected ':'",), Syntax("yaml_no_colon", at_opening=True)),
    (("tab character",), Syntax("yaml_tab")),
    (("node content",), Syntax("yaml_start")),
    (
        ("<block end>", "expected key", "'-' indicator", "sequence entries", "document start>"),
        Syntax("yaml_indentation"),
    ),
)
_MARKS = {"while scanning an anchor": "yaml_anchor", "while scanning an alias": "yaml_alias"}


def fault(check: str, place: Place, first: Place | None = None, key: str = "") -> Diagnostic:
    """The Diagnostic of one sort of fault; `first` and `key` belong to a key that stands twice."""
    message, remedy = FAULTS[check]
    related = (Related(first, f"`{key}` was first written here."),) if first else ()
    return Diagnostic(check, "error", place, message, remedy, related=related)


def syntax(problem: str, context: str, letter: str) -> Syntax:
    """What is wrong, heard from the parser's problem and context, and the character it stopped at."""
    if context in _MARKS:
        return Syntax(_MARKS[context], at_opening=True)
    if "cannot start any token" in problem:
        return Syntax("yaml_tab" if letter == "\t" else "yaml_start")
    heard = (meant for needles, meant in _HEARD if any(needle in problem for needle in needles))
    return next(heard, Syntax("yaml_syntax"))
