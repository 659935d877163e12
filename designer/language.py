"""The language the program speaks. Whole sentences pass here as literal templates with named values.

The model never depends on it: English is the key, a translation is looked up when a sentence is made, and a number in a
sentence takes the decimal mark of the language. The window puts Qt's translator behind it, the command line the same
file read plainly (`designer/translations`). Chosen once at the start, so that nothing stands in two languages.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from importlib.resources import files
from xml.etree import ElementTree

Look = Callable[[str, str], str]
"""(context, English) to the text in the language; English where it has none."""

CONTEXT = "designer"


def _english(context: str, text: str) -> str:
    return text


@dataclass(frozen=True, slots=True)
class Language:
    """A language: its key, how a text is looked up, its decimal mark, and up to which number it says "one"."""

    key: str = "en"
    look: Look = _english
    comma: bool = False
    one_below: float = 0.0
    """Numbers under it take the singular; 1 always does."""


class LanguageError(ValueError):
    """A language there is not; `str()` is a sentence."""


ENGLISH = Language()
_spoken = ENGLISH


def speak(language: Language) -> Language:
    """Speak this language from now on; the one spoken before."""
    global _spoken
    before, _spoken = _spoken, language
    return before


def spoken() -> Language:
    """The language spoken now."""
    return _spoken


class _Comma(float):
    """A number that is written with a decimal comma."""

    def __format__(self, spec: str) -> str:
        return float.__format__(self, spec).replace(".", ",")


def say(text: str, /, **values: object) -> str:
    """A sentence in the language spoken, its named fields filled in. `text` stands there as a literal."""
    found = _spoken.look(CONTEXT, text)
    return _filled(found, values) if values else found


def word(text: str, context: str = CONTEXT) -> str:
    """A text that was marked elsewhere (a label, a row of a table), in the language spoken."""
    return _spoken.look(context, text) if text else ""


def fill(text: str, /, context: str = CONTEXT, **values: object) -> str:
    """A sentence that was marked elsewhere, its named fields filled in."""
    return _filled(_spoken.look(context, text), values)


def mark(text: str, context: str = CONTEXT) -> str:
    """Marks a literal for translation where it stands; it is looked up by `word` when it is shown."""
    return text


def several(count: float, one: str, many: str, /, **values: object) -> str:
    """One of two sentences, by a count that both may name as {count}."""
    single = count == 1 or count < _spoken.one_below
    return _filled(_spoken.look(CONTEXT, one if single else many), {"count": count} | values)


def points(count: float) -> str:
    """What a difference of shares is told in: "points", or "point" where the language takes small numbers for one."""
    return say("point") if abs(count) < _spoken.one_below else say("points")


def listed(texts: Iterable[str]) -> str:
    """ "milk and cream"."""
    return say(" and ").join(texts)


def joined(texts: Iterable[str]) -> str:
    """ "milk; cream": parts that are themselves of several words."""
    return say("; ").join(texts)


def either(texts: Iterable[str]) -> str:
    """ "milk or cream"."""
    return say(" or ").join(texts)


def headed(head: str, text: str) -> str:
    """ "cook: temperature"."""
    return say("{head}: {text}", head=head, text=text)


def number(value: float, spec: str = "g") -> str:
    """A number in a format of Python's, with the decimal mark of the language."""
    text = format(value, spec)
    return text.replace(".", ",") if _spoken.comma else text


def _filled(text: str, values: dict[str, object]) -> str:
    if _spoken.comma:
        values = {name: _Comma(one) if isinstance(one, float) else one for name, one in values.items()}
    return text.format(**values)


def known() -> tuple[str, ...]:
    """Keys of the languages there are, English first."""
    shipped = files("designer").joinpath("translations").iterdir()
    return ("en", *sorted(one.name.removesuffix(".ts") for one in shipped if one.name.endswith(".ts")))


def read(key: str) -> Language:
    """A language from its file, without Qt. LanguageError for one there is not."""
    if key == "en":
        return ENGLISH
    if key not in known():
        raise LanguageError(say("There is no language “{key}”; there are {known}.", key=key, known=", ".join(known())))
    root = ElementTree.fromstring(files("designer").joinpath("translations", f"{key}.ts").read_text("utf-8"))
    texts = {
        (context.findtext("name", ""), message.findtext("source", "")): message.findtext("translation", "")
        for context in root.iter("context")
        for message in context.iter("message")
    }
    return of(key, lambda context, text: texts.get((context, text)) or text)


def of(key: str, look: Look) -> Language:
    """The language of a key with its own habits, looking texts up in its own way."""
    return Language(key, look, comma=key == "fr", one_below=2.0 if key == "fr" else 0.0)
