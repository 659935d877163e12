"""The command `moves`: what moves an outcome of a make, a step of each setting both ways."""

from __future__ import annotations

from typing import Annotated

import typer

from designer.command import CommandError, Json, Recipe_, Units, read_recipe
from designer.language import say


def moves(
    recipe: Recipe_,
    outcome: Annotated[
        str, typer.Argument(metavar="OUTCOME", help="As “moisture”, “ph_24h” or “finish”.", show_default=False)
    ],
    branch: Annotated[str, typer.Option(metavar="ID", help="The branch whose outcome it is.")] = "",
    most: Annotated[int, typer.Option("--most", min=1, max=500, help="So many settings, the strongest.")] = 12,
    members: Annotated[int, typer.Option(min=0, max=500, help="Draws behind the ranges; 0 leaves them out.")] = 32,
    units: Units = "metric",
    as_json: Json = False,
) -> None:
    """What moves an outcome: each setting, the strongest first, with what a natural step more and less of it does."""
    from designer.judge.aim import AimError
    from designer.judge.levers import levers, spreads
    from designer.make import kernel
    from designer.plan import aimed
    from designer.plan.as_json import dumps
    from designer.plan.moves import moves_json, print_moves

    read = read_recipe(recipe)
    try:
        key, lane = aimed.outcome(outcome), aimed.branch(read, branch)
    except AimError as error:
        raise CommandError(str(error)) from None
    kernel.warm_up()
    every = levers(read, branch=lane)
    if key not in every.keys:
        raise CommandError(say("This make has no {outcome}.", outcome=key))
    ranked = every.ranked(key)[:most]
    spread = spreads(read, key, ranked, branch=lane, members=members) if members and ranked else ()
    bands = {one.setting.path: one for one in spread}
    if as_json:
        print(dumps(moves_json(read, key, ranked, bands)))
    else:
        print_moves(read, key, ranked, bands, units)
