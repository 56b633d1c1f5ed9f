"""The verbs joined, in order: each flow can be read aloud."""
