"""Learns from the answers where the teaching failed."""
