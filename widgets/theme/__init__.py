"""The look of the program: palettes, type scale and icons, all drawn for it."""
