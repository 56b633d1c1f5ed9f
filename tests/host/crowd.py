"""A hall full of people who all hand in within seconds, each from a connection of its own."""

import json
import time
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path
from random import Random

from builder.model.code import ALPHABET, LENGTH, check_character
from tests.doors.serve.asking import Place
from tests.host.made import sheet


@dataclass(frozen=True)
class Came:
    """One sheet that was sent: its bytes, the receipt, and how long it took."""

    data: bytes
    receipt: str
    seconds: float


def codes_of(count: int) -> Iterator[str]:
    """So many different whole codes."""
    for number in range(count):
        body = "".join(ALPHABET[(number * 7 + 31**place * number) % 31] for place in range(3))
        whole = f"CRWD{ALPHABET[number % 31]}{body}"[:LENGTH]
        whole = f"{ALPHABET[number // 31 % 31]}{whole[1:]}"
        yield whole + check_character(whole)


def crowd(course: Path, count: int) -> list[str]:
    """Put so many more people on the roster of the class; their codes."""
    codes = list(codes_of(count))
    rows = [
        f"Person {number},,,p{number}@lanternfall.example,no,{code}," for number, code in enumerate(codes)
    ]
    with (course / "classes" / "spring" / "roster.csv").open("a", encoding="utf-8") as roster:
        roster.writelines(f"{row}\n" for row in rows)
    return codes


def hand_in_all(hall: Place, codes: Sequence[str], seconds: float) -> list[Came]:
    """Everyone hands in at a random moment within so many seconds; how each fared."""
    moments = Random(7)  # noqa: S311 - the same moments in every run
    start = time.monotonic() + 0.5
    due = [start + moments.uniform(0, seconds) for _ in codes]

    def send(one: tuple[str, float]) -> Came:
        data = sheet(one[0])
        time.sleep(max(0.0, one[1] - time.monotonic()))
        began = time.monotonic()
        got = hall.post("/hand", data)
        told = json.loads(got.body)
        return Came(data, str(told.get("received", "")), time.monotonic() - began)

    with ThreadPoolExecutor(len(codes)) as pool:
        return list(pool.map(send, zip(codes, due, strict=True)))


def kept(course: Path) -> set[str]:
    """The digests of what lies in the inbox, worked out from the bytes themselves; no half-written draft."""
    inbox = course / "classes" / "spring" / "answers"
    return {sha256(path.read_bytes()).hexdigest() for path in inbox.glob("[!.]*")}


def share(times: Sequence[float], percent: int) -> float:
    """The smallest time within which at least so many in a hundred are done: the nearest rank."""
    ranked = sorted(times)
    return ranked[max(0, -(-len(ranked) * percent // 100) - 1)]
