#!/usr/bin/env bash
# Solves resistive-network.cir many times inside one ngspice process and prints microseconds a solve.
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
seconds() {
    netlist "$1" >"$work/n.cir"
    local began ended
    began=$(date +%s%N)
    ngspice -b "$work/n.cir" >"$work/out" 2>&1 || true
    ended=$(date +%s%N)
    grep -q 'v(a1) = 2.258009e+02' "$work/out" || { cat "$work/out" >&2; exit 1; }
    echo $((ended - began))
}

solves=4000
best=
for _ in 1 2 3 4 5; do
    empty=$(seconds 0)
    full=$(seconds $solves)
    each=$(((full - empty) / solves))
    if [ -z "$best" ] || [ "$each" -lt "$best" ]; then best=$each; fi
done
awk -v ns="$best" 'BEGIN { printf "resistive network, one relay changed\t%.2f\n", ns / 1000 }'
