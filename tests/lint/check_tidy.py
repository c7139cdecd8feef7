# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy has nothing to say about core and app. A file is looked at again only when it, a
project header it was built with or the rules have changed. A file that was not built yet counts
every project header of its layer."""
import concurrent.futures
import glob
import hashlib
import os
import subprocess
import sys

root, build = sys.argv[1:3]
stamps = os.path.join(build, "tidy-stamps")
os.makedirs(stamps, exist_ok=True)


def digest(paths):
    total = hashlib.sha256()
    for path in paths:
        with open(path, "rb") as file:
            total.update(file.read())
    return total.hexdigest()


def ours(path):
    return path.startswith((os.path.join(root, "core", ""), os.path.join(root, "app", "")))


def built_with():
    """What each of our files was built with, as ninja keeps it; nothing with another generator."""
    run = subprocess.run(["ninja", "-C", build, "-t", "deps"], capture_output=True, text=True,
                         check=False)
    found = {}
    for block in run.stdout.split("\n\n") if run.returncode == 0 else []:
        paths = [os.path.normpath(os.path.join(build, line.strip()))
                 for line in block.splitlines()[1:]]
        sources = [p for p in paths if ours(p) and p.endswith(".cpp")]
        if len(sources) == 1:
            found.setdefault(sources[0], set()).update(p for p in paths if ours(p))
    return found


headers = sorted(f for layer in ("core", "app") for ending in ("h", "def")
                 for f in glob.glob(f"{root}/{layer}/**/*.{ending}", recursive=True))
core_headers = [h for h in headers if h.startswith(os.path.join(root, "core"))]
rules = os.path.join(root, ".clang-tidy")
known = built_with()


def seen_by(path):
    if path in known:
        return sorted(p for p in known[path] if os.path.exists(p))
    layer = os.path.relpath(path, root).split(os.sep)[0]
    return [path, *(core_headers if layer == "core" else headers)]


def look(path):
    stamp = os.path.join(stamps, digest([rules, path, *seen_by(path)]))
    if os.path.exists(stamp):
        return True
    run = subprocess.run(["clang-tidy", "-p", build, "--quiet", path], capture_output=True,
                         text=True, check=False)
    if run.returncode != 0:
        print(run.stdout)
        if "error:" not in run.stdout:
            print(run.stderr)
        return False
    with open(stamp, "w", encoding="utf-8"):
        return True


files = sorted(f for layer in ("core", "app")
               for f in glob.glob(f"{root}/{layer}/**/*.cpp", recursive=True))
with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
    clean = list(pool.map(look, files))
print(f"{sum(clean)} of {len(files)} files clean")
sys.exit(0 if all(clean) else 1)
