"""Translations are whole: every text there is finished, with the fields of the English, and the compiled file fresh."""

from __future__ import annotations

import re
import string
import subprocess
from pathlib import Path

import pytest

from designer.translations.gather import FOLDER, lrelease, translations
from designer.translations.texts import all_texts, texts_of

FILES = sorted(FOLDER.glob("*.ts"))


def fields(text: str) -> list[tuple[str, str | None, str | None]]:
    """Names, formats and conversions of the fields of a template, sorted."""
    return sorted(
        (name, spec, conversion or "")
        for _, name, spec, conversion in string.Formatter().parse(text)
        if name is not None
    )


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_text_is_translated_with_the_same_fields(path: Path) -> None:
    known = translations(path)
    texts = all_texts()
    assert [one for one in texts if one not in known] == [], "run python -m designer.translations.gather and translate"
    assert sorted(known) == texts, "run python -m designer.translations.gather: some texts are gone"
    assert [one for one in texts if fields(one[1]) != fields(known[one])] == []


def test_french_parts_its_signs_from_the_word_before_and_no_line_ends_there() -> None:
    """A narrow no-break space before ; ! and ?, a no-break space before : and within « »."""
    texts = translations(FOLDER / "fr.ts").values()
    wrong = re.compile("(?<!\u202f)[;!?](?=\\s|$)|(?<!\u00a0):(?=\\s|$)|«(?!\u00a0)|(?<!\u00a0)»")
    assert [one for one in texts if wrong.search(one)] == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_qt_loads_is_what_stands_in_the_file(path: Path, tmp_path: Path) -> None:
    made = tmp_path / "made.qm"
    subprocess.run([lrelease(), "-silent", str(path), "-qm", str(made)], check=True)
    assert made.read_bytes() == path.with_suffix(".qm").read_bytes(), "run python -m designer.translations.gather"


def test_both_ways_of_marking_a_text_are_found() -> None:
    source = """
class Place:
    def words(self):
        return self.tr("in a place"), say("one {field}", field=1), several(2, "a batch", "{count} batches")
LABELS = {"a": mark("marked", "field"), "b": QT_TRANSLATE_NOOP("Ends", "by feel")}
"""
    assert sorted(texts_of(source)) == [
        ("Ends", "by feel"), ("Place", "in a place"), ("designer", "a batch"), ("designer", "one {field}"),
        ("designer", "{count} batches"), ("field", "marked"),
    ]  # fmt: skip


def test_no_text_is_put_together_before_it_is_looked_up() -> None:
    for folder in ("widgets", "designer", "styles"):
        for path in (FOLDER.parents[1] / folder).rglob("*.py"):
            source = path.read_text("utf-8")
            assert 'tr(f"' not in source, path
            assert 'say(f"' not in source or path.name == "bootstrap.py", path
