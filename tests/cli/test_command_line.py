"""The command line: its contract in JSON, its exit codes, and a sentence for every bad file."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from designer import cli
from designer.bootstrap import ROOT

EXAMPLES = ROOT / "example_recipes"
CHEDDAR = EXAMPLES / "thistlecombe-cheddar.toml"
FAST = ["--members", "0"]


def refuse(text: str) -> None:
    raise AssertionError(f"{text} is no JSON")


def run_json(capsys: pytest.CaptureFixture[str], *arguments: str, code: int = 0) -> Any:
    assert cli.main(list(arguments)) == code
    return json.loads(capsys.readouterr().out, parse_constant=refuse)


def test_forecast_keeps_the_contract(capsys: pytest.CaptureFixture[str]) -> None:
    data = run_json(capsys, "forecast", str(CHEDDAR), "--json", "--members", "32")
    assert [stage["id"] for stage in data["stages"]][:3] == ["ripen", "set", "cut"]
    for key in (
        "id", "name", "kind", "start_min", "end_min", "clock", "temperature_c",
        "ph_end", "curd_moisture_pct_end", "whey_kg_per_100kg_end",
    ):  # fmt: skip
        assert key in data["stages"][0]
    assert data["stages"][0]["clock"] == "07:30"
    trace = data["trace"]
    for key in ("time_min", "temperature_c", "ph", "curd_moisture_pct", "ph_low", "ph_high"):
        assert len(trace[key]) == len(trace["time_min"])
    for key in (
        "moisture_pct", "mnfs_pct", "fdm_pct", "fat_pct", "protein_pct", "salt_pct", "salt_in_moisture_pct", "ph_24h",
        "yield_kg_per_100kg", "calcium_mg_per_g_protein", "floc_min", "cut_min", "weight_loss_pct",
    ):  # fmt: skip
        outcome = data["outcomes"][key]
        assert outcome["low"] <= outcome["value"] <= outcome["high"]
    assert data["outcomes"]["moisture_pct"]["low"] < data["outcomes"]["moisture_pct"]["high"]
    assert all({"code", "level", "text", "source", "stage"} <= caution.keys() for caution in data["cautions"])


def test_a_branch_says_its_own_cautions_and_remarks(capsys: pytest.CaptureFixture[str]) -> None:
    """What holds for the whey cheese stands under its table, and only there."""
    assert cli.main(["forecast", str(EXAMPLES / "millpond-twins.toml"), *FAST]) == 0
    said = " ".join(capsys.readouterr().out.split())
    main, *branches = said.split(" Branch ")
    own = "Curdled by heat and acid"
    assert own not in main
    assert sum(own in branch for branch in branches) == 1
    assert any("Acid-and-heat curd drains by a law" in branch for branch in branches)
    assert said.count("Contains milk") == 1


@pytest.mark.parametrize("path", sorted(EXAMPLES.glob("*.toml")), ids=lambda path: path.stem)
def test_every_example_is_forecast(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    data = run_json(capsys, "forecast", str(path), "--json", *FAST)
    ends = [stage["end_min"] for stage in data["stages"]]
    assert ends == sorted(ends)
    assert 0.0 < data["outcomes"]["moisture_pct"]["value"] < 100.0


def test_forecast_reads_well(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["forecast", str(CHEDDAR), "--units", "us", "--start", "06:00", *FAST]) == 0
    out = capsys.readouterr().out
    for words in ("Thistlecombe Cheddar", "06:00", "°F", "Moisture", "stack"):
        assert words in out


def test_check_says_met_and_not_met(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    data = run_json(capsys, "check", str(CHEDDAR), "--json", *FAST)
    assert data["state"] in ("met", "near")
    assert {"quantity", "value", "low", "high", "state", "margin", "sentence", "source"} <= data["rows"][0].keys()
    watery = tmp_path / "watery.toml"
    text = CHEDDAR.read_text(encoding="utf-8").replace('temperature = "39 °C"', 'temperature = "31 °C"')
    cooled = 'latest = "3 h" }\ntemperature = "36 °C"      # the pile cools slowly under its cloth\nramp = "90 min"'
    text = text.replace('size = "5/16 in"', 'size = "1 in"')
    watery.write_text(text.replace(cooled, 'latest = "61 min" }'), encoding="utf-8")
    data = run_json(capsys, "check", str(watery), "--json", *FAST, code=1)
    assert data["state"] == "not met"
    assert "Does not meet" in data["sentence"]


def test_check_by_another_style_and_rule(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", str(CHEDDAR), "--style", "parmesan", *FAST]) == 1
    assert "NOT MET" in capsys.readouterr().out
    assert cli.main(["check", str(CHEDDAR), "--rules", "moon", *FAST]) == 2
    assert "moon" in capsys.readouterr().err
    assert cli.main(["check", str(CHEDDAR), "--style", "chedar", *FAST]) == 2
    assert "cheddar" in capsys.readouterr().err


def test_a_recipe_without_a_style_asks_for_one(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    plain = tmp_path / "plain.toml"
    plain.write_text(CHEDDAR.read_text(encoding="utf-8").replace('style = "cheddar"\n', ""), encoding="utf-8")
    assert cli.main(["check", str(plain), *FAST]) == 2
    assert "--style" in capsys.readouterr().err
    assert cli.main(["plan", str(plain), "-o", str(tmp_path / "plain.pdf"), *FAST]) == 0


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_plan_writes_a_pdf(paper: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = tmp_path / "day.pdf"
    code = cli.main(["plan", str(CHEDDAR), "-o", str(out), "--paper", paper, "--date", "3 May 2026", *FAST])
    assert code == 0
    assert str(out) in capsys.readouterr().out
    reader = PdfReader(out)
    assert f"{len(reader.pages)} pages" if len(reader.pages) > 1 else "1 page"
    text = " ".join(" ".join(page.extract_text() for page in reader.pages).split())
    assert "3 May 2026" in text
    assert "Weigh out before the milk comes" in text


def test_plan_lands_beside_the_maker(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert cli.main(["plan", str(CHEDDAR), *FAST]) == 0
    assert (tmp_path / "thistlecombe-cheddar-plan.pdf").exists()


def test_plan_never_lands_on_a_recipe(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    recipe = tmp_path / "mine.toml"
    recipe.write_text("x", encoding="utf-8")
    assert cli.main(["plan", str(CHEDDAR), "-o", str(recipe)]) == 2
    assert recipe.read_text(encoding="utf-8") == "x"
    assert cli.main(["plan", str(CHEDDAR), "-o", str(tmp_path / "no" / "where.pdf"), *FAST]) == 2
    assert "could not be written" in capsys.readouterr().err


def test_validate_tells_figure_by_figure(capsys: pytest.CaptureFixture[str]) -> None:
    data = run_json(capsys, "validate", "--json")
    assert len(data) >= 25
    assert {"case", "quantity", "class", "published", "forecast", "error", "source"} <= data[0].keys()
    laws = [one for one in data if one["within"] is not None]
    makes = [one for one in data if one["within"] is None]
    assert {"measured", "procedure", "joined"} == {one["class"] for one in makes}
    assert len({one["case"] for one in makes}) >= 40
    assert cli.main(["validate"]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert f"{len(laws)} of {len(laws)} published figures hold" in out
    assert "Mean absolute error" in out


def test_validate_sums_up(capsys: pytest.CaptureFixture[str]) -> None:
    data = run_json(capsys, "validate", "--summary", "--json")
    moisture = next(one for one in data["means"] if (one["line"], one["class"]) == ("moisture", "all"))
    assert moisture["low"] <= moisture["mean_error_out_of_fit"] <= moisture["high"]
    assert data["coverage"]
    assert data["effects"]


def test_schema_is_one_of_a_recipe(capsys: pytest.CaptureFixture[str]) -> None:
    data = run_json(capsys, "schema")
    assert data["type"] == "object"
    assert "stage" in data["properties"]


BAD = {
    "empty": "",
    "not toml": "[[[",
    "no stage": 'format = 1\nname = "x"\n[[milk]]\nid = "m"\nvolume = "10 L"\n',
    "unknown key": 'format = 1\nname = "x"\ncolour_of_sky = "blue"\n',
    "future": "format = 99\n",
    "sum": CHEDDAR.read_text(encoding="utf-8").replace('"100 L"', '"50 L * 2"'),
    "unit": CHEDDAR.read_text(encoding="utf-8").replace('"100 L"', '"100 min"'),
    "impossible": CHEDDAR.read_text(encoding="utf-8").replace('fat = "3.7 %"', 'fat = "370 %"'),
    "truncated": CHEDDAR.read_text(encoding="utf-8")[:700],
    "withheld": CHEDDAR.read_text(encoding="utf-8").replace('heat = "past', 'withheld = true\nheat = "past'),
}


@pytest.mark.parametrize("command", ["forecast", "check", "plan"])
@pytest.mark.parametrize("text", BAD.values(), ids=BAD)
def test_a_bad_file_is_one_sentence(
    command: str, text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    path = tmp_path / "bad.toml"
    path.write_text(text, encoding="utf-8")
    assert cli.main([command, str(path)]) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.startswith("curdwright: ")
    assert said.err.count("\n") == 1
    assert path.read_text(encoding="utf-8") == text
    assert list(tmp_path.iterdir()) == [path]


def test_what_is_no_file_is_one_sentence(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    noise = tmp_path / "noise.toml"
    noise.write_bytes(os.urandom(10_000_000))
    for path in (tmp_path, tmp_path / "none.toml", noise):
        assert cli.main(["forecast", str(path)]) == 2
        assert capsys.readouterr().err.count("\n") == 1


@pytest.mark.parametrize("arguments", [["bake"], ["forecast"], ["plan", "x.toml", "--paper", "a3"], ["check", "--why"]])
def test_a_wrong_command_ends_with_2(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(arguments) == 2
    assert "Traceback" not in capsys.readouterr().err


def test_a_wrong_clock_is_a_sentence(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["forecast", str(CHEDDAR), "--start", "25:99"]) == 2
    assert "25:99" in capsys.readouterr().err


def test_a_fault_of_ours_is_a_sentence_with_a_file(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(cli, "read_recipe", lambda *_: 1 / 0)
    assert cli.main(["forecast", str(CHEDDAR)]) == 3
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    kept = Path(said.rpartition("the file ")[2].strip().rstrip("."))
    assert "ZeroDivisionError" in kept.read_text(encoding="utf-8")


def test_version_and_help(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["--version"]) == 0
    assert capsys.readouterr().out.startswith("Curdwright ")
    assert cli.main(["--help"]) == 0
    out = capsys.readouterr().out
    assert all(command in out for command in ("open", "forecast", "check", "plan", "validate", "schema"))


@pytest.mark.parametrize("arguments", [[], ["open", str(CHEDDAR)], [str(CHEDDAR)]], ids=["bare", "open", "file"])
def test_without_a_display_the_plan_is_written(
    arguments: list[str], capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr("platformdirs.user_documents_path", lambda: tmp_path)
    assert cli.main(arguments) == 0
    out = capsys.readouterr().out
    target = tmp_path / "Curdwright" / "thistlecombe-cheddar-plan.pdf"
    assert target.exists()
    assert str(target) in out
    assert "Moisture" in out
    assert "Cheddar:" in out


WITHOUT_QT = """
import sys
for name in ("PySide6", "shiboken6"):
    sys.modules[name] = None
from designer.cli import main
sys.exit(main(sys.argv[1:]))
"""


@pytest.mark.parametrize(
    ("arguments", "code"),
    [
        (["forecast", str(CHEDDAR), *FAST], 0),
        (["check", str(CHEDDAR), "--json", *FAST], 0),
        (["validate"], 0),
        (["schema"], 0),
        (["plan", str(CHEDDAR), *FAST], 2),
    ],
    ids=lambda value: value[0] if isinstance(value, list) else "",
)
def test_without_qt_all_but_the_plan_is_there(arguments: list[str], code: int, tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-c", WITHOUT_QT, *arguments],
        cwd=tmp_path, env=os.environ | {"PYTHONPATH": str(ROOT)}, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.returncode == code, done.stderr
    assert "Traceback" not in done.stderr
    assert ("apt-get install" in done.stderr) == (code == 2)
