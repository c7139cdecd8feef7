# SPDX-License-Identifier: GPL-3.0-or-later
"""Rules of the source that a pattern can check. Prints each breach and exits 1 if there is one."""
import os
import re
import sys

root = sys.argv[1]
visible = {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "app",
           "core", "resources", "tests", "translations", "sample-machines"}
hidden = {".ci", ".clang-format", ".clang-tidy", ".editorconfig", ".gitignore"}
passing = {".git", ".build"}
breaches = []


def breach(path, line, text):
    breaches.append(f"{path}:{line}: {text}")


def check_catalogues():
    """Sentences filed under std are asked for under another name and never found."""
    folder = os.path.join(root, "translations")
    for name in sorted(os.listdir(folder)):
        path = os.path.join(folder, name)
        if name.endswith(".ts") and "<name>std</name>" in open(path, encoding="utf-8").read():
            breach(os.path.join("translations", name), 1, "sentences filed under std: write their function otherwise")


def check_top_level():
    found = set(os.listdir(root))
    for name in sorted(found - visible - hidden - passing):
        breach(name, 0, "does not belong at the top level")
    for name in sorted((visible | hidden) - found):
        breach(name, 0, "is missing at the top level")


def sources():
    for top in ("app", "core", "tests"):
        for folder, _, names in os.walk(os.path.join(root, top)):
            for name in sorted(names):
                yield os.path.relpath(os.path.join(folder, name), root)


qt = re.compile(r"#include\s*<Q|\bQString\b|\bQObject\b")
units = re.compile(r"#include\s*<boost/units")
locale = re.compile(r"\b(strtod|strtof|atof|stod|stof|setlocale|to_string|sscanf|localeconv)\s*\(")
printf_float = re.compile(r"printf\([^;]*%[-+ #0-9.]*[fgeFGE]")
string_literal = re.compile(r'"(?:[^"\\]|\\.)*"')


def check_line(path, number, line):
    code = string_literal.sub('""', line.split("//")[0])
    layer = path.split(os.sep)[0]
    if line != line.rstrip() or "\t" in line:
        breach(path, number, "tab or trailing blank")
    if layer == "core" and qt.search(code):
        breach(path, number, "Qt in core")
    if units.search(code) and path != "core/units/quantities.h":
        breach(path, number, "Boost.Units outside core/units/quantities.h")
    if layer in ("core", "app") and locale.search(code):
        breach(path, number, "depends on the locale")
    if layer in ("core", "app") and printf_float.search(line):
        breach(path, number, "a printf of a number depends on the locale")


def check_file(path):
    with open(os.path.join(root, path), "rb") as file:
        raw = file.read()
    if b"\r" in raw:
        breach(path, 0, "carriage return")
    lines = raw.decode("utf-8").split("\n")
    if path.endswith((".h", ".cpp")):
        if not lines[0].startswith("// SPDX-License-Identifier: GPL-3.0-or-later"):
            breach(path, 1, "no licence line")
        for number, line in enumerate(lines, 1):
            check_line(path, number, line)


check_top_level()
check_catalogues()
for source in sources():
    if source.endswith((".h", ".cpp", ".sh", ".py", "CMakeLists.txt", ".def", "/run")):
        check_file(source)
for script in ("app/run", "tests/run", ".ci/run"):
    if not os.access(os.path.join(root, script), os.X_OK):
        breach(script, 0, "is not executable")
print("\n".join(breaches) or "nothing to report")
sys.exit(1 if breaches else 0)
