"""Forms generated from what the recipe document knows of its own fields; nothing here is written per field."""
