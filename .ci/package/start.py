#!/usr/bin/env python3
"""Measures how long a program takes from its start to the first line of a check, and to its end.

Usage: start.py PROGRAM [TIMES]. Prints medians, and the least of each: on a busy machine the least says more.
"""
import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time

program, times = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 11


def once(home):
    environment = {"PATH": "/usr/bin:/bin", "HOME": home, "LANG": "C.UTF-8"}
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    begun = time.perf_counter()
    with subprocess.Popen([program, "check", "examples/photos.json"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, env=environment) as run:
        line = run.stdout.readline()
        first = time.perf_counter() - begun
        run.stdout.read()
    if not line or run.returncode not in (0, 1):
        sys.exit(f"{program} ended with {run.returncode}")
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return first, time.perf_counter() - begun, after.ru_utime + after.ru_stime - used.ru_utime - used.ru_stime


with tempfile.TemporaryDirectory() as home:
    cold = once(home)
    runs = [once(home) for _ in range(times)]
for name, values in zip(("first line", "end", "processor"), zip(*runs)):
    print(f"{name}: median {statistics.median(values) * 1000:.0f} ms, least {min(values) * 1000:.0f} ms")
print(f"the very first start: {cold[0] * 1000:.0f} ms; load {os.getloadavg()[0]:.0f}, {os.cpu_count()} cores")
