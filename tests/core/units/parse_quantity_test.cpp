#include "core/units/constants.h"
#include "core/units/quantity_kind.h"
#include "core/units/wire_size.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <clocale>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <locale>
#include <string>
#include <vector>

namespace pumpwright {
namespace {

using Kind = QuantityKind;

struct ReadText {
    std::string text;
    Kind kind;
    double si;
};

constexpr double kPi = 3.14159265358979323846;

const std::vector<ReadText>& readTexts() {
    static const std::vector<ReadText> texts = {
        {"12", Kind::Voltage, 12.0},
        {"12 V", Kind::Voltage, 12.0},
        {"12V", Kind::Voltage, 12.0},
        {"  12.6\tV ", Kind::Voltage, 12.6},
        {"12,6 V", Kind::Voltage, 12.6},
        {"12.6 volts", Kind::Voltage, 12.6},
        {"12.6 v", Kind::Voltage, 12.6},
        {"-0.7 V", Kind::Voltage, -0.7},
        {"\u22120.7 V", Kind::Voltage, -0.7},
        {"+0.7 V", Kind::Voltage, 0.7},
        {".7 V", Kind::Voltage, 0.7},
        {"7. V", Kind::Voltage, 7.0},
        {"1e-3 V", Kind::Voltage, 1e-3},
        {"1E+3V", Kind::Voltage, 1e3},
        {"270 mV", Kind::Voltage, 0.27},
        {"12\u00A0V", Kind::Voltage, 12.0},
        {"12\u202FV", Kind::Voltage, 12.0},
        {"0,823 V", Kind::Voltage, 0.823},
        {"1234,567 V", Kind::Voltage, 1234.567},
        {std::string(99, ' ') + "7", Kind::Voltage, 7.0},
        {"5.5 A", Kind::Current, 5.5},
        {"150 mA", Kind::Current, 0.15},
        {"150ma", Kind::Current, 0.15},
        {"12 amps", Kind::Current, 12.0},
        {"4k7", Kind::Resistance, 4700.0},
        {"4K7", Kind::Resistance, 4700.0},
        {"R47", Kind::Resistance, 0.47},
        {"4R7", Kind::Resistance, 4.7},
        {"1M5", Kind::Resistance, 1.5e6},
        {"0R01 Ω", Kind::Resistance, 0.01},
        {"10k", Kind::Resistance, 1e4},
        {"4.7 kΩ", Kind::Resistance, 4700.0},
        {"4,7 k\u2126", Kind::Resistance, 4700.0},
        {"90 ohm", Kind::Resistance, 90.0},
        {"90 Ohms", Kind::Resistance, 90.0},
        {"5 mΩ", Kind::Resistance, 5e-3},
        {"5 MΩ", Kind::Resistance, 5e6},
        {"100R", Kind::Resistance, 100.0},
        {"470 \u00B5F", Kind::Capacitance, 470e-6},
        {"470 \u03BCF", Kind::Capacitance, 470e-6},
        {"470uF", Kind::Capacitance, 470e-6},
        {"470", Kind::Capacitance, 470e-6},
        {"4n7", Kind::Capacitance, 4.7e-9},
        {"100 nF", Kind::Capacitance, 100e-9},
        {"1 F", Kind::Capacitance, 1.0},
        {"250 mH", Kind::Inductance, 0.25},
        {"0.25 H", Kind::Inductance, 0.25},
        {"66 W", Kind::Power, 66.0},
        {"1.2 kW", Kind::Power, 1200.0},
        {"2 Wh", Kind::Energy, 7200.0},
        {"45 Ah", Kind::Charge, 162000.0},
        {"45 A·h", Kind::Charge, 162000.0},
        {"800 mAh", Kind::Charge, 2880.0},
        {"5.1 s", Kind::Time, 5.1},
        {"5,1 sec", Kind::Time, 5.1},
        {"5.1 ms", Kind::Time, 0.0051},
        {"250 µs", Kind::Time, 250e-6},
        {"250 us", Kind::Time, 250e-6},
        {"30 min", Kind::Time, 1800.0},
        {"1.5 h", Kind::Time, 5400.0},
        {"20 °C", Kind::Temperature, 293.15},
        {"20", Kind::Temperature, 293.15},
        {"-40 °F", Kind::Temperature, 233.15},
        {"68 F", Kind::Temperature, 293.15},
        {"293.15 K", Kind::Temperature, 293.15},
        {"40 K", Kind::TemperatureDifference, 40.0},
        {"18 °F", Kind::TemperatureDifference, 10.0},
        {"101.325 kPa", Kind::AbsolutePressure, 101325.0},
        {"1013.25 mbar", Kind::AbsolutePressure, 101325.0},
        {"1 atm", Kind::AbsolutePressure, 101325.0},
        {"760 Torr", Kind::AbsolutePressure, 101325.0},
        {"15 inHg", Kind::GaugeVacuum, 15 * 3386.388640341},
        {"15 in Hg", Kind::GaugeVacuum, 15 * 3386.388640341},
        {"15INHG", Kind::GaugeVacuum, 15 * 3386.388640341},
        {"500 mmHg", Kind::GaugeVacuum, 500 * 133.322387415},
        {"60", Kind::GaugeVacuum, 60000.0},
        {"0.6 bar", Kind::GaugeVacuum, 60000.0},
        {"1 psi", Kind::PressureDifference, 6894.757293168},
        {"8 MPa", Kind::PressureDifference, 8e6},
        {"450 cm²", Kind::Area, 0.045},
        {"450 cm^2", Kind::Area, 0.045},
        {"9 sq in", Kind::Area, 9 * 0.0254 * 0.0254},
        {"0,75 mm²", Kind::WireArea, 0.75e-6},
        {"0.75mm2", Kind::WireArea, 0.75e-6},
        {"0.75", Kind::WireArea, 0.75e-6},
        {"2.5 sqmm", Kind::WireArea, 2.5e-6},
        {"18 AWG", Kind::WireArea, awgArea_m2(18)},
        {"18AWG", Kind::WireArea, awgArea_m2(18)},
        {"AWG 18", Kind::WireArea, awgArea_m2(18)},
        {"awg18", Kind::WireArea, awgArea_m2(18)},
        {"1/0 AWG", Kind::WireArea, awgArea_m2(0)},
        {"0 AWG", Kind::WireArea, awgArea_m2(0)},
        {"AWG 4/0", Kind::WireArea, awgArea_m2(-3)},
        {"0000 AWG", Kind::WireArea, awgArea_m2(-3)},
        {"4/0", Kind::WireArea, awgArea_m2(-3)},
        {"2.5 m", Kind::Length, 2.5},
        {"40 mm", Kind::Length, 0.04},
        {"12 ft", Kind::Length, 3.6576},
        {"2.5\"", Kind::Length, 0.0635},
        {"8 inches", Kind::Length, 0.2032},
        {"4 L", Kind::Volume, 4e-3},
        {"4 l", Kind::Volume, 4e-3},
        {"300 in³", Kind::Volume, 300 * 0.0254 * 0.0254 * 0.0254},
        {"950 cc", Kind::Volume, 950e-6},
        {"30 L/min", Kind::VolumeFlow, 0.5e-3},
        {"0.5 L/s", Kind::VolumeFlow, 0.5e-3},
        {"250 N", Kind::Force, 250.0},
        {"50 lbf", Kind::Force, 50 * 4.4482216152605},
        {"0.4 Nm", Kind::Torque, 0.4},
        {"0.4 N·m", Kind::Torque, 0.4},
        {"3000 rpm", Kind::AngularSpeed, 100 * kPi},
        {"314 rad/s", Kind::AngularSpeed, 314.0},
        {"1850 kg", Kind::Mass, 1850.0},
        {"250 g·cm²", Kind::Inertia, 250e-7},
        {"0.03 Nm/A", Kind::MotorConstant, 0.03},
        {"6 °C/W", Kind::ThermalResistance, 6.0},
        {"13 J/K", Kind::HeatCapacity, 13.0},
        {"6.4 m/s2", Kind::Acceleration, 6.4},
        {"2 N/mm", Kind::Stiffness, 2000.0},
        {"85 %", Kind::Share, 0.85},
        {"85", Kind::Share, 0.85},
        {"2.5", Kind::Number, 2.5},
        {"12,50", Kind::Money, 12.5},
    };
    return texts;
}

void checkEveryText() {
    for (const ReadText& expected : readTexts()) {
        INFO('\'' << expected.text << "' as " << kindName(expected.kind));
        const auto read = parseQuantity(expected.text, expected.kind);
        INFO((read ? std::string() : read.error().text));
        REQUIRE(read.has_value());
        // Factors that are not powers of ten are rounded once more than the expected value.
        CHECK_THAT(*read, Catch::WithinRel(expected.si, 1e-12));
    }
}

/// Sets C's and C++'s global locale, and puts "C" back.
class LocaleGuard {
public:
    explicit LocaleGuard(const std::string& name) { std::locale::global(std::locale(name)); }
    ~LocaleGuard() { std::locale::global(std::locale::classic()); }
    LocaleGuard(const LocaleGuard&) = delete;
    LocaleGuard& operator=(const LocaleGuard&) = delete;
};

} // namespace

TEST_CASE("at least sixty spellings of quantities are read", "[units][parse-quantity]") {
    CHECK(readTexts().size() >= 60);
    checkEveryText();
}

TEST_CASE("texts are read and written alike under every system locale", "[units][parse-quantity]") {
    // The build makes these three, so one that can't be set is a failure.
    for (const char* name : {"C", "de_DE.UTF-8", "tr_TR.UTF-8"}) {
        INFO(name);
        REQUIRE_NOTHROW(std::locale(name));
        const LocaleGuard guard(name);
        if (std::string(name) != "C") {
            REQUIRE(std::string(std::localeconv()->decimal_point) == ",");
        }
        checkEveryText();
        CHECK(formatQuantity(0.75e-6, Kind::WireArea) == "0.75 mm²");
        CHECK(formatQuantity(12345.6, Kind::Number) == "12350");
        CHECK(formatQuantity(1234.5, Kind::Money) == "1234.50");
    }
}

TEST_CASE("a value in a decimal unit is rounded once, as the same number without a prefix",
          "[units][parse-quantity]") {
    CHECK(parseQuantity("5.1 ms", Kind::Time).value() == 0.0051);
    CHECK(parseQuantity("470 µF", Kind::Capacitance).value() == 470e-6);
    CHECK(parseQuantity("0,75 mm²", Kind::WireArea).value() == 0.75e-6);
}

TEST_CASE("the example in each kind's messages is itself readable", "[units][parse-quantity]") {
    for (const Kind kind : quantityKinds()) {
        const auto refused = parseQuantity("nonsense", kind);
        REQUIRE_FALSE(refused.has_value());
        const std::string& text = refused.error().text;
        INFO(text);
        const std::size_t start = text.find("for example \"") + std::string("for example \"").size();
        const std::string example = text.substr(start, text.find('"', start) - start);
        CHECK(parseQuantity(example, kind).has_value());
        CHECK(text.find(std::string(kindName(kind))) != std::string::npos);
    }
}

TEST_CASE("every unit that is offered is read back, and so is the SI unit", "[units][parse-quantity]") {
    for (const Kind kind : quantityKinds()) {
        for (const DisplayUnit& unit : displayUnits(kind)) {
            INFO(kindName(kind) << " in " << unit.symbol);
            const auto read = parseQuantity("2 " + std::string(unit.symbol), kind);
            REQUIRE(read.has_value());
            CHECK_THAT(*read, Catch::WithinRel(2 * unit.factor + unit.offset, 1e-12));
        }
        const auto si = parseQuantity("2 " + std::string(siUnit(kind)), kind);
        REQUIRE(si.has_value());
        if (!siUnit(kind).empty()) {
            CHECK(*si == 2.0);
        }
    }
}

TEST_CASE("no two units of one kind share a symbol", "[units][parse-quantity]") {
    for (const Kind kind : quantityKinds()) {
        const auto units = displayUnits(kind);
        for (auto unit = units.begin(); unit != units.end(); ++unit) {
            INFO(kindName(kind) << ' ' << unit->symbol);
            CHECK(std::ranges::find(std::next(unit), units.end(), unit->symbol, &DisplayUnit::symbol) ==
                  units.end());
        }
    }
}

namespace {

struct RefusedText {
    std::string text;
    Kind kind;
    ErrorCode code;
    std::string says;
};

} // namespace

TEST_CASE("a text that can't be read is refused with what would be right", "[units][parse-quantity]") {
    const std::vector<RefusedText> texts = {
        {"", Kind::Voltage, ErrorCode::NotANumber, "is empty"},
        {"   ", Kind::Voltage, ErrorCode::NotANumber, "12.6 V"},
        {"V", Kind::Voltage, ErrorCode::NotANumber, "does not start with a number"},
        {"twelve", Kind::Voltage, ErrorCode::NotANumber, "\"twelve\""},
        {"nan", Kind::Voltage, ErrorCode::NotANumber, "12.6 V"},
        {"inf", Kind::Voltage, ErrorCode::NotANumber, "12.6 V"},
        {"-inf V", Kind::Voltage, ErrorCode::NotANumber, "12.6 V"},
        {"0x10 V", Kind::Voltage, ErrorCode::WrongUnit, "12.6 V"},
        {".", Kind::Number, ErrorCode::NotANumber, "2.5"},
        {"-", Kind::Number, ErrorCode::NotANumber, "2.5"},
        {"--5", Kind::Number, ErrorCode::NotANumber, "2.5"},
        {"12 V 5", Kind::Voltage, ErrorCode::WrongUnit, "\"V 5\""},
        {"12 VV", Kind::Voltage, ErrorCode::WrongUnit, "mV"},
        {"12 A", Kind::Voltage, ErrorCode::WrongUnit, "\"A\""},
        {"12 V", Kind::Number, ErrorCode::WrongUnit, "takes no unit"},
        {"5e", Kind::Voltage, ErrorCode::WrongUnit, "\"e\""},
        {"5 MM", Kind::Length, ErrorCode::WrongUnit, "mm"},
        {"10 m", Kind::Resistance, ErrorCode::WrongUnit, "kΩ"},
        {"5 kPa", Kind::WireArea, ErrorCode::WrongUnit, "18 AWG"},
        {"4k7", Kind::Voltage, ErrorCode::WrongUnit, "\"k7\""},
        {"4k7 kΩ", Kind::Resistance, ErrorCode::WrongUnit, "kΩ"},
        {"1 234 V", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1\u202F234 V", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1'234", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1’234", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1.234,5", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1,234.5", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1,234,567", Kind::Voltage, ErrorCode::NotANumber, "thousands separator"},
        {"1,234 V", Kind::Voltage, ErrorCode::NotANumber, "decimal point"},
        {"123,456 V", Kind::Voltage, ErrorCode::NotANumber, "decimal point"},
        {"1e999 V", Kind::Voltage, ErrorCode::OutOfRange, "too large"},
        {"1e-999 V", Kind::Voltage, ErrorCode::OutOfRange, "too close to zero"},
        {"1e99999999999999999999", Kind::Voltage, ErrorCode::OutOfRange, "too large"},
        {"1e308 kV", Kind::Voltage, ErrorCode::OutOfRange, "too large"},
        {"1e308 h", Kind::Time, ErrorCode::OutOfRange, "too large"},
        {"1.01e100 V", Kind::Voltage, ErrorCode::OutOfRange, "too large"},
        {"0.99e-100 V", Kind::Voltage, ErrorCode::OutOfRange, "too close to zero"},
        {"1e308 m²", Kind::Area, ErrorCode::OutOfRange, "too large"},
        {"-1 Ω", Kind::Resistance, ErrorCode::OutOfRange, "below zero"},
        {"-1 kPa", Kind::AbsolutePressure, ErrorCode::OutOfRange, "below zero"},
        {"-274 °C", Kind::Temperature, ErrorCode::OutOfRange, "absolute zero"},
        {"18.5 AWG", Kind::WireArea, ErrorCode::OutOfRange, "4/0 AWG"},
        {"41 AWG", Kind::WireArea, ErrorCode::OutOfRange, "40 AWG"},
        {"5/0 AWG", Kind::WireArea, ErrorCode::OutOfRange, "4/0 AWG"},
        {"00000 AWG", Kind::WireArea, ErrorCode::OutOfRange, "4/0 AWG"},
        {"-1 AWG", Kind::WireArea, ErrorCode::OutOfRange, "4/0 AWG"},
        {"AWG", Kind::WireArea, ErrorCode::OutOfRange, "4/0 AWG"},
        {"18 AWG", Kind::Voltage, ErrorCode::WrongUnit, "AWG"},
        {std::string(101, '1'), Kind::Number, ErrorCode::NotANumber, "2.5"},
        {std::string("5 V\0", 4), Kind::Voltage, ErrorCode::WrongUnit, "12.6 V"},
    };
    for (const RefusedText& refused : texts) {
        INFO(refused.text);
        const auto read = parseQuantity(refused.text, refused.kind);
        REQUIRE_FALSE(read.has_value());
        INFO(read.error().text);
        CHECK(errorCodeName(read.error().code) == errorCodeName(refused.code));
        CHECK(read.error().text.find(refused.says) != std::string::npos);
        CHECK(read.error().text.find("for example") != std::string::npos);
    }
}

TEST_CASE("letter case never turns milli into mega", "[units][parse-quantity]") {
    CHECK(parseQuantity("5 mW", Kind::Power).value() == 5e-3);
    CHECK(parseQuantity("5 MW", Kind::Power).value() == 5e6);
    CHECK(parseQuantity("5 mpa", Kind::PressureDifference).has_value() == false);
    CHECK(parseQuantity("5 MBAR", Kind::PressureDifference).has_value() == false);
    CHECK(parseQuantity("5 MS", Kind::Time).has_value() == false);
}

TEST_CASE("zero has no sign, and the ends of the range are allowed", "[units][parse-quantity]") {
    CHECK_FALSE(std::signbit(parseQuantity("-0 V", Kind::Voltage).value()));
    CHECK(parseQuantity("0 K", Kind::Temperature).value() == 0.0);
    CHECK(parseQuantity("1e100 V", Kind::Voltage).value() == 1e100);
    CHECK(parseQuantity("-1e100 V", Kind::Voltage).value() == -1e100);
    CHECK(parseQuantity("1e-100 V", Kind::Voltage).value() == 1e-100);
    CHECK(parseQuantity("0 Ω", Kind::Resistance).value() == 0.0);
}

} // namespace pumpwright
