# Reference figures for pool_metafor_test.cpp, from R and its package metafor.
# Rscript pool_reference.R EFFECTS COUNTS OUTPUT
suppressWarnings(suppressMessages(library(metafor)))
arguments <- commandArgs(trailingOnly = TRUE)
digits <- function(x) formatC(x, digits = 12, format = "e")

effects <- read.csv(arguments[1])
counts <- read.csv(arguments[2])
out <- file(arguments[3], "w")
writeLines("group,method,mean,standard_error,tau,q,i_squared,ci_low,ci_high,pi_low,pi_high", out)

fit <- function(d, method, step) {
  rma(value, variance, data = d, method = method,
      control = list(threshold = 1e-12, maxiter = 100000, stepadj = step))
}
for (group in unique(effects$group)) {
  d <- effects[effects$group == group, ]
  for (method in c("REML", "DL", "PM")) {
    r <- tryCatch(fit(d, method, 1), error = function(e) fit(d, method, 0.3))
    p <- predict(r)
    writeLines(paste(c(group, method, digits(c(r$b, r$se, sqrt(r$tau2), r$QE, r$I2 / 100,
                                               r$ci.lb, r$ci.ub, p$pi.lb, p$pi.ub))),
                     collapse = ","), out)
  }
}

# The binomial-normal model by R's own quadrature and optimiser: nothing of it is shared with the
# program. log(tau) is searched, so tau = 0 is only approached.
log_marginal <- function(x, n, mean, tau) {
  f <- function(z) x * (mean + tau * z) - n * log1p(exp(mean + tau * z)) - z^2 / 2
  top <- optimize(f, c(-30, 30), maximum = TRUE, tol = 1e-10)
  p <- plogis(mean + tau * top$maximum)
  width <- 1 / sqrt(1 + tau^2 * n * p * (1 - p))
  # Piece by piece: a count of none or all makes one side of the integrand a wall.
  ends <- sort(unique(c(-14, pmin(14, pmax(-14, top$maximum + width * c(-9, -4, -2, 0, 2, 4, 9))), 14)))
  scaled <- function(z) exp(f(z) - top$objective)
  area <- sum(mapply(function(a, b) integrate(scaled, a, b, rel.tol = 1e-11, abs.tol = 1e-14,
                                              subdivisions = 2000)$value,
                     head(ends, -1), tail(ends, -1)))
  top$objective + log(area / sqrt(2 * pi)) + lchoose(n, x)
}
for (group in unique(counts$group)) {
  d <- counts[counts$group == group, ]
  loss <- function(par) {
    -sum(mapply(log_marginal, d$events, d$n, MoreArgs = list(mean = par[1], tau = exp(par[2]))))
  }
  start <- c(qlogis((sum(d$events) + 0.5) / (sum(d$n) + 1)), log(0.5))
  best <- optim(start, loss, method = "Nelder-Mead", control = list(reltol = 1e-14, maxit = 5000))
  best <- optim(best$par, loss, method = "BFGS", control = list(reltol = 1e-15, maxit = 1000))
  writeLines(paste(c(group, "GLMM", digits(c(best$par[1], 0, exp(best$par[2]), -best$value,
                                             0, 0, 0, 0, 0))), collapse = ","), out)
}
close(out)
