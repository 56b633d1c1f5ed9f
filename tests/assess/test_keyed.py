"""What is held right goes by the ids on paper, whatever a question was made from."""

from dataclasses import replace

from builder.assess.keyed import keyed_parts, said_by_name
from builder.assess.laying import laid_out
from builder.assess.opaque import Opaque
from builder.assess.question import Choice, Ground, Judged, Said
from tests.assess.sample import SECRET
from tests.assess.test_versions import shown


def test_right_options_stand_in_the_order_shown() -> None:
    """The ids are those of the paper, each with what is said of it."""
    one = replace(shown("a", "v1", "option"), options=tuple(Choice(name) for name in "abcd"), kind="many")
    said = tuple(Said("right", "Right", f"Why {name}.", Ground()) for name in "abcd")
    (laid,) = laid_out([one], Opaque(SECRET, "final|A"))
    parts = keyed_parts(laid, Judged((3, 0), said))
    titles = {option.id: option.title for option in laid.question.options}
    assert parts.options == tuple(titles)
    assert [titles[name] for name in parts.right] == [name for name in titles.values() if name in "ad"]
    assert {titles[name]: one.reason for name, one in said_by_name(laid, Judged((), said)).items()} == {
        name: f"Why {name}." for name in "abcd"
    }
