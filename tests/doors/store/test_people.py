"""People stand apart and may be destroyed."""

from pathlib import Path

from builder.doors.store.people import person_of, remember_person
from tests.records.kept import contents, look, opened
from tests.records.made import NOW, folder, person

ANN = person(1, name="d'Angelo Núñez")
SPRING = folder(ANN)


def test_a_person_is_kept_as_typed(tmp_path: Path) -> None:
    """The same row is the same number; another spelling is another row."""
    with opened(tmp_path) as store:
        first = remember_person(store, SPRING, ANN, NOW)
        assert remember_person(store, SPRING, ANN, NOW) == first
        renamed = ANN.model_copy(update={"licence": "00123"})
        other = remember_person(store, SPRING, renamed, NOW)
        assert person_of(store, first) == {"name": "d'Angelo Núñez", "name_on_licence": "", "licence": "001"}
        assert person_of(store, other) == {
            "name": "d'Angelo Núñez",
            "name_on_licence": "",
            "licence": "00123",
        }
    assert len(contents(tmp_path)["people"]) == 2


def test_what_is_personal_can_be_destroyed(tmp_path: Path) -> None:
    """The table of people alone may lose rows, and then has no answer."""
    with opened(tmp_path) as store:
        number = remember_person(store, SPRING, ANN, NOW)
    look(tmp_path, "DELETE FROM people")
    with opened(tmp_path) as store:
        assert person_of(store, number) is None
