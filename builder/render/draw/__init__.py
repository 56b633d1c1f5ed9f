"""Figures drawn from the data as accessible SVG."""
