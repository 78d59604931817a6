"""A user's files to read, new files written whole or not at all, and the one kind of error that a user is shown.

Nothing here or elsewhere writes to a file that the user gave to read.  A new file is made in memory,
then written under no name at all where the system can do that, and only then takes its name: whatever
stops the program, no part of a file is left anywhere.
"""

from __future__ import annotations

import os
import stat
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from io import BytesIO
from pathlib import Path
from typing import BinaryIO, NamedTuple

UNNAMED = getattr(os, "O_TMPFILE", 0)  # Linux: a file without a name, gone with the program
OWN_HANDLES = "/proc/self/fd"


class Refused(Exception):
    """Something the user can mend: the message is one line that says where, what and what to do."""


class New(NamedTuple):
    """A file to write; `replace` writes over a plain file of its name, which `keep` names anew beside it."""

    path: Path
    content: bytes
    replace: bool = False
    keep: Path | None = None


@contextmanager
def to_read(path: Path, most: int, what: str, hint: str = "") -> Iterator[BinaryIO]:
    """A user's file of at most so many bytes, opened; refused in one line where it is not that, "a workbook"."""
    more = f"; {hint}" if hint else ""
    try:
        state = path.stat()
    except FileNotFoundError:
        raise Refused(f"{path}: there is no such file; give {what}{more}") from None
    except (OSError, ValueError) as error:  # a name with a zero byte in it is a ValueError
        raise Refused(f"{path}: cannot be read ({getattr(error, 'strerror', None) or error})") from error
    if not stat.S_ISREG(state.st_mode):
        raise Refused(f"{path}: this is a folder, a device or a pipe; give {what}{more}")
    if state.st_size > most:
        raise Refused(f"{path}: over {most // 1_000_000} MB, too large for {what}{more}")
    try:
        with path.open("rb") as stream:
            yield stream
    except OSError as error:
        raise Refused(f"{path}: cannot be read ({error.strerror or error})") from error


def ends(path: Path, what: str, *endings: str) -> Path:
    """The path, if it ends as a file of its kind does; so that no page is written over a workbook."""
    if path.suffix.lower() not in endings:
        raise Refused(f"{path}: {what} is an {endings[0]} file; end the name with {endings[0]}")
    return path


@contextmanager
def new_file(path: Path, replace: bool = False, keep: Path | None = None) -> Iterator[BytesIO]:
    """Something to write to; it becomes the file only when all went well."""
    writable(path, replace)
    content = BytesIO()
    yield content
    write_all([New(path, content.getvalue(), replace, keep)])


def write_all(files: Sequence[New]) -> None:
    """All of the files, or none: what there was stays where one of them cannot be written."""
    parts: list[tuple[New, _Part]] = []
    done: list[Path] = []
    path = files[0].path
    try:
        for new in files:
            path = new.path
            parts.append((new, _Part(writable(path, new.replace), new.content)))
        for new, part in parts:
            path = new.path
            if new.keep:
                _second_name(part.target, new.keep)
                done.append(new.keep)
            part.take_name(new.replace)
            done += [] if new.replace else [part.target]
        done.clear()
    except FileExistsError as error:
        raise Refused(f"{path}: a file of this name has come meanwhile; nothing was changed, try again") from error
    except OSError as error:
        why = error.strerror or type(error).__name__
        raise Refused(f"{path}: could not be written ({why}); nothing was changed") from error
    finally:
        for _, part in parts:
            part.close()
        for made in done:
            made.unlink(missing_ok=True)


def writable(path: Path, replace: bool) -> Path:
    """Where the file goes: the path, or what it links to; refused where nothing can or may be written."""
    try:
        there = _state(path)
        if there and not replace:
            raise Refused(f"{path}: this file exists already; choose another name, or add --replace to write over it")
        target = Path(os.path.realpath(path)) if there and stat.S_ISLNK(there.st_mode) else path
        old = _state(target)
        if old and not stat.S_ISREG(old.st_mode):
            raise Refused(f"{path}: this is not a plain file, and is not written over; choose another name")
        if old and not os.access(target, os.W_OK):
            raise Refused(f"{path}: this file is protected against writing; choose another name, or unprotect it")
        if not target.parent.is_dir():
            raise Refused(f"{path}: there is no folder {target.parent}; make it first, or choose another place")
        if not os.access(target.parent, os.W_OK | os.X_OK):
            raise Refused(f"{path}: cannot write in this folder (no permission); choose another place")
    except (OSError, ValueError) as error:  # a name too long, a folder that may not be entered, a zero in the name
        why = getattr(error, "strerror", None) or error
        raise Refused(f"{path}: cannot be written ({why}); choose another name or place") from error
    return target


def _state(path: Path) -> os.stat_result | None:
    with suppress(FileNotFoundError, NotADirectoryError):
        return path.lstat()
    return None


def _second_name(path: Path, name: Path) -> None:
    """The file under one more name; where there can be no such thing, a copy."""
    try:
        os.link(path, name)
    except FileExistsError:
        raise
    except OSError:
        with name.open("xb") as copy:
            copy.write(path.read_bytes())


class _Part:
    """A file that has all its content and not its name yet."""

    def __init__(self, target: Path, content: bytes) -> None:
        self.target, self.name, self.handle = target, "", -1
        if UNNAMED and Path(OWN_HANDLES).is_dir():
            with suppress(OSError):  # not every file system has it
                self.handle = os.open(target.parent, UNNAMED | os.O_RDWR, 0o666)
        try:
            if self.handle < 0:
                self.handle, self.name = tempfile.mkstemp(prefix=".", suffix=target.suffix, dir=target.parent)
            with open(self.handle, "wb", closefd=False) as stream:
                stream.write(content)
            os.fsync(self.handle)
            if self.name:  # the mode that any new file gets; and Windows renames no open file
                os.chmod(self.name, 0o666 & ~_umask())  # noqa: PTH101
                os.close(self.handle)
                self.handle = -1
        except BaseException:
            self.close()
            raise

    def take_name(self, replace: bool) -> None:
        """The name at last.  Without `replace`, a file that has come to it meanwhile is left alone."""
        if replace and (old := _state(self.target)):
            name = self._named()
            with suppress(OSError, AttributeError):  # not ours to give, or Windows
                os.chown(name, old.st_uid, old.st_gid)
            os.chmod(name, stat.S_IMODE(old.st_mode))  # noqa: PTH101
            os.replace(name, self.target)  # noqa: PTH105
            return
        try:
            self._link(str(self.target))
        except FileExistsError:
            raise
        except OSError:  # a file system without links: the name is taken first, empty
            os.close(os.open(self.target, os.O_CREAT | os.O_EXCL | os.O_WRONLY))
            try:
                os.replace(self._named(), self.target)  # noqa: PTH105
            except BaseException:
                self.target.unlink()
                raise

    def _link(self, name: str) -> None:
        if self.handle < 0:
            os.link(self.name, name)
        else:  # with a folder's handle given, Python asks the system to follow the link that stands for ours
            os.link(f"{OWN_HANDLES}/{self.handle}", name, src_dir_fd=self.handle)

    def _named(self) -> str:
        """A name for a moment, since only a file with a name takes the place of another."""
        if not self.name:
            self.name = str(self.target.parent / f".{os.urandom(8).hex()}{self.target.suffix}")
            self._link(self.name)
        return self.name

    def close(self) -> None:
        if self.handle >= 0:
            os.close(self.handle)
            self.handle = -1
        if self.name:
            Path(self.name).unlink(missing_ok=True)


@contextmanager
def for_reading(content: bytes, suffix: str) -> Iterator[Path]:
    """A path where a library that reads files finds the content; on Linux it is in memory and has no name."""
    in_memory = hasattr(os, "memfd_create") and Path(OWN_HANDLES).is_dir()
    try:
        with _handle_in_memory() if in_memory else tempfile.TemporaryDirectory() as folder:
            path = Path(folder) if in_memory else Path(folder) / f"content{suffix}"
            path.write_bytes(content)
            yield path
    except OSError as error:
        where = "memory" if in_memory else tempfile.gettempdir()
        raise Refused(f"{where}: no temporary file can be written ({error.strerror or error})") from error


@contextmanager
def _handle_in_memory() -> Iterator[str]:
    handle = os.memfd_create("sheetfuncs")
    try:
        yield f"{OWN_HANDLES}/{handle}"
    finally:
        os.close(handle)


def one_line(text: str) -> str:
    """Text from outside as one line: what is no printed character is written as Python writes it."""
    return "".join(each if each.isprintable() else repr(each)[1:-1] for each in text)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
