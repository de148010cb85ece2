"""Makes the derived figures of the body survey that the product carries.

    python3 docs/survey/figures.py FOLDER > pattern/src/main/resources/org/hemwright/pattern/body/survey.csv

FOLDER holds ansur2_female.csv and ansur2_male.csv (one person a row, millimetres): the public
release of the 2012 US Army Anthropometric Survey. Only means, deviations and correlations leave
it, each sex on its own. Needs nothing but Python 3.
"""

import csv
import math
import pathlib
import sys

# Our name, the survey's column, and how the survey's way of measuring compares with a pattern's.
MEASURES = [
    ("height", "stature", "alike"),
    ("bust", "chestcircumference", "alike"),
    ("waist", "waistcircumference", "larger"),
    ("hip", "buttockcircumference", "alike"),
    ("thigh", "thighcircumference", "alike"),
    # Just above the knee.
    ("knee", "lowerthighcircumference", "larger"),
    ("calf", "calfcircumference", "alike"),
    ("ankle", "anklecircumference", "alike"),
    ("heel", "heelanklecircumference", "alike"),
    ("neck", "neckcircumference", "alike"),
    ("neck_base", "neckcircumferencebase", "alike"),
    ("head", "headcircumference", "alike"),
    ("upper_arm", "bicepscircumferenceflexed", "larger"),
    ("wrist", "wristcircumference", "alike"),
    ("hand", "handcircumference", "alike"),
    ("shoulder", "shoulderlength", "alike"),
    # Across the back from fold to fold of the armpits, as the name is understood here; the survey's
    # own definition could not be read. It comes out larger than a pattern's back width.
    ("back_width", "interscyei", "larger"),
    ("arm_length", "sleeveoutseam", "alike"),
    ("back_length", "waistbacklength", "larger"),
    ("inside_leg", "crotchheight", "alike"),
    ("trunk_girth", "verticaltrunkcircumferenceusa", "alike"),
]

# What it cannot give. The scye depth, the body rise, and what runs from the waist down (hip depth,
# waist to knee, outside leg) start or end at the navel or at the fold of the armpit in the survey, so
# that its heights differ from a pattern's by a stretch that varies; the front length is measured
# seated; the height and the span of the bust, the under-bust and the upper chest have no column.

HEAD = """\
# Derived from the 2012 US Army Anthropometric Survey (ANSUR II), working databases, public release
# of 14 April 2017, Natick Soldier Research, Development and Engineering Center; methods in
# NATICK/TR-15/007, measuring in NATICK/TR-11/017. Serving adults of 17 to 58 years.
# Made by docs/survey/figures.py. mm; log columns are natural logarithms of millimetres; r_NAME is
# the correlation of the logarithms. Deviations are those of a sample (n - 1)."""


def mean(values):
    return math.fsum(values) / len(values)


def deviation(values):
    middle = mean(values)
    return math.sqrt(math.fsum((v - middle) ** 2 for v in values) / (len(values) - 1))


def correlation(a, b):
    ma, mb = mean(a), mean(b)
    shared = math.fsum((x - ma) * (y - mb) for x, y in zip(a, b)) / (len(a) - 1)
    return shared / (deviation(a) * deviation(b))


def main(folder):
    print(HEAD)
    names = [name for name, _, _ in MEASURES]
    heading = "sex,name,column,likeness,count,mean,deviation,log_mean,log_deviation".split(",")
    print(",".join(heading + ["r_" + name for name in names]))
    for sex, file in (("women", "ansur2_female.csv"), ("men", "ansur2_male.csv")):
        with open(pathlib.Path(folder) / file, newline="", encoding="utf-8") as lines:
            people = list(csv.DictReader(lines))
        plain = {n: [float(p[column]) for p in people] for n, column, _ in MEASURES}
        logs = {n: [math.log(v) for v in values] for n, values in plain.items()}
        for name, column, likeness in MEASURES:
            row = [sex, name, column, likeness, str(len(people))]
            row += ["%.3f" % mean(plain[name]), "%.3f" % deviation(plain[name])]
            row += ["%.6f" % mean(logs[name]), "%.6f" % deviation(logs[name])]
            row += ["%.5f" % correlation(logs[name], logs[other]) for other in names]
            print(",".join(row))


if __name__ == "__main__":
    main(sys.argv[1])
