"""The make curve: the vat drawn through time, with pH, moisture and whey under it on one time axis."""
