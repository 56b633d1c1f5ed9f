"""An editor with the YAML language server flags what is wrong in a new case, and offers what may stand."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.editor.server import Server, started
from tests.new.begun import add, begun


class Editor:
    """A case that is open in an editor, and typed into."""

    def __init__(self, server: Server, path: Path) -> None:
        self.server, self.uri = server, path.as_uri()
        self.text, self.version = path.read_text(encoding="utf-8"), 1
        about = {"uri": self.uri, "languageId": "yaml", "version": 1, "text": self.text}
        server.tell("textDocument/didOpen", {"textDocument": about})

    def type(self, old: str, new: str) -> None:
        """Put one text in place of another that stands once."""
        assert self.text.count(old) == 1
        self.text, self.version = self.text.replace(old, new), self.version + 1
        self.server.tell(
            "textDocument/didChange",
            {
                "textDocument": {"uri": self.uri, "version": self.version},
                "contentChanges": [{"text": self.text}],
            },
        )

    def flagged(self) -> dict[int, str]:
        """What is flagged now, by line from 1."""
        found = self.server.flagged(self.uri, self.version)
        return {one["range"]["start"]["line"] + 1: one["message"] for one in found}

    def line_of(self, words: str) -> int:
        """The line, from 1, in which these words stand."""
        return self.text[: self.text.index(words)].count("\n") + 1

    def offered(self, words: str) -> set[str]:
        """What is offered just after these words."""
        before = self.text[: self.text.index(words) + len(words)]
        at = {"line": before.count("\n"), "character": len(before) - before.rfind("\n") - 1}
        answer = self.server.ask(
            "textDocument/completion", {"textDocument": {"uri": self.uri}, "position": at}
        )
        return {str(one["label"]) for one in answer["items"]}

    def explained(self, words: str) -> str:
        """What is shown where these words are pointed at."""
        before = self.text[: self.text.index(words) + 1]
        at = {"line": before.count("\n"), "character": len(before) - before.rfind("\n") - 1}
        answer = self.server.ask("textDocument/hover", {"textDocument": {"uri": self.uri}, "position": at})
        return str(answer["contents"]["value"])


@pytest.fixture
def editor(tmp_path: Path) -> Iterator[Editor]:
    """A new case, open."""
    folder = begun(tmp_path / "Kurs für Ältere")
    add("case", folder, "Mine", region="calf")
    with started(folder) as server:
        yield Editor(server, folder / "cases" / "mine.yml")


def test_a_new_case_is_clean(editor: Editor) -> None:
    """The first line of the scaffold binds the schema, and the schema accepts it."""
    assert editor.flagged() == {}


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("mechanism:", "mechanizm:", "mechanizm"),
        ("heat: clear", "heat: cleer", "clear"),
        ("since_injury: 20 h", "since_injury: 20 hurs", "`30 h`"),
        ("rest_pain: 4", "rest_pain: 14", "10"),
        ("consent: yes", "consent: maybe", "yes"),
        ("      swelling_trend:", "      sweling_trend:", "sweling_trend"),
        ("set: lower_limb_with_cold", "set: lower_lim", "lower_limb"),
    ],
)
def test_a_slip_is_flagged_on_its_line(old: str, new: str, said: str, editor: Editor) -> None:
    """A misspelt key or a wrong value, as it is typed; mended, nothing is flagged."""
    assert editor.flagged() == {}
    editor.type(old, new)
    found = editor.flagged()
    line = editor.line_of(new)
    assert line in found, found
    assert said in found[line]
    editor.type(new, old)
    assert editor.flagged() == {}


def test_what_may_stand_there_is_offered(editor: Editor) -> None:
    """On a line being written: the values of a fact, the cards, the facts themselves, missing keys."""
    editor.flagged()
    editor.type("    findings:  ", "    findings:\n      heat: \n      #")
    assert {"none", "slight", "clear"} <= editor.offered("\n      heat: ")
    assert {"cold_pack", "glide"} <= editor.offered("- {card: ")
    editor.type("\n      heat: \n", "\n      \n")
    assert {"knee_flexion", "fever", "bone_risk"} <= editor.offered("    findings:\n      ")
    editor.type("\nmechanism:", "\n\n#")
    assert "mechanism" in editor.offered("and want back\n")


def test_what_a_line_is_for_is_explained(editor: Editor) -> None:
    """Pointing at a key shows what it is for; at a finding, the question that finds it out."""
    assert "How it happened." in editor.explained("mechanism:")
    assert "Is the area warmer" in editor.explained("heat:")
