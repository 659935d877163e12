"""`curdwright aim`: what can be asked, exit codes, sentences, JSON, and the recipe written."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from designer.cli import CANNOT_READ, DOES_NOT_MEET, DONE, main
from designer.forecast import forecast
from designer.judge.aim import AimError, Wanted
from designer.plan.aimed import lock, wanted
from designer.recipe.file import read
from tests.recipe.samples import CHEDDAR


def run(capsys: pytest.CaptureFixture[str], *argv: str | Path) -> tuple[int, str, str]:
    code = main([str(each) for each in argv])
    said = capsys.readouterr()
    return code, said.out, said.err


def test_reached_and_written(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    out_path = tmp_path / "drier.toml"
    now = forecast(read(CHEDDAR)).outcomes["moisture_pct"].value
    code, out, _ = run(capsys, "aim", CHEDDAR, "--want", f"moisture={now - 0.8:.1f}", "-o", out_path)
    assert code == DONE
    assert "Reached." in out
    assert "→" in out
    assert forecast(read(out_path)).outcomes["moisture_pct"].value == pytest.approx(now - 0.8, abs=0.16)
    assert "Thistlecombe Dairy is made up" in out_path.read_text("utf-8")  # comments are kept


def test_not_reached_as_json(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "aim", CHEDDAR, "--want", "moisture=42", "--lock", "cut", "--json")
    assert code == DOES_NOT_MEET
    data = json.loads(out)
    assert data["reached"] is False
    assert data["in_the_way"]
    assert not any(one["part"] == "cut" for one in data["changes"])
    assert data["outcomes"]["moisture_pct"]["after"] <= 39.0 + 1e-6


def test_meet_and_first(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "aim", CHEDDAR, "--meet")
    assert code == DONE
    assert "inside the limits" in out
    code, out, _ = run(capsys, "aim", CHEDDAR, "--first", "gouda", "--json")
    assert json.loads(out)["notes"][0].startswith("Drawn from the example")


def test_a_branch(capsys: pytest.CaptureFixture[str]) -> None:
    twins = CHEDDAR.parent / "millpond-twins.toml"
    now = forecast(read(twins)).lane("plain").outcomes["salt_in_moisture_pct"].value
    asked = ("aim", twins, "--branch", "plain", "--lock", "plain-cook", "--json")
    code, out, _ = run(capsys, *asked, "--want", f"salt_in_moisture={now + 0.3:.2f}")
    assert code == DONE
    data = json.loads(out)
    assert data["outcomes"]["salt_in_moisture_pct"]["before"] == pytest.approx(now)
    assert "plain-cook" not in {one["part"] for one in data["changes"]}
    code, _, err = run(capsys, "aim", twins, "--branch", "moon", "--want", "moisture=38")
    assert code == CANNOT_READ
    assert "plain, whey-cheese" in err
    code, _, err = run(capsys, "aim", twins, "--branch", "plain", "--meet")
    assert "--want" in err


@pytest.mark.parametrize(
    ("extra", "said"),
    [
        ((), "in one way"),
        (("--want", "moisture=38", "--meet"), "in one way"),
        (("--want", "holes=3"), "no outcome"),
        (("--want", "moisture about 38"), "can't be read"),
        (("--want", "moisture=38", "--lock", "moon"), "nothing to lock"),
        (("--first", "moon"), "moon"),
    ],
)
def test_what_cannot_be_asked(capsys: pytest.CaptureFixture[str], extra: tuple[str, ...], said: str) -> None:
    code, _, err = run(capsys, "aim", CHEDDAR, *extra)
    assert code == CANNOT_READ
    assert said in err


def test_wanted_as_text() -> None:
    assert wanted("ph_24h=5.1..5.2") == Wanted("ph_24h", 5.1, 5.2)
    assert wanted("salt_in_moisture >= 4,5") == Wanted("salt_in_moisture_pct", 4.5, None)
    assert wanted("finish<=12 h") == Wanted("finish_min", None, 720.0)
    moisture = wanted("moisture=38 %")
    assert (moisture.low, moisture.high) == pytest.approx((37.9, 38.1))
    with pytest.raises(AimError, match="a range is written"):
        wanted("ph_24h<=5.1..5.2")
    for nothing in ("ph_24h=nan", "moisture=inf", "moisture=38..nan"):
        with pytest.raises(AimError):
            wanted(nothing)
    assert wanted("calcium=28").key == "calcium_mg_per_g_protein"
    with pytest.raises(AimError, match="no outcome") as refused:
        wanted("holes=3")
    assert "load_kpa" not in str(refused.value)


def test_locks_as_text() -> None:
    recipe = read(CHEDDAR)
    assert lock(recipe, "warm") == "warm"
    assert lock(recipe, "warm.temperature_c") == ("warm", "temperature_c")
