"""What reading finds: each kind of fault in a file, or between files, with its reason and two examples."""

from __future__ import annotations

from builder.model.kind import Kind
from builder.read.kinds.attendance import OF_ATTENDANCE
from builder.read.kinds.captions import OF_CAPTIONS
from builder.read.kinds.classes import OF_CLASSES
from builder.read.kinds.conditions import OF_CONDITIONS
from builder.read.kinds.folders import OF_FOLDERS
from builder.read.kinds.marking import OF_MARKING
from builder.read.kinds.names import OF_NAMES
from builder.read.kinds.syntax import OF_SYNTAX
from builder.read.kinds.tables import OF_TABLES
from builder.read.kinds.values import OF_VALUES
from builder.read.kinds.words import OF_WORDS

READ_KINDS: tuple[Kind, ...] = (
    *OF_SYNTAX,
    *OF_VALUES,
    *OF_NAMES,
    *OF_CONDITIONS,
    *OF_FOLDERS,
    *OF_CLASSES,
    *OF_TABLES,
    *OF_ATTENDANCE,
    *OF_CAPTIONS,
    *OF_MARKING,
    *OF_WORDS,
)
