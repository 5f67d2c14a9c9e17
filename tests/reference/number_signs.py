"""number_signs.csv: the decimal and grouping signs of numbers in the locales of the page's languages.

Source: Unicode CLDR 47, as Babel 2.18.0 carries it (`Locale.number_symbols`, Latin digits).
Range: English of the United States; Spanish of Mexico, of the United States and of Latin America
(`es_419`), and that of Spain for contrast.
"""

from babel import Locale

from csv_table import write_table

LOCALES = ("en_US", "es_MX", "es_US", "es_419", "es_ES")
NAMES = {".": "point", ",": "comma"}


def write(directory):
    rows = []
    for name in LOCALES:
        signs = Locale.parse(name).number_symbols["latn"]
        rows.append((name, NAMES[signs["decimal"]], NAMES[signs["group"]]))
    write_table(directory / "number_signs.csv", ("locale", "decimal_sign", "grouping_sign"), rows)
