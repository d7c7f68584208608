// Checked against Boost.Math: binomial_distribution with its Clopper-Pearson bounds, and ibeta.

#include "core/study/proportion.h"
#include "tests/support/catch.h"

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/special_functions/beta.hpp>

using namespace pumpwright;
using Catch::WithinAbs;
using Boost = boost::math::binomial_distribution<double>;

TEST_CASE("the interval of a share is that of Boost.Math", "[study][proportion]") {
    constexpr double kTail = 0.025;
    constexpr double kTolerance = 1e-9; // both find it by iteration
    for (const std::size_t of : {1U, 2U, 10U, 200U, 10000U, 1000000U}) {
        for (const std::size_t count :
             {std::size_t{0}, std::size_t{1}, of / 20, of / 3, of / 2, of - of / 10, of - 1, of}) {
            CAPTURE(count, of);
            const Proportion found = proportion(count, of);
            const auto n = static_cast<double>(of);
            const auto k = static_cast<double>(count);
            CHECK_THAT(found.low, WithinAbs(Boost::find_lower_bound_on_p(n, k, kTail), kTolerance));
            CHECK_THAT(found.high, WithinAbs(Boost::find_upper_bound_on_p(n, k, kTail), kTolerance));
            CHECK_THAT(found.share, WithinAbs(k / n, 1e-15));
        }
    }
}

TEST_CASE("the incomplete beta function is that of Boost.Math", "[study][proportion]") {
    for (const double a : {0.5, 1.0, 3.0, 50.0, 4000.0}) {
        for (const double b : {0.5, 1.0, 7.0, 900.0}) {
            for (const double x : {0.0, 1e-6, 0.02, 0.3, 0.5, 0.8, 0.999, 1.0}) {
                CAPTURE(a, b, x);
                CHECK_THAT(incompleteBeta(a, b, x), WithinAbs(boost::math::ibeta(a, b, x), 1e-10));
            }
        }
    }
}

TEST_CASE("none of none may be any share", "[study][proportion]") {
    CHECK(proportion(0, 0).low == 0);
    CHECK(proportion(0, 0).high == 1);
}
