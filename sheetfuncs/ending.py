"""A command run so that one line is said whatever happens, and nothing is left half done.

Exit codes: 0 done; 1 done, and something must be mended; 2 refused, with one line on stderr;
70 a fault of ours; 130, 141, 143 stopped: by Ctrl+C, by the reader of our output, by the system.
"""

from __future__ import annotations

import os
import signal
import sys
import threading
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from types import FrameType
from typing import Any

from sheetfuncs.files import Refused, one_line

REFUSED, FAULT, OUTPUT_CLOSED = 2, 70, 141
TRACEBACK = "SHEETFUNCS_TRACEBACK"  # set to anything, a fault shows where it came from


def open_streams() -> None:
    """Input, output and errors, open: were one closed by whoever starts us, a new file would take its place."""
    for number in (0, 1, 2):
        try:
            os.fstat(number)
        except OSError:
            os.open(os.devnull, os.O_RDWR)


def ended_well_or_told(work: Callable[[], int]) -> int:
    """The exit code of a piece of work: its own, or that of what ended it, which is said in one line on stderr."""
    for stream in (sys.stdout, sys.stderr):
        with suppress(AttributeError, ValueError):  # another terminal's letters, a name that is no text
            stream.reconfigure(errors="backslashreplace")  # type: ignore[union-attr]
    stopped: list[int] = []
    try:
        with _stoppable(stopped):
            try:
                code = work()
            except SystemExit as told:  # --help and --version
                code = int(told.code or 0)
            if sys.stdout is not None:
                sys.stdout.flush()
            return code
    except BaseException as error:
        # some library may have turned our signal into an error of its own
        return _say("stopped", 128 + stopped[0]) if stopped else _ended(error)


def _ended(error: BaseException) -> int:
    """What is said of an error that ended a command, and its exit code."""
    if isinstance(error, Refused):
        return _say(f"{error}", REFUSED)
    if isinstance(error, KeyboardInterrupt):
        return _say("stopped", 128 + signal.SIGINT)
    if isinstance(error, ModuleNotFoundError) and (missing := _extra_needed(error)):
        return _say(missing, REFUSED)
    if isinstance(error, MemoryError):
        return _say("not enough memory on this machine; nothing was written", REFUSED)
    if isinstance(error, OSError):
        _drop_output()
        if isinstance(error, BrokenPipeError):
            return OUTPUT_CLOSED
        where = f"{error.filename}: " if error.filename else ""
        return _say(f"{where}could not be read or written ({error.strerror or error})", REFUSED)
    return _say(_fault(error), FAULT)


@contextmanager
def _stoppable(stopped: list[int]) -> Iterator[None]:
    """Signals that ask the program to end do so through its `finally`s; a second one is not needed."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return

    def stop(number: int, frame: FrameType | None) -> None:
        if not stopped:
            stopped.append(number)
            raise KeyboardInterrupt

    def lost(what: Any) -> None:
        """Raised where Python cannot pass it on, as when it throws something away: raised again in a moment."""
        if not isinstance(what.exc_value, KeyboardInterrupt):
            hook(what)
        elif stopped and hasattr(signal, "setitimer"):
            number = stopped.pop()
            signal.signal(signal.SIGALRM, lambda _, frame: stop(number, frame))
            signal.setitimer(signal.ITIMER_REAL, 0.005)

    signals = [getattr(signal, name) for name in ("SIGINT", "SIGTERM", "SIGHUP") if hasattr(signal, name)]
    hook, sys.unraisablehook = sys.unraisablehook, lost
    before = {each: signal.signal(each, stop) for each in signals if signal.getsignal(each) != signal.SIG_IGN}
    try:
        yield
    finally:
        if hasattr(signal, "setitimer"):
            signal.setitimer(signal.ITIMER_REAL, 0)
        for each, handler in before.items():
            signal.signal(each, handler)
        sys.unraisablehook = hook


def _say(words: str, code: int) -> int:
    with suppress(OSError, ValueError, AttributeError):  # nobody may be there to read it
        print(f"sheetfuncs: {one_line(words)}", file=sys.stderr, flush=True)
    return code


def _drop_output() -> None:
    """What waits to be printed and cannot be: Python would try again as it ends."""
    with suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _fault(error: BaseException) -> str:
    if os.environ.get(TRACEBACK):
        traceback.print_exception(error)
    steps = traceback.extract_tb(error.__traceback__)
    where = f" in {Path(steps[-1].filename).name}, line {steps[-1].lineno}" if steps else ""
    return (
        f"a fault of ours ({type(error).__name__}{where}: {str(error)[:80]}); your files are as they were. "
        f"Please report it with the command; README, Safety, says how"
    )


def _extra_needed(missing: ModuleNotFoundError) -> str:
    """What to do where only the functions are installed: they need no package, workbooks do."""
    name = (missing.name or "").partition(".")[0]
    if name in ("", "sheetfuncs"):
        return ""
    return f"this command needs {name}, which is not installed here: pip install 'sheetfuncs[workbook]'"
