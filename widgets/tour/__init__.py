"""Pictures of every place, for the README and for looking at ourselves."""
