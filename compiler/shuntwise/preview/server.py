"""A preview on this computer's own network address, for those who know its path.

In: views, as they come. Out: the page, its pictures, and an event for each view. It answers to nothing but the loopback
address by its own names, under a path that cannot be guessed, and takes no input beyond the path. Refuses to know how
views are made.
"""

from __future__ import annotations

import hashlib
import json
import secrets
import threading
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

from shuntwise.preview.page import ICON, ICON_SVG, POLICY, page
from shuntwise.preview.view import QUICK, SOLVED, View

ADDRESS = "127.0.0.1"
ALIVE_S = 10.0
"""An event without content is sent so often, so that the end of a page is noticed."""


class Preview:
    """Serves the newest view until it is closed. `address` is where."""

    def __init__(self, port: int = 0) -> None:
        """Raises OSError where the port is taken."""
        self.key = secrets.token_urlsafe(18)
        self.view = View()
        self.changed = threading.Condition()
        self.closed = False
        self._server = _Server((ADDRESS, port), _Handler)
        self._server.preview = self
        self._thread = threading.Thread(target=self._server.serve_forever, daemon=True)
        self._thread.start()

    @property
    def port(self) -> int:
        return int(self._server.server_address[1])

    @property
    def address(self) -> str:
        return f"http://{ADDRESS}:{self.port}/{self.key}/"

    def show(self, view: View) -> None:
        with self.changed:
            self.view = view
            self.changed.notify_all()

    def wait(self, number: int) -> View | None:
        """The newest view as soon as it is another than that of this number; None after some seconds without one."""
        with self.changed:
            if self.changed.wait_for(lambda: self.closed or self.view.number != number, ALIVE_S) and not self.closed:
                return self.view
            return None

    def close(self) -> None:
        with self.changed:
            self.closed = True
            self.changed.notify_all()
        self._server.shutdown()
        self._server.server_close()


class _Server(ThreadingHTTPServer):
    daemon_threads = True
    preview: Preview


class _Handler(BaseHTTPRequestHandler):
    server: _Server
    server_version, sys_version = "shuntwise", ""
    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        preview = self.server.preview
        hosts = {f"{name}:{preview.port}" for name in (ADDRESS, "localhost")}
        path = self.path.partition("?")[0]
        if self.headers.get("Host") not in hosts:
            self._answer(HTTPStatus.FORBIDDEN, b"not for this host\n", "text/plain; charset=utf-8")
        elif not secrets.compare_digest(path[: len(preview.key) + 2].encode(), f"/{preview.key}/".encode()):
            self._answer(HTTPStatus.NOT_FOUND, b"nothing is here\n", "text/plain; charset=utf-8")
        else:
            self._within(path[len(preview.key) + 2 :])

    def _within(self, name: str) -> None:
        pictures = self.server.preview.view.pictures
        if name == "":
            nonce = secrets.token_urlsafe(12)
            self._answer(
                HTTPStatus.OK,
                page((*QUICK, *SOLVED), nonce).encode(),
                "text/html; charset=utf-8",
                POLICY.format(nonce=nonce),
            )
        elif name == "events":
            self._events()
        elif name == ICON:
            self._answer(HTTPStatus.OK, ICON_SVG.encode(), "image/svg+xml; charset=utf-8")
        elif name in pictures:
            self._answer(HTTPStatus.OK, pictures[name], "image/svg+xml; charset=utf-8")
        else:
            self._answer(HTTPStatus.NOT_FOUND, b"nothing is here\n", "text/plain; charset=utf-8")

    def _answer(self, status: HTTPStatus, content: bytes, kind: str, policy: str = "default-src 'none'") -> None:
        if kind.startswith("image/svg"):
            policy = "default-src 'none'; style-src 'unsafe-inline'"  # a picture's own style
        self.send_response(status)
        self._headers(kind, policy)
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)

    def _headers(self, kind: str, policy: str) -> None:
        self.send_header("Content-Type", kind)
        self.send_header("Content-Security-Policy", policy)
        self.send_header("Cache-Control", "no-store")
        self.send_header("X-Content-Type-Options", "nosniff")
        self.send_header("Referrer-Policy", "no-referrer")

    def _events(self) -> None:
        preview, shown = self.server.preview, 0
        self.close_connection = True
        self.send_response(HTTPStatus.OK)
        self._headers("text/event-stream; charset=utf-8", "default-src 'none'")
        self.end_headers()
        try:
            while not preview.closed:
                view = preview.wait(shown)
                self.wfile.write(f"data: {_told(view)}\n\n".encode() if view is not None else b": still here\n\n")
                self.wfile.flush()
                shown = view.number if view is not None else shown
        except OSError:
            return  # the page was closed

    def log_message(self, format: str, *args: object) -> None:
        """Nothing is printed of who looks at what."""


def _told(view: View) -> str:
    """A view as an event: pictures by a mark of their content, so that one that is the same is not fetched again."""
    marks = {name: hashlib.sha256(content).hexdigest()[:16] for name, content in view.pictures.items()}
    return json.dumps({"title": view.title, "findings": view.findings, "pictures": marks, "old": sorted(view.old)})
