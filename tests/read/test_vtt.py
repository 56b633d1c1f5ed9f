"""WebVTT, read as strictly as its standard is written."""

import pytest

from builder.model.film import Cue
from builder.read.vtt import MOST, read_track

HEAD = "WEBVTT\n\n"
TIMES = "00:01.000 --> 00:02.500"


def cues(text: str) -> list[Cue]:
    """The cues of a text in which nothing is wrong."""
    track, found = read_track(text, "media/a.vtt")
    assert found == ()
    return list(track.cues)


def told(text: str) -> list[tuple[str, int]]:
    """What is found in a text: check and line."""
    return [(one.check, one.place.line) for one in read_track(text, "media/a.vtt")[1]]


def remedy(text: str) -> str:
    """The remedy of the one fault of a text."""
    (found,) = read_track(text, "media/a.vtt")[1]
    return found.remedy


def test_cues_have_times_words_and_a_line() -> None:
    """With and without hours, with and without a name of their own."""
    text = f"{HEAD}{TIMES}\nA pad.\n\n\nsecond\n01:00:03.000 -->\t01:00:04.050\nThe wrap.\nOver it.\n"
    assert cues(text) == [
        Cue(1000, 2500, "A pad.", 3),
        Cue(3_603_000, 3_604_050, "The wrap.\nOver it.", 8),
    ]


def test_the_first_line_may_hold_a_title() -> None:
    """What stands beside the name of the format is the film's."""
    assert read_track("WEBVTT\t A pad \n\n", "a")[0].title == "A pad"
    assert read_track("WEBVTT\n", "a")[0].title == ""


def test_notes_and_blocks_of_style_are_passed_over() -> None:
    """They hold nothing that is shown."""
    style, note = "STYLE\n::cue { color: red }\n\nREGION \nid:a", "NOTE by hand\nof Isaura"
    text = f"{HEAD}{style}\n\n{note}\n\n{TIMES}\nA\n\nNOTE\n"
    assert [one.text for one in cues(text)] == ["A"]


def test_settings_are_kept() -> None:
    """Where a caption stands, by the names of the standard."""
    line = f"{TIMES} line:0 position:50%,line-left align:start size:35.5% vertical:rl region:a"
    assert cues(f"{HEAD}{line}\nA\n")[0].settings == (
        ("line", "0"),
        ("position", "50%,line-left"),
        ("align", "start"),
        ("size", "35.5%"),
        ("vertical", "rl"),
        ("region", "a"),
    )


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("", [("vtt_header", 1)]),
        ("WEBVTTX\n\n", [("vtt_header", 1)]),
        ("webvtt\n\n", [("vtt_header", 1)]),
        (f"\nWEBVTT\n\n{TIMES}\nA\n", [("vtt_header", 1), ("vtt_block", 2)]),
        (f"1\n{TIMES}\nA\n", [("vtt_header", 1)]),
        (f"WEBVTT\nKind: captions\n\n{TIMES}\nA\n", [("vtt_header", 2)]),
        (f"WEBVTT\n{TIMES}\nA\n", [("vtt_header", 2)]),
        (f"{HEAD}A\n", [("vtt_block", 3)]),
        (f"{HEAD}{TIMES}\n\nA\n", [("vtt_block", 5)]),
        (f"{HEAD}{TIMES}\nA\n{TIMES}\nB\n", [("vtt_block", 5)]),
        (f"{HEAD}NOTE\n{TIMES}\nB\n", [("vtt_block", 4)]),
        (f"{HEAD}1\n2\n{TIMES}\nB\n", [("vtt_block", 3)]),
        (f"{HEAD}00:01.000 -> 00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}00:01.000 - 00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}00:01.000-->00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}00:01 --> 00:02\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}00:01.00 --> 00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}00:61.000 --> 00:62.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}1:00:01.000 --> 1:00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}\u0660\u0660:01.000 --> 00:02.000\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}{TIMES} align:mid\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}{TIMES} size:101%\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}{TIMES} colour\nA\n", [("vtt_timing", 3)]),
        (f"{HEAD}{TIMES}\nA\nless than < 3\n", [("vtt_markup", 5)]),
    ],
)
def test_what_browsers_would_drop_is_told_at_its_line(text: str, found: list[tuple[str, int]]) -> None:
    """Each fault with its line, and no other."""
    assert told(text) == found


def test_every_fault_of_a_file_is_told() -> None:
    """Reading goes on behind each."""
    text = f"{HEAD}00:01,000 --> 00:02,000\nA\n\nB\n\n{TIMES}\n< C\n\n{TIMES}\nD\n"
    assert told(text) == [("vtt_timing", 3), ("vtt_block", 6), ("vtt_markup", 9)]
    assert [one.text for one in read_track(text, "a")[0].cues] == ["< C", "D"]


def test_a_comma_is_mended_in_the_remedy() -> None:
    """Other formats write thousandths behind a comma."""
    assert "`00:00:01.000 --> 00:00:02.000`" in remedy(f"{HEAD}00:00:01,000 --> 00:00:02,000\nA\n")
    assert "`00:00:01.000 --> 00:00:04.000`" in remedy(f"{HEAD}soon --> later\nA\n")


def test_a_file_of_faults_is_told_in_part() -> None:
    """A file that is no captions at all does not fill the screen for ever."""
    assert len(told(HEAD + "A\n\n" * 5000)) == MOST


@pytest.mark.parametrize(
    "text",
    [
        f"{HEAD}{TIMES}{' ' * 300_000}x\nA",
        f"{HEAD}{TIMES}\n{'<v ' * 100_000}",
        f"{HEAD}{TIMES}\n<v{' ' * 300_000}",
        f"{HEAD}{'1:11' * 100_000}",
        f"WEBVTT{' ' * 300_000}x\n",
    ],
    ids=["spaces", "marks", "mark", "times", "title"],
)
def test_long_lines_take_no_long_time(text: str) -> None:
    """Each is read to its end; one that were read again from each letter would not come back."""
    read_track(text, "a")
