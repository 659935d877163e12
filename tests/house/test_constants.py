"""Every constant of the model can be shown to a maker: it has words of its own, and no text names the code."""

from __future__ import annotations

import re
from dataclasses import asdict

from designer.make.constants import table

NAME_OF_CODE = re.compile(r"\w+_\w+")


def test_every_constant_has_words_of_its_own() -> None:
    words = [row.words for row in table().values()]
    assert [row.name for row in table().values() if not row.words.strip()] == []
    assert sorted(words) == sorted(set(words))


def test_no_text_of_a_constant_names_the_code() -> None:
    shown = {
        row.name: [text for key, text in asdict(row).items() if isinstance(text, str) and key != "name"]
        for row in table().values()
    }
    assert {name: texts for name, texts in shown.items() if any(map(NAME_OF_CODE.search, texts))} == {}
