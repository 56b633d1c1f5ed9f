"""The tray of a class in the hall: each sheet safely on disk under its digest before anybody is told so."""

from __future__ import annotations

import hashlib
import hmac
from collections import Counter
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from datetime import datetime, tzinfo
from pathlib import Path
from threading import Lock

from builder.collect.inbox import KIND, LARGEST, listing
from builder.collect.verify import Expected, Refusal, about_people
from builder.disk import keep_bytes, read_bytes, sync_folder
from builder.fault import Fault
from builder.model.answers import AnswerSheet
from builder.model.arrival import Arrival
from builder.model.code import ALPHABET, tidy
from builder.model.handed import sheet_of

MOST_ASIDE = 400
MOST_A_CODE = 200
REASON = ".txt"
_LOCKS = tuple(Lock() for _ in range(16))


class TrayFull(Fault):
    """There is no more room for sheets that nobody expects, or for more of one code."""


@dataclass(frozen=True)
class Due:
    """What a class expects at the door: its id, the codes of its roster, the tests of its course."""

    klass: str
    codes: Collection[str]
    tests: Collection[str]


class Tray:
    """The inbox of a class and the place beside it for what cannot be taken; `secret` makes receipts."""

    def __init__(self, inbox: Path, aside: Path, secret: bytes, zone: tzinfo) -> None:
        self._inbox, self._aside, self._secret, self._zone = inbox, aside, secret, zone
        self._of_code: Counter[str] = Counter(one.code for one in self.standing())

    def take(self, data: bytes, due: Due) -> Arrival:
        """Keep a sheet; the same bytes again give the same arrival, at the time they first came."""
        digest = hashlib.sha256(data).hexdigest()
        read = _read(data, due)
        with _LOCKS[int(digest[0], 16)]:
            if isinstance(read, Refusal):
                return self._set_aside(digest, data, read)
            path = self._inbox / f"{digest}{KIND}"
            if path.exists():
                sync_folder(self._inbox)
            else:
                self._keep(path, data, tidy(read.code))
            return self._arrival(path, digest, read)

    def standing(self) -> Iterator[Arrival]:
        """Every sheet in the inbox that reads as one, however it came there."""
        for path in listing(self._inbox):
            if path.is_symlink() or not path.is_file():
                continue
            try:
                data = read_bytes(path, LARGEST)
                yield self._arrival(path, hashlib.sha256(data).hexdigest(), sheet_of(data))
            except (Fault, ValueError):
                continue

    def aside(self) -> Iterator[Arrival]:
        """What was set aside, with the reason that was written beside it."""
        for path in listing(self._aside):
            if path.suffix == KIND:
                reason = path.with_suffix(REASON)
                lines = reason.read_text(encoding="utf-8").splitlines() if reason.exists() else []
                fault, remedy = [*lines, "", ""][:2]
                yield Arrival(digest=path.stem, at=self._time(path), fault=fault, remedy=remedy)

    def look_again(self, due: Due) -> list[Arrival]:
        """Take what was set aside and is expected by now, as after a code was added to the roster."""
        found = []
        for one in list(self.aside()):
            path = self._aside / f"{one.digest}{KIND}"
            data = path.read_bytes()
            if not isinstance(_read(data, due), Refusal):
                found.append(self.take(data, due))
                path.unlink()
                path.with_suffix(REASON).unlink(missing_ok=True)
        return found

    def _keep(self, path: Path, data: bytes, code: str) -> None:
        if self._of_code[code] >= MOST_A_CODE:
            raise TrayFull(
                f"Code {code} has handed in {MOST_A_CODE} different sheets.", "Look at this person."
            )
        keep_bytes(path, data)
        self._of_code[code] += 1

    def _set_aside(self, digest: str, data: bytes, why: Refusal) -> Arrival:
        path = self._aside / f"{digest}{KIND}"
        if not path.exists():
            if len(listing(self._aside)) >= 2 * MOST_ASIDE:
                raise TrayFull(f"{MOST_ASIDE} sheets were set aside.", f"Look through {self._aside.name}.")
            reason = "".join(f"{' '.join(line.split())}\n" for line in (why.fault, why.remedy))
            keep_bytes(path.with_suffix(REASON), reason.encode("utf-8"))
            keep_bytes(path, data)
        return Arrival(digest=digest, at=self._time(path), fault=why.fault, remedy=why.remedy)

    def _arrival(self, path: Path, digest: str, sheet: AnswerSheet) -> Arrival:
        return Arrival(
            digest=digest,
            at=self._time(path),
            receipt=receipt(self._secret, digest),
            code=tidy(sheet.code),
            test=sheet.test,
            version=sheet.version,
            rev=sheet.rev,
            answered=sum(one.value is not None for one in sheet.answers),
            of=len(sheet.answers),
        )

    def _time(self, path: Path) -> datetime:
        return datetime.fromtimestamp(int(path.stat().st_mtime), self._zone)


def receipt(secret: bytes, digest: str) -> str:
    """The short number of a sheet, such as `7K3-M9Q`: always the same, made by nobody without the secret."""
    number = int.from_bytes(hmac.digest(secret, digest.encode("ascii"), "sha256")[:8], "big")
    letters = []
    for _ in range(6):
        number, left = divmod(number, len(ALPHABET))
        letters.append(ALPHABET[left])
    return f"{''.join(letters[:3])}-{''.join(letters[3:])}"


def _read(data: bytes, due: Due) -> AnswerSheet | Refusal:
    if len(data) > LARGEST:
        return Refusal(
            f"This is larger than {LARGEST:,} bytes.", "An answer sheet is smaller; see what was sent."
        )
    try:
        sheet = sheet_of(data)
    except ValueError as error:
        return Refusal(str(error), "Ask the participant to hand the sheet in again.")
    if sheet.test not in due.tests:
        return Refusal(f"This course has no test `{sheet.test}`.", "See which course the participant opened.")
    return about_people(sheet, Expected(due.klass, due.codes, {})) or sheet
