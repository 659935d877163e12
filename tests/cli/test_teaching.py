"""`curdwright lesson`, `vats` and `explain`: sheets with and without targets, vats that add up, three depths."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from designer.cli import CANNOT_READ, DONE, main
from tests.recipe.samples import CHEDDAR


def run(capsys: pytest.CaptureFixture[str], *argv: str | Path) -> tuple[int, str, str]:
    code = main([str(each) for each in argv])
    said = capsys.readouterr()
    return code, said.out, said.err


def text_of(path: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(path).pages).split())


def test_a_sheet_for_learners_with_and_without_targets(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    code, out, _ = run(capsys, "forecast", CHEDDAR, "--json", "--members", "0")
    moisture = f"{json.loads(out)['outcomes']['moisture_pct']['value']:.1f} %"
    found = {}
    for flag, paper in (("--targets", "a4"), ("--no-targets", "letter")):
        path = tmp_path / f"{flag.strip('-')}.pdf"
        code, _, err = run(capsys, "lesson", CHEDDAR, flag, "--paper", paper, "-o", path)
        assert code == DONE, err
        found[flag] = text_of(path)
        assert "Think first" in found[flag]
    assert moisture in found["--targets"]
    assert moisture not in found["--no-targets"]
    assert "guess" in found["--no-targets"]


def test_vats_side_by_side(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    path = tmp_path / "vats.pdf"
    code, out, err = run(capsys, "vats", CHEDDAR, "--change", "cut.cut_mm=4 mm", "--json", "-o", path)
    assert code == DONE, err
    vats = json.loads(out)
    assert [one["setting"] for one in vats] == [None, "cut.cut_mm"]
    assert vats[1]["outcomes"]["moisture_pct"] < vats[0]["outcomes"]["moisture_pct"]
    assert "2 vats side by side" in text_of(path)
    code, out, _ = run(capsys, "vats", CHEDDAR, "--change", "cut.cut_mm")
    assert code == DONE
    assert "as it is" in out
    for wrong, words in (((), "Say what changes"), (("--change", "cut.colour=1"), "nothing can be moved there")):
        code, _, err = run(capsys, "vats", CHEDDAR, *wrong)
        assert code == CANNOT_READ
        assert words in err


def test_explain_at_three_depths(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "explain")
    assert code == DONE
    assert "Size of cut" in out
    code, out, _ = run(capsys, "explain", "law_clotting")
    assert "Half the rennet, twice the time." in out
    assert "rennet needed for flocculation = 540 IMCU min/L" in out
    code, _, err = run(capsys, "explain", "moon")
    assert code == CANNOT_READ
    assert "no topic" in err
