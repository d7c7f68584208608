#include "core/study/least_squares.h"
#include "tests/support/catch.h"

#include <cmath>
#include <random>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

using Points = std::vector<std::vector<double>>;

Residuals each(std::function<std::vector<double>(const std::vector<double>&)> residuals) {
    return [residuals = std::move(residuals)](const Points& points) {
        Points all;
        for (const std::vector<double>& point : points) {
            all.push_back(residuals(point));
        }
        return std::optional(all);
    };
}

} // namespace

// Closed form: for a straight line through x = −1, 0, 1 with residual standard deviation s the errors are
// s/√3 for the level and s/√2 for the slope, and they are not correlated.
TEST_CASE("errors of a straight line are those of the closed form", "[study][least-squares]") {
    const LeastSquares found =
        leastSquares({{0}, {0}}, each([](const std::vector<double>& b) {
                         return std::vector<double>{1 - (b[0] - b[1]), 4 - b[0], 4 - (b[0] + b[1])};
                     }));
    CHECK_THAT(found.values[0], WithinRel(3, 1e-8));
    CHECK_THAT(found.values[1], WithinRel(1.5, 1e-8));
    CHECK_THAT(found.squares, WithinRel(1.5, 1e-8)); // residuals −0.5, 1, −0.5; one degree of freedom
    const double s = std::sqrt(1.5);
    CHECK_THAT(found.standardErrors[0].value(), WithinRel(s / std::sqrt(3.0), 1e-6));
    CHECK_THAT(found.standardErrors[1].value(), WithinRel(s / std::sqrt(2.0), 1e-6));
    CHECK_THAT(found.correlations[0][1], WithinAbs(0, 1e-8));
    CHECK_THAT(found.correlations[1][1], WithinAbs(1, 1e-12));
}

TEST_CASE("a value stays within its bounds, and one that ends there has no error", "[study][least-squares]") {
    const LeastSquares found = leastSquares({{1, 0.5, 2}, {1, 0, 10}}, each([](const std::vector<double>& b) {
                                                return std::vector<double>{b[0] - 5, b[1] - 3, b[1] - 4};
                                            }));
    CHECK_THAT(found.values[0], WithinRel(2, 1e-3));
    CHECK(found.values[0] <= 2);
    CHECK_FALSE(found.standardErrors[0].has_value());
    CHECK_THAT(found.values[1], WithinRel(3.5, 1e-6));
    CHECK(found.standardErrors[1].has_value());
}

TEST_CASE("a value on which nothing depends has no error", "[study][least-squares]") {
    const LeastSquares found =
        leastSquares({{1, 0.1, 10}, {1, 0.1, 10}}, each([](const std::vector<double>& b) {
                         return std::vector<double>{b[0] - 5, b[0] - 4, b[0] - 3};
                     }));
    CHECK_THAT(found.values[0], WithinRel(4, 1e-6));
    CHECK_FALSE(found.standardErrors[1].has_value());
    CHECK(found.values[1] == 1);
}

TEST_CASE("where nothing matters, everything stays as it is", "[study][least-squares]") {
    const LeastSquares found = leastSquares({{2, 0.1, 10}}, each([](const auto&) {
                                                return std::vector<double>{1, 1};
                                            }));
    CHECK(found.status == LeastSquares::Status::Converged);
    CHECK(found.values == std::vector<double>{2});
}

TEST_CASE("values that only their product decides about are wholly correlated", "[study][least-squares]") {
    const LeastSquares found = leastSquares(
        {{1, 0.1, 10}, {2, 0.1, 10}}, each([](const std::vector<double>& b) {
            return std::vector<double>{b[0] * b[1] - 6, 2 * b[0] * b[1] - 11.9, b[0] * b[1] - 6.1};
        }));
    CHECK_THAT(found.values[0] * found.values[1], WithinAbs(6, 0.1));
    CHECK_THAT(found.correlations[0][1], WithinAbs(-1, 1e-6));
}

TEST_CASE("a search that is ended says so", "[study][least-squares]") {
    int calls = 0;
    const LeastSquares found = leastSquares({{1}}, [&](const Points& points) -> std::optional<Points> {
        if (++calls > 2) {
            return std::nullopt;
        }
        Points all;
        for (const std::vector<double>& point : points) {
            all.push_back({point[0] - 5, 1});
        }
        return all;
    });
    CHECK(found.status == LeastSquares::Status::Cancelled);
}

// 95 % of intervals of 1.96 standard errors hold the truth, where the errors are normal and many.
TEST_CASE("standard errors hold what they state", "[study][least-squares]") {
    std::mt19937_64 random(11);
    std::normal_distribution<double> noise(0, 0.05);
    constexpr int kRuns = 400;
    int within = 0;
    for (int run = 0; run < kRuns; ++run) {
        std::vector<double> measured;
        for (int i = 0; i < 40; ++i) {
            measured.push_back(3 * std::exp(-0.1 * i) + noise(random));
        }
        const LeastSquares found =
            leastSquares({{1, 0.1, 10}, {0.3, 0.01, 1}}, each([&](const auto& b) {
                             std::vector<double> residuals;
                             for (std::size_t i = 0; i < measured.size(); ++i) {
                                 const auto t = static_cast<double>(i);
                                 residuals.push_back(b[0] * std::exp(-b[1] * t) - measured[i]);
                             }
                             return residuals;
                         }));
        within += std::abs(found.values[1] - 0.1) < 1.96 * found.standardErrors[1].value() ? 1 : 0;
    }
    CHECK(within > 0.95 * kRuns - 4 * std::sqrt(kRuns * 0.95 * 0.05)); // binomial, four standard deviations
}
