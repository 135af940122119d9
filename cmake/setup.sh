#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the Debian packages of packages.txt that are missing: setup.sh run|check
set -euo pipefail
export LC_ALL=C.UTF-8
umask 022
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
source cmake/steps.sh

goal=${1:-run}
case $goal in
run) groups=' run ' ;;
check) groups=' run check ' ;;
*) fail "unknown goal '$goal'" "setup.sh" "say 'setup.sh run' or 'setup.sh check'" ;;
esac

wanted=()
while read -r package group _; do
    [[ -z $package || $package == \#* ]] && continue
    if [[ $groups == *" $group "* ]]; then wanted+=("$package"); fi
done <cmake/packages.txt

if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    fail "this is not a Debian system" "no dpkg-query or apt-get found" \
        "install by hand what cmake/packages.txt names, then: cmake --preset release && cmake --build --preset release"
fi

# The names that dpkg does not know go to its standard error; they are missing like the others.
# shellcheck disable=SC2016
installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' "${wanted[@]}" 2>/dev/null || true)
missing=()
for package in "${wanted[@]}"; do
    [[ $'\n'$installed$'\n' == *$'\n'"installed $package"$'\n'* ]] || missing+=("$package")
done
if ((${#missing[@]} == 0)); then
    say "set-up: all ${#wanted[@]} packages are there, nothing to do"
    exit 0
fi

# sudo without a password, or with one that can be asked for here.
can_sudo() {
    command -v sudo >/dev/null || return 1
    sudo -n true 2>/dev/null && return 0
    [[ -t 0 ]] || return 1
    say "set-up: ${#missing[@]} packages are missing; installing them needs root, so sudo may ask for your password"
    sudo -v
}

as_root=()
if ((EUID != 0)); then
    can_sudo || fail "${#missing[@]} of ${#wanted[@]} packages are missing, and installing needs root" \
        "no sudo for $(id -un) here" \
        "let root run: apt-get update && apt-get install -y --no-install-recommends ${missing[*]}"
    as_root=(sudo)
fi
environment=(env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8)
options=(-y -q --no-install-recommends -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0)
mkdir -p build
log=build/set-up.log

say "set-up: fetching Debian's package lists (log: $log)"
"${as_root[@]}" "${environment[@]}" apt-get -q update >"$log" 2>&1 </dev/null ||
    say "set-up: the lists could not all be fetched; going on with what is there"
say "set-up: installing ${#missing[@]} of ${#wanted[@]} packages (minutes, the first time): ${missing[*]}"
if ! "${as_root[@]}" "${environment[@]}" apt-get "${options[@]}" install "${missing[@]}" >>"$log" 2>&1 </dev/null; then
    tail -n 8 "$log" >&2
    fail "apt-get could not install the packages" "$PWD/$log" \
        "check the network and /etc/apt/sources.list (Debian 12), then run this again"
fi
say "set-up: done"
