#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Takes the README's picture anew: the tour walks the desk through every step, and this is one of its pictures.
# All of them lie in build/release/tests/whole_day/pictures/tour.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
source cmake/steps.sh

cmake --build --preset release --target test_whole_day_tour
QT_QPA_PLATFORM=offscreen build/release/bin/test_whole_day_tour --gtest_filter='*enlight1280x800*'
cp build/release/tests/whole_day/pictures/tour/en-light-1280x800/tomorrow-5.png resources/pictures/desk.png
say "pictures: resources/pictures/desk.png is of these sources"
