"""Runs a program on a terminal of its own and does to that terminal what it is told.

Reads one JSON object a line: {"send": text}, {"stall": true or false} (stops taking output),
{"size": [columns, rows]}, {"hangup": true}, {"signal": "TERM"}. Writes one a line: {"pid": n},
{"out": base64}, {"exit": status, "signal": number or 0}.
"""

import base64
import fcntl
import json
import os
import select
import signal
import struct
import sys
import termios


def say(**what):
    sys.stdout.write(json.dumps(what) + "\n")
    sys.stdout.flush()


def resize(terminal, columns, rows):
    fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))


def start(call):
    ours, theirs = os.openpty()
    resize(ours, *call["size"])
    pid = os.fork()
    if pid == 0:
        os.setsid()
        fcntl.ioctl(theirs, termios.TIOCSCTTY, 0)
        for descriptor in (0, 1, 2):
            os.dup2(theirs, descriptor)
        os.closerange(3, 256)
        os.execvpe(call["argv"][0], call["argv"], {**os.environ, **call["env"]})
    os.close(theirs)
    return pid, ours


def main():
    pid, terminal = start(json.loads(sys.argv[1]))
    say(pid=pid)
    stalled, rest = False, b""
    while True:
        done, status = os.waitpid(pid, os.WNOHANG)
        if done:
            how = os.WEXITSTATUS(status) if os.WIFEXITED(status) else -1
            say(exit=how, signal=os.WTERMSIG(status) if os.WIFSIGNALED(status) else 0)
            return
        watched = [0] if stalled or terminal is None else [0, terminal]
        ready, _, _ = select.select(watched, [], [], 0.02)
        if terminal in ready and terminal is not None:
            try:
                data = os.read(terminal, 65536)
            except OSError:
                data = b""
            if data:
                say(out=base64.b64encode(data).decode())
            else:
                stalled = True
        if 0 not in ready:
            continue
        more = os.read(0, 65536)
        if not more:
            os.kill(pid, signal.SIGKILL)
            return
        *lines, rest = (rest + more).split(b"\n")
        for line in lines:
            todo = json.loads(line)
            if "send" in todo and terminal is not None:
                os.write(terminal, todo["send"].encode())
            if "stall" in todo:
                stalled = todo["stall"]
            if "size" in todo and terminal is not None:
                resize(terminal, *todo["size"])
            if "hangup" in todo and terminal is not None:
                os.close(terminal)
                terminal = None
            if "signal" in todo:
                os.kill(pid, getattr(signal, "SIG" + todo["signal"]))


main()
