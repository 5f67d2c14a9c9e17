"""Writes a set of plan files and one CSV of what each of them must give.

The expected figures are worked out from the files as written, not from what they were
composed of.
"""

import json

from csv_table import write_table
from run_physics import COLUMNS, Run


def write_plan_set(directory, name, plans):
    folder = directory / name
    folder.mkdir(parents=True, exist_ok=True)
    rows = []
    for number, plan in enumerate(plans, start=1):
        text = json.dumps(plan, indent=1) + "\n"
        (folder / f"{number:02}.json").write_text(text, encoding="ascii", newline="\n")
        rows.append(Run(json.loads(text)).row(f"{number:02}"))
    write_table(directory / f"{name}.csv", COLUMNS, rows)
