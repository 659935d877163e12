"""`curdwright batches`: the list, JSON, a house style of what was liked, sentences."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from designer.cli import CANNOT_READ, DONE
from styles.reader import read
from tests.cli.test_variants import run
from tests.recipe.samples import CHEDDAR


def test_the_invented_batches(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    code, out, _ = run(capsys, "batches", "--invented", "--json")
    assert code == DONE
    data = json.loads(out)
    assert [one["liked"] for one in data] == [True, True, False, True, True]
    assert data[-1]["tastings"][0]["age_days"] == 189
    moisture = next(one for one in data[0]["readings"] if one["quantity"] == "moisture_pct")
    assert moisture["measured"] == 36.6
    assert moisture["forecast"] == pytest.approx(data[0]["forecast"]["moisture_pct"]["value"])
    assert data[0]["recipe_text"].startswith("# Thistlecombe")
    first = next(one for one in data[-1]["readings"] if one["at"] == "mill")
    assert (first["taken"], first["instrument"]) == ("2024-03-05T13:35:00", "pH meter")
    code, out, _ = run(capsys, "batches", "--invented", "--readings")
    assert code == DONE
    assert "2024-03-05 13:35" in out
    assert "pH meter" in out
    own = tmp_path / "dairy-own.style.toml"
    code, _, _ = run(capsys, "batches", CHEDDAR, "--invented", "--house-style", "Dairy Own", "--out", own)
    assert code == DONE
    assert "4 of 4" in read(own).windows_of("moisture_pct")[0].source
    code, _, said = run(capsys, "batches", "--invented", "--house-style", "Dairy Own", "--out", own)
    assert code == CANNOT_READ
    assert "already" in said


def test_what_cannot_be_is_a_sentence(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    code, _, said = run(capsys, "batches", "--ledger", tmp_path / "none.sqlite")
    assert (code, "no ledger" in said) == (CANNOT_READ, True)
    (tmp_path / "bad.sqlite").write_text("this is no ledger" * 200)
    code, _, said = run(capsys, "batches", "--ledger", tmp_path / "bad.sqlite")
    assert (code, "can't be used" in said) == (CANNOT_READ, True)
    assert len(said.splitlines()) == 1
