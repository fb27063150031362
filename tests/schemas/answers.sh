#!/usr/bin/env bash
# Holds what the program prints and reads as JSON against its own JSON Schemas.
# Usage: answers.sh HOLDBAND SOURCES. Ends with 77 where the validator is missing.
set -euo pipefail

here=$(dirname -- "${BASH_SOURCE[0]}")
# shellcheck source=/dev/null
source "$here/../needs.sh"
needs python3
python3 -c "import jsonschema" 2>/dev/null || is_missing python3-jsonschema
exec python3 "$here/answers.py" "$@"
