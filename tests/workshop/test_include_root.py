"""Include paths: nothing outside the folder of the design can be reached, and one file has one path."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.files import IncludeRefusal, IncludeRoot


@pytest.fixture
def tree(tmp_path: Path) -> Path:
    """A design's folder with a library in it, beside a folder that is none of its business."""
    root = tmp_path / "box"
    (root / "parts" / "deep").mkdir(parents=True)
    (root / "main.shunt").write_text("main")
    (root / "parts" / "pad.shunt").write_text("pad")
    (tmp_path / "box-secret").mkdir()
    (tmp_path / "box-secret" / "key.shunt").write_text("secret")
    return root


def resolve(tree: Path, target: str, including: str = "main.shunt") -> Path | IncludeRefusal:
    return IncludeRoot(tree).resolve(tree / including, target)


@pytest.mark.parametrize(
    ("including", "target"),
    [
        ("main.shunt", "parts/pad.shunt"),
        ("main.shunt", "./parts//pad.shunt"),
        ("main.shunt", "parts/deep/../pad.shunt"),
        ("parts/other.shunt", "pad.shunt"),
        ("parts/deep/x.shunt", "../pad.shunt"),
        ("parts/deep/x.shunt", "../../parts/pad.shunt"),
    ],
)
def test_spellings_of_one_file_give_one_path(tree: Path, including: str, target: str) -> None:
    assert resolve(tree, target, including) == (tree / "parts" / "pad.shunt").resolve()


@pytest.mark.parametrize(
    ("target", "reason"),
    [
        ("", "is empty"),
        ("  ", "is empty"),
        ("/etc/hostname", "is an absolute path"),
        ("//host/share", "is an absolute path"),
        ("C:/x.shunt", "is an absolute path"),
        ("c:x.shunt", "is an absolute path"),
        ("parts\\pad.shunt", "holds a backslash"),
        ("..\\x", "holds a backslash"),
        ("a\0b", "holds a character that cannot be seen"),
        ("a\nb", "holds a character that cannot be seen"),
        ("a\u202eb", "holds a character that cannot be seen"),
        ("a\ud800b", "holds a character that cannot be seen"),
        ("..", "leads out of the folder of the design"),
        ("../box-secret/key.shunt", "leads out of the folder of the design"),
        ("../box/main.shunt", "leads out of the folder of the design"),
        ("parts/../../box/main.shunt", "leads out of the folder of the design"),
    ],
)
def test_hostile_path_is_refused_with_its_reason(tree: Path, target: str, reason: str) -> None:
    refusal = resolve(tree, target)
    assert isinstance(refusal, IncludeRefusal)
    assert refusal.reason == reason
    assert refusal.help


def test_link_out_of_the_folder_is_refused(tree: Path) -> None:
    """A link to a file, to a folder, and a `..` behind a link that leads deeper than it looks."""
    (tree / "file.shunt").symlink_to(tree.parent / "box-secret" / "key.shunt")
    (tree / "folder").symlink_to(tree.parent / "box-secret")
    (tree / "parts" / "deep" / "up").symlink_to(tree)
    for target in ("file.shunt", "folder/key.shunt", "folder", "parts/deep/up/../box-secret/key.shunt"):
        refusal = resolve(tree, target)
        assert isinstance(refusal, IncludeRefusal), target
        assert refusal.reason == "leads out of the folder of the design by a symbolic link"


def test_link_within_the_folder_gives_the_real_path(tree: Path) -> None:
    """So that a file that includes itself through a link is still seen as a loop."""
    (tree / "again.shunt").symlink_to("main.shunt")
    assert resolve(tree, "again.shunt") == (tree / "main.shunt").resolve()


def test_root_that_is_itself_a_link_works(tree: Path) -> None:
    link = tree.parent / "link"
    link.symlink_to(tree)
    found = IncludeRoot(link).resolve(link / "main.shunt", "parts/pad.shunt")
    assert found == (tree / "parts" / "pad.shunt").resolve()


def test_including_file_outside_the_root_is_refused(tree: Path) -> None:
    refusal = IncludeRoot(tree / "parts").resolve(tree / "main.shunt", "parts/pad.shunt")
    assert isinstance(refusal, IncludeRefusal)
    assert "outside" in refusal.reason


def test_endless_and_looping_paths_end(tree: Path) -> None:
    (tree / "loop").symlink_to("loop")
    assert resolve(tree, "loop/x.shunt") is not None
    assert resolve(tree, "a/" * 5000 + "x") is not None
    assert resolve(tree, "n" * 5000) is not None
