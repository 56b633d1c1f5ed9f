"""Examples laid over the sample, and what is found and printed of them.

Run as a program it writes down anew what is printed of every kind of fault and of every hostile course.
"""

from collections.abc import Collection
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from builder.check.show import as_text
from builder.diagnostic import Diagnostic, in_order
from builder.flow import opened as opening
from builder.flow.kinds import KINDS
from builder.flow.sample import lay_over
from builder.model.kind import Example
from builder.place import Places
from builder.read.taught import read_class
from tests.flow.hostile import HOSTILE

SAID = Path(__file__).parents[1] / "broken" / "said"
OF_THE_SAMPLE = Example("course.yml", "id: little")


def everything(example: Example, root: Path) -> tuple[list[Diagnostic], dict[str, Places]]:
    """All that is left to fix in the sample with this example in it, its class included, with the lines."""
    lay_over(example, root)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(opening, "shipped", lambda name: root / name)
        opened = opening.open_course(root / "course")
    found, places = [one for one in opened.to_fix if not one.accepted], dict(opened.places)
    if opened.course is not None:
        taught = read_class(root / "course/classes/may", opened.course)
        found += taught.found
        places |= taught.places
    return in_order(found), places


def printed(found: list[Diagnostic], places: dict[str, Places], beside: Collection[str]) -> str:
    """What a person reads at 80 columns, without what the sample itself has."""
    return as_text([one for one in found if one.check not in beside], places, width=80) + "\n"


def write_all() -> None:
    """Write every expectation anew."""
    with TemporaryDirectory() as folder:
        root = Path(folder)
        before = {one.check for one in everything(OF_THE_SAMPLE, root / "before")[0]}
        SAID.mkdir(exist_ok=True)
        for old in SAID.iterdir():
            old.unlink()
        examples = {**{name: kind.bad for name, kind in KINDS.items()}, **HOSTILE}
        for name, example in examples.items():
            text = printed(*everything(example, root / name), before - {name})
            (SAID / f"{name}.txt").write_text(text, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    write_all()
