# Sourced by ./wetside and ./check: finds a JDK and Maven, and installs them from Debian's packages when it may.
# Speaks on standard error only, so that the output of a command stays clean.

say() { echo "wetside: $*" >&2; }

# Prints the feature release (17, 21, ...) of the given java command, nothing when it does not run.
java_release() {
    local home file version=
    home=$(dirname "$(dirname "$(readlink -f "$1" 2>/dev/null || echo "$1")")")
    file="$home/release"
    # Reading the file takes a millisecond, starting a virtual machine to ask it takes fifty.
    [ -r "$file" ] && version=$(sed -n 's/^JAVA_VERSION="\{0,1\}\([0-9._]*\).*/\1/p' "$file")
    [ -n "$version" ] || version=$("$1" -version 2>&1 | sed -n 's/.*version "\([0-9._]*\).*/\1/p' | head -n 1)
    version=${version#1.}
    echo "${version%%[._]*}"
}

# Sets JAVA to a java command of release 17 or newer: JAVA_HOME's first, then the one on the PATH.
find_java() {
    local candidate release
    JAVA=
    for candidate in "${JAVA_HOME:+$JAVA_HOME/bin/java}" "$(command -v java)"; do
        [ -n "$candidate" ] && [ -x "$candidate" ] || continue
        release=$(java_release "$candidate")
        case $release in '' | *[!0-9]*) continue ;; esac
        [ "$release" -ge 17 ] && JAVA=$candidate && return 0
    done
    return 1
}

# A JDK, not only a runtime: the compiler stands beside the java that was found.
find_jdk() {
    find_java || return 1
    [ -x "$(dirname "$(readlink -f "$JAVA" 2>/dev/null || echo "$JAVA")")/javac" ] || [ -x "$(dirname "$JAVA")/javac" ]
}

find_maven() { command -v mvn >/dev/null; }

apt_install() {
    local log status
    say "installing $* from Debian's packages (a minute or two) ..."
    log=$(mktemp)
    { apt-get -o DPkg::Lock::Timeout=600 -qq update &&
        DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=600 -qq -y --no-install-recommends install "$@"; } \
        </dev/null >"$log" 2>&1
    status=$?
    [ $status = 0 ] || tail -n 20 "$log" >&2
    rm -f "$log"
    return $status
}

# tell_how WHAT PACKAGE...: the exact command for this machine, when we may not run it ourselves.
tell_how() {
    local what=$1
    shift
    if command -v apt-get >/dev/null; then
        say "$what is missing, and only root may install it. Type:"
        echo "    sudo apt-get update && sudo apt-get install $*" >&2
    else
        say "$what is missing. Install it with this system's package manager, for example:"
        echo "    Fedora:  sudo dnf install java-17-openjdk-devel maven" >&2
        echo "    Alpine:  sudo apk add openjdk17 maven" >&2
        echo "    macOS:   brew install openjdk@17 maven" >&2
    fi
    [ -z "${JAVA_HOME:-}" ] || say "JAVA_HOME is $JAVA_HOME; it goes before the PATH and has to be 17 or newer."
    say "then run the same command again."
}

find_chromium() { command -v chromium >/dev/null || command -v chromium-browser >/dev/null || command -v google-chrome-stable >/dev/null; }

# need_chromium: for the browser tests only; returns 1 after having said what to type.
need_chromium() {
    find_chromium && return 0
    if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
        say "Chromium, for the browser tests, is missing."
        apt_install chromium && hash -r && find_chromium && return 0
        say "Chromium could not be installed; the last it said stands above. By hand:"
        echo "    apt-get update && apt-get install chromium" >&2
        return 1
    fi
    say "the browser tests need Chromium, and only root may install it. Type, for example:"
    echo "    Debian:  sudo apt-get update && sudo apt-get install chromium" >&2
    echo "    Fedora:  sudo dnf install chromium" >&2
    say "then run the same command again."
    return 1
}

# need_tools: leaves with JAVA set and mvn on the PATH, or returns 1 after having said what to type.
need_tools() {
    local packages=() names=() what
    find_jdk || { packages+=(openjdk-17-jdk-headless) names+=("a JDK (Java 17 or newer)"); }
    find_maven || { packages+=(maven) names+=("Maven"); }
    [ ${#packages[@]} -gt 0 ] || return 0
    what=${names[0]}${names[1]:+ and ${names[1]}}
    if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
        say "$what is missing."
        if ! apt_install "${packages[@]}"; then
            say "the packages could not be installed; the last it said stands above. By hand:"
            echo "    apt-get update && apt-get install ${packages[*]}" >&2
            return 1
        fi
        hash -r
        find_jdk && find_maven && return 0
        say "$what is still not found after the installation."
    fi
    tell_how "$what" "${packages[@]}"
    return 1
}

# COMPILERS is what the virtual machine compiles with. The second compiler has paid for itself after some 25 s of processor
# time; late_compiler starts it late, for what is done most (docs/performance.md, "Compilers").
# shellcheck disable=SC2034
COMPILERS=(-XX:TieredStopAtLevel=1)
late_compiler() {
    COMPILERS=(-XX:Tier3DelayOn=0 -XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=20000
        -XX:Tier4CompileThreshold=100000 -XX:Tier4BackEdgeThreshold=1000000)
}

# For a whole library of what is named: the first compiler alone, or late the second.
library_compilers() {
    local word
    COMPILERS=(-XX:TieredStopAtLevel=1)
    for word in "$@"; do is_large "$word" && late_compiler; done
    return 0
}

# Whether a machine that comes with Wetside, or that of a case or machine file, is so large that its library takes longer:
# told from the length of its file.
is_large() {
    local file="$home/machines/$1.yaml" name lines
    if [ -f "$1" ]; then
        file=$1
        name=$(sed -n 's/^machine: *\([a-z0-9-]*\).*/\1/p;20q' "$1")
        [ -n "$name" ] && file="$home/machines/$name.yaml"
    fi
    [ -f "$file" ] && mapfile -n 801 lines <"$file" && [ ${#lines[@]} -gt 800 ]
}
