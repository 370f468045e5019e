"""Reads lifetimes, counts and tables (CSV with a heading), and writes what statsmodels and SciPy make of them.

Usage: counted.py LIFETIMES COUNTS TABLES
"""
import csv
import sys

import numpy as np
from scipy.stats import theilslopes
from statsmodels.duration.survfunc import SurvfuncRight, survdiff
from statsmodels.stats.inter_rater import cohens_kappa
from statsmodels.stats.proportion import proportion_confint


def rows(file):
    with open(file, newline="") as f:
        return list(csv.DictReader(f))


def say(*what):
    print(",".join(repr(float(w)) if isinstance(w, (float, int, np.number)) else str(w) for w in what))


lives = rows(sys.argv[1])
for name in dict.fromkeys(r["set"] for r in lives):
    of = [r for r in lives if r["set"] == name]
    entry, time, event = (np.array([float(r[k]) for r in of]) for k in ("entry", "time", "event"))
    group = np.array([r["group"] for r in of])
    for g in dict.fromkeys(group):
        at = group == g
        fit = SurvfuncRight(time[at], event[at], entry=entry[at] if entry.any() else None)
        for t, n, d, s, e in zip(fit.surv_times, fit.n_risk, fit.n_events, fit.surv_prob, fit.surv_prob_se):
            if d > 0:
                say("step", name, g, t, n, d, s, e)
    chi, p = survdiff(time, event, group, entry=entry if entry.any() else None)
    say("logrank", name, chi, p)
    # Times against times of entry and group are points as good as any for a slope.
    say("slope", name, theilslopes(time, np.arange(len(time)))[0])
for r in rows(sys.argv[2]):
    low, high = proportion_confint(int(r["count"]), int(r["total"]), method="wilson")
    say("count", r["count"], r["total"], low, high)
for r in rows(sys.argv[3]):
    a, b, c, d = (int(r[k]) for k in "abcd")
    say("kappa", f"{a} {b} {c} {d}", cohens_kappa([[a, b], [c, d]]).kappa)
