#!/bin/sh
# Installs what the tests in a browser need, where it is missing, and runs them: sh tests/browser/run.sh
set -eu
cd "$(dirname "$0")/../.."

missing=""
command -v chromium >/dev/null 2>&1 || missing="$missing chromium"
command -v npm >/dev/null 2>&1 || missing="$missing npm"
command -v pdftotext >/dev/null 2>&1 || missing="$missing poppler-utils"
python3 -c 'import ensurepip, venv' 2>/dev/null || missing="$missing python3-venv"
if [ -n "$missing" ]; then
  root=""
  [ "$(id -u)" = 0 ] || root="sudo"
  if command -v apt-get >/dev/null 2>&1; then
    $root apt-get update -qq
    # shellcheck disable=SC2086  # a list of packages
    DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq $missing
  else
    echo "please install:$missing" >&2
    exit 2
  fi
fi

[ -x .venv/bin/python ] || python3 -m venv .venv
.venv/bin/python -m pip install --quiet --disable-pip-version-check -e '.[test,browser]'
# Of the version and with the digest that package-lock.json has.
(cd tests/browser && npm ci --silent --no-audit --no-fund --ignore-scripts)

unset PYTHONDONTWRITEBYTECODE
PYTHONPYCACHEPREFIX="$PWD/.venv/compiled" .venv/bin/pytest tests/browser "$@"
