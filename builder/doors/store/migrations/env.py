"""Runs the steps on the connection that the opener hands over, inside its transaction."""

from alembic import context

context.configure(connection=context.config.attributes["connection"])
context.run_migrations()
