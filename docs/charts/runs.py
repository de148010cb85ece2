"""Makes the size runs that the starters come with.

    python3 docs/charts/runs.py workbench/src/main/resources/org/hemwright/charts

Each run is drawn up from one number a size, by the rules written here; docs/charts.md says them in
words, and whom each run fits. What the body survey holds for men is taken from the derived figures
that the product carries (pattern/.../body/survey.csv). Needs nothing but Python 3.
"""

import csv
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
SURVEY = HERE.parent.parent / "pattern/src/main/resources/org/hemwright/pattern/body/survey.csv"


def near(value):
    """Rounded to half a millimetre, halves up; values are in cm."""
    return int(value * 20 + 0.5 + 1e-9) / 20


def from_survey(sex):
    """For each measurement: its length at a chest (cm) on the line of regression in the survey."""
    with open(SURVEY, encoding="utf-8") as lines:
        rows = {
            row["name"]: row
            for row in csv.DictReader(line for line in lines if not line.startswith("#"))
            if row["sex"] == sex
        }
    chest = rows["bust"]

    def expected(name):
        row = rows[name]
        slope = float(row["r_bust"]) * float(row["deviation"]) / float(chest["deviation"])
        return lambda b: (float(row["mean"]) + slope * (b * 10 - float(chest["mean"]))) / 10

    return expected


def over(b, start):
    return max(0, b - start)


WOMEN = {
    "height": lambda b: 168,
    "bust": lambda b: b,
    "waist": lambda b: b - 16 + 0.1 * over(b, 104),
    "hip": lambda b: b + 8 - 0.1 * over(b, 104),
    "neck base": lambda b: 34.7 + 0.17 * (b - 80),
    "shoulder": lambda b: 11.95 + 0.0424 * (b - 80),
    "back width": lambda b: 33 + 0.241 * (b - 80),
    "scye depth": lambda b: 18.2 + 0.094 * (b - 80),
    "upper arm": lambda b: 25.8 + 0.306 * (b - 80),
    "wrist": lambda b: 15 + 0.06 * (b - 80),
    "arm length": lambda b: 57.2 + 0.04 * (b - 80),
    "back length": lambda b: 39.9 + 0.07 * (b - 80),
    "front length": lambda b: 43.6 + 0.13 * (b - 80),
    "bust height": lambda b: 24.6 + 0.17 * (b - 80),
    "bust span": lambda b: 16.8 + 0.13 * (b - 80),
    "head": lambda b: 54.8 + 0.03 * (b - 80),
    "hip depth": lambda b: 19.6 + 0.035 * (b - 80),
    "waist to knee": lambda b: 57.5 + 0.03 * (b - 80),
    "body rise": lambda b: 26 + 0.11 * (b - 80),
    "inside leg": lambda b: 77.5 + 0.02 * (b - 80),
}

PLUS = {
    "height": lambda b: 168,
    "bust": lambda b: b,
    "waist": lambda b: b - 14 + 0.06 * (b - 110),
    "hip": lambda b: b + 7.5 - 0.05 * (b - 110),
    "neck base": lambda b: 39.8 + 0.11 * (b - 110),
    "shoulder": lambda b: 13.1 + 0.02 * (b - 110),
    "back width": lambda b: 39.6 + 0.16 * (b - 110),
    "scye depth": lambda b: 21.2 + 0.075 * (b - 110),
    "upper arm": lambda b: 35.4 + 0.27 * (b - 110),
    "wrist": lambda b: 16.9 + 0.05 * (b - 110),
    "arm length": lambda b: 58.3 + 0.02 * (b - 110),
    "back length": lambda b: 42 + 0.03 * (b - 110),
    "front length": lambda b: 47.5 + 0.1 * (b - 110),
    "bust height": lambda b: 29.7 + 0.13 * (b - 110),
    "bust span": lambda b: 20.7 + 0.11 * (b - 110),
    "head": lambda b: 55.8 + 0.02 * (b - 110),
    "hip depth": lambda b: 20.7 + 0.03 * (b - 110),
    "waist to knee": lambda b: 58.4 + 0.02 * (b - 110),
    "body rise": lambda b: 29.3 + 0.09 * (b - 110),
    "inside leg": lambda b: 77.8,
}


def men():
    survey = from_survey("men")
    return {
        "height": survey("height"),
        "chest": lambda c: c,
        "waist": lambda c: c - 14 + 0.15 * over(c, 108),
        "hip": survey("hip"),
        "neck base": survey("neck_base"),
        "shoulder": survey("shoulder"),
        "back width": lambda c: 37.6 + 0.2 * (c - 88),
        "scye depth": lambda c: 22 + 0.1 * (c - 88),
        "upper arm": lambda c: 27.4 + 0.3 * (c - 88),
        "wrist": survey("wrist"),
        "arm length": survey("arm_length"),
        "back length": lambda c: 43.6 + 0.06 * (c - 88),
        "head": survey("head"),
        "hip depth": lambda c: 20 + 0.03 * (c - 88),
        "body rise": lambda c: 26.4 + 0.08 * (c - 88),
        "inside leg": survey("inside_leg"),
    }


CHILDREN = {
    "height": lambda h: h,
    "chest": lambda h: 53 + (h - 92) / 3 + over(h, 128) / 6,
    "waist": lambda h: 51 + 0.2 * (h - 92),
    "hip": lambda h: 55 + 0.36 * (h - 92) + 0.19 * over(h, 128),
    "neck base": lambda h: 27.5 + 0.1 * (h - 92),
    "shoulder": lambda h: 7.8 + 0.055 * (h - 92),
    "back width": lambda h: 22.4 + 0.15 * (h - 92),
    "scye depth": lambda h: 12.2 + 0.09 * (h - 92),
    "upper arm": lambda h: 16.5 + 0.11 * (h - 92),
    "wrist": lambda h: 11.6 + 0.05 * (h - 92),
    "arm length": lambda h: 31 + 0.37 * (h - 92),
    "back length": lambda h: 22.4 + 0.2 * (h - 92),
    "head": lambda h: 49.5 + 0.06 * (h - 92),
    "hip depth": lambda h: 11.5 + 0.1 * (h - 92),
    "body rise": lambda h: 17.6 + 0.13 * (h - 92),
    "inside leg": lambda h: 37.5 + 0.55 * (h - 92),
}

RUNS = {
    "women": (
        "Women of about 168 cm, bust 80 to 116 cm.",
        [(6 + 2 * i, 80 + 4 * i) for i in range(7)] + [(20, 110), (22, 116)],
        WOMEN,
    ),
    "plus": (
        "Women of about 168 cm and larger, bust 110 to 158 cm.",
        [(20 + 2 * i, 110 + 6 * i) for i in range(9)],
        PLUS,
    ),
    "men": (
        "Men, chest 88 to 124 cm; the size is the chest.",
        [(88 + 4 * i, 88 + 4 * i) for i in range(10)],
        men(),
    ),
    "children": (
        "Children by height, 92 to 152 cm; the size is the height.",
        [(92 + 6 * i, 92 + 6 * i) for i in range(11)],
        CHILDREN,
    ),
}


def plain(value):
    return "%g" % round(value, 2)


def main(folder):
    for name, (words, sizes, rules) in RUNS.items():
        lines = ["# " + words]
        lines.append(
            "# Our own run: docs/charts.md says how it was made. Measure the people you draft for."
        )
        lines.append(",".join(["size"] + [each + " (cm)" for each in rules]))
        for size, key in sizes:
            cells = [str(size)] + [plain(near(rule(key))) for rule in rules.values()]
            lines.append(",".join(cells))
        path = pathlib.Path(folder) / (name + ".csv")
        path.write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1])
