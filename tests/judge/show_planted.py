"""Plants each known fault in the shipped rules, one at a time, and prints what is said against it."""

from collections.abc import Iterator
from textwrap import wrap

from builder.judge.prove import holes
from tests.judge.laws import World, shipped_world
from tests.judge.test_draft_faults import PLANTED, PROVEN

WIDTH, MOST = 80, 3


def shown() -> Iterator[str]:
    """Every fault of the draft by the check made for it, then every hole as the proof finds it."""
    world = shipped_world()
    whole = {(one.sort, one.about) for one in holes(world.content, world.judge.space)}
    yield from wrap(f"Nothing planted: {len(whole)} holes.", WIDTH)
    for fault, damage in PLANTED:
        yield ""
        yield from wrap(f"{fault.__doc__} Planted: {damage.__doc__}.", WIDTH)
        yield from _some(list(fault(damage(world))))
    for damage, sorts in PROVEN:
        yield ""
        yield from wrap(
            f"Planted: {damage.__doc__}. The proof, looking for {', '.join(sorted(sorts))}:", WIDTH
        )
        yield from _some(list(_found(damage(world), whole)))


def _found(world: World, whole: set[tuple[str, str]]) -> Iterator[str]:
    """What the proof finds in a damaged world that is not there in the whole one."""
    for one in holes(world.content, world.judge.space):
        if (one.sort, one.about) not in whole:
            yield f"{one.sort}, {one.about}: {one.witness}"


def _some(found: list[str]) -> Iterator[str]:
    for one in found[:MOST]:
        yield from wrap(one, WIDTH, initial_indent="  - ", subsequent_indent="    ")
    if len(found) > MOST:
        yield f"    and {len(found) - MOST} more"
    if not found:
        yield "  NOT FOUND"


if __name__ == "__main__":
    print("\n".join(shown()))
