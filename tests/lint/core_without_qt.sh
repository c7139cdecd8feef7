#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds core where no Qt can be found and links a program with all of it.
set -euo pipefail
source_dir="$1"
build_dir="$2"
export CCACHE_BASEDIR="$source_dir" CCACHE_NOHASHDIR=1
launcher=()
if command -v ccache >/dev/null; then
  launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
fi
cmake -S "$source_dir" -B "$build_dir" -G Ninja -DCMAKE_BUILD_TYPE=Release -DFEEDWRIGHT_APP=OFF \
  -DFEEDWRIGHT_TESTS=OFF -DCMAKE_DISABLE_FIND_PACKAGE_Qt6=ON "${launcher[@]}" >/dev/null
ninja -C "$build_dir" --quiet core
if grep -iE '(-I|-isystem) *[^ ]*qt' "$build_dir/compile_commands.json"; then
  echo "A compile command of core has Qt on its include path."
  exit 1
fi
cat >"$build_dir/whole_core.cpp" <<'PROGRAM'
#include "sizing/size_axis.h"
int main() {
  feedwright::Machine machine;
  machine.axes.emplace_back();
  machine.axes[0].motor = feedwright::Servo();
  return feedwright::size_axis(machine, machine.axes[0]).governing_feed ? 0 : 1;
}
PROGRAM
g++ -std=c++20 -I"$source_dir/core" "$build_dir/whole_core.cpp" -o "$build_dir/whole_core" \
  -Wl,--whole-archive "$build_dir/core/libcore.a" -Wl,--no-whole-archive -lfmt
if ldd "$build_dir/whole_core" | grep -i qt; then
  echo "The program is linked with Qt."
  exit 1
fi
"$build_dir/whole_core"
