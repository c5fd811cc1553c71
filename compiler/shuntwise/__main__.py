"""`python -m shuntwise` is the same as `shuntwise`."""

import sys

from shuntwise.cli.main import main

sys.exit(main())
