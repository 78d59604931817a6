"""Work in a process of its own, with a limit of time and memory: the last net under files from anywhere.

The readers have limits of their own, with better words.  Where a system has no such processes
(Windows), those remain.
"""

from __future__ import annotations

import os
import signal
import sys
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from types import FrameType

SECONDS = 20  # of computing
WAIT = 60  # by the clock: a disk that does not answer
MEGABYTES = 600
SIGNALS = [getattr(signal, name) for name in ("SIGINT", "SIGTERM", "SIGHUP") if hasattr(signal, name)]
REFUSED, FAULT = 2, 70
HELD_BACK = 64_000  # of what the process says before it ends: a line is what it should be


def bounded(work: Callable[[], int], words: str) -> int:
    """What the work returns; it is ended, and a line printed, where it takes too much."""
    if not hasattr(os, "fork"):
        return work()
    inside, outside = os.pipe()  # its errors pass through us, so that it says one thing or we do
    alive, watched = os.pipe()  # closed when we end, however that happens
    if sys.stdout is not None:
        sys.stdout.flush()
    signal.pthread_sigmask(signal.SIG_BLOCK, SIGNALS)
    child = os.fork()
    if not child:
        os.close(inside)
        os.close(watched)
        os.dup2(outside, 2)
        encoding = getattr(sys.stderr, "encoding", "utf-8")
        sys.stderr = open(2, "w", encoding=encoding, errors="backslashreplace", closefd=False)  # noqa: SIM115 (until the end)
        _inside(work, alive)
    os.close(outside)
    os.close(alive)
    return _outside(child, inside, words)


def _inside(work: Callable[[], int], alive: int) -> None:
    """The process that works; it never returns."""
    code = FAULT
    try:
        signal.pthread_sigmask(signal.SIG_UNBLOCK, SIGNALS)
        _limit(alive)
        code = work()
    except KeyboardInterrupt:  # before there was anything to say
        code = 128 + signal.SIGINT
    except BaseException as error:  # the work speaks for itself; this is what it could not catch
        print(f"sheetfuncs: {type(error).__name__}; nothing was written", file=sys.stderr)
    finally:
        sys.stderr.flush()
        os._exit(code)


def _limit(alive: int) -> None:
    """What this process may take, and that it ends with the one that waits for it; as far as the system can."""
    import fcntl

    with suppress(OSError):
        signal.signal(signal.SIGIO, signal.SIG_DFL)  # ends it: what it writes, it writes whole or not at all
        fcntl.fcntl(alive, fcntl.F_SETOWN, os.getpid())
        fcntl.fcntl(alive, fcntl.F_SETFL, fcntl.fcntl(alive, fcntl.F_GETFL) | os.O_ASYNC)
    limit()


def limit() -> None:
    """What this process may take from now on, where the system has such limits."""
    try:
        import resource
    except ImportError:  # Windows
        return
    memory = _held() + (MEGABYTES << 20)
    wanted = {resource.RLIMIT_CPU: SECONDS, resource.RLIMIT_DATA: memory, resource.RLIMIT_CORE: 0}
    for what, most in wanted.items():
        soft, hard = resource.getrlimit(what)
        with suppress(OSError, ValueError):
            resource.setrlimit(what, (most if soft == resource.RLIM_INFINITY else min(most, soft), hard))


def _held() -> int:
    """Bytes that this process holds already, as the copy of one that may be large; 0 where the system does not say."""
    with suppress(OSError, ValueError, IndexError):
        data_pages = Path("/proc/self/statm").read_text(encoding="ascii").split()[5]
        return int(data_pages) * os.sysconf("SC_PAGE_SIZE")
    return 0


def _outside(child: int, errors: int, words: str) -> int:
    """Wait for it, pass on what it is told, and say how it ended where it cannot."""
    late = []

    def forward(number: int, frame: FrameType | None) -> None:
        os.kill(child, number)

    def end(number: int, frame: FrameType | None) -> None:
        late.append(number)
        os.kill(child, signal.SIGKILL)

    before = {number: signal.signal(number, forward) for number in SIGNALS}
    before[signal.SIGALRM] = signal.signal(signal.SIGALRM, end)
    signal.pthread_sigmask(signal.SIG_UNBLOCK, SIGNALS)
    signal.alarm(WAIT)
    said = b""
    while piece := os.read(errors, 1 << 16):
        said = (said + piece)[:HELD_BACK]
    os.close(errors)
    _, status = os.waitpid(child, 0)
    signal.alarm(0)
    for number, handler in before.items():
        signal.signal(number, handler)
    if os.WIFEXITED(status):
        print(said.decode(errors="replace"), end="", file=sys.stderr)
        return os.WEXITSTATUS(status)
    ended = os.WTERMSIG(status)
    if ended in SIGNALS:
        return 128 + ended
    if late or ended == signal.SIGXCPU:
        why = f"takes over {SECONDS} seconds, too much for a season workbook"
    elif b"memory" in said:  # the last words of a library that got no more
        why = f"takes over {MEGABYTES} MB of memory, too much for a season workbook"
    else:
        why = f"a library fell over what it read (signal {ended})"
    print(f"sheetfuncs: {words}: {why}; nothing was written", file=sys.stderr)
    return REFUSED
