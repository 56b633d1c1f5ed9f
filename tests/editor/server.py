"""Speaks with the YAML language server as an editor does, over its standard input and output."""

import json
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

PROGRAM = Path(__file__).parent / "node_modules" / "yaml-language-server" / "bin" / "yaml-language-server"
SETTINGS = {
    "yaml": {"validate": True, "completion": True, "hover": True, "schemaStore": {"enable": False}},
    "http": {},
    "[yaml]": {},
    "editor": {},
    "files": {},
}


class Server:
    """One running server; a message that is not waited for is read and let go."""

    def __init__(self, process: subprocess.Popen[bytes]) -> None:
        self._process = process
        self._number = 0

    def ask(self, method: str, params: object) -> Any:  # noqa: ANN401 - any JSON value
        """The answer to a request."""
        self._number += 1
        number = self._number
        self._send({"id": number, "method": method, "params": params})
        for message in self._messages():
            if message.get("id") == number and "method" not in message:
                return message.get("result")
        raise EOFError(method)

    def tell(self, method: str, params: object) -> None:
        """Say something that has no answer."""
        self._send({"method": method, "params": params})

    def flagged(self, uri: str, version: int) -> list[dict[str, Any]]:
        """What the server flags in one version of a file."""
        for message in self._messages():
            if message.get("method") == "textDocument/publishDiagnostics":
                params = message["params"]
                if params["uri"] == uri and params.get("version", version) == version:
                    return list(params["diagnostics"])
        raise EOFError(uri)

    def _messages(self) -> Iterator[dict[str, Any]]:
        """Every message that comes; what the server asks of an editor is answered."""
        while (message := self._read()) is not None:
            if "method" in message and "id" in message:
                wanted = message["params"].get("items", []) if message.get("params") else []
                result = [SETTINGS.get(one.get("section", ""), {}) for one in wanted]
                self._send({"id": message["id"], "result": result or None})
            else:
                yield message

    def _read(self) -> dict[str, Any] | None:
        length = 0
        stream = self._process.stdout
        if stream is None:
            return None
        while line := stream.readline().strip():
            name, _, value = line.partition(b":")
            if name.lower() == b"content-length":
                length = int(value)
        if not length:
            return None
        message: dict[str, Any] = json.loads(stream.read(length))
        return message

    def _send(self, message: dict[str, object]) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode("utf-8")
        if self._process.stdin is not None:
            self._process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
            self._process.stdin.flush()


@contextmanager
def started(root: Path) -> Iterator[Server]:
    """A server for one folder; it is ended at the end."""
    with subprocess.Popen(
        ["node", PROGRAM, "--stdio"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
    ) as process:  # fmt: skip
        server = Server(process)
        try:
            told = {"workspace": {"configuration": True}, "textDocument": {"completion": {}}}
            server.ask(
                "initialize",
                {"processId": None, "rootUri": root.as_uri(), "workspaceFolders": None, "capabilities": told},
            )
            server.tell("initialized", {})
            server.tell("workspace/didChangeConfiguration", {"settings": SETTINGS})
            yield server
        finally:
            process.kill()
