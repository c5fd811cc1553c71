"""Include paths: nothing outside the folder of the design or its workshop can be reached, and one file has one path."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.workshop import MARK, IncludeRefusal, include_root


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
    return include_root(tree / "main.shunt").resolve(tree / including, target)


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
    found = include_root(link / "main.shunt").resolve(link / "main.shunt", "parts/pad.shunt")
    assert found == (tree / "parts" / "pad.shunt").resolve()


def test_including_file_outside_the_root_is_refused(tree: Path) -> None:
    refusal = include_root(tree / "parts" / "pad.shunt").resolve(tree / "main.shunt", "parts/pad.shunt")
    assert isinstance(refusal, IncludeRefusal)
    assert "outside" in refusal.reason


def test_endless_and_looping_paths_end(tree: Path) -> None:
    (tree / "loop").symlink_to("loop")
    assert resolve(tree, "loop/x.shunt") is not None
    assert resolve(tree, "a/" * 5000 + "x") is not None
    assert resolve(tree, "n" * 5000) is not None


# --- in a workshop


def from_job(tree: Path, target: str) -> Path | IncludeRefusal:
    """What a design in a folder of the marked tree reaches."""
    (tree / MARK).touch()
    (tree / "jobs" / "harbour").mkdir(parents=True, exist_ok=True)
    job = tree / "jobs" / "harbour" / "box.shunt"
    return include_root(job).resolve(job, target)


@pytest.mark.parametrize("target", ["../../parts/pad.shunt", "./../..//parts/deep/../pad.shunt"])
def test_all_of_the_workshop_is_reached(tree: Path, target: str) -> None:
    assert from_job(tree, target) == (tree / "parts" / "pad.shunt").resolve()


@pytest.mark.parametrize(
    ("target", "reason"),
    [
        ("../../../box-secret/key.shunt", "leads out of the workshop"),
        ("../../../box/main.shunt", "leads out of the workshop"),
        ("../../link/key.shunt", "leads out of the workshop by a symbolic link"),
        ("link/key.shunt", "leads out of the workshop by a symbolic link"),
        ("/box/main.shunt", "is an absolute path"),
        ("../../.notes", "leads to a hidden file or folder outside the folder of the design"),
        ("../../.store/key.shunt", "leads to a hidden file or folder outside the folder of the design"),
        ("../../plain.shunt", "leads to a hidden file or folder outside the folder of the design"),
    ],
)
def test_nothing_else_is(tree: Path, target: str, reason: str) -> None:
    """Whatever is named, and whatever a link of a plain name leads to."""
    (tree / "link").symlink_to(tree.parent / "box-secret")
    (tree / "jobs" / "harbour").mkdir(parents=True)
    (tree / "jobs" / "harbour" / "link").symlink_to(tree.parent / "box-secret")
    (tree / ".notes").touch()
    (tree / "plain.shunt").symlink_to(".notes")
    refusal = from_job(tree, target)
    assert isinstance(refusal, IncludeRefusal)
    assert refusal.reason == reason


def test_hidden_files_of_the_own_folder_are_read_as_ever(tree: Path) -> None:
    """Also where the job as a whole lies in a hidden folder."""
    assert from_job(tree, ".bounds") == (tree / "jobs" / "harbour" / ".bounds").resolve()
    job = tree / ".old" / "jobs" / "box.shunt"
    job.parent.mkdir(parents=True)
    assert include_root(job).resolve(job, "../bounds.shunt") == (tree / ".old" / "bounds.shunt").resolve()
