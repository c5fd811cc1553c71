"""Arithmetic on values with units.

In: an expression and the names in scope. Out: a `Quantity`, or None where a finding has been made.
Always terminates: names are worked out once, and a circle among them is a finding.
"""

from __future__ import annotations

import math
import re
from collections.abc import Collection, Mapping

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.design import Quantity
from shuntwise.model.kinds import Attribute
from shuntwise.source import Span
from shuntwise.syntax import tree as t

CONSTANTS: dict[str, tuple[float, u.Dimension]] = {
    "pi": (math.pi, u.PLAIN),
    "octave": (1.0, u.OCTAVE),
    "oct": (1.0, u.OCTAVE),
}

DEEPEST = 150
"""Expressions within expressions, counted through the names in them: the stack holds several times as many."""


class Scope:
    """Names and what they stand for: an expression still to be worked out, or a quantity.

    `parts` are labels that are no values: a name that is one of them is surely a mistake.
    `doubtful` are names that stood in lost text: their absence is no news. `design_scope` is the scope of
    the design itself, for a scope inside a network.
    """

    def __init__(
        self,
        lets: Mapping[str, t.Expr | Quantity],
        diagnostics: list[Diagnostic],
        *,
        parts: Collection[str] = (),
        doubtful: Collection[str] = (),
        design_scope: Scope | None = None,
    ) -> None:
        self.lets = dict(lets)
        self.diagnostics = diagnostics
        self.parts = parts
        self.doubtful = doubtful
        self.design_scope = design_scope or self
        self.known: dict[str, Quantity | None] = {}
        self.used: set[str] = set()
        self._open: list[t.Ident] = []
        self._nested = 0

    def say(self, finding: Diagnostic) -> None:
        self.diagnostics.append(finding)

    # --- names

    def look_up(self, ident: t.Ident) -> Quantity | None:
        name = ident.text
        self.used.add(name)
        if name in self.known:
            return self.known[name]
        if name not in self.lets:
            return self._constant_or_unknown(ident)
        if any(open_name.text == name for open_name in self._open):
            circle = " -> ".join([*(open_name.text for open_name in self._open), name])
            self.say(
                findings.error(
                    "circular-value",
                    ident.span,
                    f"`{name}` is worked out from itself",
                    label=circle if len(circle) < 60 else "closes the circle",
                    help="give one of these values as a number",
                )
            )
            self.known[name] = None
            return None
        if len(self._open) > 50:
            self.say(
                findings.value_unclear(
                    ident.span, "values are built on one another more than 50 deep", "work some of them out"
                )
            )
            return None
        value = self.lets[name]
        if not isinstance(value, Quantity):
            self._open.append(ident)
            result = self.evaluate(value)
            self._open.pop()
        else:
            result = value
        self.known.setdefault(name, result)
        return self.known[name]

    def _constant_or_unknown(self, ident: t.Ident) -> Quantity | None:
        if ident.text in CONSTANTS:
            value, dimension = CONSTANTS[ident.text]
            return Quantity(value, dimension, ident.span, ident.text)
        if ident.text in self.parts:
            code = u.read_code(ident.text)
            also = f"; for {u.write(code.value, code.dimension or u.PLAIN)} write `0{ident.text}`" if code else ""
            self.say(
                findings.value_unclear(
                    ident.span,
                    f"`{ident.text}` is a part, not a value",
                    "name the value with `let` and use it in both places" + also,
                )
            )
        elif (right := _unit_first(ident.text)) is not None:
            self.say(findings.unit_first(ident.span, right))
        elif ident.text not in self.doubtful:
            self.say(findings.unknown_name(ident.text, ident.span, (*self.lets, *CONSTANTS), "no value of this name"))
        return None

    # --- expressions

    def evaluate(self, expr: t.Expr) -> Quantity | None:
        """The value of an expression in its own dimension, or None (a finding has been made, or was before)."""
        if self._nested >= DEEPEST:
            self.say(findings.value_unclear(expr.span, "this value is built on too many others",
                                            "work some of them out"))  # fmt: skip
            return None
        self._nested += 1
        try:
            return self._evaluate(expr)
        finally:
            self._nested -= 1

    def _evaluate(self, expr: t.Expr) -> Quantity | None:
        match expr:
            case t.Number():
                return self._number(expr, None)
            case t.Code():
                return self._code(expr.text, expr.span, None)
            case t.Name():
                return self._name(expr, None)
            case t.Negate():
                operand = self.evaluate(expr.operand)
                if operand is None:
                    return None
                return Quantity(-operand.value, operand.dimension, expr.span, expr.span.text)
            case t.Binary():
                left, right = self.evaluate(expr.left), self.evaluate(expr.right)
                return self._binary(expr, left, right) if left and right else None
            case _:
                return None

    def _name(self, expr: t.Name, wanted: u.Dimension | None) -> Quantity | None:
        word = expr.ident.text
        if word not in self.lets and word not in self.parts and word not in CONSTANTS and u.read_code(word):
            return self._code(word, expr.span, wanted)
        found = self.look_up(expr.ident)
        return Quantity(found.value, found.dimension, expr.span, expr.span.text) if found else None

    def _number(self, expr: t.Number, wanted: u.Dimension | None, example: str = "") -> Quantity | None:
        number = expr.number
        if "," in number:
            self.say(findings.decimal_comma(expr.span, number))
            number = number.replace(",", ".")
        factor, dimension = 1.0, u.PLAIN
        if expr.unit is not None:
            unit = u.UNITS.get(expr.unit.text)
            if unit is None:
                unit = self._mend_unit(expr, wanted, example)
                if unit is None:
                    return None
            factor, dimension = unit
        value = u.scale(number, factor)
        if not math.isfinite(value):
            self.say(findings.value_unclear(expr.span, "this number is too large", "look at its exponent"))
            return None
        return Quantity(value, dimension, expr.span, expr.span.text)

    def _mend_unit(self, expr: t.Number, wanted: u.Dimension | None, example: str) -> tuple[float, u.Dimension] | None:
        """A unit word that is none: what it surely means, after the finding; else None."""
        assert expr.unit is not None
        word = expr.unit.text
        wholes = u.whole_units(word, *(_OFTEN if wanted is None else (wanted,)))
        if wholes:
            self.say(findings.prefix_alone(expr.number, expr.span, expr.unit.span, wholes, wanted))
            return u.UNITS[wholes[0]] if wanted is not None else None
        sure = u.meant_unit(word, wanted)
        self.say(findings.unknown_unit(expr.span, expr.unit.span, wanted, sure, example))
        return u.UNITS[sure] if sure else None

    def _code(self, text: str, span: Span, wanted: u.Dimension | None) -> Quantity | None:
        code = u.read_code(text)
        if code is None:  # the grammar's pattern and the reader's are tested to agree
            self.say(findings.value_unclear(span, f"`{text}` is no value code", "write the value with its unit"))
            return None
        dimension = code.dimension or wanted
        if dimension is None:
            self.say(
                findings.value_unclear(
                    span,
                    f"`{text}` does not say what it measures",
                    "in a formula or a `let`, write the unit: `6.8 uF`, not `6u8`",
                )
            )
            return None
        return Quantity(code.value, dimension, span, text)

    def _binary(self, expr: t.Binary, left: Quantity, right: Quantity) -> Quantity | None:
        a, b = left.value, right.value
        try:
            match expr.operator:
                case "+" | "-":
                    if left.dimension != right.dimension:
                        self.say(findings.dimension_clash(expr.span, expr.operator, left.dimension, right.dimension))
                        return None
                    value, dimension = (a + b if expr.operator == "+" else a - b), left.dimension
                case "*":
                    value, dimension = a * b, u.product(left.dimension, right.dimension)
                case "/":
                    value, dimension = a / b, u.quotient(left.dimension, right.dimension)
                case _:
                    if right.dimension != u.PLAIN:
                        self.say(findings.unit_wrong_kind(right.span, right.dimension, u.PLAIN, "an exponent"))
                        return None
                    value, dimension = math.pow(a, b), u.raised(left.dimension, b)
        except (ZeroDivisionError, OverflowError, ValueError):
            value, dimension = math.nan, u.PLAIN
        if not math.isfinite(value):
            self.say(
                findings.value_unclear(
                    expr.span, "this comes to no number", "check the formula: it divides by zero, or grows out of range"
                )
            )
            return None
        return Quantity(value, dimension, expr.span, expr.span.text)

    # --- values that must fit an attribute

    def typed(self, expr: t.Expr, attribute: Attribute, subject: str) -> Quantity | None:
        """The value of an expression that must be this attribute of `subject`, however told; bounds are checked."""
        wanted = attribute.dimension
        match expr:
            case t.Number():
                quantity = self._number(expr, wanted, attribute.example)
                if quantity and expr.unit is None and wanted != u.PLAIN:
                    self.say(findings.unit_missing(expr.span, subject, wanted))
                    return None
            case t.Code():
                quantity = self._code(expr.text, expr.span, wanted)
            case t.Name():
                quantity = self._name(expr, wanted)
            case _:
                quantity = self.evaluate(expr)
        if quantity is None:
            return None
        meant = next((one for one in attribute.others if one.dimension == quantity.dimension), attribute)
        return quantity if self.fits(quantity, meant) else None

    def fits(self, quantity: Quantity, attribute: Attribute) -> bool:
        """Is this of the right kind, above zero and credible? Says so if not."""
        if quantity.dimension != attribute.dimension:
            self.say(
                findings.unit_wrong_kind(
                    quantity.span, quantity.dimension, attribute.dimension, attribute.meaning, attribute.example
                )
            )
            return False
        if not attribute.signed and quantity.value <= 0:
            self.say(findings.value_not_positive(quantity.span, attribute))
            return False
        if not attribute.low * (1 - 1e-9) <= quantity.value <= attribute.high * (1 + 1e-9):
            self.say(
                findings.percent_missing(
                    quantity.span,
                    attribute.meaning,
                    "a plain number is the share itself: 2 would be two hundred percent",
                )
                if _in_percent(quantity, attribute)
                else findings.value_absurd(quantity.span, attribute, quantity.value)
            )
            return False
        return True


def _in_percent(quantity: Quantity, attribute: Attribute) -> bool:
    """Is this a plain number that would be credible in percent, where only a share below 1 is?"""
    share = attribute.dimension == u.PLAIN and attribute.high < 1
    plain = re.fullmatch(r"\d+(\.\d+)?", quantity.text) is not None
    return share and plain and attribute.low <= quantity.value / 100 <= attribute.high


def _unit_first(word: str) -> str | None:
    """`uF68` the right way round: `68 uF`."""
    match = re.fullmatch(r"([^\W\d]+)(\d+)", word)
    unit = u.meant_unit(match[1]) if match else None
    return f"{match[2]} {unit}" if match and unit else None


_OFTEN = (u.OHM, u.HENRY, u.FARAD, u.HERTZ)
"""What a lone prefix may have been meant for where nothing tells."""
