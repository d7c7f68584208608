#include "core/units/quantity_kind.h"
#include "core/units/wire_size.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <random>
#include <string>
#include <vector>

namespace pumpwright {
namespace {

using Kind = QuantityKind;

struct WrittenValue {
    double si;
    Kind kind;
    std::string text;
};

} // namespace

TEST_CASE("a value is shown with a fitting prefix and no more than four digits", "[units][format-quantity]") {
    const std::vector<WrittenValue> values = {
        {470e-6, Kind::Capacitance, "470 µF"},
        {4700e-6, Kind::Capacitance, "4700 µF"},
        {47e-9, Kind::Capacitance, "47 nF"},
        {1.0, Kind::Capacitance, "1 F"},
        {5.1, Kind::Time, "5.1 s"},
        {0.25, Kind::Time, "0.25 s"},
        {0.05, Kind::Time, "50 ms"},
        {300.0, Kind::Time, "300 s"},
        {1000.0, Kind::Time, "1000 s"},
        {1800.0, Kind::Time, "30 min"},
        {3600.0, Kind::Time, "1 h"},
        {-3600.0, Kind::Time, "-1 h"},
        {5400.0, Kind::Time, "1.5 h"},
        {0.75e-6, Kind::WireArea, "0.75 mm²"},
        {12.0, Kind::Voltage, "12 V"},
        {0.27, Kind::Voltage, "0.27 V"},
        {-0.7, Kind::Voltage, "-0.7 V"},
        {0.0099996, Kind::Voltage, "10 mV"},
        {327.123, Kind::Voltage, "327.1 V"},
        {999.94, Kind::Voltage, "999.9 V"},
        {999.96, Kind::Voltage, "1 kV"},
        {0.0999996, Kind::Voltage, "0.1 V"},
        {0.0, Kind::Voltage, "0 V"},
        {-0.0, Kind::Voltage, "0 V"},
        {5e-3, Kind::Resistance, "5 mΩ"},
        {4700.0, Kind::Resistance, "4.7 kΩ"},
        {0.25, Kind::Inductance, "250 mH"},
        {293.15, Kind::Temperature, "20 °C"},
        {273.15 + 1e-13, Kind::Temperature, "0 °C"},
        {0.0, Kind::Temperature, "-273.1 °C"},
        {101325.0, Kind::AbsolutePressure, "101.3 kPa"},
        {50.0, Kind::PressureDifference, "50 Pa"},
        {8e6, Kind::PressureDifference, "8 MPa"},
        {162000.0, Kind::Charge, "45 Ah"},
        {4e-3, Kind::Volume, "4 L"},
        {2500.0, Kind::Length, "2500 m"},
        {0.04, Kind::Length, "40 mm"},
        {0.5e-3, Kind::VolumeFlow, "30 L/min"},
        {0.85, Kind::Share, "85 %"},
        {12345.6, Kind::Number, "12350"},
        {1.5e9, Kind::Number, "1.5e9"},
        {9999000, Kind::Number, "9999000"},
        {1e7, Kind::Number, "1e7"},
        {1e-4, Kind::Number, "0.0001"},
        {9.999e-5, Kind::Number, "9.999e-5"},
        {2e-5, Kind::Number, "2e-5"},
        {129.9, Kind::Money, "129.90"},
        {1234567.891, Kind::Money, "1234567.89"},
        {-0.001, Kind::Money, "0.00"},
        {0.005, Kind::Money, "0.01"},
        {1e99, Kind::Money, "1e99"},
    };
    for (const WrittenValue& value : values) {
        INFO(kindName(value.kind) << ' ' << value.si);
        CHECK(formatQuantity(value.si, value.kind) == value.text);
    }
}

TEST_CASE("a value is shown in the unit that is asked for, else in the preferred one",
          "[units][format-quantity]") {
    CHECK(formatQuantity(50795.83, Kind::GaugeVacuum, "inHg") == "15 inHg");
    CHECK(formatQuantity(50795.83, Kind::GaugeVacuum, "mbar") == "508 mbar");
    CHECK(formatQuantity(0.05, Kind::Voltage, "V") == "0.05 V");
    CHECK(formatQuantity(233.15, Kind::Temperature, "°F") == "-40 °F");
    CHECK(formatQuantity(273.15, Kind::Temperature, "°F") == "32 °F");
    CHECK(formatQuantity(255.3722222222222, Kind::Temperature, "°F") == "0 °F");
    CHECK(formatQuantity(12.0, Kind::Voltage, "furlong") == "12 V");
    CHECK(formatQuantity(12.5, Kind::Money, "EUR") == "12.50");
}

TEST_CASE("a wire area with the digits of a gauge goes by the gauge's name", "[units][format-quantity]") {
    CHECK(formatQuantity(awgArea_m2(18), Kind::WireArea) == "18 AWG");
    CHECK(formatQuantity(awgArea_m2(18), Kind::WireArea, "AWG") == "18 AWG");
    CHECK(formatQuantity(awgArea_m2(18), Kind::WireArea, "mm²") == "0.823 mm²");
    CHECK(formatQuantity(0.75e-6, Kind::WireArea, "AWG") == "0.75 mm²");
    CHECK(formatQuantity(0.0, Kind::WireArea) == "0 mm²");
}

TEST_CASE("what is not finite is shown as such and not as a number", "[units][format-quantity]") {
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    for (const Kind kind : quantityKinds()) {
        INFO(kindName(kind));
        CHECK(formatQuantity(std::nan(""), kind) == "undefined");
        CHECK(formatQuantity(kInfinity, kind).starts_with("∞"));
        CHECK(formatQuantity(-kInfinity, kind).starts_with("-∞"));
    }
}

namespace {

/// Random numbers over many magnitudes, the same on every machine; the seed is shown when a check fails.
class Draw {
public:
    explicit Draw(std::uint64_t seed) : m_engine(seed) {}

    double value(double lowest) {
        const double mantissa = static_cast<double>(m_engine() % 1'000'000) / 1e5;
        const int exponent = static_cast<int>(m_engine() % 24) - 14;
        const bool negative = lowest < 0.0 && m_engine() % 4 == 0;
        return (negative ? -1.0 : 1.0) * mantissa * std::pow(10.0, exponent);
    }

private:
    std::mt19937_64 m_engine;
};

std::size_t significantDigits(std::string_view text) {
    std::string digits;
    for (const char c : text.substr(0, text.find_first_of("e "))) {
        if (c >= '0' && c <= '9' && !(digits.empty() && c == '0')) {
            digits += c;
        }
    }
    if (text.substr(0, text.find(' ')).find('.') == std::string_view::npos) {
        digits.erase(digits.find_last_not_of('0') + 1); // zeros that only give the size
    }
    return digits.size();
}

bool canBeNegative(Kind kind) {
    return parseQuantity("-1e6", kind).has_value();
}

} // namespace

TEST_CASE("a shown value that is read and shown again is the same text", "[units][format-quantity]") {
    constexpr std::uint64_t kSeed = 20260117;
    Draw draw(kSeed);
    for (const Kind kind : quantityKinds()) {
        const double lowest = canBeNegative(kind) ? -1.0 : 0.0;
        for (int i = 0; i < 2000; ++i) {
            const double si = draw.value(lowest);
            const std::string text = formatQuantity(si, kind);
            INFO("seed " << kSeed << ", " << kindName(kind) << ' ' << si << " -> " << text);
            const auto read = parseQuantity(text, kind);
            REQUIRE(read.has_value());
            REQUIRE(formatQuantity(*read, kind) == text);
            // Four digits hold a value to half a unit of the fourth: 5e-4 at worst, for 1.000.
            const bool fourDigits = kind != Kind::Money && kind != Kind::Temperature;
            if (fourDigits) {
                REQUIRE(std::abs(*read - si) <= 5.0001e-4 * std::abs(si));
                REQUIRE(significantDigits(text) <= 4);
            }
        }
    }
}

TEST_CASE("the same holds in every unit that can be asked for", "[units][format-quantity]") {
    constexpr std::uint64_t kSeed = 20260118;
    Draw draw(kSeed);
    for (const Kind kind : quantityKinds()) {
        for (const DisplayUnit& unit : displayUnits(kind)) {
            for (int i = 0; i < 300; ++i) {
                const double si = draw.value(0.0);
                const std::string text = formatQuantity(si, kind, unit.symbol);
                INFO("seed " << kSeed << ", " << kindName(kind) << ' ' << si << " -> " << text);
                // Four digits of a temperature near absolute zero may fall below it.
                const auto read = parseQuantity(text, kind);
                const bool belowZero = kind == Kind::Temperature && si < 0.1;
                REQUIRE((read.has_value() || belowZero));
                if (read) {
                    REQUIRE(formatQuantity(*read, kind, unit.symbol) == text);
                }
            }
        }
    }
}

TEST_CASE("what was typed with up to four digits is shown with the same value", "[units][format-quantity]") {
    constexpr std::uint64_t kSeed = 20260119;
    std::mt19937_64 engine(kSeed);
    for (const Kind kind : quantityKinds()) {
        for (int i = 0; i < 500; ++i) {
            const double shown = static_cast<double>(engine() % 9999 + 1) / 100.0;
            const DisplayUnit& unit = displayUnits(kind).front();
            const double si = shown * unit.factor + unit.offset;
            INFO("seed " << kSeed << ", " << kindName(kind) << ' ' << shown);
            const auto read = parseQuantity(formatQuantity(si, kind), kind);
            REQUIRE(read.has_value());
            REQUIRE_THAT(*read, Catch::WithinRel(si, kind == Kind::WireArea ? 5e-4 : 1e-12));
        }
    }
}

} // namespace pumpwright
