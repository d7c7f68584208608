#include "core/study/rank_correlation.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pumpwright {

std::vector<double> ranksOf(const std::vector<double>& values) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return values[i]; });
    std::vector<double> ranks(values.size());
    for (std::size_t begin = 0; begin < order.size();) {
        std::size_t end = begin;
        while (end < order.size() && values[order[end]] == values[order[begin]]) {
            ++end;
        }
        const double shared = static_cast<double>(begin + 1 + end) / 2;
        for (; begin < end; ++begin) {
            ranks[order[begin]] = shared;
        }
    }
    return ranks;
}

std::optional<double> rankCorrelation(const std::vector<double>& one, const std::vector<double>& other) {
    return correlationOfRanks(ranksOf(one), ranksOf(other));
}

std::optional<double> correlationOfRanks(const std::vector<double>& x, const std::vector<double>& y) {
    constexpr std::size_t kFewest = 3;
    if (x.size() < kFewest) {
        return std::nullopt;
    }
    const double mean = static_cast<double>(x.size() + 1) / 2;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - mean) * (x[i] - mean);
        yy += (y[i] - mean) * (y[i] - mean);
        xy += (x[i] - mean) * (y[i] - mean);
    }
    return xx > 0 && yy > 0 ? std::optional(xy / std::sqrt(xx * yy)) : std::nullopt;
}

double chanceCorrelation(std::size_t pairs) {
    constexpr double kTwoSided95 = 1.959964;
    return pairs > 1 ? kTwoSided95 / std::sqrt(static_cast<double>(pairs - 1)) : 1;
}

} // namespace pumpwright
