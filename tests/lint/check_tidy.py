# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy has nothing to say about core and app. In app most of its time goes into headers, so
files of one folder are looked at together, joined into one source; those whose names meet are
looked at apart. A join is looked at again only when a file of it, a project header one of them was built
with, the rules or this script have changed. A file that was not built yet counts every project
header of its layer."""
import concurrent.futures
import glob
import hashlib
import json
import os
import re
import shlex
import subprocess
import sys

MOST_JOINED = 12
FEW = 4

root, build = sys.argv[1:3]
work = os.path.join(build, "tidy")
stamps = os.path.join(build, "tidy-stamps")
os.makedirs(work, exist_ok=True)
os.makedirs(stamps, exist_ok=True)


def digest(paths, *texts):
    total = hashlib.sha256("\n".join(texts).encode())
    for path in paths:
        with open(path, "rb") as file:
            total.update(file.read())
    return total.hexdigest()


def ours(path):
    return path.startswith((os.path.join(root, "core", ""), os.path.join(root, "app", "")))


def layer_of(path):
    return os.path.relpath(path, root).split(os.sep)[0]


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


def commands():
    """How each of our files is compiled, without its own name and its object's."""
    with open(os.path.join(build, "compile_commands.json"), encoding="utf-8") as file:
        entries = json.load(file)
    found = {}
    for entry in entries:
        words = shlex.split(entry["command"])
        cut = words.index("-o")
        del words[cut:cut + 2]
        found[entry["file"]] = [w for w in words if w not in ("-c", entry["file"])]
    return found


headers = sorted(f for layer in ("core", "app") for ending in ("h", "def")
                 for f in glob.glob(f"{root}/{layer}/**/*.{ending}", recursive=True))
core_headers = [h for h in headers if layer_of(h) == "core"]
rules = sorted(glob.glob(f"{root}/.clang-tidy") + glob.glob(f"{root}/*/.clang-tidy"))
rules.append(os.path.abspath(__file__))
files = sorted(f for layer in ("core", "app")
               for f in glob.glob(f"{root}/{layer}/**/*.cpp", recursive=True))
known = built_with()
compiled = commands()


def seen_by(path):
    if path in known:
        return {p for p in known[path] if os.path.exists(p)}
    return {path, *(core_headers if layer_of(path) == "core" else headers)}


def own_names(path):
    """What a file defines for itself alone: two files with such a name in common stay apart."""
    with open(path, encoding="utf-8") as file:
        text = file.read()
    found = set(re.findall(r"^using (\w+) =", text, re.M))
    for part in re.findall(r"^namespace \{$(.*?)^\} // namespace$", text, re.M | re.S):
        found |= set(re.findall(r"^(?:struct|class|enum class|enum|union) (\w+)", part, re.M))
        found |= set(re.findall(r"^\w[\w:<>,*& ]*?[\s*&](\w+)(?:\(| = |\[|\{|;)", part, re.M))
    return found


def fits(path, group):
    """The path-sensitive checks, which core has, take what is joined for a header and pass it by."""
    return (layer_of(path) != "core" and group["same"] == compiled.get(path) and len(group["paths"]) < MOST_JOINED
            and not own_names(path) & group["names"])


def joins():
    """The files in groups to be looked at together: of one folder, and what is left over of it with
    what is left over of others of its layer."""
    groups = []
    for folder in sorted({os.path.dirname(path) for path in files}):
        here = []
        for path in files:
            if os.path.dirname(path) != folder:
                continue
            group = next((g for g in here if fits(path, g)), None)
            if group is None:
                group = {"same": compiled.get(path), "paths": [], "names": set()}
                here.append(group)
            group["paths"].append(path)
            group["names"] |= own_names(path)
        # The largest stays by itself, so that a change elsewhere leaves it seen.
        for group in here[1:]:
            for path in group["paths"]:
                other = next((g for g in groups if g["left_over"] and fits(path, g)), None)
                if other is None:
                    other = {"same": group["same"], "paths": [], "names": set(), "left_over": True}
                    groups.append(other)
                other["paths"].append(path)
                other["names"] |= own_names(path)
        groups.append(here[0] | {"left_over": len(here[0]["paths"]) < FEW})
    return [group["paths"] for group in groups]


def rules_for(layer):
    """The rules of a layer in one file: those of a joined file would not be found by its place."""
    path = os.path.join(work, f"{layer}.yaml")
    example = next(f for f in files if layer_of(f) == layer)
    run = subprocess.run(["clang-tidy", "--dump-config", "-p", build, example],
                         capture_output=True, text=True, check=True)
    with open(path, "w", encoding="utf-8") as file:
        file.write(run.stdout)
    return path


layer_rules = {layer: rules_for(layer) for layer in ("core", "app")}


def run_on(paths):
    """What clang-tidy says of these files, and whether they can be joined at all."""
    if len(paths) == 1:
        arguments = ["-p", build, paths[0]]
    else:
        name = os.path.join(work, digest([], *paths)[:16] + ".cpp")
        with open(name, "w", encoding="utf-8") as file:
            file.writelines(f'#include "{p}"\n' for p in paths)
        arguments = [f"--config-file={layer_rules[layer_of(paths[0])]}",
                     "--checks=-bugprone-suspicious-include", r"--header-filter=/(core|app)/.*",
                     # What one file shadows of another it does not shadow by itself; the build warns.
                     name, "--", *compiled[paths[0]][1:], "-Wno-shadow"]
    run = subprocess.run(["clang-tidy", "--quiet", *arguments], capture_output=True, text=True,
                         check=False)
    return run, "clang-diagnostic" not in run.stdout


def apart(paths, said):
    """Those of a join that cannot be in it, and the rest, as the errors tell."""
    wrong = [p for p in paths[1:] if re.search(re.escape(p) + r":\d+:\d+: error:.*clang-diagnostic",
                                               said)]
    right = [p for p in paths if p not in wrong]
    return [right, wrong] if wrong else [[p] for p in paths]


def look(paths):
    """How many of these files are clean."""
    seen = sorted(set().union(*(seen_by(p) for p in paths)))
    stamp = os.path.join(stamps, digest([*rules, *seen], "joined", *paths))
    if os.path.exists(stamp):
        return len(paths)
    run, joined = run_on(paths)
    if run.returncode != 0 and not joined and len(paths) > 1:
        return sum(look(part) for part in apart(paths, run.stdout))
    if run.returncode != 0:
        print(run.stdout)
        if "error:" not in run.stdout:
            print(run.stderr)
        return 0
    with open(stamp, "w", encoding="utf-8"):
        return len(paths)


if __name__ == "__main__":
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        clean = sum(pool.map(look, joins()))
    print(f"{clean} of {len(files)} files clean")
    sys.exit(0 if clean == len(files) else 1)
