"""The sample board of the faults: an invented guild, with one line of its own."""

from __future__ import annotations

from builder.model.kind import Example

_GUILD = """
format: 1
id: guild
name: Guild of Marrowfield (invented)
dated: 2026-11-25
source: Own default
minutes_in_hour: {minutes}
hour_name: {hour_name}
counted: [lecture, hands_on, test]
attendance_floor: 90 %
{line}
note: Invented.
"""


def sample_board(line: str = "", *, minutes: int = 60, hour_name: str = "contact hours") -> Example:
    """`boards/guild.yml` with this line in it."""
    return Example("boards/guild.yml", _GUILD.format(minutes=minutes, hour_name=hour_name, line=line))
