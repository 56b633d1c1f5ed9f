"""Takes every file of a class's inbox into the record, or says why not."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path

from builder.collect.inbox import Handed, batches, listing
from builder.collect.verify import Expected, Refusal, expected, refusal
from builder.doors.store.opening import Store
from builder.doors.store.rings import remember_rings, rings_by_edition
from builder.doors.store.sheets import add_refusal, add_sheet, owner_of, sheets_of
from builder.model.answers import AnswerSheet
from builder.model.code import tidy
from builder.model.handed import sheet_of
from builder.model.key import KeyRing
from builder.model.outcome import Collected, LeftFile, TakenFile
from builder.model.records import ClassFolder, KeptSheet
from builder.model.standing import doubtful

AT_ONCE = 50
Progress = Callable[[int, int], None]
Outcome = TakenFile | LeftFile | str


def collect_class(
    store: Store,
    folder: ClassFolder,
    inbox: Path,
    rings: Sequence[KeyRing],
    now: datetime,
    progress: Progress = lambda _done, _all: None,
) -> Collected:
    """Take each answer sheet exactly once; `progress` hears how many files are safe, of how many."""
    remember_rings(store, rings, now)
    due = expected(folder, rings_by_edition(store, rings))
    count = len(listing(inbox))
    done: list[Outcome] = []
    for batch in batches(inbox, AT_ONCE):
        with store.transaction():
            made = [_take(store, folder, handed, due, now) for handed in batch]
        done += made
        progress(len(done), count)
    return Collected(
        klass=folder.taught.id,
        taken=tuple(one for one in done if isinstance(one, TakenFile)),
        had=tuple(one for one in done if isinstance(one, str)),
        left=tuple(one for one in done if isinstance(one, LeftFile)),
        notices=doubtful(sheets_of(store, folder)),
    )


def _take(store: Store, folder: ClassFolder, handed: Handed, due: Expected, now: datetime) -> Outcome:
    if handed.fault:
        return LeftFile(file=handed.name, fault=handed.fault, remedy=handed.remedy)
    owner = owner_of(store, handed.digest)
    if owner == (folder.course, folder.taught.id):
        return handed.name
    read = _read(handed, due, owner)
    if isinstance(read, Refusal):
        add_refusal(store, folder, handed.digest, read.fault, now)
        return LeftFile(file=handed.name, fault=read.fault, remedy=read.remedy)
    kept = KeptSheet(digest=handed.digest, received=now, sheet=read)
    add_sheet(store, folder, kept, handed.data)
    return _taken(handed.name, kept)


def _read(handed: Handed, due: Expected, owner: tuple[str, str] | None) -> AnswerSheet | Refusal:
    if owner is not None:
        return Refusal(
            f"The class `{owner[1]}` of `{owner[0]}` has this already.", "Move it to where it belongs."
        )
    try:
        sheet = sheet_of(handed.data)
    except ValueError as error:
        return Refusal(str(error), "Ask the participant to hand the sheet in again.")
    return refusal(sheet, due) or sheet


def _taken(name: str, kept: KeptSheet) -> TakenFile:
    sheet = kept.sheet
    return TakenFile(
        file=name,
        digest=kept.digest,
        code=tidy(sheet.code),
        test=sheet.test,
        version=sheet.version,
        rev=sheet.rev,
    )
