# shellcheck shell=bash
# SPDX-License-Identifier: GPL-3.0-or-later
# What the scripts share. Sourced with the working directory at the top of the tree.

say() { printf -- '-- %s\n' "$*"; }

# fail WHAT WHERE WHAT-TO-DO
fail() {
    printf '%s: %s (%s); %s\n' "${0##*/}" "$1" "$2" "$3" >&2
    exit 1
}

# As many compilers at once as there are cores, but no more than memory bears (about 1 GB each).
parallel_jobs() {
    local cores memory_kb by_memory
    cores=$(nproc)
    memory_kb=$(awk '/^MemAvailable:/ {print $2}' /proc/meminfo 2>/dev/null || true)
    by_memory=$((${memory_kb:-8000000} / 1000000))
    ((by_memory >= 1)) || by_memory=1
    echo $((cores < by_memory ? cores : by_memory))
}

# configure PRESET [OPTION...]: once; later the build itself sees when it must be done again. The options are for a folder that is new.
configure() {
    local preset=$1 dir=build/$1 log=build/$1-configure.log options=()
    shift
    if [[ -f $dir/CMakeCache.txt ]] &&
        ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$PWD" "$dir/CMakeCache.txt"; then
        say "$dir was made for another place: configuring afresh"
        options=(--fresh "$@")
    elif [[ -f $dir/build.ninja && $dir/build.ninja -nt CMakePresets.json ]]; then
        return 0
    elif [[ ! -f $dir/CMakeCache.txt ]]; then
        options=("$@")
    fi
    say "configuring $preset in $dir"
    mkdir -p build
    if ! cmake --preset "$preset" "${options[@]}" >"$log" 2>&1; then
        grep -E -m 3 -A 10 'Could NOT find|CMake Error|not found' "$log" | head -n 30 >&2 || tail -n 25 "$log" >&2
        fail "CMake could not configure" "$PWD/$log" "see the error above"
    fi
}

# build PRESET [TARGET...]
build() {
    local preset=$1 targets=()
    shift
    (($# == 0)) || targets=(--target "$@")
    configure "$preset"
    say "building $preset in build/$preset (the first time takes minutes)"
    cmake --build --preset "$preset" -j "$(parallel_jobs)" "${targets[@]}" ||
        fail "the build failed" "$PWD/build/$preset" "see the first error above"
}

# What git says has changed, in the tree or in commits since the merge base with origin/main, or since the last commit where
# that is the same: files that are still there, one a line.
changed_since_base() {
    local base
    base=$(git merge-base HEAD origin/main 2>/dev/null || true)
    if [[ -z $base || $base == "$(git rev-parse HEAD)" ]]; then
        base=$(git rev-parse -q --verify HEAD~1 || git hash-object -t tree /dev/null)
    fi
    {
        git diff --name-only --diff-filter=d "$base"
        git ls-files --others --exclude-standard
    } | sort -u
}
