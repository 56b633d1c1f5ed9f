"""A film of a course: its files, its captions and chapters; all times are thousandths of a second."""

from __future__ import annotations

from dataclasses import dataclass

ENDINGS = (".mp4", ".webm")
PLAYABLE = {".mp4": ("AVC",), ".webm": ("VP8", "VP9")}  # what every browser of today plays; common practice


@dataclass(frozen=True)
class Cue:
    """Words for a span of a film: a caption or a chapter, with its line in the file from 1.

    `settings` say where on the picture it stands, by the names that WebVTT gives them.
    """

    start: int
    end: int
    text: str
    line: int
    settings: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Track:
    """One WebVTT file as far as it could be read; `title` is what its first line says beside its name."""

    file: str
    cues: tuple[Cue, ...] = ()
    title: str = ""


@dataclass(frozen=True)
class FilmFile:
    """One file of a film; its length is 0 and its picture format empty where they cannot be read."""

    file: str
    length: int = 0
    picture: str = ""
    width: int = 0
    height: int = 0


@dataclass(frozen=True)
class Film:
    """One film by its name, in one format or in several."""

    name: str
    files: tuple[FilmFile, ...]
    captions: Track | None = None
    chapters: Track | None = None

    @property
    def length(self) -> int:
        """How long it runs, in every one of its files; 0 where that cannot be read."""
        return min((one.length for one in self.files), default=0)

    @property
    def title(self) -> str:
        """What it is called: by its captions, or else by its file."""
        named = self.captions.title if self.captions else ""
        return named or self.name.replace("_", " ").capitalize()

    @property
    def tracks(self) -> tuple[Track, ...]:
        """Captions and chapters, those that there are."""
        return tuple(one for one in (self.captions, self.chapters) if one)


def captions_of(name: str) -> str:
    """The file of a film's captions."""
    return f"media/{name}.vtt"


def chapters_of(name: str) -> str:
    """The file of a film's chapters."""
    return f"media/{name}.chapters.vtt"


def clock(length: int) -> str:
    """A time as it is read: `0:04`, `12:30`, `1:02:03`; begun seconds are left out."""
    minutes, seconds = divmod(length // 1000, 60)
    hours, minutes = divmod(minutes, 60)
    return f"{hours}:{minutes:02}:{seconds:02}" if hours else f"{minutes}:{seconds:02}"


def stamp(length: int) -> str:
    """A time as WebVTT writes it: `00:00:04.250`."""
    seconds, thousandths = divmod(length, 1000)
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    return f"{hours:02}:{minutes:02}:{seconds:02}.{thousandths:03}"
