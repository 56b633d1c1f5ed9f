"""Assessing: questions that visits yield, practice with reasons, papers without keys, keys beside them."""
