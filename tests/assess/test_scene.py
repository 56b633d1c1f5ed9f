"""A visit in words, and an option as title and chips."""

from decimal import Decimal

import pytest

from builder.assess.scene import choice_of, client_words, scene_of
from builder.model.case import Case, CaseOption, Visit
from tests.assess.sample import case, content, visit


def scene_text(case_: Case, *, alone: bool) -> str:
    """Everything a scene shows."""
    return scene_of(content(), case_, case_.visits[0], alone=alone).model_dump_json()


def test_a_scene_tells_what_a_therapist_could_know() -> None:
    """Who, when, what happened, what was found with its unit, the screen and consent."""
    one = case("alpha", 1, history={"tingling": "no"})
    scene = scene_of(content(), one, one.visits[0], alone=True)
    assert scene.title == "30 hours after the injury"
    assert scene.client == "Acrobat, 24 · right thigh"
    assert scene.story == "A pole hit alpha. It hurts, day 1."
    assert scene.screen == "Lower limb: all no. Consent given."
    assert [(cell.label, cell.value, cell.number) for cell in scene.board] == [
        ("Injury", "bruise", None),
        ("Severity", "middling", None),
        ("Swelling", "rising", None),
        ("Knee bend", "72°", "72"),
        ("Tingling", "no", None),
    ]


@pytest.mark.parametrize("secret", ["Secret", "because", "acute", "chosen", "cold"])
def test_a_scene_alone_tells_nothing_of_the_authors(secret: str) -> None:
    """No title, no declared phase, no option, no word of the author's and no ending."""
    assert secret not in scene_text(case("alpha", 1), alone=True)


def test_a_scene_among_others_has_the_authors_title() -> None:
    """In practice a visit carries its title and its time, and what happened is told once before."""
    one = case("alpha", 1)
    scene = scene_of(content(), one, one.visits[0], alone=False)
    assert scene.title == "Secret visit 1"
    assert scene.client.endswith("30 hours after the injury")
    assert scene.story == "It hurts, day 1."


def test_a_second_injury_is_told_with_the_first() -> None:
    """The latest injury comes first, because phase runs from it."""
    one = case("alpha", visits=[visit(4, since_reinjury="2 h")])
    words = "2 hours after it was hurt again, 5 days after the first injury"
    assert scene_of(content(), one, one.visits[0], alone=True).title == words


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"screen": None}, "No screen recorded. Consent given."),
        ({"consent": "no"}, "Lower limb: all no. Consent not given."),
        ({"consent": None}, "Lower limb: all no. Consent not recorded."),
        (
            {"screen": {"set": "lower", "all_no_except": {"tingling": "yes"}}},
            "Lower limb: all no, except Tingling: yes. Consent given.",
        ),
    ],
)
def test_the_screen_says_what_was_asked(changed: dict[str, object], words: str) -> None:
    """All no, the exceptions, or that nothing is recorded; and consent beside it."""
    seen = Visit.model_validate(visit(1, **changed))
    assert scene_of(content(), case("alpha"), seen, alone=True).screen == words


@pytest.mark.parametrize(
    ("side", "words"), [("left", "left thigh"), ("both", "thigh, both sides"), ("middle", "thigh")]
)
def test_the_side_reads_naturally(side: str, words: str) -> None:
    """The side stands with the tissue's name."""
    tissue = {"kind": "muscle", "name": "thigh", "region": "thigh", "side": side}
    assert client_words(content(), case("alpha", tissue=tissue)) == f"Acrobat, 24 · {words}"


def test_bleeding_is_on_the_board_when_known() -> None:
    """Where a haematoma was found it is told."""
    tissue = {"kind": "muscle", "name": "t", "region": "t", "side": "left", "haematoma": "intramuscular"}
    assert '"haematoma"' in scene_text(case("alpha", tissue=tissue), alone=True)


def test_a_severity_that_nobody_declared_is_not_shown() -> None:
    """Without a declared grade the board has none."""
    assert '"severity"' not in scene_text(case("alpha", severity=None), alone=True)


def test_chips_follow_the_facts_file() -> None:
    """However an author orders the attributes, they are shown in one order, in words."""
    forth = CaseOption.model_validate({"card": "cold", "written": {"minutes": Decimal(10), "barrier": "yes"}})
    back = CaseOption.model_validate({"card": "cold", "written": {"barrier": "yes", "minutes": Decimal(10)}})
    assert choice_of(content(), forth) == choice_of(content(), back)
    assert choice_of(content(), forth).chips == ("on the injury", "time 10 min", "cloth between")


def test_an_action_has_no_site() -> None:
    """Only a technique is done somewhere."""
    refer = CaseOption.model_validate({"card": "refer", "written": {"urgency": "days"}})
    assert choice_of(content(), refer).chips == ("how soon days",)


def test_the_authors_word_changes_nothing_shown() -> None:
    """An option with and without the author's `because` looks the same."""
    with_word = CaseOption.model_validate({"card": "cold", "because": "It is right."})
    assert choice_of(content(), with_word) == choice_of(
        content(), CaseOption.model_validate({"card": "cold"})
    )
