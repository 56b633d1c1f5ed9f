"""Runs the command line inside the test, as a terminal would see it."""

from click.testing import CliRunner, Result

from builder.cli import group


def run(*arguments: object) -> Result:
    """The result of one command line; its exit status is the command's own answer."""
    return CliRunner().invoke(group, [str(one) for one in arguments], standalone_mode=False)


def status(result: Result) -> int:
    """What the command answered; a fault it raised is raised again."""
    if result.exception is not None:
        raise result.exception
    return int(result.return_value or 0)
