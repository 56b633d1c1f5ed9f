"""What does not hold in a sheet of rows, and in the list of who takes part."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind

_GOOD = """
name,licence,code_1
Bea Vantornel,00123,QZVNRBLAD
Ilse Marrowick,00456,WSBVCVQMF
"""
_of_roster = partial(kind, where="classes/may/roster.csv", good=_GOOD)
_WITH_MORE = _GOOD.replace("code_1", "code_1,%s").replace("LAD", "LAD,%s").replace("QMF", "QMF,%s")

OF_TABLES: tuple[Kind, ...] = (
    _of_roster(
        "sheet_column_unknown",
        "No more is kept of a person than is needed. A column that nothing reads does not belong in "
        "the list.",
        bad=_WITH_MORE % ("birthday", "", ""),
    ),
    _of_roster(
        "sheet_column_twice",
        "Of two columns of one name it is not known which of them counts.",
        bad=_WITH_MORE % ("licence", "", ""),
    ),
    _of_roster(
        "sheet_no_column",
        "A cell beyond the last column belongs to nothing; most often a comma in a text has moved the row.",
        bad=_GOOD.replace("WSBVCVQMF", "WSBVCVQMF,came late"),
    ),
    _of_roster(
        "sheet_quotes",
        "A quotation mark without its partner swallows the rows below it.",
        bad=_GOOD.replace("Ilse", '"Ilse'),
    ),
    _of_roster(
        "cell_not_yes_no",
        "A person's consent to be reported is yes or no. Anything else would be a guess.",
        bad=_WITH_MORE % ("report", "maybe", "no"),
    ),
    _of_roster(
        "code_missing",
        "A personal code ties answers to a person. Without one nothing of theirs can be taken in.",
        bad=_GOOD.replace("WSBVCVQMF", ""),
    ),
    _of_roster(
        "code_wrong",
        "The last character of a code proves the others. One of them is mistyped.",
        bad=_GOOD.replace("WSBVCVQMF", "WSBVCVQMX"),
    ),
    _of_roster(
        "code_twice",
        "One code for two people would give one of them the other's answers.",
        bad=_GOOD.replace("WSBVCVQMF", "QZVNRBLAD"),
    ),
    _of_roster(
        "person_twice",
        "One person in two rows would be counted, graded and certified twice.",
        bad=_GOOD.replace("Ilse Marrowick", "bea  vantornel"),
        level="warning",
    ),
    _of_roster(
        "email_odd",
        "A certificate sent to a mistyped address reaches nobody, or a stranger.",
        bad=_WITH_MORE % ("email", "bea@@lanternfall.example", ""),
        level="warning",
    ),
)
