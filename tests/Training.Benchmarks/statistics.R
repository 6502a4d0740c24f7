# Reads a table of answers, times R on it, and prints "name value" lines. Arguments: file, repeats.
arguments <- commandArgs(TRUE)
repeats <- as.integer(arguments[2])
say <- function(name, value) cat(sprintf("%s %.17g\n", name, value), sep = "")
median_time <- function(work) {
  work()
  median(sapply(seq_len(repeats), function(turn) system.time(work())[["elapsed"]]))
}

say("time.read", median_time(function() read.csv(arguments[1])))
answers <- as.matrix(read.csv(arguments[1]))

by_psych <- function() suppressWarnings(psych::alpha(answers))

# Mean score of the best 27 % less that of the weakest; people tied at the border share its seats.
upper_lower <- function(total) {
  seats <- (27 * length(total) + 50) %/% 100
  mean_of_best <- function(score) {
    weight <- numeric(length(score))
    left <- seats
    for (value in sort(unique(score), decreasing = TRUE)) {
      band <- score == value
      weight[band] <- min(sum(band), left) / sum(band)
      left <- left - min(sum(band), left)
      if (left == 0) break
    }
    colSums(answers * weight) / seats
  }
  mean_of_best(total) - mean_of_best(-total)
}

by_base <- function() {
  total <- rowSums(answers)
  k <- ncol(answers)
  list(
    p = colMeans(answers),
    rest = sapply(seq_len(k), function(item) cor(answers[, item], total - answers[, item])),
    alpha = k / (k - 1) * (1 - sum(apply(answers, 2, var)) / var(total)),
    d = upper_lower(total))
}

say("time.psych", median_time(by_psych))
say("time.base", median_time(by_base))
psych <- by_psych()
base <- by_base()
say("alpha.psych", psych$total$raw_alpha)
say("alpha.base", base$alpha)
places <- seq_len(ncol(answers)) - 1
say(paste0("p.", places), psych$item.stats$mean)
say(paste0("r.rest.", places), psych$item.stats$r.drop)
say(paste0("r.total.", places), psych$item.stats$raw.r)
say(paste0("alpha.drop.", places), psych$alpha.drop$raw_alpha)
say(paste0("d.", places), base$d)
stopifnot(max(abs(base$p - psych$item.stats$mean)) < 1e-12, max(abs(base$rest - psych$item.stats$r.drop)) < 1e-10)
