"""Marks of workshops: only one that the user could have placed counts, and none reaches above its own folder."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from shuntwise import workshop
from shuntwise.workshop import MARK, MOST_FOLDERS, IncludeRefusal, IncludeRoot, include_root


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A home folder, by the environment and by the list of users."""
    folder = (tmp_path / "people" / "ann").resolve()
    folder.mkdir(parents=True)
    monkeypatch.setenv("HOME", str(folder))
    return folder


@pytest.fixture
def box(home: Path) -> Path:
    """A design in a folder of a workshop that is not marked yet."""
    return design(home / "quay" / "jobs" / "harbour" / "box.shunt")


def design(path: Path) -> Path:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.touch()
    return path


def mark(folder: Path) -> Path:
    (folder / MARK).touch()
    return folder


def reason(root: IncludeRoot) -> tuple[str, Path] | None:
    """Why a mark does not count; nothing but the design's own folder is reached then."""
    if root.idle is None:
        return None
    assert root.mark is None and root.folder == root.own
    return root.idle.reason, root.idle.where


@pytest.mark.parametrize("up", [0, 1, 2])
def test_a_mark_bounds_what_lies_below(box: Path, up: int) -> None:
    folder = mark(box.parents[up])
    assert include_root(box) == IncludeRoot(folder, box.parent, folder / MARK)


def test_without_a_mark_the_folder_of_the_design_bounds(box: Path) -> None:
    assert include_root(box) == IncludeRoot(box.parent, box.parent)


def test_the_nearest_mark_decides(box: Path) -> None:
    """A stranger's folder with a mark of its own reaches nothing of the workshop that it was unpacked into."""
    mark(box.parents[2])
    assert include_root(box).folder == box.parents[2]
    mark(box.parents[1])
    assert include_root(box).folder == box.parents[1]


def test_a_mark_in_an_archive_reaches_nothing_beside_it(home: Path) -> None:
    stranger = design(home / "downloads" / "archive" / "deep" / "box.shunt")
    mark(stranger.parents[1])
    secret = design(home / "downloads" / "letters.txt")
    refusal = include_root(stranger).resolve(stranger, "../../letters.txt")
    assert isinstance(refusal, IncludeRefusal) and secret.exists()


def test_a_mark_that_does_not_count_hides_those_above(box: Path) -> None:
    mark(box.parents[2])
    (box.parents[1] / MARK).symlink_to(box.parents[2] / MARK)
    assert reason(include_root(box)) == ("is a symbolic link", box.parents[1] / MARK)


def test_a_mark_that_is_no_ordinary_file(box: Path) -> None:
    at = box.parents[2] / MARK
    for make, told in (
        (lambda: at.symlink_to(design(box.parents[2] / "empty")), "is a symbolic link"),
        (lambda: at.symlink_to("nowhere"), "is a symbolic link"),
        (lambda: at.symlink_to(MARK), "is a symbolic link"),
        (lambda: os.mkfifo(at), "is no ordinary file"),
        (at.mkdir, "is no ordinary file"),
    ):
        make()
        assert reason(include_root(box)) == (told, at)
        at.rmdir() if at.is_dir() else at.unlink()


@pytest.mark.parametrize("up", [0, 1, 2])
@pytest.mark.parametrize("mode", [0o777, 0o1777, 0o702])
def test_a_folder_that_everybody_may_write_to(box: Path, up: int, mode: int) -> None:
    """Also one between the design and the mark: anybody may have put the design there."""
    mark(box.parents[2])
    box.parents[up].chmod(mode)
    assert reason(include_root(box)) == ("may be written to by everybody", box.parents[up])


def test_a_folder_that_a_group_may_write_to_is_the_users_choice(box: Path) -> None:
    mark(box.parents[2]).chmod(0o775)
    assert include_root(box).mark


@pytest.mark.parametrize("whose", ["", "jobs", MARK])
def test_what_belongs_to_somebody_else(box: Path, whose: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The workshop, a folder in it, the mark."""
    other = mark(box.parents[2]) / whose
    for look in (Path.stat, Path.lstat):
        monkeypatch.setattr(Path, look.__name__, owned_by_another(other, look))
    assert reason(include_root(box)) == ("belongs to another user", other)


def owned_by_another(other: Path, look):  # type: ignore[no-untyped-def]
    def looked(self: Path, **how: bool) -> os.stat_result:
        found = look(self, **how)
        return os.stat_result((*found[:4], found.st_uid + 1, *found[5:10])) if self == other else found

    return looked


def test_everything_belongs_to_somebody_else(box: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    mark(box.parents[2])
    monkeypatch.setattr(os, "geteuid", lambda: box.stat().st_uid + 1)
    assert reason(include_root(box)) == ("belongs to another user", box.parent)


def test_a_home_folder_and_what_holds_it(box: Path, home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """By the environment, by the list of users, and by a link in either."""
    for folder in (home, home.parent):
        mark(folder)
        assert reason(include_root(box)) == ("is a home folder, or holds one", home)
        (folder / MARK).unlink()
    mark(home)
    listed = type("Entry", (), {"pw_dir": str(home)})
    monkeypatch.setenv("HOME", "/nowhere")
    assert include_root(box).folder == home
    monkeypatch.setattr("pwd.getpwuid", lambda _: listed)
    assert reason(include_root(box)) == ("is a home folder, or holds one", home)
    monkeypatch.undo()
    (home.parent / "link").symlink_to(home)
    monkeypatch.setenv("HOME", str(home.parent / "link"))
    assert reason(include_root(box)) == ("is a home folder, or holds one", home)


def test_a_mark_at_the_top_of_all_folders(box: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Even if the top were the user's own, and no home anywhere."""
    top, look = Path(box.anchor), Path.lstat
    monkeypatch.setattr(Path, "lstat", lambda self: look(box if self == top / MARK else self))
    monkeypatch.setattr(workshop, "_homes", list)
    assert reason(include_root(top / "box.shunt")) == ("is a home folder, or holds one", top)


def test_links_do_not_lend_a_workshop(box: Path, home: Path) -> None:
    """The design's real folder tells: not that of a link to it, nor that of a link to its folder."""
    quay = mark(box.parents[2])
    stranger = design(home / "downloads" / "box.shunt")
    (quay / "jobs" / "link.shunt").symlink_to(stranger)
    (quay / "jobs" / "folder").symlink_to(stranger.parent)
    for named in (quay / "jobs" / "link.shunt", quay / "jobs" / "folder" / "box.shunt"):
        assert include_root(named) == IncludeRoot(stranger.parent, stranger.parent)


def test_a_link_in_a_strangers_folder_does_not_lead_into_a_workshop(box: Path, home: Path) -> None:
    quay = mark(box.parents[2])
    stranger = design(home / "downloads" / "box.shunt")
    (stranger.parent / "quay").symlink_to(quay)
    (stranger.parent / MARK).symlink_to(quay / MARK)
    refusal = include_root(stranger).resolve(stranger, "quay/jobs/harbour/box.shunt")
    assert isinstance(refusal, IncludeRefusal)
    assert refusal.reason == "leads out of the folder of the design by a symbolic link"


def test_a_workshop_is_found_by_links_to_what_lies_in_it(box: Path, home: Path) -> None:
    quay = mark(box.parents[2])
    (home / "desk").symlink_to(box.parent)
    assert include_root(home / "desk" / "box.shunt").folder == quay


def test_a_mark_is_looked_for_in_so_many_folders(box: Path) -> None:
    quay = mark(box.parents[2])
    deep = quay.joinpath(*["in"] * (MOST_FOLDERS - 1), "box.shunt")
    assert include_root(design(deep)).folder == quay
    assert include_root(deep.parent / "in" / "box.shunt") == IncludeRoot(deep.parent / "in", deep.parent / "in")


def test_a_system_without_owners_has_no_workshops(box: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    mark(box.parents[2])
    monkeypatch.delattr(os, "geteuid")
    assert reason(include_root(box)) == ("is on a system that does not say whose it is", box.parent)


# --- what the refusal says


SHARED = "../../shared/limits.shunt"


def remedy(box: Path, target: str = SHARED) -> str:
    """The help, with paths as seen from the folder that holds the home."""
    refusal = include_root(box).resolve(box, target, lambda path: os.path.relpath(path, box.parents[4]))
    assert isinstance(refusal, IncludeRefusal)
    return refusal.help


def test_the_remedy_without_a_mark(box: Path) -> None:
    assert remedy(box) == (
        "copy the file into the folder of the design; or, if all in the folder that holds both is your own, make that "
        f"a workshop with an empty file `ann/quay/{MARK}`"
    )
    mark(box.parents[2])
    assert isinstance(include_root(box).resolve(box, SHARED), Path)


def test_the_remedy_where_the_file_lies_outside_the_workshop(box: Path) -> None:
    mark(box.parents[1])
    assert remedy(box) == (
        "copy the file into the workshop; or, if all in the folder that holds both is your own, move the mark from "
        f"`ann/quay/jobs/{MARK}` to `ann/quay/{MARK}`"
    )


def test_the_remedy_where_no_folder_can_be_marked(box: Path) -> None:
    assert remedy(box, "../../../letters.txt") == (
        "copy the file into the folder of the design; no folder that holds both can be a workshop, because `ann` "
        "is a home folder, or holds one"
    )
    box.parents[1].chmod(0o777)
    assert remedy(box).endswith("because `ann/quay/jobs` may be written to by everybody")
    deep = design(box.parent.joinpath(*["in"] * MOST_FOLDERS, "box.shunt"))
    assert include_root(deep).resolve(deep, "../" * MOST_FOLDERS + "x") == IncludeRefusal(
        "../" * MOST_FOLDERS + "x",
        "leads out of the folder of the design",
        "copy the file into the folder of the design; no folder that holds both can be a workshop, because "
        f"`{box.parent}` lies too far up: a mark is looked for in 16 folders",
        leaves=True,
    )


def test_the_remedy_where_a_mark_does_not_count(box: Path) -> None:
    (box.parents[2] / MARK).symlink_to("empty")
    assert remedy(box) == (
        f"copy the file into the folder of the design; the mark `ann/quay/{MARK}` does not count, because it is a "
        "symbolic link"
    )
    (box.parents[2] / MARK).unlink()
    mark(box.parents[2]).chmod(0o777)
    assert remedy(box).endswith(
        f"the mark `ann/quay/{MARK}` does not count, because `ann/quay` may be written to by everybody"
    )


def test_the_remedy_where_the_path_comes_back(box: Path) -> None:
    assert remedy(box, "../harbour/parts.shunt") == "write `parts.shunt`, which stays inside"
