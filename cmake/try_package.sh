#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# try_package.sh [DEB]: what somebody meets who installs the package (of package.sh, where none is named) in a clean Debian 12: it is
# installed with what it depends on, draws and plans the sample without a network, opens the desk on it from its menu entry (the picture:
# build/try/desk.png), leads from there to the sample's printed sheet (build/try/sheet.pdf), and once removed has left nothing behind. Needs root, debootstrap and Debian's mirror, which MIRROR may name.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

packages=(build/release/packages/*.deb)
deb=$(realpath -- "${1:-${packages[0]}}")
[[ -f $deb ]] || fail "there is no package" "$deb" "make it with cmake/package.sh"
((EUID == 0)) || fail "a root of its own takes root" "$(id -un)" "run it with sudo"
for tool in debootstrap convert unshare; do
    command -v $tool >/dev/null || fail "a tool is missing" "no $tool found" "install debootstrap imagemagick util-linux"
done
# What is mounted here ends with this process.
if [[ ${MEREMARK_TRY_ALONE:-} != yes ]]; then
    MEREMARK_TRY_ALONE=yes exec unshare --mount --propagation private --pid --fork --kill-child "$PWD/cmake/try_package.sh" "$deb"
fi

try=$PWD/build/try
root=$try/root
log=$try/log.txt
rm -rf --one-file-system "$root" "$try"/*.png "$try"/*.txt
mkdir -p "$root" "$try/cache"
# The last picture of what went wrong, too.
stop() {
    convert "xwd:$root/var/angler/run/Xvfb_screen0" "$try/stopped.png" 2>/dev/null || true
    fail "$1" "$log" "see its last lines, and $try/stopped.png where there is one"
}

say "laying a clean Debian 12 in $root"
debootstrap --variant=minbase --cache-dir="$try/cache" bookworm "$root" "${MIRROR:-http://deb.debian.org/debian}" >"$log" 2>&1 ||
    stop "no root could be laid"
mount -t proc proc "$root/proc"
mount --bind /dev "$root/dev"
mount -t tmpfs tmpfs "$root/dev/shm"
mount --bind "$try/cache" "$root/var/cache/apt/archives" # The next try fetches nothing twice.

# inside COMMAND...: as root in there. "${angler[@]}" COMMAND...: as its user, without a network.
inside() { DEBIAN_FRONTEND=noninteractive HOME=/tmp chroot "$root" "$@" >>"$log" 2>&1; }
angler=(unshare --net chroot --userspec=angler:angler "$root" env -i PATH=/usr/bin:/bin HOME=/var/angler LANG=C.UTF-8 DISPLAY=:7
    XDG_RUNTIME_DIR=/var/angler/run)
files() { (cd "$root" && find . -xdev \( -path ./var/angler -o -path ./tmp -o -path ./var/log -o -path ./var/cache -o -path ./var/lib/dpkg \
    -o -path ./var/lib/apt -o -path ./proc -o -path ./dev \) -prune -o -print | sort); }

say "installing what it depends on"
inside apt-get install -y --no-install-recommends xvfb x11-utils xdotool openbox shared-mime-info desktop-file-utils || stop "what the test itself needs is not to be had"
needs=$(dpkg-deb -f "$deb" Depends)
wishes=$(dpkg-deb -f "$deb" Recommends)
inside apt-get satisfy -y "$needs" "$wishes" || stop "Debian 12 cannot satisfy what the package depends on"
inside useradd --home-dir /var/angler --create-home angler
mkdir -m 700 "$root/var/angler/run"
inside chown angler:angler /var/angler/run
files >"$try/before.txt"

say "installing the package"
cp "$deb" "$root/tmp/meremark.deb"
inside apt-get install -y /tmp/meremark.deb || stop "the package could not be installed"
grep -q geopackage "$root/usr/share/mime/globs2" || stop "the media type of water files is not known"
grep -q org.meremark "$root/usr/share/applications/mimeinfo.cache" || stop "the desk is offered for no file"
grep -qx ./usr/bin/meremark < <(files) || stop "the desk is not where it belongs"
[[ ! -e $root/usr/include/meremark ]] || stop "the library for others is no part of this package"

say "drawing and planning the sample, without a network"
sample=/usr/share/meremark/sample
water=/var/angler/mere.gpkg
"${angler[@]}" meremark-batch sketch $sample/survey-2026-09-05.nmea $sample/survey-2026-09-12.gpx $sample/survey-2026-09-19.csv \
    --survey-days $sample/survey-days.csv --tie-days --shore $sample/shoreline.geojson --facts $sample/water.json --weed $sample/weed-notes.csv \
    --lead-line $sample/lead-line.csv --house-rules $sample/house-rules.json --water $water --picture /var/angler/chart.png >>"$log" 2>&1 ||
    stop "the sample could not be drawn"
"${angler[@]}" meremark-batch log $water --add $sample/log.csv >>"$log" 2>&1 || stop "the log of the sample could not be read"
"${angler[@]}" meremark-batch marks $water --wind-from 230 --wind-speed 5 --sheet /var/angler/sheet.pdf --report /var/angler/marks.json \
    >>"$log" 2>&1 || stop "no marks could be planned"
[[ $(head -c 5 "$root/var/angler/sheet.pdf") == %PDF- ]] || stop "the sheet is none"
read -ra words < <(sed -n 's/^Exec=//p' "$root/usr/share/thumbnailers/meremark.thumbnailer")
words=("${words[@]/#%i/$water}")
words=("${words[@]/#%o//var/angler/thumb.png}")
"${angler[@]}" "${words[@]/#%s/256}" >>"$log" 2>&1 || stop "a file manager would get no picture of the water"
cp "$root/var/angler/thumb.png" "$try/thumb.png"

say "opening the desk from its menu entry"
"${angler[@]}" Xvfb :7 -screen 0 1280x800x24 -nolisten tcp -fbdir /var/angler/run >>"$log" 2>&1 &
started=$(sed -n 's/^Exec=//p' "$root/usr/share/applications/org.meremark.Meremark.desktop")
# awaited WHAT COMMAND...: tried again until it is so, for two minutes at most.
awaited() {
    local what=$1 until=$((SECONDS + 120))
    shift
    until "$@"; do
        ((SECONDS < until)) || stop "$what"
        sleep 0.5
    done
}
is_up() { "${angler[@]}" xwininfo -root -tree 2>/dev/null | grep -q "$1"; }
awaited "no display came up" is_up 'Root window'
read -ra words <<<"${started//%f/$water}"
"${angler[@]}" "${words[@]}" >>"$log" 2>&1 &
desk=$!
awaited "the desk did not come up" is_up '"mere.*Meremark"\|"Meremark.*mere'
# Where the chart lies, to the left, paper has a colour or two and a chart hundreds; twice the same: nothing is on its way any more.
last=none
is_painted() {
    kill -0 $desk 2>/dev/null || stop "the desk ended by itself"
    convert "xwd:$root/var/angler/run/Xvfb_screen0" "$try/desk.png" 2>/dev/null || return 1
    local before=$last
    last=$(sha256sum <"$try/desk.png")
    [[ $last == "$before" ]] && (($(convert "$try/desk.png" -crop 800x500+20+60 -format %k info:) > 300))
}
awaited "the desk painted no chart" is_painted
kill $desk
wait $desk || true

say "walking from the menu entry to the sample's sheet, with mouse and keys"
hand() { "${angler[@]}" xdotool "$@" >>"$log" 2>&1 || stop "the hand could not $*"; }
# Keys go where a window manager says; it leaves the window as large as the screen.
mkdir -p "$root/var/angler/.config/openbox"
printf '%s' '<openbox_config xmlns="http://openbox.org/3.4/rc"><applications><application name="*" type="normal"><decor>no</decor>' \
    '<maximized>yes</maximized></application></applications></openbox_config>' >"$root/var/angler/.config/openbox/rc.xml"
inside chown -R angler:angler /var/angler/.config
"${angler[@]}" openbox >>"$log" 2>&1 &
read -ra words <<<"${started//%f/}"
# Somebody who has never opened a water: the page that he starts at is known to the pixel.
inside install -d -o angler -g angler /var/angler/new
"${angler[@]}" HOME=/var/angler/new "${words[@]}" >>"$log" 2>&1 &
desk=$!
awaited "the desk did not come up again" is_up '"Meremark"'
# rested WHAT: until nothing on the screen moves any more.
rested() {
    last=none
    awaited "$1" is_calm
}
sample_button=(493 554)
is_calm() {
    local before=$last
    convert "xwd:$root/var/angler/run/Xvfb_screen0" "$try/walk.png" 2>/dev/null || return 1
    last=$(sha256sum <"$try/walk.png")
    [[ $last == "$before" ]]
}
rested "the start page did not come to rest"
hand mousemove "${sample_button[@]}" click 1
awaited "the sample was not drawn" is_painted
hand key ctrl+2
rested "no marks were planned" # before there are any, there is no sheet to be saved
hand key alt+1
hand type --delay 30 SW
hand key Tab
hand type --delay 30 '6 m/s'
hand key Return
rested "the marks were not planned for the wind"
hand key alt+7
hand key ctrl+shift+s
awaited "nobody asks where the sheet is to lie" is_up '"Save the sheet"'
hand type --delay 10 /var/angler/by-hand.pdf
hand key Return
is_saved() { [[ $(head -c 5 "$root/var/angler/by-hand.pdf" 2>/dev/null) == %PDF- ]]; }
awaited "no sheet was saved" is_saved
convert "xwd:$root/var/angler/run/Xvfb_screen0" "$try/walk.png"
cp "$root/var/angler/by-hand.pdf" "$try/sheet.pdf"
kill $desk
wait $desk || true

say "removing it"
inside apt-get purge -y meremark || stop "the package could not be removed"
files >"$try/after.txt"
diff "$try/before.txt" "$try/after.txt" >"$try/left.txt" || fail "something was left behind or taken along" "$try/left.txt" "see the list"
inside dpkg --audit
printf 'try_package: installed, used and removed in %d s; the desk: %s\n' "$SECONDS" "$try/desk.png"
