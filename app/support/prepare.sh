# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by app/run and tests/run: installs what is missing, configures, builds.

# What building and running the workbench needs, by Debian's names.
app_packages=(
  g++ cmake ninja-build ccache
  qt6-base-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools qt6-translations-l10n
  libqcustomplot-dev libboost-dev libexpected-dev libfmt-dev nlohmann-json3-dev libcli11-dev
  fonts-dejavu-core
)
# What the tests need besides.
test_packages=(
  catch2 libeigen3-dev libvalijson-dev poppler-utils clang-format clang-tidy python3
)

# Installs the named packages that are not there, having said so.
install_missing() {
  local missing=() package
  for package in "$@"; do
    if [ "$(dpkg-query -W -f='${db:Status-Abbrev}' "$package" 2>/dev/null)" != "ii " ]; then
      missing+=("$package")
    fi
  done
  if [ "${#missing[@]}" -eq 0 ]; then
    return 0
  fi
  echo "Installing from Debian's packages: ${missing[*]}."
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      echo "These packages are missing and neither root nor sudo is at hand to install them." >&2
      return 1
    fi
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -qq
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# Sets build_dir: inside the checkout, or in the cache where that cannot be written.
choose_build_dir() {
  if [ -w "$source_dir" ]; then
    build_dir="$source_dir/.build/dev"
  else
    build_dir="${XDG_CACHE_HOME:-$HOME/.cache}/feedwright-build$source_dir/dev"
  fi
}

# Configures once; ninja does it again by itself when a CMake file changes.
configure() {
  export CCACHE_BASEDIR="$source_dir" CCACHE_NOHASHDIR=1
  if [ -f "$build_dir/build.ninja" ]; then
    return 0
  fi
  local launcher=()
  if command -v ccache >/dev/null; then
    launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
  fi
  echo "Configuring in $build_dir."
  cmake -S "$source_dir" -B "$build_dir" -G Ninja -DCMAKE_BUILD_TYPE=Release \
    -DFEEDWRIGHT_TESTS="${with_tests:-OFF}" "${launcher[@]}" >/dev/null
}

# Builds the named targets, or all; says nothing if there is nothing to do.
build() {
  ninja -C "$build_dir" --quiet "$@" | { grep -v 'no work to do' || true; }
}
