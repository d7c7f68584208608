#include "core/study/rank_correlation.h"
#include "tests/support/catch.h"

#include <boost/math/statistics/bivariate_statistics.hpp>

#include <cmath>
#include <random>

using namespace pumpwright;
using Catch::WithinAbs;

// The worked example with intelligence quotients and hours of television that introductions to rank
// correlation use: ten pairs, Σd² = 194, ρ = 1 − 6·194/(10·99) = −29/165 (value from memory of such
// introductions; it follows from Spearman's formula for ranks without ties).
TEST_CASE("Spearman's coefficient is that of the worked example", "[study][rank-correlation]") {
    const std::vector<double> quotient{106, 100, 86, 101, 99, 103, 97, 113, 112, 110};
    const std::vector<double> hours{7, 27, 2, 50, 28, 29, 20, 12, 6, 17};
    CHECK_THAT(rankCorrelation(quotient, hours).value(), WithinAbs(-29.0 / 165, 1e-14));
}

TEST_CASE("any rising relation has 1, any falling one −1", "[study][rank-correlation]") {
    std::vector<double> x;
    std::vector<double> rising;
    std::vector<double> falling;
    for (int i = 0; i < 20; ++i) {
        x.push_back(i);
        rising.push_back(std::exp(i));
        falling.push_back(-std::sqrt(i));
    }
    CHECK_THAT(rankCorrelation(x, rising).value(), WithinAbs(1, 1e-14));
    CHECK_THAT(rankCorrelation(x, falling).value(), WithinAbs(-1, 1e-14));
}

TEST_CASE("equal values share the mean of their places", "[study][rank-correlation]") {
    CHECK(ranksOf({3, 1, 3, 2, 3}) == std::vector<double>{4, 1, 4, 2, 4});
}

TEST_CASE("what does not vary correlates with nothing", "[study][rank-correlation]") {
    CHECK_FALSE(rankCorrelation({1, 2, 3}, {5, 5, 5}).has_value());
    CHECK_FALSE(rankCorrelation({1, 2}, {1, 2}).has_value());
}

// Outside check: the correlation of the ranks by Boost.Math, with ties.
TEST_CASE("the correlation of ranks is Boost.Math's", "[study][rank-correlation]") {
    std::mt19937_64 random(20240607);
    std::vector<double> x;
    std::vector<double> y;
    for (int i = 0; i < 500; ++i) {
        x.push_back(static_cast<double>(random() % 40));
        y.push_back(x.back() + static_cast<double>(random() % 60));
    }
    CHECK_THAT(rankCorrelation(x, y).value(),
               WithinAbs(boost::math::statistics::correlation_coefficient(ranksOf(x), ranksOf(y)), 1e-12));
}

// Of unrelated values the coefficient has mean 0 and variance 1/(n − 1), whatever they are (Kendall and
// Gibbons, Rank Correlation Methods, from memory).
TEST_CASE("chance reaches beyond its bound in about one study of twenty", "[study][rank-correlation]") {
    std::mt19937_64 random(7);
    constexpr int kStudies = 2000;
    constexpr std::size_t kPairs = 60;
    int beyond = 0;
    for (int study = 0; study < kStudies; ++study) {
        std::vector<double> x;
        std::vector<double> y;
        for (std::size_t i = 0; i < kPairs; ++i) {
            x.push_back(static_cast<double>(random()));
            y.push_back(static_cast<double>(random()));
        }
        beyond += std::abs(rankCorrelation(x, y).value()) > chanceCorrelation(kPairs) ? 1 : 0;
    }
    // Binomial: 100 ± 4 standard deviations of 9.7.
    CHECK(beyond > 60);
    CHECK(beyond < 140);
}
