# SPDX-License-Identifier: GPL-3.0-or-later
"""Every header of core/mechanics is included by a test that holds it against a publication, in
tests/published, and by one that holds it against itself or a separate computation, in
tests/core/mechanics; or it is listed here with the reason why not. A listed one that need not be
fails too."""
import glob
import os
import re
import sys

root = sys.argv[1] if len(sys.argv) > 1 else os.path.join(os.path.dirname(__file__), "..", "..")
PUBLISHED, OWN = "tests/published", "tests/core/mechanics"

# header: why no publication is held against it
unpublished = {
    "belt_loop.h": "no worked example known; held against the two-pulley formula and drawn loops",
    "belt_take_up.h": "solves the loop's length for a place; nothing to publish",
    "buckling_shape.h": "the shape of the published constants, to draw; held against its equation",
    "stepper_fit.h": "a search over the published pull-out formula",
}
# header: the file of tests/published in which its properties stand
properties_elsewhere = {
    "column_buckling.h": "buckling_test.cpp",
    "monotone_cubic.h": "stepper_torque_test.cpp",
    "stepper_torque.h": "stepper_torque_test.cpp",
}
untagged_test = re.compile(r'^TEST_CASE\(\s*(?:"[^"]*"\s*)+\)', re.M)


def read(path):
    with open(path, encoding="utf-8") as file:
        return file.read()


def includes(folder):
    """For each test of a folder, the mechanics headers it includes itself."""
    return {os.path.basename(path): set(re.findall(r'#include "mechanics/(\w+\.h)"', read(path)))
            for path in sorted(glob.glob(f"{root}/{folder}/*.cpp"))}


headers = sorted(os.path.basename(path) for path in glob.glob(f"{root}/core/mechanics/*.h"))
published = includes(PUBLISHED)
covered = {PUBLISHED: set().union(*published.values()), OWN: set().union(*includes(OWN).values())}
listed = {PUBLISHED: unpublished, OWN: properties_elsewhere}

faults = [] if headers else ["core/mechanics: no headers"]
for place, known in covered.items():
    for header in headers:
        if header not in known and header not in listed[place]:
            faults.append(f"core/mechanics/{header}: no test in {place} includes it")
    for header in sorted(listed[place]):
        if header in known or header not in headers:
            faults.append(f"{header}: need not be listed as without a test in {place}")
for header, file in sorted(properties_elsewhere.items()):
    stands = header in published.get(file, ())
    if not stands or not untagged_test.search(read(f"{root}/{PUBLISHED}/{file}")):
        faults.append(f"{header}: its properties do not stand in {PUBLISHED}/{file}")
print("\n".join([*faults, f"{len(headers)} headers of core/mechanics looked at"]))
sys.exit(1 if faults else 0)
