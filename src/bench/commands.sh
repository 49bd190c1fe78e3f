#!/usr/bin/env bash
# Whole commands as a person starts them, in seconds: the virtual machine, reading, computing, printing.
set -u
cd "$(dirname "${BASH_SOURCE[0]}")/../.." || exit 1
case=${1:-$(sed -n 's/^\.\/wetside diagnose \([^ ]*\)$/\1/p' README.md | head -n 1)}
machine=machines/twin-boiler-lever.yaml
cache=$(mktemp -d)
trap 'rm -rf "$cache"' EXIT
export WETSIDE_CACHE=$cache

row() { printf '%-58s %s\n' "$1" "$2"; }

# seconds COMMAND...: wall seconds of one run; its output goes nowhere, a code above 1 stops everything.
seconds() {
    local began=$EPOCHREALTIME status
    "$@" </dev/null >"$cache/out" 2>"$cache/err"
    status=$?
    [ $status -le 1 ] || { echo "failed with $status: $*" >&2; cat "$cache/err" >&2; exit 1; }
    awk -v a="$began" -v b="$EPOCHREALTIME" 'BEGIN { printf "%.2f\n", b - a }'
}

# The median of five.
median() { for _ in 1 2 3 4 5; do seconds "$@" || exit 1; done | sort -n | sed -n 3p; }

# Seconds until the first look is printed and until the finding stands, nothing cached.
cold() {
    local began=$EPOCHREALTIME
    rm -rf "$cache"/*
    ./wetside diagnose "$case" 2>&1 </dev/null | while IFS= read -r line; do
        case $line in
            'First look'*) awk -v a="$began" -v b="$EPOCHREALTIME" 'BEGIN { printf "%.2f ", b - a }' ;;
        esac
    done
    awk -v a="$began" -v b="$EPOCHREALTIME" 'BEGIN { printf "%.2f\n", b - a }'
}

./wetside help >/dev/null
row "./wetside help" "$(median ./wetside help)"
row "./wetside check $machine" "$(median ./wetside check $machine)"
row "./wetside run $machine src/bench/two-hours.yaml" "$(median ./wetside run $machine src/bench/two-hours.yaml)"
row "./wetside readings $machine" "$(median ./wetside readings $machine)"
read -r first whole <<<"$(cold)"
row "./wetside diagnose CASE, nothing cached: first look" "$first"
row "  the whole library and the finding" "$whole"
row "./wetside diagnose CASE, from the cache" "$(median ./wetside diagnose "$case")"
