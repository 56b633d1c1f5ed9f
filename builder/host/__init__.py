"""The host in the hall: serves the built student site on one named address, and takes answer sheets."""
