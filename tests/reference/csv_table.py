"""Writes one check set as a CSV: a header with units in its names, then plain rows.

A number is written as the shortest text that reads back as the same double
(at most 17 significant digits), a zero without a sign; None is an empty field.
"""


def field_text(value):
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, int):
        return str(value)
    return repr(float(value) + 0.0)


def write_table(path, columns, rows):
    path.parent.mkdir(parents=True, exist_ok=True)
    lines = [",".join(columns)]
    for row in rows:
        assert len(row) == len(columns), f"{path.name}: a row has {len(row)} fields"
        lines.append(",".join(field_text(value) for value in row))
    path.write_text("\n".join(lines) + "\n", encoding="ascii", newline="\n")
