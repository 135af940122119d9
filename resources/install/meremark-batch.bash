# SPDX-License-Identifier: GPL-3.0-or-later
# bash completion for meremark-batch. Verbs and options are read from its own --help, so that none is missing here.

_meremark_batch() {
    local current=$2 verb='' word
    COMPREPLY=()
    for word in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
        [[ $word == -* ]] || { verb=$word && break; }
    done
    if [[ -z $verb ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(meremark-batch --help 2>/dev/null |
            awk '/^Subcommands:/ {on = 1; next} on && /^  [a-z]/ {print $1}') --help --version" -- "$current")
    elif [[ $current == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(meremark-batch "$verb" --help 2>/dev/null |
            grep -oE '^  (-h,)?--[a-z-]+' | grep -oE -e '--[a-z-]+')" -- "$current")
    else
        compopt -o filenames 2>/dev/null
        mapfile -t COMPREPLY < <(compgen -f -- "$current")
    fi
}
complete -F _meremark_batch meremark-batch
