"""Writes all check sets, or checks that the committed ones are what the scripts write.

    python tests/reference/generate.py --out DIR
    python tests/reference/generate.py --check

Of the bands the check works out two plans only, of the runs that get wet two too; all of them
where ELBOWROOM_FULL=1.
"""

import argparse
import math
import os
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True

import air
import bands
import bends
import friction
import heat
import leaks
import low_discrepancy
import number_signs
import operating_points
import runs
import turn_costs

SETS = (friction, air, bends, low_discrepancy, runs, operating_points, leaks, turn_costs,
        number_signs)
COMMITTED = Path(__file__).resolve().parent / "data"

# On one kind of processor the files come out identical to the byte. Without fused
# multiply-add a few fields move by one unit in the last place, which must not read as a
# change; the tightest use of a set allows 1e-6. The absolute part is for a dew point of
# 0 degC, which is a difference of two kelvin figures.
LAST_DIGITS_RELATIVE = 1e-10
LAST_DIGITS_ABSOLUTE = 1e-12


def write_all(directory, bands_of_others_from=None):
    """Bands come last: they are checked against the other sets first."""
    for one_set in SETS:
        one_set.write(directory)
    heat.write(directory, bands_of_others_from)
    bands.write(directory, bands_of_others_from)


def files_in(directory):
    return {
        path.relative_to(directory).as_posix(): path.read_bytes()
        for path in directory.rglob("*")
        if path.is_file()
    }


def is_same_number(committed, regenerated):
    """The last digits of a sine or a logarithm differ between processors."""
    try:
        numbers = float(committed), float(regenerated)
    except ValueError:
        return False
    return math.isclose(*numbers, rel_tol=LAST_DIGITS_RELATIVE, abs_tol=LAST_DIGITS_ABSOLUTE)


def differences_in_table(name, committed, regenerated):
    """Fields that differ by more than the last digits, in words."""
    old_rows = [line.split(",") for line in committed.split("\n")]
    new_rows = [line.split(",") for line in regenerated.split("\n")]
    if old_rows[0] != new_rows[0]:
        yield f"{name}: committed columns {old_rows[0]}, regenerated {new_rows[0]}"
        return
    if len(old_rows) != len(new_rows):
        yield f"{name}: committed {len(old_rows)} lines, regenerated {len(new_rows)}"
    for number, (old_row, new_row) in enumerate(zip(old_rows, new_rows), start=1):
        if len(old_row) != len(new_row):
            yield f"{name}, line {number}: {len(old_row)} fields, regenerated {len(new_row)}"
        for column, old, new in zip(old_rows[0], old_row, new_row):
            if old != new and not is_same_number(old, new):
                yield f"{name}, line {number}, {column}: committed {old}, regenerated {new}"


def differences_in_text(name, committed, regenerated):
    old_lines, new_lines = committed.split("\n"), regenerated.split("\n")
    for number, (old, new) in enumerate(zip(old_lines, new_lines), start=1):
        if old != new:
            yield f"{name}, line {number}: committed {old.strip()}, regenerated {new.strip()}"
    if len(old_lines) != len(new_lines):
        yield f"{name}: committed {len(old_lines)} lines, regenerated {len(new_lines)}"


def differences(committed, regenerated):
    for name in sorted(committed.keys() | regenerated.keys()):
        if name not in regenerated:
            yield f"{name}: committed, but no script writes it"
        elif name not in committed:
            yield f"{name}: written by a script, but not committed"
        elif committed[name] != regenerated[name]:
            compare = differences_in_table if name.endswith(".csv") else differences_in_text
            yield from compare(name, committed[name].decode(), regenerated[name].decode())


def check():
    with tempfile.TemporaryDirectory() as directory:
        full = os.environ.get("ELBOWROOM_FULL") == "1"
        write_all(Path(directory), None if full else COMMITTED)
        committed, regenerated = files_in(COMMITTED), files_in(Path(directory))
        found = list(differences(committed, regenerated))
    for difference in found:
        print(f"check set differs: {difference}", file=sys.stderr)
    identical = sum(committed[name] == regenerated.get(name) for name in committed)
    print(
        f"check sets: {len(committed)} committed files, {identical} identical to the byte, "
        f"{len(found)} differences beyond the last digits"
    )
    return 1 if found or not committed else 0


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    action = parser.add_mutually_exclusive_group(required=True)
    action.add_argument("--out", type=Path, metavar="DIR", help="write all sets into DIR")
    action.add_argument("--check", action="store_true", help="compare with the committed sets")
    arguments = parser.parse_args()
    if arguments.check:
        return check()
    write_all(arguments.out)
    return 0


if __name__ == "__main__":
    sys.exit(main())
