"""What the command line says around our texts is ours, in both languages, for every way of getting it wrong."""

from __future__ import annotations

import pytest
from typer.main import get_command

from designer.bootstrap import ROOT
from designer.cli import CANNOT_READ, DONE, app, main
from designer.cli_frame import told

CHEDDAR = str(ROOT / "example_recipes" / "thistlecombe-cheddar.toml")
COMMANDS = sorted(getattr(get_command(app), "commands"))  # noqa: B009 - a group's own, which the type does not say
WRONG = (
    ("forecast", "RECIPE' is missing", "Il manque 'RECETTE'"),
    ("forecastt", "There is no command 'forecastt'. Did you mean 'forecast'?", "Vouliez-vous dire 'forecast'\u202f?"),
    (f"forecast {CHEDDAR} --membrs 3", "Did you mean --members?", "Il n'y a pas d'option --membrs"),
    (f"forecast {CHEDDAR} --members", "takes a value after it", "veut une valeur après"),
    (f"forecast {CHEDDAR} --members x", "it takes a whole number", "il faut un nombre entier"),
    (f"forecast {CHEDDAR} --members 5000", "at most 2000", "au plus 2000"),
    (f"forecast {CHEDDAR} --members -1", "at least 0", "au moins 0"),
    (f"forecast {CHEDDAR} --units cups", "'--units': 'cups' is not one of 'metric'", "n'est pas parmi"),
    (f"forecast {CHEDDAR} spare", "one too many: spare", "de trop\u00a0: spare"),
    (f"forecast {CHEDDAR} --json=3", "takes no value", "ne prend pas de valeur"),
    ("tour out --size huge", "“huge” is no size", "n'est pas une taille"),
)


@pytest.mark.parametrize(("line", "english", "french"), WRONG, ids=[line.replace(CHEDDAR, "") for line, *_ in WRONG])
def test_what_is_wrong_is_said_in_both(
    line: str, english: str, french: str, capsys: pytest.CaptureFixture[str]
) -> None:
    for language, words in (("en", english), ("fr", french)):
        assert main(["--language", language, *line.split()]) == CANNOT_READ
        out, err = capsys.readouterr()
        assert out == ""
        assert words in err
        assert "Error" not in err
        assert "Traceback" not in err


@pytest.mark.parametrize("command", ["", *COMMANDS])
def test_no_frame_of_help_stays_english(command: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--language", "fr", *command.split(), "--help"]) == DONE
    out = capsys.readouterr().out
    assert out.startswith("Usage\u00a0: curdwright")
    assert "Afficher cette aide et finir." in out
    for english in ("Show", "message", "required", "default", "<path>", "COMMAND ", "Commands:", "Options:", "RECIPE"):
        assert english not in out


def test_what_is_not_known_is_passed_on() -> None:
    assert told("Something new of theirs.") == "Something new of theirs."
