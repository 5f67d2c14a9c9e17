#!/usr/bin/env bash
# Installs what is missing and says what it does; does nothing when all is there.
#
#   setup.sh page    what building and serving the page needs
#   setup.sh tests   that, and what the tests need beyond it
#
# Tools that cargo builds and the Python environment live in a cache folder of the
# user's, so that a fresh clone does not build them again.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

readonly TRUNK_VERSION=0.21.14
readonly SPLITTER_VERSION=0.2.4
readonly GECKODRIVER_VERSION=0.37.1
readonly WASM_TARGET=wasm32-unknown-unknown
readonly CACHE="${XDG_CACHE_HOME:-$HOME/.cache}/elbowroom"
readonly TOOLS="$CACHE/tools"
export PATH="$TOOLS/bin:$PATH"

say() { printf 'set-up: %s\n' "$*"; }
give_up() {
  printf 'set-up: %s\n' "$*" >&2
  exit 1
}
# On PATH: a function here may have the name of what it installs.
have() { type -P "$1" >/dev/null; }

rust() {
  have cargo || give_up 'cargo is missing: install Rust with rustup first.'
  if [[ ! -d "$(rustc --print sysroot)/lib/rustlib/$WASM_TARGET/lib" ]]; then
    have rustup || give_up "this Rust has no $WASM_TARGET target and there is no rustup to add it."
    say "adding the $WASM_TARGET target to Rust"
    rustup target add "$WASM_TARGET"
  fi
  cargo fetch --locked --quiet
}

# The one version that fits, from PATH or the cache; else built into the cache.
cargo_tool() {
  local command=$1 crate=$2 version=$3 lock=$4
  [[ "$("$command" --version 2>/dev/null | head -n 1 || true)" == "$command $version" ]] && return
  say "building $crate $version into $TOOLS (once, some minutes)"
  cargo install "$crate" --version "=$version" --root "$TOOLS" --quiet ${lock:+"$lock"}
}

# What parts the page's program in two. It cannot say its own version; cargo's list can.
splitter() {
  local crate=wasm_split_cli_support
  have wasm-split-cli && cargo install --list --root "$TOOLS" | grep -q "^$crate v$SPLITTER_VERSION:" && return
  say "building $crate $SPLITTER_VERSION into $TOOLS (once, a minute)"
  CARGO_PROFILE_RELEASE_LTO=off CARGO_PROFILE_RELEASE_OPT_LEVEL=1 CARGO_PROFILE_RELEASE_CODEGEN_UNITS=256 \
    cargo install "$crate" --version "=$SPLITTER_VERSION" --root "$TOOLS" --quiet --locked --features build-binary
}

# The command-line tool must be of exactly the version that the page is compiled with.
wasm_bindgen_version() {
  awk '/^name = "wasm-bindgen"$/ { getline; gsub(/"/, ""); print $3 }' Cargo.lock
}

node_packages() {
  have node && have npm || give_up 'Node.js with npm is missing: version 20 or newer is needed.'
  node -e 'process.exit(Number(process.versions.node.split(".")[0]) >= 20 ? 0 : 1)' ||
    give_up "Node.js 20 or newer is needed, this is $(node --version)."
  local stamp=tests/node_modules/.installed-lock.json
  cmp -s tests/package-lock.json "$stamp" && return
  say 'installing the Node packages of tests/package-lock.json'
  PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1 npm ci --prefix tests --no-audit --no-fund --loglevel=error
  cp tests/package-lock.json "$stamp"
}

rust_checkers() {
  cargo fmt --version >/dev/null 2>&1 && cargo clippy --version >/dev/null 2>&1 && return
  say 'adding rustfmt and clippy to Rust'
  rustup component add rustfmt clippy
}

chromium() {
  have chromium || have chromium-browser || have google-chrome || debian 'Chromium' chromium fonts-liberation
}

# The two other engines that the smoke test drives.
other_browsers() {
  have firefox-esr && have WebKitWebDriver && have Xvfb ||
    debian 'Firefox and WebKitGTK' firefox-esr webkit2gtk-driver xvfb
  # Nobody waits for this one, so it is built the quick way.
  CARGO_PROFILE_RELEASE_LTO=off CARGO_PROFILE_RELEASE_OPT_LEVEL=1 CARGO_PROFILE_RELEASE_CODEGEN_UNITS=256 \
    cargo_tool geckodriver geckodriver "$GECKODRIVER_VERSION" --locked
}

# debian NAME PACKAGE...: packages of Debian's that the tests want.
debian() {
  local name=$1
  shift
  have apt-get || give_up "no $name found: install it so that it is on PATH."
  [[ "$(id -u)" == 0 ]] || give_up "no $name found: run \`sudo apt-get install $*\`, then try again."
  say "installing $name for the browser tests"
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

python_environment() {
  have python3 || give_up 'python3 is missing: the reference data are checked with it.'
  local environment="$CACHE/venv"
  local stamp="$environment/installed-requirements.txt"
  "$environment/bin/python" -c '' 2>/dev/null && cmp -s tests/reference/requirements.txt "$stamp" && return
  say "installing tests/reference/requirements.txt into $environment"
  "$environment/bin/python" -c '' 2>/dev/null || python3 -m venv --clear "$environment"
  "$environment/bin/python" -m pip install --quiet --disable-pip-version-check -r tests/reference/requirements.txt
  cp tests/reference/requirements.txt "$stamp"
}

page() {
  rust
  cargo_tool trunk trunk "$TRUNK_VERSION" --locked
  # Without --locked: the crate's own lock file names versions that no longer build.
  cargo_tool wasm-bindgen wasm-bindgen-cli "$(wasm_bindgen_version)" ''
  splitter
  node_packages
}

case "${1:-tests}" in
  page) page ;;
  tests)
    page
    rust_checkers
    chromium
    other_browsers
    python_environment
    ;;
  *) give_up "unknown part '$1': page or tests." ;;
esac
