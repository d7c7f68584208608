#include "app/desktop/sheet/figure_scale.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace pumpwright;
using Catch::WithinAbs;

TEST_CASE("ticks are round numbers inside the range", "[sheet][figure]") {
    CHECK(roundTicks(0, 120, 10) == QList<double>{0, 20, 40, 60, 80, 100, 120});
    CHECK(roundTicks(0, 10, 10).size() == 11);
    const QList<double> fine = roundTicks(0, 0.9, 4);
    REQUIRE(fine.size() == 2);
    CHECK_THAT(fine[1], WithinAbs(0.5, 1e-12));
}

TEST_CASE("ticks of a range round zero hold zero itself", "[sheet][figure]") {
    const QList<double> ticks = roundTicks(-1.0, 1.0, 4);
    CHECK(ticks.contains(0.0));
}

TEST_CASE("an empty or turned range has no ticks", "[sheet][figure]") {
    CHECK(roundTicks(1, 1, 4).isEmpty());
    CHECK(roundTicks(2, 1, 4).isEmpty());
    CHECK(roundTicks(0, 1, 0).isEmpty());
}

TEST_CASE("thinning keeps each column's first, last, lowest and highest point", "[sheet][figure]") {
    const QList<QPointF> curve{{0.0, 5}, {0.1, 9}, {0.2, 6}, {0.3, -3}, {0.9, 4}, {1.0, 1}};
    CHECK(thinned(curve, 1.0) == QList<QPointF>{{0.0, 5}, {0.1, 9}, {0.3, -3}, {0.9, 4}, {1.0, 1}});
}

TEST_CASE("a spike among a million points is kept", "[sheet][figure]") {
    QList<QPointF> curve;
    for (int i = 0; i < 1'000'000; ++i) {
        curve.append({i * 1e-3, i == 654'321 ? 300.0 : 12.0});
    }
    const QList<QPointF> kept = thinned(curve, 1.0);
    CHECK(kept.size() <= 4 * 1000);
    CHECK(std::ranges::any_of(kept, [](const QPointF& point) { return point.y() == 300.0; }));
}

TEST_CASE("nothing is thinned to nothing", "[sheet][figure]") {
    CHECK(thinned({}, 1.0).isEmpty());
}
