#include "core/units/wire_size.h"
#include "tests/support/catch.h"

namespace pumpwright {

TEST_CASE("every gauge is the nearest gauge of its own area", "[units][wire-size]") {
    for (int gauge = kThickestGauge; gauge <= kThinnestGauge; ++gauge) {
        INFO(gauge);
        CHECK(nearestAwg(awgArea_m2(gauge)) == gauge);
        CHECK(nearestAwg(awgArea_m2(gauge) * 1.1) == gauge);
        CHECK(nearestAwg(awgArea_m2(gauge) / 1.1) == gauge);
        CHECK(awgOfArea(awgArea_m2(gauge)) == gauge);
        CHECK(awgOfArea(awgArea_m2(gauge) * 1.002) == std::nullopt);
        CHECK(awgOfArea(awgArea_m2(gauge) / 1.002) == std::nullopt);
    }
}

TEST_CASE("the nearest gauge of an area beyond the range is the last one", "[units][wire-size]") {
    CHECK(nearestAwg(1.0) == kThickestGauge);
    CHECK(nearestAwg(1e-30) == kThinnestGauge);
    CHECK(awgOfArea(1.0) == std::nullopt);
    CHECK(awgOfArea(0.0) == std::nullopt);
    CHECK(awgOfArea(-1e-6) == std::nullopt);
}

TEST_CASE("a wire is called by its gauge or else by its area", "[units][wire-size]") {
    CHECK(wireSizeName(awgArea_m2(14)) == "14 AWG");
    CHECK(wireSizeName(awgArea_m2(0)) == "1/0 AWG");
    CHECK(wireSizeName(awgArea_m2(-3)) == "4/0 AWG");
    CHECK(wireSizeName(1.5e-6) == "1.5 mm²");
}

TEST_CASE("metric sizes are never mistaken for a gauge", "[units][wire-size]") {
    for (const double area_mm2 :
         {0.35, 0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0}) {
        INFO(area_mm2);
        CHECK(awgOfArea(area_mm2 * 1e-6) == std::nullopt);
    }
}

TEST_CASE("the name of each gauge is read back as that gauge", "[units][wire-size]") {
    for (int gauge = kThickestGauge; gauge <= kThinnestGauge; ++gauge) {
        const std::string name = awgName(gauge);
        INFO(name);
        const auto text = gaugeText(name);
        REQUIRE(text.has_value());
        CHECK(gaugeNumber(*text) == gauge);
    }
}

TEST_CASE("only a text with the word or a nought size is a gauge", "[units][wire-size]") {
    CHECK(gaugeText("awg 18") == "18");
    CHECK(gaugeText("18 Awg") == "18");
    CHECK(gaugeText("3/0") == "3/0");
    CHECK(gaugeText("9/0") == "9/0");
    CHECK(gaugeText("18") == std::nullopt);
    CHECK(gaugeText("") == std::nullopt);
    CHECK(gaugeText("1/2") == std::nullopt);
    CHECK(gaugeNumber("000") == -2);
    CHECK(gaugeNumber("40") == 40);
    CHECK(gaugeNumber("41") == std::nullopt);
    CHECK(gaugeNumber("5/0") == std::nullopt);
    CHECK(gaugeNumber("") == std::nullopt);
    CHECK(gaugeNumber("99999999999") == std::nullopt);
}

} // namespace pumpwright
