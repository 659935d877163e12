"""`curdwright compare` and `curdwright scale`: exit codes, sentences, JSON, and nothing written over."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from designer.cli import CANNOT_READ, DOES_NOT_MEET, DONE, main
from designer.recipe import versions
from designer.recipe.edit import edit
from designer.recipe.file import read
from designer.recipe.milk import blend
from styles import house
from styles.reader import style
from tests.recipe.samples import CHEDDAR

COLBY = CHEDDAR.with_name("lantern-colby.toml")


def run(capsys: pytest.CaptureFixture[str], *argv: str | Path) -> tuple[int, str, str]:
    code = main([str(each) for each in argv])
    said = capsys.readouterr()
    return code, said.out, said.err


def test_compare_as_json_adds_up(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "compare", CHEDDAR, COLBY, "--json")
    assert code == DONE
    data = json.loads(out)
    assert data["per_100kg"] is True
    assert any(row["left"] is None for row in data["rows"])
    assert any(row["folded"] for row in data["rows"])
    for key, figures in data["outcomes"].items():
        parts = sum(one["worth"].get(key, 0.0) for one in data["differences"]) + figures["rest"]
        assert parts == pytest.approx(figures["right"] - figures["left"], abs=1e-4), key


def test_compare_in_words(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "compare", CHEDDAR, COLBY)
    assert code == DONE
    assert "without stack" in out
    assert "moister" in out
    assert "sum of parts" in out


def test_compare_with_a_style_or_another_recipe_but_not_both(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "compare", CHEDDAR, "--style", "cheddar")
    assert code == DONE
    assert "the middle of its" in out
    for extra in ((), (COLBY, "--style", "cheddar")):
        code, _, err = run(capsys, "compare", CHEDDAR, *extra)
        assert code == CANNOT_READ
        assert "one of the four" in err


def test_compare_with_a_kept_version_and_with_a_lane_of_the_vat(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    path = tmp_path / "kept.toml"
    versions.save(read(CHEDDAR), path)
    versions.save(edit(read(CHEDDAR), "cut", cut_mm=12.0), path)
    code, out, _ = run(capsys, "compare", path, "--version", "1")
    assert code == DONE
    assert "12 mm → " in out
    code, out, _ = run(capsys, "compare", path, "--version", "2", "--version", "1")
    assert code == DONE
    assert "12 mm → " in out
    code, _, err = run(capsys, "compare", path, "--version", "9")
    assert code == CANNOT_READ
    assert "no version 9" in err
    twins = CHEDDAR.with_name("millpond-twins.toml")
    code, out, _ = run(capsys, "compare", twins, "--lane", "plain")
    assert code == DONE
    assert "without wash curd" in out
    code, _, err = run(capsys, "compare", twins, "--lane", "whey-cheese")
    assert code == CANNOT_READ
    assert "no branch of curd" in err


def test_compare_on_paper(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    for paper, size in (("a4", (595.0, 842.0)), ("letter", (612.0, 792.0))):
        path = tmp_path / f"{paper}.pdf"
        code, _, err = run(capsys, "compare", CHEDDAR, COLBY, "-o", path, "--paper", paper)
        assert code == DONE, err
        pages = PdfReader(path).pages
        assert (pages[0].mediabox.width, pages[0].mediabox.height) == pytest.approx(size, abs=1.0)
        text = " ".join(" ".join(page.extract_text() for page in pages).split())
        for words in ("against", "Over each other", "without stack", "in all", "Calcium"):
            assert words in text
    code, _, err = run(capsys, "compare", CHEDDAR, COLBY, "-o", tmp_path / "recipe.toml")
    assert code == CANNOT_READ
    assert ".pdf" in err


def test_scale_writes_a_new_file_and_says_every_rule(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    out_path = tmp_path / "large.toml"
    code, out, _ = run(capsys, "scale", CHEDDAR, "--to", "300 L", "--power", "6 kW", "-o", out_path)
    assert code == DONE
    for word in ("By milk", "By area", "By the vat's power", "To be checked", "Unchanged"):
        assert word in out
    milk = blend(read(out_path))
    assert milk.mass_kg / milk.density_kg_l == pytest.approx(300.0)
    code, _, err = run(capsys, "scale", CHEDDAR, "--to", "8 L", "-o", out_path)
    assert code == CANNOT_READ
    assert "is there already" in err


def test_scale_as_json(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "scale", CHEDDAR, "--to", "8 L", "--forms", "large", "--json")
    assert code == DONE
    data = json.loads(out)
    assert data["factor"] == pytest.approx(0.08)
    assert {line["rule"] for line in data["lines"]} >= {"by milk", "by area", "unchanged", "to be checked"}
    assert data["outcomes"]["cheese_kg"]["after"] < data["outcomes"]["cheese_kg"]["before"]


def test_a_gallon_is_asked_about(capsys: pytest.CaptureFixture[str]) -> None:
    code, _, err = run(capsys, "scale", CHEDDAR, "--to", "10 gal")
    assert code == CANNOT_READ
    assert "US gal" in err
    code, out, _ = run(capsys, "scale", CHEDDAR, "--to", "10 gal", "--units", "imperial")
    assert code == DONE
    assert "imp gal" in out


def test_a_house_style_beside_the_recipe_is_found(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    recipe = tmp_path / "river.toml"
    recipe.write_text(COLBY.read_text(encoding="utf-8"), encoding="utf-8")
    own = house.from_style(style("colby"), "River Colby")
    path = house.path_of(tmp_path, own)
    house.write(own, path)
    for key in ("river-colby", path):
        code, out, err = run(capsys, "check", recipe, "--style", key, "--members", "0")
        assert code in (DONE, DOES_NOT_MEET), err
        assert "River Colby" in out
