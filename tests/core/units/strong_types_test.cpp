#include "core/units/atmosphere.h"
#include "core/units/pressure.h"
#include "core/units/temperature.h"
#include "tests/support/catch.h"

#include <type_traits>

namespace pumpwright {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

// Mixing up the kinds does not compile.
static_assert(!std::is_convertible_v<double, AbsolutePressure> &&
              !std::is_convertible_v<double, GaugeVacuum>);
static_assert(!std::is_convertible_v<AbsolutePressure, GaugeVacuum>);
static_assert(!std::is_convertible_v<GaugeVacuum, AbsolutePressure>);
static_assert(!std::is_convertible_v<double, Temperature>);
static_assert(!std::is_convertible_v<TemperatureDifference, Temperature>);
static_assert(!Comparable<AbsolutePressure, GaugeVacuum> && !Comparable<Temperature, TemperatureDifference>);
static_assert(!Addable<Temperature, Temperature> && !Addable<AbsolutePressure, GaugeVacuum>);
static_assert(Addable<Temperature, TemperatureDifference> && Addable<AbsolutePressure, PressureDifference>);

} // namespace

TEST_CASE("gauge vacuum is ambient minus absolute, and back", "[units][pressure]") {
    const AbsolutePressure ambient(100000.0);
    CHECK(gaugeVacuum(ambient, AbsolutePressure(40000.0)) == GaugeVacuum(60000.0));
    CHECK(gaugeVacuum(ambient, ambient) == GaugeVacuum(0.0));
    CHECK(absolutePressure(ambient, GaugeVacuum(60000.0)) == AbsolutePressure(40000.0));
    CHECK(absolutePressure(ambient, GaugeVacuum(110000.0)) < AbsolutePressure(0.0));
}

TEST_CASE("the same absolute pressure is less vacuum on a mountain", "[units][pressure]") {
    const AbsolutePressure chamber(30000.0);
    const AbsolutePressure sea(standardPressure_Pa(0.0));
    const AbsolutePressure pass(standardPressure_Pa(2000.0));
    CHECK(gaugeVacuum(pass, chamber) < gaugeVacuum(sea, chamber));
    CHECK(gaugeVacuum(sea, chamber) - gaugeVacuum(pass, chamber) == sea - pass);
}

TEST_CASE("pressures and temperatures move by differences", "[units][pressure]") {
    CHECK(AbsolutePressure(5.0) + PressureDifference(2.0) == AbsolutePressure(7.0));
    CHECK(AbsolutePressure(5.0) - PressureDifference(2.0) == AbsolutePressure(3.0));
    CHECK(celsius(20.0) + TemperatureDifference(10.0) == celsius(30.0));
    CHECK(celsius(20.0) - TemperatureDifference(10.0) == celsius(10.0));
    CHECK((celsius(30.0) - celsius(20.0)).si() == Approx(10.0));
    CHECK(celsius(0.0) == Temperature());
}

TEST_CASE("outside its lowest layer the standard atmosphere stays at the edge", "[units][atmosphere]") {
    CHECK(standardPressure_Pa(-5000.0) == standardPressure_Pa(-2000.0));
    CHECK(standardPressure_Pa(20000.0) == standardPressure_Pa(11000.0));
    CHECK(standardTemperature_K(20000.0) == standardTemperature_K(11000.0));
    CHECK(standardPressure_Pa(-2000.0) > standardPressure_Pa(0.0));
}

TEST_CASE("air is thicker when hot and denser when cold", "[units][atmosphere]") {
    CHECK(airViscosity_PaS(celsius(80.0)) > airViscosity_PaS(celsius(20.0)));
    const AbsolutePressure pressure(100000.0);
    CHECK(airDensity_kgPerM3(pressure, celsius(-20.0)) > airDensity_kgPerM3(pressure, celsius(20.0)));
}

} // namespace pumpwright
