"""Source -> SyntaxTree.

In: a `Source`. Out: a `SyntaxTree` and the findings on its form. What is of one kind of text only stands in its `Form`:
a design's is here, that of a box's own file in `box_parser.py`. Parsing never fails: a statement that
cannot be read is left out and remembered as `Lost`, and reading goes on behind it. Refuses to know what
the words mean, and what to say about a slip: `complaints.py` does.

How it recovers: where the complaint says what was meant, the tokens that were meant are fed instead. Else
the automaton's stacks, copied at every place where an entry or an item may begin, are restored, and the text
is skipped up to the end of that entry or item, braces balanced. So one slip costs at most one statement,
or one item in braces.

Forgotten braces are guessed from the look of the lines, but only while the braces of the text as a whole do
not balance; a sound text is never judged by its look.
"""

from __future__ import annotations

import gc
import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cached_property
from types import ModuleType

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.source import Source, Span
from shuntwise.syntax.automaton import Automaton, Node, Tables, Token, UnexpectedCharacter, UnexpectedToken
from shuntwise.syntax.build import Builder
from shuntwise.syntax.foreign import foreign
from shuntwise.syntax.signs import comment_mark, lone_returns
from shuntwise.syntax.situation import BLOCK_HEADS, BODY_HEADS, MOST_LINES, Complaint, Mend, Situation, token
from shuntwise.syntax.tables import DESIGN
from shuntwise.syntax.tree import Lost, SyntaxTree
from shuntwise.syntax.words import KEYWORDS, STATEMENTS

DEEPEST_BRACES = 20
"""More braces within braces than this are refused: the automaton's stacks are copied at each of them."""

MOST_SLIPS = 20
"""On a line with more slips than this, what cannot be read is left out without another word."""


def _braces() -> ModuleType:
    """Loaded where something is wrong."""
    from shuntwise.syntax import braces

    return braces


def _complain(situation: Situation) -> Complaint:
    """What to say of a slip; loaded at the first one, since most texts have none."""
    from shuntwise.syntax.complaints import complain

    return complain(situation)


_WORD = re.compile(r"[^\W\d]\w*")
_BRACES = re.compile(r'"[^"\n]*"|#[^\n]*|[{}]')
_SKIPPED = re.compile(r'"[^"\n]*"|#[^\n]*|[{}(),\n]|[^"#{}(),\n]+|"')
_FAR = 2000
"""Characters over which the `}` of a list that was never opened is looked for."""
_LONGEST_GROUP = 20
"""Lines over which the `)` of a broken group is looked for."""


@dataclass(frozen=True, eq=False)
class Form:
    """A kind of text: its tables, the words that begin a statement, all its words, and what is said of a slip."""

    tables: Tables
    statements: tuple[str, ...]
    words: frozenset[str]
    complain: Callable[[Situation], Complaint]

    @cached_property
    def statement_line(self) -> re.Pattern[str]:
        """The blanks that a line begins with, and the statement that begins there, if one does."""
        return re.compile(rf"([ \t]*)((?:{'|'.join(self.statements)})[ \t]+[\w\"])?")

    def begins_statement(self, text: str, at: int) -> bool:
        """Does a statement begin right here?"""
        match = self.statement_line.match(text, at)
        return match is not None and bool(match[2]) and not match[1]


_DESIGN = Form(DESIGN, STATEMENTS, KEYWORDS, _complain)


def parse(source: Source) -> tuple[SyntaxTree, tuple[Diagnostic, ...]]:
    """Read a whole design. Time is linear in its length, but for a constant cost at each error."""
    with uncollected():
        return _tree(source)  # what else was built is gone when the collector comes back


def _tree(source: Source) -> tuple[SyntaxTree, tuple[Diagnostic, ...]]:
    nodes, lost, said = nodes_of(source, _DESIGN)
    builder = Builder(source)
    return SyntaxTree(source, tuple(builder.entry(node) for node in nodes), lost), (*said, *builder.diagnostics)


def nodes_of(source: Source, form: Form) -> tuple[list[Node], tuple[Lost, ...], tuple[Diagnostic, ...]]:
    """The statements of a whole text as the grammar has them, what was lost, and the findings on its form."""
    other = foreign(source)
    if other is not None:
        return [], (Lost(frozenset(), other.span, whole_file=True),), (other,)
    return _Reader(source, form).read()


@contextmanager
def uncollected() -> Iterator[None]:
    """Without the garbage collector: all that a parser builds stays alive, so it would walk over it again and again for
    nothing. That took half of the time for a text of ten thousand parts, and more for a longer one.
    """
    collecting = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if collecting:
            gc.enable()


@dataclass
class _Brace:
    """An open brace: the word of its statement, its place, and how far its first line is indented."""

    head: str
    span: Span
    indent: int | None = None
    lines: int = 0


class _Reader:
    """One reading of one source: the parser's state, the last safe point, what was lost."""

    def __init__(self, source: Source, form: Form) -> None:
        self.source, self.form = source, form
        self.diagnostics: list[Diagnostic] = []
        self.lost: list[Lost] = []
        # Positions hold for both texts: a return that stands alone is replaced by a line end, one for one, and
        # the line end that the grammar wants behind the last statement is beyond the source's text.
        self.text = source.text
        if "\r" in self.text:
            self.text, said = lone_returns(source)
            self.diagnostics += said
        self.text += "" if self.text.endswith("\n") else "\n"
        self.automaton = Automaton(form.tables)
        self.offset = 0
        self.open_braces: list[_Brace] = []
        self.surplus = _surplus(self.text)
        self.open_brackets = 0
        self.entry: list[Token] = []
        self.fed = 0
        self.slips = 0
        self.guessed_at = self.resumed_at = -1
        self.mark()

    # --- the place

    def mark(self, *so_far: Token) -> None:
        """Remember this place as one where an entry or an item may begin, or where its braces have been closed.

        `so_far` is the closing brace in the second case.
        """
        self.safe = self.automaton.save()
        self.safe_offset = self.offset
        self.safe_entry = so_far
        self.entry = [*so_far]

    def restore(self) -> None:
        self.automaton.restore(self.safe)
        self.open_brackets = 0
        self.entry = [*self.safe_entry]

    def fits(self, *terminals: str) -> bool:
        """Could these terminals come next, in this order?"""
        return self.automaton.fits(*terminals)

    # --- reading

    def read(self) -> tuple[list[Node], tuple[Lost, ...], tuple[Diagnostic, ...]]:
        trouble: UnexpectedToken | UnexpectedCharacter | None = None
        while True:
            try:
                if trouble is not None:
                    self.recover(trouble)
                while (piece := self.automaton.next_token(self.text, self.offset)) is not None:
                    self.offset = piece.end_pos
                    self.take(piece)
                    self.close_forgotten_braces()
                self.offset = len(self.text)
                self.end()
                break
            except (UnexpectedToken, UnexpectedCharacter) as error:
                if isinstance(error, UnexpectedToken):
                    self.offset = max(self.offset, error.token.end_pos)
                trouble = error
        nodes = [node for node in self.tree.children if isinstance(node, Node)]
        return nodes, tuple(self.lost), tuple(self.diagnostics)

    def take(self, piece: Token) -> None:
        """Feed a token of the text, unless the text around it shows that another one was meant."""
        start = piece.start_pos
        if piece.type == "SLASH" and self.text[self.offset] in "/*":
            self.follow(comment_mark(self.situation(piece.type, str(piece), start), start), start)
        elif piece.type == "_NL" and self.brace_below():
            pass
        elif piece.type == "LBRACE" and len(self.open_braces) >= DEEPEST_BRACES:
            self.diagnostics.append(_braces().nested_too_deep(self.span(piece), DEEPEST_BRACES).finding)
            self.lose(start)
        else:
            self.feed(piece)

    def feed(self, piece: Token) -> None:
        self.automaton.feed(piece)
        self.fed += 1
        match piece.type:
            case "LBRACE":
                head = str(self.entry[0]) if self.entry else ""
                self.open_braces.append(_Brace(" ".join(head.split()), self.span(piece)))
            case "RBRACE":
                self.open_braces.pop()
            case "LPAR":
                self.open_brackets += 1
            case "RPAR":
                self.open_brackets -= 1
            case "_NL" if self.text.startswith(("\r", "\n"), piece.start_pos):
                self.slips = 0
        divides = piece.type == "_NL" or (
            piece.type == "COMMA" and self.open_braces and not (self.entry and self.entry[0].type == "NETWORK")
        )
        if piece.type == "RBRACE":
            self.mark(piece)
        elif piece.type == "LBRACE" or (divides and not self.open_brackets):
            ended = divides and bool(self.entry)
            self.mark()
            if ended and self.open_braces:
                self.count_line(self.open_braces[-1])
        else:
            self.entry.append(piece)

    def span(self, piece: Token) -> Span:
        return Span(self.source, piece.start_pos, min(piece.end_pos, len(self.source.text)))

    def end(self) -> None:
        """Close what is still open at the end of the text, with one finding for each brace."""
        here = Span(self.source, self.offset, self.offset)
        if self.entry:  # a walk whose last `--` swallowed the line end
            self.feed(token("_NL", "\n", here))
        while self.open_braces:
            self.close_brace()
        self.tree = self.automaton.finish()

    # --- braces

    def close_brace(self) -> None:
        """Report the innermost open brace as never closed, and go on as if it had been."""
        brace, here = self.open_braces[-1], Span(self.source, self.offset, self.offset)
        self.feed(token("RBRACE", "}", here))
        self.feed(token("_NL", "\n", here))
        self.surplus -= 1
        if brace.span.start < brace.span.end:  # else it was put in, and reported, by a mend
            self.diagnostics.append(_braces().unclosed_brace(brace.span).finding)

    def close_forgotten_braces(self) -> None:
        """A line that begins a statement belongs to no leg and to no list of attributes.

        It belongs to no network, variant or choice either if it stands at the margin and their first line does not.
        """
        while self.open_braces and not self.entry and self.surplus > 0 and self.text[self.offset - 1] == "\n":
            match, brace = self.form.statement_line.match(self.text, self.offset), self.open_braces[-1]
            assert match is not None
            if brace.indent is None:
                brace.indent = len(match[1])
            outside = brace.head not in BODY_HEADS[1:] or (brace.indent > 0 and not match[1])
            if not (match[2] and outside):
                return
            self.close_brace()

    def brace_below(self) -> bool:
        """Does the list of a statement begin below it: with its `{`, or without one? Then say so, and go on in it."""
        if not self.entry or not self.fits("LBRACE"):
            return False
        end, at = self.entry[-1].end_pos, self.offset
        while self.text[at : at + 1] in (" ", "\t"):
            at += 1
        if self.text[at : at + 1] == "{":
            brace, gap = Span(self.source, at, at + 1), Span(self.source, end, at + 1)
            self.diagnostics.append(_braces().lowered_brace(brace, gap).finding)
            return True
        line = self.text[at : self.text.find("\n", at)]
        head = " ".join(str(self.entry[0]).split())
        if (
            self.surplus >= 0
            or head not in BLOCK_HEADS
            or not line.strip()
            or "--" in line
            or line.startswith("}")
            or self.form.begins_statement(self.text, at)
            or not re.match(r"[^{]*\}", self.text[at : at + _FAR])
        ):
            return False
        gap = Span(self.source, end, end)
        self.diagnostics.append(_braces().unopened_block(head, gap).finding)
        self.feed(token("LBRACE", "{", gap))
        self.surplus += 1
        return True

    def count_line(self, brace: _Brace) -> None:
        """Pass over what is more than a board or a layout may hold, with one finding."""
        brace.lines += 1
        if brace.lines != MOST_LINES.get(brace.head):
            return
        depth, end = 0, len(self.text)
        for match in _BRACES.finditer(self.text, self.offset):
            depth += {"{": 1, "}": -1}.get(match[0], 0)
            if depth < 0:
                end = match.start()
                break
        if not self.text[self.offset : end].strip():
            return
        self.diagnostics.append(_braces().too_many_lines(brace.span, brace.head, MOST_LINES[brace.head]).finding)
        self.remember(self.offset, end)
        self.offset = end

    # --- recovery

    def situation(self, kind: str, word: str, start: int) -> Situation:
        return Situation(
            source=self.source,
            text=self.text,
            entry=tuple(self.entry),
            span=Span(self.source, start, min(start + len(word), len(self.source.text))),
            kind=kind,
            word=word,
            expected=frozenset(name for name in self.automaton.terminals if self.fits(name)),
            fits=self.fits,
            inside=self.open_braces[-1].head if self.open_braces else "",
            surplus=self.surplus,
            statements=self.form.statements,
        )

    def recover(self, trouble: UnexpectedToken | UnexpectedCharacter) -> None:
        if isinstance(trouble, UnexpectedToken):
            piece = trouble.token
            kind, word, start = piece.type, str(piece), piece.start_pos
            if kind == "_NL" and (not self.entry or self.brace_below()):
                self.slips = 0
                return  # a line of which nothing is left, or one whose list begins on the next
            if kind == "$END":
                start = len(self.source.text)
            if kind == "FINDING":  # what any word is where none was expected
                kind, word = _word_at(self.text, start)
        else:
            start = trouble.at
            kind, word = "", self.text[start]
        if self.fed == self.guessed_at or self.slips > MOST_SLIPS:  # a wrong guess: one message is enough
            self.lose(start)
        else:
            self.follow(self.form.complain(self.situation(kind, word, start)), start)

    def follow(self, complaint: Complaint, failed: int) -> None:
        """Keep the finding, and read on as the complaint says."""
        self.diagnostics.append(complaint.finding)
        self.slips += 1
        if complaint.mend is None:
            self.lose(failed, complaint.lost_until)
        else:
            self.mend(complaint.mend, failed)

    def mend(self, mend: Mend, failed: int) -> None:
        tokens = mend.tokens
        if mend.anew:
            self.restore()
            tokens = tokens[len(self.safe_entry) :]
        if not self.fits(*(piece.type for piece in tokens)):
            self.lose(failed)
            return
        if mend.dropped:
            self.remember(failed, mend.resume)
        if not tokens:
            self.surplus -= _surplus(self.text[failed : mend.resume])
        self.offset = mend.resume
        for piece in tokens:
            self.feed(piece)
            self.surplus += piece.type == "LBRACE"
        if mend.guess:
            self.guessed_at = self.fed
        self.close_forgotten_braces()

    def lose(self, failed: int, until: int | None = None) -> None:
        """Leave out the entry (or item) that failed at `failed`, and go on behind it."""
        begin = self.safe_offset
        resume = max(self.resume_at(begin, failed) if until is None else until, self.resumed_at + 1)
        self.offset = self.resumed_at = min(resume, len(self.text))
        if "\n" in self.text[begin : self.offset]:
            self.slips = 0
        self.remember(begin, self.offset)
        self.surplus -= _surplus(self.text[begin : self.offset])
        self.restore()
        self.mark(*self.safe_entry)
        self.close_forgotten_braces()

    def remember(self, begin: int, end: int) -> None:
        words = frozenset(_WORD.findall(self.text[begin:end])) - self.form.words
        last = len(self.source.text)
        self.lost.append(Lost(words, Span(self.source, min(begin, last), min(end, last))))

    def resume_at(self, begin: int, failed: int) -> int:
        """Where reading goes on: behind the entry (or item) that begins at `begin` and failed at `failed`.

        Inside braces that is the next comma, line end or closing brace at the same depth; outside, the next
        line end at which all braces opened on the way are closed again. A group that is broken off may end
        some lines below; if it does not, the line end will do. What is left out behind a closing brace ends
        before the comma or line end, which belongs to the statement.
        """
        depth = brackets = lines = 0
        line_end: int | None = None
        inside = bool(self.open_braces)
        for match in _SKIPPED.finditer(self.text, begin):
            piece, at = match.group(), match.start()
            if piece == "{":
                depth += 1
            elif piece == "}":
                if depth == 0 and inside and at >= failed:
                    return at if line_end is None else line_end
                depth = max(0, depth - 1)
            elif piece == "(":
                brackets += 1
            elif piece == ")":
                brackets = max(0, brackets - 1)
            elif piece == "\n" and at >= failed:
                if depth and not (self.surplus > 0 and self.form.begins_statement(self.text, match.end())):
                    continue
                if not brackets:
                    return at if self.safe_entry else match.end()
                line_end, lines = line_end or match.end(), lines + 1
                if depth or lines > _LONGEST_GROUP or self.form.begins_statement(self.text, match.end()):
                    return line_end
            elif piece == "," and inside and depth == 0 and not brackets and at >= failed:
                return at if self.safe_entry else match.end()
        return len(self.text) if line_end is None else line_end


def _word_at(text: str, start: int) -> tuple[str, str]:
    """A word as a walk would have it: a pad or a name."""
    for kind in ("PAD", "NAME"):
        match = DESIGN.pattern(kind).match(text, start)
        if match is not None:
            return kind, match.group()
    return "NAME", text[start]


def _surplus(text: str) -> int:
    """How many more braces are opened than closed."""
    braces = [piece for piece in _BRACES.findall(text) if piece in "{}"]
    return braces.count("{") - braces.count("}")
