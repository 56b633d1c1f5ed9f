"""The shipped words of questions, read as the tool reads them."""

from builder.disk import shipped
from builder.read.words import read_words

WORDS = read_words(shipped("content")).texts or {}
