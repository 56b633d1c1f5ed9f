"""How every test runs: properties without a deadline, since machines are shared, on the same draws."""

from hypothesis import settings

settings.register_profile("house", deadline=None, derandomize=True, database=None)
settings.load_profile("house")
