#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Takes the pictures of README and guide anew: the tour walks the desk through every step, and these are some of its pictures.
# All of them lie in build/release/tests/whole_day/pictures/tour.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
source cmake/steps.sh

cmake --build --preset release --target test_whole_day_tour
QT_QPA_PLATFORM=offscreen build/release/bin/test_whole_day_tour --gtest_filter='*enlight1280x800*:*light1024x600*'
tour=build/release/tests/whole_day/pictures/tour
cp "$tour/en-light-1280x800/tomorrow-5.png" resources/pictures/desk.png
mkdir -p resources/guide/pictures resources/guide/de/pictures
cp "$tour"/en-light-1024x600/steps/*.png resources/guide/pictures/
cp "$tour"/de-light-1024x600/steps/*.png resources/guide/de/pictures/
say "pictures: resources/pictures/desk.png and those of resources/guide are of these sources"
