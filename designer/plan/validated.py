"""Published figures beside ours on a terminal, 80 columns wide or more: each source once, its figures under it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from rich.console import Console
from rich.markup import escape
from rich.table import Table
from rich.text import Text

from designer.language import number, say, word
from designer.quantities import QUANTITIES
from designer.validate.effects import Effect
from designer.validate.published import Compared, Published
from designer.validate.report import AIMS, UNITS, Coverage, Mean, Row


def print_laws(compared: Sequence[Compared]) -> None:
    """Every figure of a law beside ours, then how many hold."""
    console = Console(highlight=False)
    for (title, source), group in groupby(compared, key=lambda one: (_title(one.published), one.published.source)):
        _head(console, title, source)
        table = _table("", say("class"), say("published"), say("ours"), say("error"), say("allowed"), "")
        for one in group:
            row = one.published
            table.add_row(
                escape(row.label or row.quantity),
                row.kind,
                number(row.value),
                number(one.ours, ".4g"),
                number(one.error, "+.2g"),
                number(row.tolerance),
                say("holds") if one.within else say("MISSES"),
            )
        console.print(table)
    held = sum(one.within for one in compared)
    console.print(say("[bold]{held} of {compared} published figures hold.[/bold]", held=held, compared=len(compared)))


def _title(row: Published) -> str:
    """What the figures of one table share; the unit where they have one."""
    return f"{row.title} [{row.unit}]" if row.unit else row.title


def print_makes(rows: Sequence[Row]) -> None:
    """Every figure of every make beside the forecast."""
    console = Console(highlight=False)
    for (make, source), group in groupby(rows, key=_make_and_source):
        _head(console, make, source)
        table = _table("", "", say("class"), say("published"), say("forecast"), say("error"), say("out of the fit"))
        for row in group:
            out = row.error_out
            away = "" if out is None else number(out, "+.2f") if row.fitted else say("never fitted")
            table.add_row(
                _named(row.figure.quantity),
                escape(row.figure.place),
                row.figure.kind,
                row.figure.printed,
                number(row.forecast, ".4g"),
                number(row.error, "+.2f"),
                away,
            )
        console.print(table)


def _named(key: str) -> str:
    """Our word for a quantity of a make; pH and what else is read along the way has its own."""
    return word(QUANTITIES[key].label) if key in QUANTITIES else key.replace("_", " ").replace("ph", "pH")


def _make_and_source(row: Row) -> tuple[str, str]:
    return row.figure.make, f"{row.figure.source} ({row.figure.have})"


def print_summary(means: Sequence[Mean], covered: Sequence[Coverage], effects: Sequence[Effect]) -> None:
    """Mean errors by quantity and class, how far the bands reach, and the effects of one change."""
    console = Console(highlight=False)
    console.print("\n" + say("[bold]Mean absolute error; out of the fit with its 80 % interval[/bold]"))
    table = _table(
        "", say("figures"), say("families"), say("as fitted"), say("out of the fit"), say("interval"), say("aim")
    )
    table.columns[0].no_wrap = True
    for group, lines in groupby(means, key=lambda mean: mean.group):
        table.add_row(
            Text(group, style="bold"), "", "", Text(UNITS[group], style="dim"), Text(UNITS[group], style="dim")
        )
        for mean in lines:
            aim = number(AIMS[group]) if mean.kind == "all" and group in AIMS else ""
            spread = f"{number(mean.low, '.2g')}-{number(mean.high, '.2g')}"
            counts = (str(mean.n), str(mean.families))
            table.add_row("  " + mean.kind, *counts, number(mean.fitted, ".2g"), number(mean.out, ".2g"), spread, aim)
    console.print(table)
    if covered:
        console.print("\n" + say("[bold]Figures that the 80 % bands reach, out of the fit[/bold]"))
        for one in covered:
            spread = f"{one.low_pct:.0f}-{one.high_pct:.0f} %"
            console.print(
                say("{group}: {inside} of {n} (80 % interval {spread})", group=one.group, inside=one.inside, n=one.n,
                    spread=spread)
            )  # fmt: skip
    console.print("\n" + say("[bold]Effects of one change[/bold]"))
    for effect in effects:
        figure = effect.figure
        console.print(
            escape(
                say("{effect}: {quantity} {ours}, published {printed} ({source}; {have})", effect=effect.id,
                    quantity=figure.quantity, ours=number(effect.value(), "+.2f"), printed=figure.printed,
                    source=figure.source, have=figure.have)
            )
        )  # fmt: skip


def _head(console: Console, what: str, source: str) -> None:
    console.print()
    console.print(Text(what, style="bold"))
    console.print(Text(source, style="dim"))


def _table(*columns: str) -> Table:
    table = Table(*columns, box=None, padding=(0, 1, 0, 0))
    for column in table.columns:
        column.no_wrap = column is not table.columns[0]
    return table
