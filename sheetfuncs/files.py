"""New files, written whole or not at all, and the one kind of error that a user is shown.

Nothing here or elsewhere writes to a file that the user gave to read.
"""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


class Refused(Exception):
    """Something the user can mend: the message is one line that says where, what and what to do."""


@contextmanager
def new_file(path: Path, replace: bool = False) -> Iterator[Path]:
    """A path to write to, beside the wanted one; it takes the wanted name only when all went well."""
    if path.exists() and not replace:
        raise Refused(f"{path}: this file exists already; choose another name, or add --replace to write over it")
    if not path.parent.is_dir():
        raise Refused(f"{path}: there is no folder {path.parent}; make it first, or choose another place")
    try:
        handle, beside = tempfile.mkstemp(prefix=".", suffix=path.suffix, dir=path.parent)
        os.close(handle)
    except OSError as error:
        raise Refused(f"{path}: cannot write in this folder ({error.strerror}); choose another place") from error
    part = Path(beside)
    try:
        yield part
        part.chmod(0o666 & ~_umask())
        part.replace(path)
    except OSError as error:
        raise Refused(f"{path}: could not be written ({error.strerror}); nothing was changed") from error
    finally:
        part.unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
