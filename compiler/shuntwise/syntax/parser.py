"""Source -> SyntaxTree. The only importer of the parser library.

In: a `Source`. Out: a `SyntaxTree` and the findings on its form. Parsing never fails: a statement that
cannot be read is left out and remembered as `Lost`, and reading goes on behind it. Refuses to know what
the words mean.

How it recovers: the parser's stacks are copied at every place where an entry or an item may begin. On
an error they are restored, and the text is skipped up to the end of that entry or item, braces
balanced. So one slip costs one statement, or one item in braces.
"""

from __future__ import annotations

import os
import re
from functools import cache
from pathlib import Path
from typing import Any

from lark import Lark, Token, Tree
from lark.exceptions import UnexpectedCharacters, UnexpectedInput, UnexpectedToken
from lark.lexer import LexerThread

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.source import Source, Span
from shuntwise.syntax.build import Builder
from shuntwise.syntax.complaints import Situation, complain, unclosed_brace
from shuntwise.syntax.tree import Lost, SyntaxTree
from shuntwise.syntax.words import KEYWORDS

_WORD = re.compile(r"[^\W\d]\w*")
_SKIPPED = re.compile(r'"[^"\n]*"|#[^\n]*|[{},\n]|[^"#{},\n]+|"')
_AT_LINE_START = re.compile(r"(design|amplifier|input|posts|driver|tapped|coil|capacitor|resistor|lamp|link|coupling"
                            r"|network|use|leg|include|variant|expect|allow|limit|let)[ \t]+[\w\"]")  # fmt: skip
_MAY_HOLD_STATEMENTS = ("network", "variant")


def grammar_path() -> Path:
    """The grammar file: packaged beside the code, or in grammar/ of a checkout."""
    packaged = Path(__file__).parent.parent / "grammar" / "shuntwise.lark"
    return packaged if packaged.is_file() else Path(__file__).parents[3] / "grammar" / "shuntwise.lark"


def _table_cache() -> str | bool:
    """Where the parser's tables may be kept between runs: a folder that only this user can write.

    The library unpickles what it finds there, so the shared temporary folder is out of the question.
    """
    base = os.environ.get("XDG_CACHE_HOME")
    folder = Path(base) if base else Path.home() / ".cache"
    try:
        folder = folder / "shuntwise"
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        status = folder.stat()
        if hasattr(os, "getuid") and (status.st_uid != os.getuid() or status.st_mode & 0o022):
            return False
    except (OSError, RuntimeError):
        return False
    return str(folder / "grammar-tables.bin")


@cache
def _lark() -> Lark:
    text = grammar_path().read_text(encoding="utf-8")
    options: dict[str, Any] = {
        "parser": "lalr",
        "lexer": "contextual",
        "propagate_positions": True,
        "maybe_placeholders": False,
    }
    try:
        return Lark(text, cache=_table_cache(), **options)
    except OSError:  # the folder vanished or the disk is full: the tables can be made anew each time
        return Lark(text, **options)


def parse(source: Source) -> tuple[SyntaxTree, tuple[Diagnostic, ...]]:
    """Read a whole text. Time is linear in its length, but for a constant cost at each error."""
    return _Reader(source).read()


class _Reader:
    """One reading of one source: the parser's state, the last safe point, what was lost."""

    def __init__(self, source: Source) -> None:
        self.source = source
        # The grammar ends every statement with a line end; positions beyond the text are cut by Source.
        self.text = source.text if source.text.endswith("\n") else source.text + "\n"
        self.interactive = _lark().parse_interactive(self.text)
        self.state = self.interactive.parser_state
        self.lexer: LexerThread = self.interactive.lexer_thread
        self.diagnostics: list[Diagnostic] = []
        self.lost: list[Lost] = []
        self.open_braces: list[tuple[str, Token]] = []
        self.entry: list[Token] = []
        self.mark()

    # --- the parser's position

    @property
    def offset(self) -> int:
        return int(self.lexer.state.line_ctr.char_pos)

    @offset.setter
    def offset(self, value: int) -> None:
        self.lexer.state.line_ctr.char_pos = value

    def mark(self) -> None:
        """Remember this place as one where an entry or an item may begin."""
        values = self.state.value_stack
        # The library grows the children of repeated rules in place, so their lengths are remembered too.
        lengths = [len(value.children) if isinstance(value, Tree) else 0 for value in values]
        self.safe = (list(self.state.state_stack), list(values), lengths)
        self.safe_offset = self.offset
        self.entry = []

    def restore(self) -> None:
        states, values, lengths = self.safe
        for value, length in zip(values, lengths, strict=True):
            if isinstance(value, Tree):
                del value.children[length:]
        self.state.state_stack[:], self.state.value_stack[:] = list(states), list(values)

    # --- reading

    def read(self) -> tuple[SyntaxTree, tuple[Diagnostic, ...]]:
        while True:
            try:
                for token in self.lexer.lex(self.state):
                    self.feed(token)
                    self.close_forgotten_braces()
                self.end()
                break
            except UnexpectedInput as error:
                self.recover(error)
        tree: Tree[Token] = self.interactive.result
        builder = Builder(self.source)
        entries = tuple(builder.entry(node) for node in tree.children if isinstance(node, Tree))
        return SyntaxTree(self.source, entries, tuple(self.lost)), (*self.diagnostics, *builder.diagnostics)

    def feed(self, token: Token) -> None:
        self.interactive.feed_token(token)
        if token.type == "LBRACE":
            head = str(self.entry[0]) if self.entry else ""
            self.open_braces.append((head, token))
        elif token.type == "RBRACE":
            self.open_braces.pop()
        if token.type in ("LBRACE", "_NL") or (token.type == "COMMA" and self.open_braces):
            self.mark()
        else:
            self.entry.append(token)

    def end(self) -> None:
        """Close what is still open at the end of the text, with one finding for each brace."""
        if self.entry:  # a walk whose last `--` swallowed the line end
            self.feed(Token("_NL", "\n", self.offset, end_pos=self.offset))
        while self.open_braces:
            self.close_brace()
        self.interactive.result = self.interactive.feed_eof()

    def close_brace(self) -> None:
        """Report the innermost open brace as never closed, and go on as if it had been."""
        _, token = self.open_braces[-1]
        self.diagnostics.append(unclosed_brace(Span(self.source, token.start_pos or 0, token.end_pos or 0)))
        self.feed(Token("RBRACE", "}", self.offset, end_pos=self.offset))
        self.feed(Token("_NL", "\n", self.offset, end_pos=self.offset))

    def close_forgotten_braces(self) -> None:
        """A statement at the start of a line cannot belong to a leg or to a list of attributes."""
        if not self.open_braces or self.entry:
            return
        at = self.offset
        if at and self.text[at - 1] != "\n":
            return
        head = self.open_braces[-1][0]
        if head not in _MAY_HOLD_STATEMENTS and _AT_LINE_START.match(self.text, at):
            while self.open_braces and self.open_braces[-1][0] not in _MAY_HOLD_STATEMENTS:
                self.close_brace()

    # --- recovery

    def recover(self, error: UnexpectedInput) -> None:
        if isinstance(error, UnexpectedToken):
            token = error.token
            start, end = token.start_pos or 0, token.end_pos or 0
            expected = frozenset(error.accepts or error.expected or ())
            kind, text = token.type, str(token)
            if kind == "$END":
                start = end = len(self.source.text)
        else:
            assert isinstance(error, UnexpectedCharacters)
            start, end = error.pos_in_stream, error.pos_in_stream + 1
            expected, kind, text = frozenset(error.allowed), "", self.text[start:end]
        situation = Situation(
            source=self.source,
            entry=tuple(self.entry),
            span=Span(self.source, start, end),
            kind=kind,
            text=text,
            expected=expected,
            inside=self.open_braces[-1][0] if self.open_braces else "",
            in_braces=bool(self.open_braces),
        )
        complaint = complain(situation)
        self.diagnostics.append(complaint.finding)
        if complaint.read_as is not None:  # the slip is harmless: read on as if it had been written right
            if complaint.read_as == ",":
                self.offset = start
                self.feed(Token("COMMA", ",", start, end_pos=start))
                return
            self.offset = complaint.finding.span.end
            if complaint.read_as:
                self.feed(Token("ARROW", complaint.read_as, start, end_pos=self.offset))
            return
        begin = self.safe_offset
        self.offset = self.resume_at(begin, start)
        words = frozenset(_WORD.findall(self.text[begin : self.offset])) - KEYWORDS
        self.lost.append(Lost(words, Span(self.source, begin, self.offset)))
        # Braces that were opened since the safe point are skipped with the rest of the entry.
        opened = sum(1 for _, brace in self.open_braces if (brace.start_pos or 0) >= begin)
        del self.open_braces[len(self.open_braces) - opened :]
        self.restore()
        self.mark()
        self.close_forgotten_braces()

    def resume_at(self, begin: int, failed: int) -> int:
        """Where reading goes on: behind the entry (or item) that begins at `begin` and failed at `failed`.

        Inside braces that is the next comma, line end or closing brace at the same depth; outside, the
        next line end at which all braces opened on the way are closed again.
        """
        depth = 0
        inside = bool(self.open_braces)
        for match in _SKIPPED.finditer(self.text, begin):
            piece, at = match.group(), match.start()
            if piece == "{":
                depth += 1
            elif piece == "}":
                if depth == 0 and inside and at >= failed:
                    return at
                depth = max(0, depth - 1)
            elif piece == "\n" and at >= failed:
                if depth == 0 or _AT_LINE_START.match(self.text, match.end()):
                    return match.end()
            elif piece == "," and inside and depth == 0 and at >= failed:
                return match.end()
        return len(self.text)
