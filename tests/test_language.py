"""The language spoken: sentences, numbers, counts, and what is typed and shown with a decimal comma."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from designer import language
from designer.cli import main
from designer.language import joined, number, read, say, several, speak, word
from designer.quantities import quantity
from designer.recipe.stages.kinds import KINDS
from designer.units import UnitError, parse, show


@pytest.fixture
def french() -> Iterator[None]:
    """French while a test runs."""
    before = speak(read("fr"))
    yield
    speak(before)


def test_english_is_spoken_at_first() -> None:
    assert language.spoken() is language.ENGLISH
    assert say("not after {time}", time="12:00") == "not after 12:00"
    assert number(3.25, ".2f") == "3.25"


@pytest.mark.usefixtures("french")
def test_a_sentence_is_looked_up_and_its_numbers_take_a_comma() -> None:
    assert say("solution of {strength_pct:g} %", strength_pct=2.5) == "solution à 2,5\u00a0%"
    assert number(3.25, ".2f") == "3,25"
    assert say("no such sentence {one:.1f}", one=1.5) == "no such sentence 1,5"


@pytest.mark.usefixtures("french")
def test_the_words_of_the_trade() -> None:
    assert quantity("mnfs_pct").label == "Humidité du fromage dégraissé (HFD)"
    assert quantity("fdm_pct").label == "Gras sur sec (G/S)"
    said = {
        kind: word(KINDS[kind].LABEL, "stage") for kind in ("set", "cut", "stir", "wash", "drain", "stack", "stretch")
    }
    assert said == {
        "set": "caillage", "cut": "décaillage", "stir": "brassage", "wash": "délactosage", "drain": "égouttage",
        "stack": "cheddarisation", "stretch": "filage",
    }  # fmt: skip


def test_counts_take_the_form_of_their_language() -> None:
    def said(count: int) -> str:
        return several(count, "1 page written to {path}", "{count} pages written to {path}", path="a")

    assert [said(count) for count in (0, 1, 2)] == [f"{n} written to a" for n in ("0 pages", "1 page", "2 pages")]
    before = speak(read("fr"))
    try:
        assert [said(count) for count in (1, 2)] == ["1 page écrite dans a", "2 pages écrites dans a"]
    finally:
        speak(before)


@pytest.mark.usefixtures("french")
@pytest.mark.parametrize(("kind", "value"), [("temperature", 31.5), ("mass", 1.234), ("duration", 5760.0), ("ph", 5.2)])
def test_what_is_shown_in_french_reads_back(kind: str, value: float) -> None:
    assert parse(show(value, kind), kind, comma=True).value == pytest.approx(value)


def test_a_comma_means_a_decimal_where_the_language_has_it() -> None:
    assert parse("31,5 °C", "temperature").value == 31.5
    assert parse("1,250 kg", "mass", comma=True).value == 1.25
    with pytest.raises(UnitError, match="two ways"):
        parse("1,250 kg", "mass")
    assert parse("3 j", "duration").value == 3 * 1440.0


def test_what_is_no_language_is_refused() -> None:
    with pytest.raises(language.LanguageError, match="fr"):
        read("xx")


def test_the_command_line_helps_in_french(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--language", "fr", "plan", "--help"]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert "Écrire la fiche de fabrication en PDF" in said
    assert "Format du papier" in said
    assert language.spoken() is language.ENGLISH
    assert main(["plan", "--help"]) == 0
    assert "Paper size." in capsys.readouterr().out


def test_the_command_line_refuses_in_french(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--language=fr", "check", "nowhere.toml"]) == 2
    assert "ce fichier n'existe pas" in capsys.readouterr().err


def test_parts_of_a_list_are_joined_as_english_writes_it() -> None:
    assert joined(["milk", "cream"]) == "milk; cream"


def test_parts_of_a_list_are_joined_as_french_writes_it(french: None) -> None:
    assert joined(["lait", "crème"]) == "lait\u202f; crème"
    assert joined([]) == ""
