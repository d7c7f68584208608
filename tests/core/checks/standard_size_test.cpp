#include "core/checks/standard_size.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace pumpwright;

TEST_CASE("fuse sizes are those that carry a colour", "[checks][sizes]") {
    // ISO 8820-3 as printed with its colours: 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40 A.
    CHECK(*fuseAtLeast_A(5) == Approx(5));
    CHECK(*fuseAtLeast_A(5.01) == Approx(7.5));
    CHECK(*fuseAtMost_A(29.9) == Approx(25));
    CHECK(*fuseAtMost_A(30) == Approx(30));
    CHECK_FALSE(fuseAtLeast_A(500).has_value());
    CHECK_FALSE(fuseAtMost_A(0.5).has_value());
}

TEST_CASE("the next wire up is larger, also from a gauge between two sizes", "[checks][sizes]") {
    CHECK(*nextWireArea_m2(1.5e-6) == Approx(2.5e-6));
    CHECK(*nextWireArea_m2(1.5000001e-6) == Approx(2.5e-6));
    CHECK(*nextWireArea_m2(2.081e-6) == Approx(2.5e-6));
    CHECK_FALSE(nextWireArea_m2(25e-6).has_value());
}

TEST_CASE("sizes are listed smallest first", "[checks][sizes]") {
    CHECK(std::is_sorted(fuseRatings_A().begin(), fuseRatings_A().end()));
    CHECK(std::is_sorted(wireAreas_m2().begin(), wireAreas_m2().end()));
}
