"""Brings the translation files up to date with the texts: `python -m designer.translations.gather`.

New texts come in unfinished, gone ones go out, finished translations stay. The .ts files are Qt's own format, so that
Qt Linguist opens them; `lrelease` of PySide6 makes the .qm files the window loads.
"""

from __future__ import annotations

import subprocess
import sys
from importlib.util import find_spec
from itertools import groupby
from pathlib import Path
from xml.etree import ElementTree
from xml.sax.saxutils import escape

from designer.translations.texts import Text, all_texts

FOLDER = Path(__file__).parent


def translations(path: Path) -> dict[Text, str]:
    """(context, English) to translation, of what is finished in a .ts file."""
    found = {}
    for context in ElementTree.parse(path).iter("context"):
        for message in context.iter("message"):
            said = message.find("translation")
            if said is not None and said.text and said.get("type") != "unfinished":
                found[context.findtext("name", ""), message.findtext("source", "")] = said.text
    return found


def written(language: str, texts: list[Text], known: dict[Text, str]) -> str:
    """A .ts file as text."""
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>", f'<TS version="2.1" language="{language}">']
    for context, group in groupby(texts, key=lambda one: one[0]):
        lines += ["<context>", f"    <name>{escape(context)}</name>"]
        for one in group:
            said = known.get(one)
            told = (
                f"<translation>{escape(said)}</translation>"
                if said
                else '<translation type="unfinished"></translation>'
            )
            lines += [
                "    <message>",
                f"        <source>{escape(one[1])}</source>",
                f"        {told}",
                "    </message>",
            ]
        lines.append("</context>")
    return "\n".join([*lines, "</TS>", ""])


def lrelease() -> Path:
    """The tool that makes .qm files, as PySide6 brings it."""
    spec = find_spec("PySide6")
    assert spec is not None
    assert spec.origin is not None
    return Path(spec.origin).parent / ("lrelease.exe" if sys.platform == "win32" else "lrelease")


def main() -> None:
    """Every .ts file beside this one, and its .qm."""
    texts = all_texts()
    for path in sorted(FOLDER.glob("*.ts")):
        known = translations(path)
        path.write_text(written(path.stem, texts, known), encoding="utf-8")
        subprocess.run([lrelease(), "-silent", str(path), "-qm", str(path.with_suffix(".qm"))], check=True)
        print(f"{path.name}: {sum(one in known for one in texts)} of {len(texts)} texts")


if __name__ == "__main__":
    main()
