#!/bin/sh
# Installs what the tests need, where it is missing, and runs them all: sh tests/run.sh
set -eu
cd "$(dirname "$0")/.."

missing=""
command -v ngspice >/dev/null 2>&1 || missing="$missing ngspice"
command -v gnucap >/dev/null 2>&1 || missing="$missing gnucap"
command -v pdftotext >/dev/null 2>&1 || missing="$missing poppler-utils"
ldconfig -p 2>/dev/null | grep -q libngspice || missing="$missing libngspice0"
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
.venv/bin/python -m pip install --quiet --disable-pip-version-check -e '.[test]'

.venv/bin/ruff check compiler tests
.venv/bin/ruff format --check --quiet compiler tests
.venv/bin/mypy
PYTHONPATH=compiler .venv/bin/lint-imports --no-logo
# Simulators are required here: where they are missing a test fails instead of being skipped.
# Modules are kept compiled, as an installation has them, also where the environment says otherwise: a hundred tests
# start a command of their own.
unset PYTHONDONTWRITEBYTECODE
CI=true PYTHONPYCACHEPREFIX="$PWD/.venv/compiled" .venv/bin/pytest -n 2 --dist worksteal "$@"
