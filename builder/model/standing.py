"""Which answer sheet counts for each code and test, and what looks wrong about the others."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import UTC, datetime

from builder.model.code import tidy
from builder.model.records import ClassFolder, KeptSheet


def counted(sheets: Iterable[KeptSheet]) -> dict[tuple[str, str], KeptSheet]:
    """The sheet that counts, by code and test: the one that came first, in its highest revision."""
    return {place: _newest(_first(group)) for place, group in _by_place(sheets).items()}


def counted_apart(sheets: Iterable[KeptSheet], folder: ClassFolder) -> dict[str, list[KeptSheet]]:
    """The sheets that count for each participant of a class, by first personal code."""
    owners = folder.owners
    apart: dict[str, list[KeptSheet]] = {code: [] for code in owners.values()}
    for (code, _), kept in counted(sheets).items():
        if code in owners:
            apart[owners[code]].append(kept)
    return apart


def doubtful(sheets: Sequence[KeptSheet]) -> tuple[str, ...]:
    """What a person should look at: sheets of one code that differ, copied sheets, drafts, late answers."""
    return (
        *_several_sheets(sheets),
        *_several_codes(sheets),
        *_several_contents(sheets),
        *_unfinished(sheets),
        *_late(sheets),
    )


def _by_place(sheets: Iterable[KeptSheet]) -> dict[tuple[str, str], list[KeptSheet]]:
    places: dict[tuple[str, str], list[KeptSheet]] = defaultdict(list)
    for kept in sheets:
        places[tidy(kept.sheet.code), kept.sheet.test].append(kept)
    return dict(sorted(places.items()))


def _first(group: Sequence[KeptSheet]) -> list[KeptSheet]:
    first = min(group, key=_order).sheet.sheet
    return [kept for kept in group if kept.sheet.sheet == first]


def _newest(revisions: Sequence[KeptSheet]) -> KeptSheet:
    highest = max(kept.sheet.rev for kept in revisions)
    return min((kept for kept in revisions if kept.sheet.rev == highest), key=_order)


def _order(kept: KeptSheet) -> tuple[datetime, datetime, str, str]:
    started = kept.sheet.started
    claimed = started if started.tzinfo else started.replace(tzinfo=UTC)
    return (kept.received, claimed, kept.sheet.sheet, kept.digest)


def _several_sheets(sheets: Iterable[KeptSheet]) -> list[str]:
    return [
        f"Code {code} handed in {count} different answer sheets for `{test}`; the first to come counts."
        for (code, test), group in _by_place(sheets).items()
        if (count := len({kept.sheet.sheet for kept in group})) > 1
    ]


def _several_codes(sheets: Iterable[KeptSheet]) -> list[str]:
    codes: dict[str, set[str]] = defaultdict(set)
    for kept in sheets:
        codes[kept.sheet.sheet].add(tidy(kept.sheet.code))
    return [
        f"One answer sheet came under the codes {' and '.join(sorted(found))}; it may have been copied."
        for _, found in sorted(codes.items())
        if len(found) > 1
    ]


def _several_contents(sheets: Iterable[KeptSheet]) -> list[str]:
    contents: dict[tuple[str, str, int], int] = defaultdict(int)
    for kept in sheets:
        contents[tidy(kept.sheet.code), kept.sheet.sheet, kept.sheet.rev] += 1
    return [
        f"Code {code} handed in {count} files that differ though both are revision {rev} of one sheet; "
        "the first to come counts."
        for (code, _, rev), count in sorted(contents.items())
        if count > 1
    ]


def _unfinished(sheets: Iterable[KeptSheet]) -> list[str]:
    return [
        f"Code {code}: what counts for `{test}` is a draft that was never finished; ask for the answer sheet."
        for (code, test), kept in counted(sheets).items()
        if kept.sheet.finished is None
    ]


def _late(sheets: Iterable[KeptSheet]) -> list[str]:
    """Late answers of the sheets that count; the limit and what was agreed are as the sheet claims them."""
    return [
        f"Code {code}: {len(time.late)} answers in `{test}` came late. The limit is {time.limit} minutes; as "
        f"the sheet says, {time.more} times as many were agreed on. Compare that with your own note."
        for (code, test), kept in counted(sheets).items()
        if (time := kept.sheet.time) is not None and time.late
    ]
