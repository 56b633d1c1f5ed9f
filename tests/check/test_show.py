"""Printing what is to fix, for people and for programs."""

from dataclasses import replace

from builder.check.show import as_json, as_text
from builder.diagnostic import Diagnostic, Related
from builder.place import Place, Places

ONE = Diagnostic(
    "dose_out_of_range",
    "error",
    Place("cases/thigh.yml", 2, 12, 2, 14),
    "The cold pack lies for 45 minutes, and the card allows at most 20 minutes at a time on this phase.",
    "Write at most 20.",
    ("visits", 0, "chosen", 1, "minutes"),
    ("co05",),
    (Related(Place("cases/ankle.yml", 9, 3, 9, 4), "The same dose stands here."),),
)
OTHER = Diagnostic("file_not_read", "advice", Place("panel/"), "This folder is not read.", "")
LINES = {"cases/thigh.yml": Places(Place("cases/thigh.yml"), lines=("chosen:", "  minutes: 45"))}


def test_the_text_is_word_for_word() -> None:
    """Place, level, name, line, caret, message, remedy, rules, other places, and the count."""
    assert (
        as_text([ONE, OTHER], LINES, width=60)
        == """\
cases/thigh.yml:2:12  error  dose_out_of_range
  2 |   minutes: 45
    |            ^^
  The cold pack lies for 45 minutes, and the card allows at
  most 20 minutes at a time on this phase.
  To mend: Write at most 20.
  Rules: co05
  See cases/ankle.yml:9:3: The same dose stands here.

panel/  advice  file_not_read
  This folder is not read.

To fix: 1 error, no warnings, 1 piece of advice."""
    )


def test_nothing_to_fix_is_said() -> None:
    """An empty list is good news."""
    assert as_text([], {}) == "Nothing to fix."


def test_without_the_source_there_is_no_excerpt() -> None:
    """A file whose lines are not known is still named."""
    assert "|" not in as_text([ONE], {})


def test_colour_is_for_level_and_caret_alone() -> None:
    """Colour adds nothing that is not there without it."""
    plain, coloured = as_text([ONE], LINES), as_text([ONE], LINES, colour=True)
    assert coloured.count("\x1b[31;1m") == coloured.count("\x1b[0m") == 2
    assert coloured.replace("\x1b[31;1m", "").replace("\x1b[0m", "") == plain


def test_an_author_cannot_send_orders_to_the_terminal() -> None:
    """Escape characters in names, messages and remedies are replaced."""
    bad = "x\x1b[2J"
    fault = Diagnostic("a", "error", Place(bad), bad, bad, (), (bad,), (Related(Place(bad), bad),))
    assert "\x1b" not in as_text([fault], {})


def test_the_json_has_its_fixed_shape() -> None:
    """Exactly the keys that the shape names, in its order."""
    assert as_json([ONE]) == {
        "format": "caseloom/check/1",
        "counts": {"error": 1, "warning": 0, "advice": 0},
        "to_fix": [
            {
                "check": "dose_out_of_range",
                "level": "error",
                "file": "cases/thigh.yml",
                "line": 2,
                "column": 12,
                "end_line": 2,
                "end_column": 14,
                "path": ["visits", 0, "chosen", 1, "minutes"],
                "message": ONE.message,
                "remedy": "Write at most 20.",
                "rules": ["co05"],
                "related": [
                    {
                        "file": "cases/ankle.yml",
                        "line": 9,
                        "column": 3,
                        "message": "The same dose stands here.",
                    }
                ],
            }
        ],
        "accepted": [],
    }


def test_what_is_accepted_is_counted_apart() -> None:
    """It is not shown among what is to fix, and a program is told it with its reason."""
    kept = replace(ONE, accepted="it must be")
    assert as_text([kept], LINES) == "Nothing to fix. 1 accepted with a reason."
    assert as_text([ONE, kept], LINES) == f"{as_text([ONE], LINES)} 1 accepted with a reason."
    data = as_json([ONE, kept])
    assert data["counts"] == {"error": 1, "warning": 0, "advice": 0}
    assert len(data["to_fix"]) == 1
    assert data["accepted"] == [{**data["to_fix"][0], "because": "it must be"}]


def test_many_rules_are_counted() -> None:
    """Eight names and how many more there are; one more than eight is told; a program is given all."""
    names = tuple(f"r{n}" for n in range(10))
    assert "Rules: r0, r1, r2, r3, r4, r5, r6, r7 and 2 more" in as_text([replace(ONE, rules=names)], {})
    assert "r6, r7, r8\n" in as_text([replace(ONE, rules=names[:9])], {})
    assert as_json([replace(ONE, rules=names)])["to_fix"][0]["rules"] == list(names)
