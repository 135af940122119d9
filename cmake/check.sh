#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Does the set-up, builds Release, and passes every check: layout, lint, all tests. Ends with one line.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

./cmake/setup.sh check
configure release -DMEREMARK_UNITY=ON
# The benchmarks are not run here, but a change that breaks them is to be noticed.
cmake -B build/release -DMEREMARK_BENCHMARKS=ON >build/release-benchmarks.log
build release
./cmake/lint.sh
say "running all tests"
log=build/check-tests.log
ctest --preset release -j "$(nproc)" 2>&1 | tee "$log" ||
    fail "tests failed" "$PWD/$log" "run one alone with: ctest --preset release -R NAME"
summary=$(grep -E '^[0-9]+% tests passed' "$log")
printf 'check: %s; layout and lint are clean; %d s\n' "$summary" "$SECONDS"
