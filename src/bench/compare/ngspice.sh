#!/usr/bin/env bash
# Solves resistive-network.cir many times inside one ngspice process and prints microseconds of processor time a solve.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# netlist SOLVES: the relay's resistance alternates so that a solve has something to do.
netlist() {
    cat "$here/resistive-network.cir"
    echo '.options gmin=1e-18 reltol=1e-9'
    echo '.control'
    echo 'op'
    echo 'print v(a1)'
    echo "repeat $(($1 / 2))"
    printf '%s\n' 'alter R_Rssr1 = 0.04' op 'alter R_Rssr1 = 0.03' op 'destroy all' end
    echo 'quit'
    echo '.endc'
    echo '.end'
}

# The first value of the netlist as it stands is known; a wrong one means something else was timed.
microseconds() {
    netlist "$1" >"$work/n.cir"
    TIMEFORMAT='%3U %3S'
    { time ngspice -b "$work/n.cir" >"$work/out" 2>&1 || true; } 2>"$work/time"
    grep -q 'v(a1) = 2.258009e+02' "$work/out" || { cat "$work/out" >&2; exit 1; }
    awk '{ printf "%d\n", ($1 + $2) * 1e6 }' "$work/time"
}

solves=20000
best=
for _ in 1 2 3 4 5; do
    empty=$(microseconds 0)
    full=$(microseconds $solves)
    each=$(((full - empty) * 1000 / solves))
    if [ -z "$best" ] || [ "$each" -lt "$best" ]; then best=$each; fi
done
awk -v ns="$best" 'BEGIN { printf "resistive network, one relay changed\t%.2f\n", ns / 1000 }'
