"""The one error of the recipe: a sentence for the maker that names the place."""

from __future__ import annotations

from designer.language import headed


class RecipeError(ValueError):
    """What is wrong and where. `where` is e.g. 'stage 4, “cook”' ("" for the file); `str()` is one sentence."""

    def __init__(self, sentence: str, where: str = "") -> None:
        self.sentence = sentence if sentence.endswith((".", "!", "?")) else sentence + "."
        self.where = where
        super().__init__(headed(where, self.sentence) if where else self.sentence)
