"""Items in braces -> typed attributes of one thing, by its row in the table of kinds.

In: the items, the kind, the scope. Out: quantities by attribute name, the construction, the notes. An
attribute told by its unit alone (`5 %`, `250 V`) is written without a key; every other one has its key.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Label
from shuntwise.model import findings
from shuntwise.model.design import Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.model.kinds import TEXTS, Attribute, Kind
from shuntwise.source import Span
from shuntwise.syntax import tree as t


@dataclass(frozen=True)
class Attributes:
    quantities: dict[str, Quantity]
    words: dict[str, Span]
    notes: tuple[str, ...]
    keyed_words: dict[str, t.Ident]
    files: dict[str, t.Text]


def read_items(
    items: tuple[t.Item, ...],
    kind: Kind,
    scope: Scope,
    subject: str,
    *,
    word_keys: Mapping[str, tuple[str, ...]] | None = None,
) -> Attributes:
    """Type the items of `subject`. `word_keys` are keys whose value is one of a few words (`role woofer`)."""
    reading = _Reading(kind, scope, subject, word_keys or {})
    for item in items:
        reading.take(item)
    return Attributes(reading.quantities, reading.words, tuple(reading.notes), reading.keyed_words, reading.files)


class _Reading:
    def __init__(self, kind: Kind, scope: Scope, subject: str, word_keys: Mapping[str, tuple[str, ...]]) -> None:
        self.kind, self.scope, self.subject, self.word_keys = kind, scope, subject, word_keys
        self.quantities: dict[str, Quantity] = {}
        self.words: dict[str, Span] = {}
        self.notes: list[str] = []
        self.keyed_words: dict[str, t.Ident] = {}
        self.files: dict[str, t.Text] = {}
        self.keyed = {attribute.name: attribute for attribute in kind.attributes.values()}
        self.bare = {attribute.dimension: attribute for attribute in kind.bare}

    def take(self, item: t.Item) -> None:
        value = item.value
        if isinstance(value, t.LostExpr):
            return
        if isinstance(value, t.Text):
            self.take_text(item, value)
        elif item.span.text not in self.kind.words and item.span.text.replace("-", " ") in self.kind.words:
            self.say(findings.unknown_word(item.span.text, item.span, self.kind.words, f"on a {self.kind.word}"))
        elif item.key is None:
            self.take_bare(item, value)
        elif isinstance(value, t.Name) and f"{item.key.text} {value.ident.text}" in self.kind.words:
            self.take_word(f"{item.key.text} {value.ident.text}", item.span)
        elif item.key.text in self.word_keys:
            self.take_keyed_word(item.key, value)
        else:
            self.take_keyed(item.key, value, item.span)

    def take_text(self, item: t.Item, value: t.Text) -> None:
        assert item.key is not None
        key = item.key.text
        if key in TEXTS:
            self.notes.append(value.value)
        elif key not in self.kind.files:
            known = (*TEXTS, *self.kind.files)
            self.say(findings.unknown_word(key, item.key.span, known, "before a text in quotes"))
        elif key in self.files:
            self.twice(f"the `{key}` file", value.span, self.files[key].span)
        else:
            self.files[key] = value

    def take_bare(self, item: t.Item, value: t.Expr) -> None:
        if isinstance(value, t.Name):
            word = value.ident.text
            if word in self.kind.words:
                self.take_word(word, item.span)
                return
            if word not in self.scope.lets and u.read_code(word) is None:
                known = (*self.kind.words, *self.keyed, *self.word_keys, *self.kind.files)
                meant = [phrase for phrase in self.kind.words if word in phrase.split()]
                if word in known:
                    self.say(findings.value_unclear(item.span, f"`{word}` has no value", "write it behind the word"))
                elif len(meant) > 1:  # which of them cannot be guessed: a polar one would burst
                    self.say(findings.unknown_word(word, item.span, meant, "by itself here", guess=False))
                else:
                    self.say(findings.unknown_word(word, item.span, known, f"on a {self.kind.word}"))
                return
        quantity = self.scope.evaluate(value)
        if quantity is None:
            return
        if isinstance(value, t.Number) and value.unit is None:
            self.say(findings.unit_missing(value.span, self.subject, self.likely_bare(quantity.value)))
            return
        attribute = self.bare.get(quantity.dimension)
        if attribute is None:
            self.say(self.wrong_bare(quantity))
        elif self.scope.fits(quantity, attribute):
            self.put(attribute.name, quantity)

    def likely_bare(self, number: float) -> u.Dimension:
        """What a number without its unit is likeliest to be: the first that is not given yet and may be as large."""
        open_ones = [attribute for attribute in self.kind.bare if attribute.name not in self.quantities]
        for attribute in open_ones:
            if attribute.low <= number * (0.01 if attribute.dimension == u.PLAIN else 1) <= attribute.high:
                return attribute.dimension
        return next(iter(self.bare), u.PLAIN)

    def wrong_bare(self, quantity: Quantity) -> Diagnostic:
        takers = [name for name, attribute in self.keyed.items() if attribute.dimension == quantity.dimension]
        value = self.kind.value
        if value is not None and value.dimension == quantity.dimension:
            help_text = (
                f"{value.meaning} stands right behind the name: `{self.kind.word} {self.subject} {quantity.text}`"
            )
        elif takers:
            help_text = f"say which: `{takers[0]} {quantity.text}`"
        else:
            told = ", ".join(f"{units_example(attribute)} ({attribute.meaning})" for attribute in self.kind.bare)
            help_text = f"attributes told by their unit here: {told}" if told else "remove it"
        return findings.error(
            "unit-wrong-kind",
            quantity.span,
            f"`{quantity.text}` says nothing about a {self.kind.word}",
            label=f"{u.describe(quantity.dimension)} without a word for what it is",
            help=help_text,
        )

    def take_word(self, phrase: str, span: Span) -> None:
        meaning = self.kind.words[phrase]
        if self.words and meaning not in self.words:
            first = next(iter(self.words.values()))
            self.say(
                findings.error(
                    "attribute-twice",
                    span,
                    f"`{self.subject}` cannot be both `{next(iter(self.words))}` and `{phrase}`",
                    label="a second construction",
                    places=(Label(first, "the first"),),
                    help="keep the one that is printed on the part",
                    subjects=(self.subject,),
                )
            )
            return
        self.words[meaning] = span

    def take_keyed_word(self, key: t.Ident, value: t.Expr) -> None:
        known = self.word_keys[key.text]
        if not isinstance(value, t.Name):
            self.say(findings.unknown_word(value.span.text, value.span, known, f"behind `{key.text}`"))
        elif value.ident.text not in known:
            self.say(findings.unknown_word(value.ident.text, value.span, known, f"behind `{key.text}`"))
        else:
            self.keyed_words[key.text] = value.ident

    def take_keyed(self, key: t.Ident, value: t.Expr, span: Span) -> None:
        attribute = self.keyed.get(key.text)
        if attribute is None and key.text in self.kind.files:
            self.say(
                findings.value_unclear(
                    value.span, f"`{key.text}` names a file", f'write its name in quotes: `{key.text} "woofer.txt"`'
                )
            )
            return
        if attribute is None:
            known = (*self.keyed, *self.word_keys, *TEXTS, *self.kind.files, *self.kind.words)
            self.say(findings.unknown_word(key.text, key.span, known, f"on a {self.kind.word}"))
            return
        quantity = self.scope.typed(value, attribute, self.subject)
        if attribute in self.kind.bare:
            self.say(needless_key(key, value, attribute))
        if quantity is not None:
            self.put(attribute.name, quantity)

    def put(self, name: str, quantity: Quantity) -> None:
        old = self.quantities.get(name)
        if old is not None:
            self.twice(self.keyed[name].meaning, quantity.span, old.span)
            return
        self.quantities[name] = quantity

    def twice(self, meaning: str, again: Span, first: Span) -> None:
        self.say(findings.told_twice(meaning, self.subject, again, first))

    def say(self, finding: Diagnostic) -> None:
        self.scope.say(finding)


def units_example(attribute: Attribute) -> str:
    """How such an attribute is typed, in backticks."""
    symbol = "%" if attribute.dimension == u.PLAIN else u.SYMBOLS[attribute.dimension]
    number = "5" if symbol == "%" else "20"
    return f"`{number} {symbol}`"


def needless_key(key: t.Ident, value: t.Expr, attribute: Attribute) -> Diagnostic:
    cut = Span(key.span.source, key.span.start, value.span.start)
    return findings.error(
        "needless-key",
        key.span,
        f"no word is needed before `{value.span.text}`",
        label=f"the unit says that it is {attribute.meaning}",
        help=f"write `{value.span.text}` alone",
        fixes=(Fix(f"remove `{key.text}`", (Edit(cut, ""),), Confidence.SAFE),),
    )
