"""What may stand beside a make: another recipe, the middle of a style, another lane of the same vat.

Each gives the two recipes that are compared, and puts what is taken across back into the recipe that is open.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from designer.judge.compare import usual_make
from designer.language import say
from designer.recipe.document import Branch, Recipe
from designer.recipe.error import RecipeError
from designer.recipe.per_milk import as_whole, back_into
from styles.reader import Style


def title(beside: Beside, recipe: Recipe) -> str:
    """What a comparison is headed with: whose makes they are, also where they are called by version or lane only."""
    left, right = beside.names(recipe)
    if isinstance(beside, Pair):
        return say("{recipe}: {left} against {right}", recipe=beside.right.name, left=left, right=right)
    if isinstance(beside, Lanes):
        return say("{recipe}: {left} against {right}", recipe=recipe.name, left=left, right=right)
    if isinstance(beside, Another) and beside.called:
        if beside.recipe.name == recipe.name:
            return say("{recipe}: as it is against {right}", recipe=recipe.name, right=right)
        right = say("{name}, {called}", name=beside.recipe.name, called=beside.called)
    return say("{left} against {right}", left=left, right=right)


class Beside(Protocol):
    """A partner of the open make."""

    def sides(self, recipe: Recipe) -> tuple[Recipe, Recipe]:
        """The two recipes to compare; RecipeError where the open one hasn't them any more."""

    def names(self, recipe: Recipe) -> tuple[str, str]:
        """What the two are called."""

    def taken(self, recipe: Recipe, left: Recipe) -> Recipe:
        """The open recipe with its side changed to `left`; RecipeError where it can't be."""


@dataclass(frozen=True, slots=True)
class Another:
    """A recipe from elsewhere: a file, a kept version. `called` says which, where its name doesn't."""

    recipe: Recipe
    called: str = ""

    def sides(self, recipe: Recipe) -> tuple[Recipe, Recipe]:
        """The open one and the other."""
        return recipe, self.recipe

    def names(self, recipe: Recipe) -> tuple[str, str]:
        """Both by name."""
        return recipe.name, self.called or self.recipe.name

    def taken(self, recipe: Recipe, left: Recipe) -> Recipe:
        """The open recipe is the left side itself."""
        return left


@dataclass(frozen=True, slots=True)
class Pair:
    """Two recipes from elsewhere, neither of them the open one: two kept versions with each other."""

    left: Recipe
    right: Recipe
    called: tuple[str, str]

    def sides(self, recipe: Recipe) -> tuple[Recipe, Recipe]:
        """The two, whatever is open."""
        return self.left, self.right

    def names(self, recipe: Recipe) -> tuple[str, str]:
        """Both as they are called."""
        return self.called

    def taken(self, recipe: Recipe, left: Recipe) -> Recipe:
        """Nothing goes across: neither is open."""
        raise RecipeError(say("neither of the two is the open recipe; put one beside it to take a value across"))

    def swapped(self) -> Pair:
        """The same two the other way round."""
        return Pair(self.right, self.left, (self.called[1], self.called[0]))


@dataclass(frozen=True, slots=True)
class Middle:
    """The open recipe with all that a style has a usual range for at the middle of that range."""

    style: Style

    def sides(self, recipe: Recipe) -> tuple[Recipe, Recipe]:
        """The open one and what its figures would be at the middle."""
        return recipe, usual_make(recipe, self.style)

    def names(self, recipe: Recipe) -> tuple[str, str]:
        """The recipe, and the style's middle."""
        return recipe.name, say("the middle of {style}", style=self.style.title)

    def taken(self, recipe: Recipe, left: Recipe) -> Recipe:
        """The open recipe is the left side itself."""
        return left


@dataclass(frozen=True, slots=True)
class Lanes:
    """Two lanes of one vat by the ids of their branches; None is the main make."""

    left: str | None
    right: str | None

    def sides(self, recipe: Recipe) -> tuple[Recipe, Recipe]:
        """Both lanes as makes of their own."""
        return _lane(recipe, self.left), _lane(recipe, self.right)

    def names(self, recipe: Recipe) -> tuple[str, str]:
        """Both lanes as the maker calls them."""
        return lane_name(recipe, self.left), lane_name(recipe, self.right)

    def taken(self, recipe: Recipe, left: Recipe) -> Recipe:
        """The open recipe with this lane changed and the others as they were."""
        return back_into(recipe, self.left, left)

    def swapped(self) -> Lanes:
        """The same two the other way round, so that values go the other way too."""
        return Lanes(self.right, self.left)


def _lane(recipe: Recipe, branch_id: str | None) -> Recipe:
    if branch_id is None:
        return recipe
    try:
        return as_whole(recipe, branch_id)
    except KeyError:
        raise RecipeError(
            say("there is no branch of curd of that name"), say("branch “{name}”", name=branch_id)
        ) from None


def curd_lanes(recipe: Recipe) -> tuple[str | None, ...]:
    """The lanes of a vat that end in a cheese from its curd: the main make (None) and the ids of its branches."""
    return (None, *(branch.id for branch in recipe.branches if branch.of == "curd"))


def lane_name(recipe: Recipe, branch_id: str | None) -> str:
    """What a lane is called."""
    if branch_id is None:
        return say("the main make")
    found: Branch | None = next((one for one in recipe.branches if one.id == branch_id), None)
    return branch_id if found is None else found.name or found.id
