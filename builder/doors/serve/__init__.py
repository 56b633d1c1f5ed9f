"""The door to the web: serves to this machine alone, or to a hall on one named address."""

from builder.doors.serve.answer import Answer, Asked, elsewhere
from builder.doors.serve.listener import Listener
from builder.doors.serve.live import Served, Server
from builder.doors.serve.manners import Manners
from builder.doors.serve.sockets import LOOPBACK, reserve

__all__ = ["LOOPBACK", "Answer", "Asked", "Listener", "Manners", "Served", "Server", "elsewhere", "reserve"]
