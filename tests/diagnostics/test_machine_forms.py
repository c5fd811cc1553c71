"""JSON, SARIF and annotations say the same as the text, in forms that outside readers accept.

`tests/reference/sarif-schema-2.1.0.json` is the OASIS schema "Static Analysis Results Format (SARIF) Version
2.1.0 JSON Schema" in its JSON Schema draft-07 form, unchanged; its `$id` names the committee's copy.
"""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from shuntwise.diagnostics.annotations import to_annotations
from shuntwise.diagnostics.diagnostic import (
    Confidence,
    Diagnostic,
    Edit,
    Fix,
    Label,
    NotChecked,
    Severity,
)
from shuntwise.diagnostics.json_form import to_json
from shuntwise.diagnostics.sarif import RuleText, to_sarif
from shuntwise.source import Source, Span

SCHEMA = json.loads((Path(__file__).parents[1] / "reference" / "sarif-schema-2.1.0.json").read_text("utf-8"))

DESIGN = Source("box 17/quay.shunt", "coil L1\r\n\tcoil L1 { 0.82 mH, \U0001f50a }\r\n")
SECOND = DESIGN.text.rindex("L1")
FULL = Diagnostic(
    name="second-name",
    severity=Severity.ERROR,
    headline="`L1` is declared twice",
    span=Span(DESIGN, SECOND, SECOND + 2),
    label="again here",
    why="the two cannot be told apart",
    help="give one another name",
    places=(Label(Span(DESIGN, 5, 7), "first here"),),
    fixes=(Fix("write `L2`", (Edit(Span(DESIGN, SECOND, SECOND + 2), "L2"),), Confidence.SAFE),),
    subjects=("L1",),
    variant="budget",
)
BARE = Diagnostic("bare", Severity.ADVICE, "look again", Span(DESIGN, 0, len(DESIGN.text)))
LACKING = NotChecked("hot-resistor", "the power rating of `R1`", ("R1",))
RULES = [
    RuleText("second-name", Severity.ERROR, "a name is declared twice", "It is.", "The page."),
    RuleText("bare", Severity.ADVICE, "bare"),
]


def test_json_has_every_field_in_its_order() -> None:
    whole = to_json([FULL], [LACKING])
    place = {
        "file": "box 17/quay.shunt",
        "line": 2,
        "column": 7,
        "end_line": 2,
        "end_column": 9,
        "offset": 15,
        "end_offset": 17,
    }
    first = place | {"line": 1, "column": 6, "end_line": 1, "end_column": 8, "offset": 5, "end_offset": 7}
    expected = {
        "form": "shuntwise-findings/1",
        "summary": {"error": 1, "warning": 0, "advice": 0, "not_checked": 1},
        "diagnostics": [
            {
                "name": "second-name",
                "severity": "error",
                "headline": "`L1` is declared twice",
                "variant": "budget",
                "cause": None,
                "subjects": ["L1"],
                "place": place,
                "label": "again here",
                "places": [{"place": first, "label": "first here"}],
                "why": "the two cannot be told apart",
                "help": "give one another name",
                "fixes": [
                    {
                        "title": "write `L2`",
                        "confidence": "safe",
                        "edits": [{"place": place, "text": "L2"}],
                    }
                ],
            }
        ],
        "not_checked": [
            {"name": "hot-resistor", "lacks": "the power rating of `R1`", "subjects": ["R1"]},
        ],
        "unread": [],
    }
    assert json.dumps(whole) == json.dumps(expected)


def from_json(whole: dict[str, Any], source: Source) -> list[Diagnostic]:
    """Findings back from their JSON form, all places being in one source."""

    def span(place: dict[str, Any]) -> Span:
        return Span(source, place["offset"], place["end_offset"])

    return [
        Diagnostic(
            name=d["name"],
            severity=Severity(d["severity"]),
            headline=d["headline"],
            span=span(d["place"]),
            label=d["label"],
            why=d["why"],
            help=d["help"],
            places=tuple(Label(span(p["place"]), p["label"]) for p in d["places"]),
            fixes=tuple(
                Fix(
                    f["title"],
                    tuple(Edit(span(e["place"]), e["text"]) for e in f["edits"]),
                    Confidence(f["confidence"]),
                )
                for f in d["fixes"]
            ),
            subjects=tuple(d["subjects"]),
            variant=d["variant"],
        )
        for d in whole["diagnostics"]
    ]


def test_json_loses_nothing() -> None:
    assert from_json(json.loads(json.dumps(to_json([FULL, BARE]))), DESIGN) == [FULL, BARE]


def test_json_of_a_name_that_utf8_cannot_hold_is_ascii() -> None:
    odd = replace(FULL, span=Span(Source("a\udcff", "x"), 0, 1))
    assert json.dumps(to_json([odd])).isascii()


def validated(log: dict[str, Any]) -> dict[str, Any]:
    """The run of a SARIF log, after the official schema accepted the log as it is read back."""
    read = json.loads(json.dumps(log))
    jsonschema.Draft7Validator(SCHEMA).validate(read)
    run = read["runs"][0]
    assert isinstance(run, dict)
    return run


def test_schema_refuses_a_broken_log() -> None:
    """The check has teeth: an unknown level, an empty message, a stray key and a line 0 are refused."""
    for change in ({"level": "advice"}, {"message": {}}, {"extra": 1}):
        log = to_sarif([FULL])
        log["runs"][0]["results"][0] |= change
        with pytest.raises(jsonschema.ValidationError):
            validated(log)
    log = to_sarif([FULL])
    log["runs"][0]["results"][0]["locations"][0]["physicalLocation"]["region"]["startLine"] = 0
    with pytest.raises(jsonschema.ValidationError):
        validated(log)


def test_sarif_is_valid_and_complete() -> None:
    run = validated(to_sarif([FULL, BARE], [LACKING], RULES, version="0.1.0"))
    driver = run["tool"]["driver"]
    assert (driver["name"], driver["version"]) == ("shuntwise", "0.1.0")
    assert [rule["id"] for rule in driver["rules"]] == ["second-name", "bare"]
    assert run["columnKind"] == "unicodeCodePoints"
    full, bare = run["results"]
    assert (full["ruleId"], full["ruleIndex"]) == ("second-name", 0)
    assert (full["level"], bare["level"]) == ("error", "note")
    location = full["locations"][0]["physicalLocation"]
    assert location["artifactLocation"]["uri"] == "box%2017/quay.shunt"
    assert location["region"] == {
        "startLine": 2,
        "startColumn": 7,
        "endLine": 2,
        "endColumn": 9,
        "charOffset": 15,
        "charLength": 2,
    }
    assert full["relatedLocations"][0]["message"]["text"] == "first here"
    replacement = full["fixes"][0]["artifactChanges"][0]["replacements"][0]
    assert replacement["insertedContent"]["text"] == "L2"
    assert full["properties"] == {"subjects": ["L1"], "variant": "budget"}
    notification = run["invocations"][0]["toolExecutionNotifications"][0]
    assert notification["associatedRule"]["id"] == "hot-resistor"


def test_sarif_without_findings_or_rules_is_valid() -> None:
    assert validated(to_sarif([]))["results"] == []


def strings(value: object) -> list[str]:
    if isinstance(value, dict):
        return [text for item in value.values() for text in strings(item)]
    if isinstance(value, list):
        return [text for item in value for text in strings(item)]
    return [value] if isinstance(value, str) else []


def test_sarif_has_no_empty_strings_and_only_visible_messages() -> None:
    """Code hosts refuse empty strings; a message must not reorder or link what is around it."""
    sly = replace(FULL, headline="a \u202eb \x1b[0m [click](https://example.invalid)")
    sly = replace(sly, places=(Label(FULL.span, ""),))
    deletion = replace(BARE, fixes=(Fix("drop it", (Edit(FULL.span, ""),)), Fix("think", ())))
    log = to_sarif([sly, deletion], rules=RULES)
    validated(log)
    assert all(text.replace("\n", "").isprintable() and text for text in strings(log))
    assert "](" not in json.dumps(log)


@pytest.mark.parametrize(
    ("name", "uri"),
    [
        ("a.shunt", "a.shunt"),
        ("./sub/a.shunt", "sub/a.shunt"),
        ("/srv/a b.shunt", "file:///srv/a%20b.shunt"),
        ("a:b#c?.shunt", "a%3Ab%23c%3F.shunt"),
        ("µ.shunt", "%C2%B5.shunt"),
        ("a\udcff", "a%FF"),
        ("a\\b", "a%5Cb"),
    ],
)
def test_sarif_file_names_are_uri_references(name: str, uri: str) -> None:
    """RFC 3986: reserved characters percent-encoded, as a first segment with a colon would be a scheme."""
    run = validated(to_sarif([replace(FULL, span=Span(Source(name, "x"), 0, 1))]))
    assert run["results"][0]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] == uri


def fingerprints(*diagnostics: Diagnostic) -> list[str]:
    results = to_sarif(diagnostics)["runs"][0]["results"]
    return [result["partialFingerprints"]["primaryLocationLineHash"] for result in results]


def test_fingerprint_survives_new_lines_above_and_tells_equal_findings_apart() -> None:
    moved = Source(DESIGN.name, "-- new\n" + DESIGN.text)
    again = replace(FULL, span=Span(moved, SECOND + 7, SECOND + 9))
    assert fingerprints(FULL) == fingerprints(again)
    assert len(set(fingerprints(FULL, FULL, BARE))) == 3


def test_annotations_are_one_line_each() -> None:
    assert to_annotations([FULL, BARE], [LACKING]) == (
        "::error file=box 17/quay.shunt,line=2,endLine=2,col=7,endColumn=9,title=second-name"
        "::`L1` is declared twice%0Ain variant: budget%0Awhy: the two cannot be told apart"
        "%0Ahelp: give one another name\n"
        "::notice file=box 17/quay.shunt,line=1,endLine=3,title=bare::look again\n"
        "::notice title=hot-resistor::not checked: the power rating of `R1`\n"
    )


def test_annotation_cannot_be_broken_out_of() -> None:
    """Escapes of the workflow commands: `%`, CR and LF everywhere, `:` and `,` also in properties."""
    source = Source("a,b:c%\n::error::x\r.shunt", "x")
    sly = replace(BARE, span=Span(source, 0, 1), headline="100 %\n::stop-commands::t\r\x1b[0m %0A")
    line = to_annotations([sly])
    assert line.count("\n") == 1 and line.isprintable() is False
    assert line[:-1].isprintable()
    assert line.startswith("::notice file=a%2Cb%3Ac%25<U+000A>%3A%3Aerror%3A%3Ax<U+000D>.shunt,line=1,")
    assert line.endswith("::100 %25<U+000A>::stop-commands::t<U+000D><U+001B>[0m %250A\n")
