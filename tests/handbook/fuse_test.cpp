#include "core/parts/fuse_band.h"
#include "tests/support/catch.h"

#include <cmath>

using namespace pumpwright;
using Catch::WithinRel;

namespace {

struct Limits {
    FuseType type;
    double share;
    double least_s;
    double most_s;
};

} // namespace

TEST_CASE("blade fuses open within the published band, at every edge of it", "[handbook][fuse]") {
    // Data sheets of blade fuses that name ISO 8820-3; 160 % for type C, 600 % for types F and E.
    const Limits limits[] = {
        {FuseType::C, 1.35, 0.75, 600}, {FuseType::C, 1.60, 0.25, 50}, {FuseType::C, 2.0, 0.15, 5},
        {FuseType::C, 3.5, 0.08, 0.5},  {FuseType::C, 6.0, 0.0, 0.15}, {FuseType::F, 1.35, 0.75, 600},
        {FuseType::F, 2.0, 0.15, 5},    {FuseType::F, 3.5, 0.08, 0.5}, {FuseType::E, 1.35, 60, 1800},
        {FuseType::E, 2.0, 2, 50},      {FuseType::E, 3.5, 0.2, 7},    {FuseType::E, 6.0, 0.04, 1},
    };
    for (const Limits& row : limits) {
        for (const FuseEdge edge : {FuseEdge::Fast, FuseEdge::Middle, FuseEdge::Slow}) {
            const double time_s = openingTime_s(row.type, row.share, edge);
            INFO(row.share << " of the rating: " << time_s << " s");
            CHECK(time_s >= row.least_s * (1 - 1e-9));
            CHECK(time_s <= row.most_s * (1 + 1e-9));
        }
    }
}

TEST_CASE("a blade fuse carries 110 % for more than 100 hours", "[handbook][fuse]") {
    // Data sheets that name ISO 8820-3: at least 360,000 s at 110 %.
    for (const FuseType type : {FuseType::C, FuseType::F, FuseType::E}) {
        for (const FuseEdge edge : {FuseEdge::Fast, FuseEdge::Middle, FuseEdge::Slow}) {
            CHECK(openingTime_s(type, 1.10, edge) > 360000);
            CHECK(openingTime_s(type, 0.8, edge) > 360000);
        }
    }
}

TEST_CASE("the middle of the band is the geometric mean of its edges", "[handbook][fuse]") {
    for (const double share : {1.35, 1.7, 2.0, 3.0, 5.0}) {
        const double fast = openingTime_s(FuseType::C, share, FuseEdge::Fast);
        const double slow = openingTime_s(FuseType::C, share, FuseEdge::Slow);
        CHECK_THAT(openingTime_s(FuseType::C, share, FuseEdge::Middle),
                   WithinRel(std::sqrt(fast * slow), 1e-9));
    }
}

TEST_CASE("the more current, the sooner a fuse opens, and its rate has no jump", "[handbook][fuse]") {
    for (const FuseType type : {FuseType::C, FuseType::E}) {
        for (const FuseEdge edge : {FuseEdge::Fast, FuseEdge::Middle, FuseEdge::Slow}) {
            double last = 0;
            for (double share = 1.0; share < 20; share *= 1.0005) {
                const SmoothValue rate = openingRate(type, share, edge);
                CHECK(rate.value >= last);
                // A step of 0.05 % changes the rate by no more than its slope and the band's steepest power
                // allow.
                CHECK(rate.value <= last * 1.2 + 1e-4);
                CHECK(rate.slope >= 0);
                last = rate.value;
            }
        }
    }
}

TEST_CASE("beyond 600 % the melting integral stays", "[handbook][fuse]") {
    const auto integral = [](double share) {
        return share * share * openingTime_s(FuseType::C, share, FuseEdge::Middle);
    };
    CHECK_THAT(integral(60), WithinRel(integral(6.0001), 1e-3));
}

TEST_CASE("cold resistances of blade fuses", "[handbook][fuse]") {
    // Data sheets that name ISO 8820-3: type C 20 A 3.38 mOhm, 40 A 1.44 mOhm; type E 30 A 1.9, 40 A 1.4
    // mOhm.
    CHECK_THAT(fuseResistance_ohm(FuseType::C, 20), WithinRel(3.38e-3, 1e-9));
    CHECK_THAT(fuseResistance_ohm(FuseType::C, 40), WithinRel(1.44e-3, 1e-9));
    CHECK_THAT(fuseResistance_ohm(FuseType::E, 30), WithinRel(1.9e-3, 1e-9));
    CHECK_THAT(fuseResistance_ohm(FuseType::E, 40), WithinRel(1.4e-3, 1e-9));
    // Values from memory of typical data sheets, good for a tenth.
    CHECK_THAT(fuseResistance_ohm(FuseType::C, 10), WithinRel(7.7e-3, 0.1));
    CHECK_THAT(fuseResistance_ohm(FuseType::C, 15), WithinRel(4.8e-3, 0.1));
    // Sizes that no sheet prints lie between their neighbours, or go on beyond them.
    CHECK(fuseResistance_ohm(FuseType::C, 12) < 7.7e-3);
    CHECK(fuseResistance_ohm(FuseType::C, 12) > 4.8e-3);
    CHECK(fuseResistance_ohm(FuseType::C, 1) > 31e-3);
    CHECK(fuseResistance_ohm(FuseType::E, 80) < 1.4e-3);
}

TEST_CASE("a fuse carries less in hot surroundings", "[handbook][fuse]") {
    // Data sheet of a type E 40 A fuse: 40 A up to 20 °C, 34 A at 65, 30 A at 85, 25 A at 110, 22 A at 125
    // °C.
    CHECK_THAT(40 * fuseAmbientShare(293.15), WithinRel(40.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(338.15), WithinRel(34.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(358.15), WithinRel(30.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(383.15), WithinRel(25.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(398.15), WithinRel(22.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(250), WithinRel(40.0, 1e-9));
    CHECK_THAT(40 * fuseAmbientShare(450), WithinRel(22.0, 1e-9));
}

TEST_CASE("a pump's inrush does not open its fuse", "[handbook][fuse]") {
    // Type C 15 A at 12 A for 0.3 s: 80 % of the rating, below the band.
    CHECK(openingRate(FuseType::C, 12.0 / 15, FuseEdge::Fast).value == 0);
}

TEST_CASE("a 10 A fuse clears a short circuit before 0.5 mm² of PVC wire is harmed", "[handbook][fuse]") {
    // IEC 60364-5-54 with k = 115 for PVC: the wire stands (115·0.5)² = 3306 A²s.
    const double current_A = 200;
    const double time_s = openingTime_s(FuseType::C, current_A / 10, FuseEdge::Slow);
    CHECK(current_A * current_A * time_s < 3306);
}
