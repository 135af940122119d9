#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# man_pages.sh MEREMARK MEREMARK-BATCH FOLDER: writes their man pages, packed, from what --help prints, and the changelog packed.
set -euo pipefail
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen

top=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
desk=$1 batch=$2 to=$3
mkdir -p "$to"
export SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git -C "$top" log -1 --format=%ct 2>/dev/null || echo 0)}

version=$("$batch" --version | awk 'NR == 1 {print $2}')

# page NAME WORDS COMMAND...
page() {
    local name=$1 words=$2
    shift 2
    help2man --no-info --no-discard-stderr --section 1 --source Meremark --name "$words" --version-string "$version" \
        "$*" | sed -e "s/^\.TH \"[^\"]*\"/.TH \"${name^^}\"/" -e "/^\.SH NAME/{n;s/^.* \\\\-/$name \\\\-/}" | gzip -9n >"$to/$name.1.gz"
}
page meremark 'charts, anchor marks and log of one stillwater' "$desk"
page meremark-batch "Meremark's main job without a window" "$batch"
while read -r verb words; do
    page "meremark-batch-$verb" "${words,}" "$batch" "$verb"
done < <("$batch" --help | awk '/^Subcommands:/ {on = 1; next} on && /^  [a-z]/ {print}')
# In the form that Debian wants; what has changed stands in the CHANGELOG.md beside it.
printf 'meremark (%s) unstable; urgency=low\n\n  * See CHANGELOG.md.\n\n -- The Meremark maintainers <maintainers@meremark.invalid>  %s\n' \
    "$version" "$(date -u -R -d "@$SOURCE_DATE_EPOCH")" | gzip -9n >"$to/changelog.gz"
touch "$to/made"
