# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-format has nothing to change."""
import glob
import subprocess
import sys

root = sys.argv[1]
files = sorted(f for layer in ("core", "app", "tests") for ending in ("h", "cpp")
               for f in glob.glob(f"{root}/{layer}/**/*.{ending}", recursive=True))
sys.exit(subprocess.run(["clang-format", "--dry-run", "-Werror", *files], check=False).returncode)
