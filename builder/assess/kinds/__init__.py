"""One kind of question a file; each says which questions of its kind a visit yields."""
