# Makes the figures of checks/statistics.ts that are computed with R: Rscript statistics.R
library(survival)
options(digits = 15)

samples <- list(
  three = c(84.6, 86.1, 85.3),
  five = c(84.6, 86.1, 85.3, 84.9, 85.8),
  eleven = c(148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236),
  twenty = c(84.6, 86.1, 85.3, 84.9, 85.8, 85.1, 86.4, 84.2, 85.5, 85.0, 85.9, 84.8, 85.2, 86.0, 84.5, 85.4, 85.7, 84.7, 85.6, 91.2),
  ties = rep(c(1, 2, 3, 4, 5), each = 10),
  exponential = -log(1 - (1:100 - 0.5) / 100),
  logistic = qlogis((1:400 - 0.5) / 400)
)
for (name in names(samples)) {
  test <- shapiro.test(samples[[name]])
  cat(name, format(unname(test$statistic), digits = 12), format(test$p.value, digits = 9), "\n")
}

# Calibrations: days since the one before, found in or out; weeks of the grouped table.
fits <- function(label, from, to, count) {
  response <- Surv(ifelse(from == 0, NA, from), ifelse(is.infinite(to), NA, to), type = "interval2")
  tight <- survreg.control(rel.tolerance = 1e-13, maxiter = 200)
  e <- survreg(response ~ 1, weights = count, dist = "exponential", control = tight)
  w <- survreg(response ~ 1, weights = count, dist = "weibull", control = tight)
  cat(label, "exponential scale", exp(coef(e)), "logLik", e$loglik[2], "\n")
  cat(label, "weibull shape", 1 / w$scale, "scale", exp(coef(w)), "logLik", w$loglik[2], "\n")
}
weeks <- c(3, 6, 9, 12, 20, 27, 38.5, 49.5)
n <- c(4, 6, 14, 13, 22, 49, 18, 6)
g <- c(4, 5, 9, 8, 12, 20, 9, 2)
fits("weeks", c(weeks, rep(0, 8)), c(rep(Inf, 8), weeks), c(g, n - g + 1e-300))
d <- c(180, 180, 365, 365, 540, 540)
fits("days", c(180, 0, 365, 0, 540, 210), c(Inf, 180, Inf, 365, Inf, 540), c(9, 1, 14, 2, 5, 3))

# Ovarian cancer trial that comes with the package: exact and right-censored times.
o <- survreg(Surv(futime, fustat) ~ 1, ovarian, dist = "weibull", control = survreg.control(rel.tolerance = 1e-13))
cat("ovarian weibull shape", 1 / o$scale, "scale", exp(coef(o)), "logLik", o$loglik[2], "\n")
oe <- survreg(Surv(futime, fustat) ~ 1, ovarian, dist = "exponential", control = survreg.control(rel.tolerance = 1e-13))
cat("ovarian exponential scale", exp(coef(oe)), "logLik", oe$loglik[2], "\n")
cat("ovarian times", paste(ovarian$futime, ovarian$fustat, sep = ":"), "\n")

# Straight line with weights, and its prediction band.
x <- c(0, 1, 2, 3, 4); y <- c(0.3, 0.8, 1.0, 1.6, 2.1)
line <- lm(y ~ x)
print(summary(line)$coefficients)
print(predict(line, data.frame(x = 6), interval = "prediction"))
weighted <- lm(y ~ x, weights = c(1, 2, 4, 2, 1))
print(summary(weighted)$coefficients)
cat("sigma", summary(line)$sigma, summary(weighted)$sigma, "\n")
cat(R.version.string, "survival", as.character(packageVersion("survival")), "\n")
