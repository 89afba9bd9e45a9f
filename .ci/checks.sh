# Functions for .ci/run: counting, and reading what the repository says of itself.
passed=0
failed=0
skipped=0
log=$(mktemp)

# check NAME COMMAND...: runs the command, shows its output if it fails, and counts it.
# The subshell keeps "set -e" at work inside the command; do not call check in an "if" or before "||".
check() {
  local name=$1 start=$SECONDS
  shift
  set +e
  (set -euo pipefail; "$@") > "$log" 2>&1
  status=$?
  set -e
  if [[ $status == 0 ]]; then
    passed=$((passed + 1))
    echo "ok    $name ($((SECONDS - start)) s)"
  else
    failed=$((failed + 1))
    tail -n 60 "$log" | sed 's/^/      /'
    echo "FAIL  $name (exit code $status, $((SECONDS - start)) s)"
  fi
}

# must NAME COMMAND...: a check without which the rest makes no sense.
must() {
  check "$@"
  [[ $status == 0 ]] || finish
}

skip() {
  skipped=$((skipped + 1))
  echo "skip  $1: $2"
}

finish() {
  rm -f "$log"
  [[ $skipped == 0 ]] || echo "$skipped skipped"
  echo "$passed passed, $failed failed"
  [[ $failed == 0 && $passed -gt 0 ]] || exit 1
  exit 0
}

# count_tests FOLDER: adds the counters of all result files. No tests at all is a failure.
count_tests() {
  local counts
  counts=$(cat "$1"/*.trx 2> /dev/null | grep -o '<Counters[^>]*>' | awk '
    { for (i = 1; i <= NF; i++) { split($i, a, "="); gsub(/[^0-9]/, "", a[2]); v[a[1]] += a[2] } }
    END { print v["passed"] + 0, v["failed"] + v["error"] + v["timeout"] + v["aborted"], v["total"] - v["executed"] }') || true
  read -r p f s <<< "${counts:-0 0 0}"
  echo "      tests: $p passed, $f failed, $s skipped"
  [[ $((p + f)) -gt 0 ]] || { echo "FAIL  no test ran"; f=1; }
  passed=$((passed + p))
  failed=$((failed + f))
  skipped=$((skipped + s))
}

# readme_command N: the text of the Nth fenced shell block (bash, sh, shell or console) of the README.
readme_command() {
  awk -v want="$1" '
    /^```/ { if (inside) inside = 0; else { inside = 1; n += /^```(bash|sh|shell|console)[ \t\r]*$/; mine = /^```(bash|sh|shell|console)[ \t\r]*$/ && n == want }; next }
    inside && mine { sub(/\r$/, ""); sub(/^\$ /, ""); print }' README.md
}

package_version() { sed -n 's:.*<Version>\(.*\)</Version>.*:\1:p' "$root/Directory.Build.props"; }

# operation_ids: the ids in what "operations" prints: one a line.
operation_ids() { awk 'NF { print $1 }'; }

# batch_line FILE: one request of a batch, on one line.
batch_line() { printf '%s\n' "$(tr -d '\r\n' < "$1")"; }

# have_linker: whether native programs can be linked; installs what is missing if it may.
have_linker() {
  linker_here && return 0
  if [[ $(id -u) == 0 ]] && command -v apt-get > /dev/null; then
    echo "      installing clang and zlib1g-dev"
    (apt-get update && apt-get install -y --no-install-recommends clang zlib1g-dev) > "$log" 2>&1 || tail -n 5 "$log"
  fi
  linker_here
}

linker_here() { command -v clang > /dev/null && [[ -e /usr/include/zlib.h ]]; }
