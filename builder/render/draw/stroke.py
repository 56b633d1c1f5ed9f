"""The stroke figure of a technique: which way the fibres run, and which way the hand moves."""

from __future__ import annotations

from builder.model.card import Card
from builder.render.draw.svg import picture, tag, text
from builder.render.wording import Say

WIDTH, HEIGHT = 320, 176
HANDS = {
    "along": "M64 84H256M88 66 64 84 88 102M232 66 256 84 232 102",
    "across": "M160 32V138M142 56 160 32 178 56M142 114 160 138 178 114",
    "circles": "M194 84A34 34 0 1 1 160 50M144 36 162 50 146 64",
    "lift_and_roll": "M76 116C112 116 112 56 160 56S208 116 242 116M222 100 244 116 220 132",
    "taps": "M108 40V82M94 68 108 82 122 68M160 40V96M146 82 160 96 174 82M212 40V82M198 68 212 82 226 68",
    "apart": "M136 84H60M84 62 60 84 84 106M184 84H260M236 62 260 84 236 106",
    "swing": "M76 128A104 104 0 0 1 244 128M80 98 76 128 104 118M216 118 244 128 240 98",
    "still": "M112 84A48 28 0 1 1 208 84A48 28 0 1 1 112 84",
}


def stroke(card: Card, say: Say) -> str:
    """The stroke figure of a card, or nothing where there is no stroke."""
    if card.stroke == "none":
        return ""
    words = say(f"stroke_{card.stroke}")
    hand = tag(
        "path",
        d=HANDS[card.stroke],
        class_="go",
        stroke_width=6,
        stroke_linecap="round",
        stroke_linejoin="round",
    )
    inside = _fibres() + hand + text(say("stroke_fibres"), 6, 18, class_="faint")
    inside += text(words, 160, 170, text_anchor="middle", class_="loud halo")
    return picture(inside, WIDTH, HEIGHT, f"{card.name}: {words}", class_="drawn")


def _fibres() -> str:
    bends = ((38, -14), (61, -7), (84, 0), (107, 7), (130, 14))
    lines = "".join(f"M6 {y}Q160 {y + bend} 314 {y}" for y, bend in bends)
    return tag("path", d=lines, class_="thin", stroke_width=3, stroke_linecap="round")
