"""The design mark: a short hash that tells from which text a document was made.

In: the texts of a design, its own and the included ones. Out: eight hexadecimal digits. It refuses to know about
dates: the same text gives the same documents on any day.
"""

from __future__ import annotations

from collections.abc import Iterable


def design_mark(texts: Iterable[str]) -> str:
    """The first eight digits of the SHA-256 of the texts, each with its length before it, line ends made alike."""
    from hashlib import sha256  # it loads the system's cryptography, which `check` has no use for

    digest = sha256()
    for text in texts:
        data = text.replace("\r\n", "\n").encode("utf-8", "surrogatepass")
        digest.update(f"{len(data)}\n".encode())
        digest.update(data)
    return digest.hexdigest()[:8]
