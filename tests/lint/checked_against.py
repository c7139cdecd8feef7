# SPDX-License-Identifier: GPL-3.0-or-later
"""The table "what is checked against what" in DEVELOPERS.md is the one the tests give, and each
published check names its source.

    checked_against.py [ROOT]           exits 1, with what differs, if the guide is out of date
    checked_against.py [ROOT] --write   writes the table between the guide's two marks

A test's source is the comment at the top of its body; failing that, the one right above the test;
failing that, the first in its body that names a source."""
import difflib
import glob
import os
import re
import sys

BEGIN = "<!-- checked-against: begin -->"
END = "<!-- checked-against: end -->"
PLACES = ("tests/published/*.cpp", "tests/app/headless/worked_examples_test.cpp",
          "tests/core/mechanics/*.cpp", "tests/core/sizing/power_balance_test.cpp",
          "tests/core/accuracy/*.cpp")
LONGEST = 120

STRINGS = r'"(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*'
TEST = re.compile(rf'^(?:TEMPLATE_)?TEST_CASE\(\s*({STRINGS})(?:,\s*({STRINGS}))?[^{{]*?\)\s*\{{\n'
                  r'(.*?)^\}', re.S | re.M)
ANY_TEST = re.compile(r"^\w*(?:TEST_CASE|SCENARIO)\w*\s*\(", re.M)

MEMORY = re.compile(r"\bfrom memory\b")
NO_SOURCE = re.compile(r"\bcommon practice, no source\b")
DERIVED = re.compile(r"^derived\b")
POINTS_UP = re.compile(r"^the (?:table|figures|values) above\b")
# An author, a numbered place in a publication, a standard, or a kind of publication.
CITATION = re.compile(
    r"\b[A-Z]\. ?[A-Z]\w|\b(?:Exs?|Fig|Tab|Eq|App|Sec|pp?|ch)\. ?[A-Z\d]|\b(?:ISO|DIN|JIS|IEC|VDI|"
    r"AGMA|ANSI|EN)[ /]|\(\d{4}\)|\b(?:manual|handbook|guide|catalogues?|white paper|"
    r"technical \w*\s?pages|technology pages|(?:design|technical) data|[Cc]alculation methods|"
    r"selection example|edition|[Cc]atalog)\b|^\"[^\"]+\",")
INDEPENDENT = re.compile(
    r"\bindependent computation\b|\bby (?:bisection|trying|rings)\b|\bintegrat(?:ion|ing|ed)\b|"
    r"\bintegral of\b|\bscan(?:s|ned|ning)?\b|\bfinite elements\b|\bpolylines?\b|\bRunge|"
    r"\bsmall steps\b|\bstep by step\b|\bbrute force\b|\bconvex hull\b|\bnumerically\b|"
    r"\bcounted one by one\b|\badding up\b|^virtual work\b|\bseparate calculation\b|"
    r"\breference library\b|\bmultiprecision\b|\bmore digits\b")


def unquoted(literals):
    """Text of adjacent string literals."""
    parts = re.findall(r'"((?:[^"\\]|\\.)*)"', literals or "")
    return re.sub(r"\\(.)", r"\1", "".join(parts))


def comments(lines, mark="///?"):
    """Blocks of consecutive comment lines, each as one string."""
    blocks, block = [], []
    for line in [*lines, ""]:
        found = re.match(rf"\s*{mark} ?(.*)", line)
        if found:
            block.append(found[1].strip())
        elif block:
            blocks.append(" ".join(block))
            block = []
    return blocks


def names_source(text):
    return any(rule.search(text) for rule in (MEMORY, NO_SOURCE, DERIVED, CITATION, INDEPENDENT))


def source_of(body, before):
    """What the test says it is held against; empty if it does not say."""
    lines = body.split("\n")
    above = before.rstrip("\n").split("\n")
    if lines[0].lstrip().startswith("//"):
        source = comments(lines)[0]
    elif above[-1].startswith("//") and not before.endswith("\n\n"):
        source = comments(above)[-1]
    else:
        source = next(filter(names_source, comments(lines)), "")
    if POINTS_UP.search(source):
        documented = [text for text in comments(above, "///") if names_source(text)]
        if documented:
            source = documented[-1].split(": ", 1)[-1]
    return source


def kind_of(claim, source, body, published):
    if published:
        if not any(MEMORY.search(text) for text in [source, *comments(body.split("\n"))]):
            return "published"
        rest = re.split(r"\bfrom memory\b", source)[0]
        return "published, in part from memory" if CITATION.search(rest) else "from memory"
    if DERIVED.search(source) or INDEPENDENT.search(source) or INDEPENDENT.search(claim):
        return "independent computation"
    if source.startswith("Boost.Math"):
        return "independent computation"
    return "from memory" if MEMORY.search(source) else "property"


def shortened(source):
    """The source without what the last column says, cut between words."""
    text = re.sub(r"^(?:from memory|independent computation)[,:;]? *", "", source)
    if len(text) > LONGEST:
        text = text[:LONGEST].rsplit(" ", 1)[0].rstrip(" ,;:(=+−·") + " …"
    return text


def cell(text):
    return re.sub(r"([\\|*<`])", r"\\\1", text) or "—"


def tests_in(root, path, faults):
    """Rows of one file: claim, source, kind."""
    with open(os.path.join(root, path), encoding="utf-8") as file:
        text = file.read()
    found = list(TEST.finditer(text))
    if len(found) != len(ANY_TEST.findall(text)):
        faults.append(f"{path}: {len(ANY_TEST.findall(text))} tests, {len(found)} of them readable")
    rows = []
    for test in found:
        claim = unquoted(test[1])
        published = "[published]" in unquoted(test[2])
        source = source_of(test[3], text[:test.start()])
        if published and not (MEMORY.search(source) or CITATION.search(source)):
            line = text.count("\n", 0, test.start()) + 1
            faults.append(f"{path}:{line}: no source beside published check: {claim}")
        kind = kind_of(claim, source, test[3], published)
        said = names_source(source) or kind == "independent computation"
        rows.append((claim, shortened(source) if said else "", kind))
    return rows


def table(root, faults):
    """Lines of the whole table, topic by topic, and its number of checks."""
    topics = {}
    for place in PLACES:
        for path in sorted(glob.glob(os.path.join(root, place))):
            path = os.path.relpath(path, root).replace(os.sep, "/")
            rows = tests_in(root, path, faults)
            topic = re.sub(r"_test$", "", os.path.basename(path)[:-len(".cpp")]).replace("_", " ")
            if rows:
                files, known = topics.setdefault(topic, ([], []))
                files.append(path)
                known.extend(rows)
    lines = ["| what is checked | against | kind |", "|---|---|---|"]
    for topic, (files, rows) in sorted(topics.items()):
        lines.append(f"| **{topic}** — {', '.join(f'`{path}`' for path in files)} | | |")
        lines.extend(f"| {cell(claim)} | {cell(source)} | {kind} |" for claim, source, kind in rows)
    return lines, sum(len(rows) for _, rows in topics.values())


def main():
    arguments = [a for a in sys.argv[1:] if a != "--write"]
    sys.stdout.reconfigure(encoding="utf-8")
    root = arguments[0] if arguments else os.path.join(os.path.dirname(__file__), "..", "..")
    faults = []
    lines, checks = table(root, faults)
    guide = os.path.join(root, "DEVELOPERS.md")
    with open(guide, encoding="utf-8") as file:
        old = file.read()
    if old.count(BEGIN) != 1 or old.count(END) != 1 or old.index(BEGIN) > old.index(END):
        faults.append(f"DEVELOPERS.md: wants once {BEGIN} and after it once {END}")
    else:
        head, tail = old.split(BEGIN)[0], old.split(END)[1]
        new = "\n".join([head + BEGIN, "", *lines, "", END + tail])
        if "--write" in sys.argv and new != old:
            with open(guide, "w", encoding="utf-8") as file:
                file.write(new)
        elif new != old:
            faults.extend(difflib.unified_diff(old.split("\n"), new.split("\n"), "DEVELOPERS.md",
                                               "what the tests give", n=0, lineterm=""))
            faults.append("DEVELOPERS.md is out of date; tests/lint/checked_against.py --write "
                          "brings it up to date")
    print("\n".join([*faults, f"{checks} checks in the table"]))
    return 1 if faults else 0


sys.exit(main())
