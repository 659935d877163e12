"""The first page: what was open lately, a first recipe for a milk in a style, and the examples."""
