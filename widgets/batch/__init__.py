"""Made batches: noted down, measured, tasted."""
