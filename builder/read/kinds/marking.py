"""What does not hold in the sheet by which written answers are marked."""

from __future__ import annotations

from builder.model.kind import Example, Kind

_FILE = "classes/may/marking.csv"
_HEAD = "code,test,question,criterion,level,by,answer\n"
_ROW = "QZVNRBLAD,final,tell_him,reason,1,Tamsin Oakfell,It still bleeds.\n"
_QUESTION = Example(
    "questions/tell_him.yml",
    """
    format: 1
    id: tell_him
    objective: choose
    level: apply
    use: practice
    stem: Why do you leave the knee alone today?
    source: [common_practice]
    text:
      example: It still bleeds inside.
      criteria:
        - {id: reason, title: Names the reason, levels: [No, Yes]}
    """,
)


def _of_marking(name: str, why: str, rows: str) -> Kind:
    good = Example(_FILE, _HEAD + _ROW, more=(_QUESTION,))
    return Kind(name, "error", why, Example(_FILE, _HEAD + rows, more=(_QUESTION,)), good)


OF_MARKING: tuple[Kind, ...] = (
    _of_marking(
        "marker_missing",
        "A mark decides over a person. Whoever is asked about it later has to know who gave it.",
        _ROW.replace("Tamsin Oakfell", ""),
    ),
    _of_marking(
        "marked_twice",
        "Of two levels for one criterion of one answer only one can count, and nobody could say which.",
        _ROW + _ROW.replace(",1,", ",0,"),
    ),
)
