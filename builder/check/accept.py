"""What an author accepts where it stands: one warning or piece of advice, with the reason, in a comment.

For a row of a sheet, where no comment can stand, `class.yml` says it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from builder.diagnostic import Diagnostic, Level, in_order
from builder.model.condition import atoms
from builder.model.kind import Kind, kind
from builder.model.library import Content
from builder.place import Place, Places, Step

NEVER = frozenset({"not_reviewed", "reviews_hold"})
SAFETY = ("red_flag", "contraindication", "consent")
FORM = "accepted: CHECK, because REASON"
_SAYS = r"accepted:[ \t]*(?P<check>[\w-]*)[ \t]*,?(?:[ \t]*because\b(?P<why>.*?))?"
_IN_YAML = re.compile(rf"(?:^|(?<=\s))#[ \t]*{_SAYS}[ \t]*$")
_IN_LESSON = re.compile(rf"<!--[ \t]*{_SAYS}[ \t]*-->[ \t]*$")
_COMMENT = re.compile(r"\s*(#|<!--)")
_LISTED = "lessons:\n  - {file: cold.md, title: Cold}"

KINDS: tuple[Kind, ...] = (
    kind(
        "accept_unknown",
        "A comment that accepts what no check is called accepts nothing.",
        "course.yml",
        bad=f"# accepted: lesson_not_listd, because the page is a draft\n{_LISTED}",
        good=_LISTED,
    ),
    kind(
        "accept_no_reason",
        "Whoever reads the file next must see why this was left. Without a reason it looks forgotten.",
        "course.yml",
        bad="lessons: []  # accepted: lesson_not_listed",
        good="lessons: []  # accepted: lesson_not_listed, because the page is a draft",
    ),
    kind(
        "accept_not_allowed",
        "Only warnings and advice can be left as they are. No error can, nothing about red flags, "
        "contraindications or consent, and no missing signature.",
        "course.yml",
        bad=f"# accepted: agenda_times, because the hall is shared\n{_LISTED}",
        good=_LISTED,
    ),
    kind(
        "accept_unused",
        "What was accepted here is no longer found. The comment would hide the next one that turns up there.",
        "course.yml",
        bad=f"# accepted: lesson_not_listed, because the page is a draft\n{_LISTED}",
        good="# accepted: lesson_not_listed, because the page is a draft\nlessons: []",
        level="warning",
    ),
)


@dataclass(frozen=True)
class Accepted:
    """One comment: what it accepts, why, where it stands, and the line it is about.

    `rows`: instead of a line, the rows of sheets it is about, each by its file and number.
    """

    check: str
    because: str
    place: Place
    line: int = 0
    rows: frozenset[tuple[str, Step]] = frozenset()


def accept(
    found: Sequence[Diagnostic],
    places: Mapping[str, Places],
    levels: Mapping[str, Level],
    guarded: Collection[str],
    suggest: Callable[[str, Collection[str]], str],
    of_rows: Sequence[Accepted] = (),
) -> tuple[Diagnostic, ...]:
    """What is to fix, with the reason put to what is accepted, and with what is wrong about the comments.

    `levels` holds every check by name, `guarded` the rules that stand for somebody's safety; `suggest`
    says which name may have been meant. `of_rows` are those that are no comments.
    """
    comments = [*of_rows]
    comments += [one for file, known in places.items() for one in comments_in(file, known.lines)]
    left: list[Diagnostic] = []
    used: set[Accepted] = set()
    for one in found:
        mine = [comment for comment in comments if _meant(comment, one) and _may(one, guarded)]
        used.update(mine)
        left.append(replace(one, accepted=mine[0].because or " ") if mine else one)
    wrong = [
        fault if fault.check != "accept_unknown" else replace(fault, remedy=suggest(one.check, levels))
        for one in comments
        for fault in _faults(one, left, levels, used=one in used)
    ]
    return tuple(in_order([*left, *wrong]))


def guarded_rules(content: Content) -> frozenset[str]:
    """The rules that stop a session, or that ask for a red flag, a contraindication or consent."""
    risky = {name for name, fact in content.facts.facts.items() if fact.group in SAFETY}
    return frozenset(
        rule.id
        for rule in content.rules.values()
        if rule.session or any(atom.name in risky for atom in atoms(rule.when))
    )


def comments_in(file: str, lines: Sequence[str]) -> Iterator[Accepted]:
    """Every comment that accepts something; one alone on its line is about the next line that is none."""
    pattern = _IN_LESSON if file.endswith(".md") else _IN_YAML
    for number, line in enumerate(lines, start=1):
        if "accepted:" not in line or (said := pattern.search(line)) is None:
            continue
        about = number
        while _COMMENT.match(lines[about - 1]) and about < len(lines):
            about += 1
        place = Place(file, number, said.start() + 1, number, len(line.rstrip()) + 1)
        yield Accepted(said["check"], (said["why"] or "").strip(), place, about)


def _meant(comment: Accepted, one: Diagnostic) -> bool:
    if not comment.line:
        return comment.check == one.check and (one.place.file, *one.path[:1]) in comment.rows
    return (comment.check, comment.place.file, comment.line) == (one.check, one.place.file, one.place.line)


def _may(one: Diagnostic, guarded: Collection[str]) -> bool:
    return one.level != "error" and one.check not in NEVER and not any(rule in guarded for rule in one.rules)


def _faults(
    comment: Accepted, found: Sequence[Diagnostic], levels: Mapping[str, Level], *, used: bool
) -> Iterator[Diagnostic]:
    name = comment.check
    refused = any(_meant(comment, one) for one in found if not one.accepted)
    if name not in levels:
        yield _fault("accept_unknown", comment, f"There is no check `{name}` to accept.", "")
    elif levels[name] == "error" or name in NEVER or name.startswith("accept_") or refused:
        message = f"`{name}` cannot be accepted" + (" here." if refused else ".")
        yield _fault("accept_not_allowed", comment, message, "Mend what it names, and remove this comment.")
    elif not used:
        message = f"`{name}` is not found {f'on line {comment.line}' if comment.line else 'in such a row'}."
        yield _fault("accept_unused", comment, message, _moved(comment, found), "warning")
    elif not comment.because:
        message = f"`{name}` is accepted without a reason."
        yield _fault("accept_no_reason", comment, message, f"Write `{FORM}`.")


def _moved(comment: Accepted, found: Sequence[Diagnostic]) -> str:
    if not comment.line:
        return "Remove this entry, or correct its code."
    mine = (one for one in found if (one.check, one.place.file) == (comment.check, comment.place.file))
    lines = ", ".join(str(one.place.line) for one in mine)
    return f"It is found on line {lines}: move the comment there." if lines else "Remove this comment."


def _fault(check: str, comment: Accepted, message: str, remedy: str, level: Level = "error") -> Diagnostic:
    return Diagnostic(check, level, comment.place, message, remedy)
