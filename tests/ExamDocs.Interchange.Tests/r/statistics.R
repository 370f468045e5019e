# Reads lifetimes, counts and proportions (CSV with a heading), and writes what R and its package survival make of them.
# Usage: Rscript statistics.R LIFETIMES COUNTS
suppressPackageStartupMessages(library(survival))
given <- commandArgs(trailingOnly = TRUE)
say <- function(...) cat(paste(sapply(list(...), function(v) if (is.numeric(v)) format(v, digits = 17) else v), collapse = ","), "\n", sep = "")
lives <- read.csv(given[1])
for (name in unique(lives$set)) {
  set <- lives[lives$set == name, ]
  for (g in unique(set$group)) {
    one <- set[set$group == g, ]
    fit <- survfit(Surv(entry, time, event) ~ 1, data = one, conf.type = "log-log")
    s <- summary(fit)
    for (i in seq_along(s$time))
      say("step", name, g, s$time[i], s$n.risk[i], s$n.event[i], s$surv[i], s$std.err[i], s$lower[i], s$upper[i])
    half <- quantile(fit, 0.5)
    say("median", name, g, half$quantile, half$lower, half$upper)
  }
  if (all(set$entry == 0)) {
    test <- survdiff(Surv(time, event) ~ group, data = set)
    say("logrank", name, test$chisq, pchisq(test$chisq, 1, lower.tail = FALSE), test$exp[1], test$exp[2])
  }
}
counts <- read.csv(given[2])
for (i in seq_len(nrow(counts))) {
  wilson <- suppressWarnings(prop.test(counts$count[i], counts$total[i], correct = FALSE))$conf.int
  garwood <- poisson.test(counts$count[i])$conf.int
  say("count", counts$count[i], counts$total[i], wilson[1], wilson[2], garwood[1], garwood[2])
}
