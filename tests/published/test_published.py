"""Every outside figure in designer/validate/data against the law of ours that must reproduce it, source beside it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from designer.validate.published import Published, compare, published, reads

ROWS = published()


@pytest.mark.parametrize("row", ROWS, ids=[row.case for row in ROWS])
def test_published_figure(row: Published) -> None:
    compared = compare(row)
    assert compared.within, (
        f"{row.case}: ours {compared.ours:.5g} {row.unit}, published {row.value:g} ± {row.tolerance:g} "
        f"({row.source}; {row.have})"
    )


def test_there_are_enough_figures_printed_outside() -> None:
    outside = [row for row in ROWS if row.kind in ("printed", "measured")]
    assert len(outside) >= 100
    assert len({row.source for row in outside}) >= 15


def test_every_row_names_its_source_and_how_we_have_it() -> None:
    for row in ROWS:
        assert len(row.source) > 10
        assert row.have.startswith(("published, read", "from memory (", "derived", "common practice"))


def test_a_wrong_law_would_be_found() -> None:
    """The table discriminates: Van Slyke's yields do not come out with another fat recovery."""
    table = [row for row in ROWS if row.case.startswith("Cheddar at 37 % water")]
    assert len(table) == 9
    changed = [replace(row, given={**row.given, "fat_kept": 0.90}) for row in table]
    assert not any(compare(row).within for row in changed)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("law = ", "lwa = "),
        ('class = "printed"', 'class = "guessed"'),
        ("[1.0, 2.0]", "[1.0]"),
        ("source = ", "origin = "),
    ],
)
def test_a_row_that_is_not_complete_is_refused(old: str, new: str) -> None:
    text = """
[[group]]
case = "c"
law = "fdm_pct"
quantity = "q"
class = "printed"
tolerance = 1
columns = ["fat_pct", "published"]
rows = [[1.0, 2.0]]
source = "somebody"
have = "published, read"
"""
    assert old in text
    with pytest.raises(ValueError, match=r"data\.toml, “c”"):
        list(reads(text.replace(old, new), "data.toml"))
