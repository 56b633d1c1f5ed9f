"""Draws the demonstration's film anew: `python -m tests.demo.write_film`, with Debian's ffmpeg and Chromium.

Plain shapes on paper: a bruised leg of the circus, a pad, a wrap, and the second look at the toes. Captions
and chapters stand beside it, written by hand to the times below.
"""

import shutil
import subprocess
import tempfile
from math import cos, pi, sin
from pathlib import Path

from builder.disk import shipped
from builder.render.tokens import LIGHT
from tests.chromium import chromium

NAME = "wrap_and_look"
FILM = shipped("demo_course") / "media" / f"{NAME}.webm"
RATE, SECONDS = 10, 28
WIDE, HIGH = 640, 360
TURNS = 9
PAD_LANDS, WRAP_STARTS, WRAP_ENDS, CLOCK_STARTS, PRESS, RELEASE, UNWRAP = (
    5.0,
    7.5,
    14.0,
    15.0,
    19.0,
    20.0,
    23.0,
)
CHAPTERS = "0,7,15"
SKIN, PALE = "#e7c4a4", "#f4e6d8"
FOOT = (
    "M470 190 C500 184 520 186 528 204 C534 218 560 226 586 232 "
    "C604 237 604 258 584 260 L500 262 C480 262 466 252 464 240 Z"
)
LEG = (
    "M-20 118 C60 100 150 108 220 126 C310 108 400 150 472 188 "
    "L466 242 C400 250 320 262 220 240 C150 252 60 262 -20 258 Z"
)


def main() -> None:
    """Draw every frame, and put them together."""
    encoder = shutil.which("ffmpeg")
    if encoder is None:
        raise LookupError("ffmpeg is missing: on Debian `apt-get install ffmpeg` brings it.")
    with tempfile.TemporaryDirectory() as folder, chromium() as browser:
        page = browser.new_page(viewport={"width": WIDE, "height": HIGH})
        for number in range(RATE * SECONDS):
            page.set_content(f"<body style='margin:0'>{frame(number / RATE)}")
            page.screenshot(path=Path(folder) / f"{number:04}.png")
        FILM.parent.mkdir(exist_ok=True)
        subprocess.run(encoding(encoder, Path(folder)), check=True)


def encoding(encoder: str, folder: Path) -> list[str]:
    """The command that makes the film of its frames: small, with whole pictures where its chapters begin."""
    quiet = ["-hide_banner", "-loglevel", "error", "-y"]
    frames = ["-framerate", str(RATE), "-i", str(folder / "%04d.png")]
    picture = ["-c:v", "libvpx-vp9", "-crf", "40", "-b:v", "0", "-pix_fmt", "yuv420p"]
    keys = ["-g", str(RATE * 10), "-force_key_frames", CHAPTERS]
    return [encoder, *quiet, *frames, *picture, *keys, "-bitexact", "-map_metadata", "-1", str(FILM)]


def frame(at: float) -> str:
    """The picture at a time, in seconds."""
    parts = [_tent(), _leg(at), _pad(at), _wrap(at), _finger(at), _clock(at)]
    return f"<svg xmlns='http://www.w3.org/2000/svg' width='{WIDE}' height='{HIGH}'>{''.join(parts)}</svg>"


def part(at: float, start: float, end: float) -> float:
    """How much of a movement is done: 0 before it starts, 1 once it has ended, softly in between."""
    done = min(1.0, max(0.0, (at - start) / (end - start)))
    return done * done * (3 - 2 * done)


def _tent() -> str:
    """Paper, the bed, and a row of pennants over it."""
    flags = "".join(
        f"<path d='M{x} 20 l24 0 l-12 26 z' fill='{LIGHT[('clay', 'accent', 'sand')[x // 40 % 3]]}'/>"
        for x in range(4, WIDE, 40)
    )
    return (
        f"<rect width='100%' height='100%' fill='{LIGHT['paper']}'/>"
        f"<path d='M0 20 H{WIDE}' stroke='{LIGHT['ink']}' stroke-width='2'/>{flags}"
        f"<rect y='270' width='100%' height='14' fill='{LIGHT['line']}'/>"
        f"<rect y='284' width='100%' height='80' fill='{LIGHT['sand']}'/>"
    )


def _leg(at: float) -> str:
    """Lower leg and foot, trunk to the left, with the bruise."""
    line = f"stroke='{LIGHT['ink']}' stroke-width='3' stroke-linejoin='round'"
    bruise = f"<ellipse cx='270' cy='166' rx='40' ry='24' fill='{LIGHT['clay']}' opacity='.75'/>"
    toe = f"<ellipse cx='584' cy='246' rx='17' ry='13' fill='{_toe(at)}' {line}/>"
    return f"<path d='{LEG}' fill='{SKIN}' {line}/><path d='{FOOT}' fill='{SKIN}' {line}/>{toe}{bruise}"


def _toe(at: float) -> str:
    """The colour of the toe: pale while it is pressed, and back within three seconds."""
    back = part(at, RELEASE, RELEASE + 1.6)
    pale = part(at, PRESS, PRESS + 0.4) * (1 - back)
    mixed = (
        round(int(SKIN[i : i + 2], 16) * (1 - pale) + int(PALE[i : i + 2], 16) * pale) for i in (1, 3, 5)
    )
    return "#" + "".join(f"{one:02x}" for one in mixed)


def _pad(at: float) -> str:
    """The pad, two and a half times the bruise, coming down on it."""
    drop = part(at, 3.0, PAD_LANDS)
    y = -40 + drop * 206
    if at < 3.0:
        return ""
    return (
        f"<ellipse cx='270' cy='{y:.1f}' rx='62' ry='39' fill='{LIGHT['card']}' stroke='{LIGHT['ink']}' "
        "stroke-width='3' stroke-dasharray='8 5'/>"
    )


def _wrap(at: float) -> str:
    """The turns of the wrap, from the foot upwards; taken off again from the top at the end."""
    on = part(at, WRAP_STARTS, WRAP_ENDS) * TURNS
    off = part(at, UNWRAP, UNWRAP + 3) * TURNS
    turns = "".join(_turn(number, min(1.0, on - number)) for number in range(TURNS) if number < on)
    kept = f"<rect x='{80 + 40 * off:.0f}' y='0' width='{WIDE}' height='{HIGH}'/>"
    return (
        f"<clipPath id='leg'><path d='{LEG}'/></clipPath><clipPath id='kept'>{kept}</clipPath>"
        f"<g clip-path='url(#kept)'><g clip-path='url(#leg)'>{turns}</g></g>"
        f"<path d='{LEG}' fill='none' stroke='{LIGHT['ink']}' stroke-width='3'/>"
    )


def _turn(number: int, done: float) -> str:
    """One turn across the leg, drawn from above downwards."""
    x = 436 - number * 37
    way = f"M{x} 90 L{x - 30 * done:.1f} {90 + 190 * done:.1f}"
    edge = f"<path d='{way}' stroke='{LIGHT['ink']}' stroke-width='44'/>"
    return f"{edge}<path d='{way}' stroke='{LIGHT['accent_wash']}' stroke-width='40'/>"


def _finger(at: float) -> str:
    """A finger that presses the toe and lets go."""
    near = part(at, PRESS - 1, PRESS) * (1 - part(at, RELEASE, RELEASE + 0.6))
    if not near:
        return ""
    y = 60 + near * 128
    return (
        f"<rect x='570' y='{y - 90:.0f}' width='28' height='130' rx='14' fill='{SKIN}' "
        f"stroke='{LIGHT['ink']}' stroke-width='3'/>"
        f"<path d='M576 {y + 18:.0f} h16' stroke='{LIGHT['ink']}' stroke-width='2'/>"
    )


def _clock(at: float) -> str:
    """A clock of which a quarter of an hour fills."""
    if at < CLOCK_STARTS:
        return ""
    turn = part(at, CLOCK_STARTS, CLOCK_STARTS + 3) * pi / 2
    x, y, r = 430, 100, 42
    far = f"{x + r * sin(turn):.1f} {y - r * cos(turn):.1f}"
    return (
        f"<circle cx='{x}' cy='{y}' r='{r}' fill='{LIGHT['card']}' stroke='{LIGHT['ink']}' stroke-width='3'/>"
        f"<path d='M{x} {y} V{y - r} A{r} {r} 0 0 1 {far} Z' fill='{LIGHT['accent']}'/>"
        f"<path d='M{x} {y} L{far}' stroke='{LIGHT['ink']}' stroke-width='3'/>"
    )


if __name__ == "__main__":
    main()
