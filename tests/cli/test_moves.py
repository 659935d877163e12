"""`curdwright moves`: the settings that move an outcome, the strongest first, in words and as JSON."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from designer.bootstrap import ROOT
from designer.cli import CANNOT_READ, DONE
from tests.cli.test_variants import run
from tests.recipe.samples import CHEDDAR

TWINS = ROOT / "example_recipes" / "millpond-twins.toml"


def test_the_strongest_first_with_bands(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "moves", CHEDDAR, "moisture", "--most", "5", "--members", "8", "--json")
    assert code == DONE
    data = json.loads(out)
    assert (data["outcome"], data["unit"]) == ("moisture_pct", "%")
    rows = data["settings"]
    size = [max(abs(row["up"] or 0.0), abs(row["down"] or 0.0)) for row in rows]
    assert len(rows) == 5
    assert size == sorted(size, reverse=True)
    cut = next(row for row in rows if row["field"] == "cut_mm")
    assert cut["down"] < 0.0 < cut["up"], "a coarser cut is moister"
    assert cut["up_low"] <= cut["up_high"]


def test_a_step_that_cannot_be_taken_is_null_and_said(capsys: pytest.CaptureFixture[str]) -> None:
    _, out, _ = run(capsys, "moves", CHEDDAR, "moisture", "--members", "0", "--json")
    ends = [row for row in json.loads(out)["settings"] if row["up"] is None]
    assert ends, "all of the whey is drawn off: there is no more"
    assert all(row["up_low"] is None for row in ends)
    code, out, _ = run(capsys, "moves", CHEDDAR, "moisture", "--members", "0")
    assert code == DONE
    assert "at its end" in out
    assert "In brackets" not in out


def test_where_a_direction_turns_is_said_with_its_source(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:  # fmt: skip
    hot = tmp_path / "hot.toml"
    hot.write_text(CHEDDAR.read_text("utf-8").replace('temperature = "39 °C"', 'temperature = "51 °C"'), "utf-8")
    _, out, _ = run(capsys, "moves", str(hot), "moisture", "--members", "0", "--most", "500", "--json")
    turns = {(row["id"], row["field"]): row["turns"] for row in json.loads(out)["settings"]}
    said = turns["warm", "temperature_c"]
    assert any("hardly dries the curd further" in one["text"] and "Huber" in one["source"] for one in said)
    _, out, _ = run(capsys, "moves", str(hot), "moisture", "--members", "0", "--most", "500")
    assert "hardly dries the curd further" in " ".join(out.split())
    _, out, _ = run(capsys, "moves", CHEDDAR, "moisture", "--members", "0", "--most", "500")
    assert "hardly dries the curd further" not in " ".join(out.split())


def test_of_a_branch(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(
        capsys, "moves", TWINS, "moisture", "--branch", "plain", "--members", "0", "--json", "--most", "3"
    )
    assert code == DONE
    assert len(json.loads(out)["settings"]) == 3


@pytest.mark.parametrize(
    ("rest", "words"),
    [(("taste",), "no outcome"), (("moisture", "--branch", "moon"), "no branch"), ((), "is missing")],
)
def test_what_cannot_be_is_a_sentence(rest: tuple[str, ...], words: str, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, said = run(capsys, "moves", CHEDDAR, *rest)
    assert (code, out) == (CANNOT_READ, "")
    assert words in said
