"""All agreements together: each fault is told once, where it tells most."""

from pathlib import Path

from builder.read.refer import own
from builder.read.refer.refer import AGREEMENTS
from tests.read.folders import changed

T, R = "course/cases/thigh.yml", "content/rules/numb_cold.yml"


def test_every_agreement_is_in_the_list() -> None:
    """What is written as an agreement is also run."""
    written = {value for name, value in vars(own).items() if getattr(value, "__module__", "") == own.__name__}
    public = {one for one in written if callable(one) and not one.__name__.startswith("_")}
    assert public
    assert public <= set(AGREEMENTS)


def test_the_nearer_word_wins(tmp_path: Path) -> None:
    """A malformed name that is also unknown is told once, with the name that was meant."""
    (fault,) = changed(tmp_path / "root", T, "{set: short}", "{set: Short}").found
    assert (fault.check, fault.remedy) == ("screening_set_unknown", "Did you mean `short`?")


def test_a_broken_part_of_a_condition_is_not_told_again_for_the_whole(tmp_path: Path) -> None:
    """The part is placed; the condition around it is not blamed as well."""
    (fault,) = changed(tmp_path / "root", R, "when: {numb: yes}", "when: {any: [numb]}").found
    assert (fault.check, fault.place.column) == ("condition_malformed", 14)


def test_an_effect_that_does_not_hold_together_is_told_beside_others(tmp_path: Path) -> None:
    """A fault inside a block does not hide what is wrong with the block itself."""
    found = changed(tmp_path / "root", R, "answer: barred", "needs: {minuts: 3}\n    answer: barred").found
    assert [one.check for one in found] == ["value_refused", "attribute_unknown"]


def test_a_shortcut_is_not_told_again_as_a_wrong_value(tmp_path: Path) -> None:
    """What the YAML reader refused is not held against facts as well."""
    (fault,) = changed(tmp_path / "root", T, "heat: clear", "heat: !x clear").found
    assert fault.check == "yaml_tag"
