# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy has nothing to say about core and app. A file is looked at again only when it, any
project header or the rules have changed."""
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


headers = sorted(f for layer in ("core", "app") for ending in ("h", "def")
                 for f in glob.glob(f"{root}/{layer}/**/*.{ending}", recursive=True))
core_headers = [h for h in headers if h.startswith(os.path.join(root, "core"))]
rules = os.path.join(root, ".clang-tidy")
common = {"core": digest([rules, *core_headers]), "app": digest([rules, *headers])}


def look(path):
    layer = os.path.relpath(path, root).split(os.sep)[0]
    stamp = os.path.join(stamps, hashlib.sha256((common[layer] + digest([path])).encode()).hexdigest())
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
