#!/usr/bin/env bash
# Checks the JSON that the program prints and reads with its own JSON Schemas.
# Usage: answers.sh HOLDBAND SOURCES. Exits with 77 if the validator is missing.
set -euo pipefail

here=$(dirname -- "${BASH_SOURCE[0]}")
# shellcheck source=/dev/null
source "$here/../needs.sh"
needs python3
python3 -c "import jsonschema" 2>/dev/null || is_missing python3-jsonschema
exec python3 "$here/answers.py" "$@"
