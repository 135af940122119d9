#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# clean_room.sh PACKAGE.deb: installs the package in a fresh Debian 12 root, uses it there as somebody would who never compiled
# anything, and removes it again. The root is kept in build/clean-room for the next time.
set -euo pipefail
deb=$(realpath -- "$1")
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

((EUID == 0)) || fail "a fresh system can only be laid out by root" "clean_room.sh" "run it with sudo"
command -v debootstrap >/dev/null || fail "a tool is missing" "no debootstrap found" "install debootstrap"
root=$PWD/build/clean-room
mirror=$(awk '/^(deb |URIs:)/ {for (i = 2; i <= NF; ++i) if ($i ~ /^https?:/) {print $i; exit}}' \
    /etc/apt/sources.list /etc/apt/sources.list.d/* 2>/dev/null || true)
[[ -x $root/usr/bin/apt-get ]] || debootstrap --variant=minbase bookworm "$root" "${mirror:-http://deb.debian.org/debian}"
cp -f /etc/resolv.conf "$root/etc/resolv.conf"
cp -rf /etc/apt/apt.conf.d/. "$root/etc/apt/apt.conf.d/"
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"; }
cleanup() { umount "$root/proc" 2>/dev/null || true; }
trap cleanup EXIT
mount -t proc proc "$root/proc"

cp "$deb" "$root/root/meremark.deb"
inside apt-get update -q
inside apt-get install -y -q --no-install-recommends /root/meremark.deb xvfb xauth x11-utils imagemagick desktop-file-utils man-db

say "the main job, with the sample that comes with it"
# shellcheck disable=SC2016 # It is expanded inside.
inside bash -euo pipefail -c '
    rm -rf /root/try && mkdir /root/try && cd /root/try
    sample=/usr/share/meremark/sample
    desktop-file-validate /usr/share/applications/org.meremark.Meremark.desktop
    meremark-batch sketch $sample/survey-2026-09-05.nmea $sample/survey-2026-09-12.gpx --shore $sample/shoreline.geojson \
        --survey-days $sample/survey-days.csv --facts $sample/water.json --water mere.gpkg --report sketch.json
    meremark-batch marks mere.gpkg --wind-from 225 --wind-speed 6 --sheet sheet.pdf --report marks.json
    test -s sheet.pdf
    man --pager=cat meremark-batch-marks >/dev/null'

say "the desk, with that water"
# shellcheck disable=SC2016 # It is expanded inside.
inside bash -euo pipefail -c '
    cd /root/try
    xvfb-run -a -s "-screen 0 1280x800x24" bash -c "
        meremark mere.gpkg & desk=\$!
        for i in \$(seq 60); do
            sleep 1
            xwininfo -root -tree 2>/dev/null | grep -q Meremark && break
        done
        sleep 8
        xwininfo -root -tree | grep Meremark
        import -window root desk.png
        kill \$desk"
    test -s desk.png'
cp "$root/root/try/desk.png" build/clean-room-desk.png

say "and away with it"
inside apt-get remove -y -q meremark
[[ ! -e $root/usr/bin/meremark && ! -e $root/usr/share/meremark ]] || fail "something stays after removing" "$root/usr" "see dpkg -L"
say "clean room: installed, used and removed; a picture of the desk is in build/clean-room-desk.png"
