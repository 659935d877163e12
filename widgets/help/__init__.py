"""Help in the window: words and sources looked up, every action found, keys listed, and a look around."""
