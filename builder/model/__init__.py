"""The nouns: frozen, typed, without disk or clock."""
