#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace pumpwright {

/// Places of the values in their order, from 1; values that are equal share the mean of their places.
std::vector<double> ranksOf(const std::vector<double>& values);

/// Spearman's rank correlation: the correlation of the ranks, −1…1. It asks whether one rises where the
/// other does, not whether by a straight line. Nothing of fewer than three pairs, or where all values on one
/// side are equal. Both lists are equally long.
std::optional<double> rankCorrelation(const std::vector<double>& one, const std::vector<double>& other);

/// The same of what ranksOf() gave for both.
std::optional<double> correlationOfRanks(const std::vector<double>& x, const std::vector<double>& y);

/// Rank correlations nearer to zero than this come about by chance in 19 of 20 studies with so many pairs in
/// which nothing is related: 1.96 standard errors of 1/√(pairs − 1), for more than about 30 pairs.
double chanceCorrelation(std::size_t pairs);

} // namespace pumpwright
