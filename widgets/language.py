"""The language of the window: Qt's translators, and the model through them. Set once, before a window is made."""

from __future__ import annotations

from dataclasses import replace
from importlib.resources import files

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from designer import language

_installed: list[QTranslator] = []
"""those of the language spoken; asking the application for them would load every class of Qt's styles"""


def asked(choice: str) -> str:
    """The key of a language for a choice: "system" takes the system's, if we speak it, else English."""
    if choice != "system":
        return choice
    wanted = (name[:2] for name in QLocale.system().uiLanguages())
    return next((key for key in wanted if key in language.known()), "en")


def install(app: QCoreApplication, key: str, mark: str = "language") -> None:
    """Speak a language from now on; `mark` is its decimal mark: "comma", "point", or as the language has it."""
    while _installed:
        old = _installed.pop()
        app.removeTranslator(old)
        old.setParent(None)
    if key != "en":
        qt = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
        ours = str(files("designer").joinpath("translations"))
        for folder, name in ((qt, f"qtbase_{key}"), (ours, key)):
            translator = QTranslator(app)
            if translator.load(name, folder):
                app.installTranslator(translator)
                _installed.append(translator)
    QLocale.setDefault(QLocale(key))
    spoken = language.ENGLISH if key == "en" else language.of(key, _look)
    language.speak(spoken if mark == "language" else replace(spoken, comma=mark == "comma"))


def _look(context: str, text: str) -> str:
    return QCoreApplication.translate(context, text)
