"""Teaching: guess first, vats side by side, three depths, sheets for learners, and a view for the projector."""
