"""Pages that make a variant of the open recipe: house style, way to another style, versions, amount, milk."""
