#include "core/study/adjustable.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    return addPumpFeed(builder).build();
}

} // namespace

TEST_CASE("every adjustable value is set, read back and taken back", "[study][adjustable]") {
    const Circuit circuit = van();
    const std::vector<Adjustable> all = adjustables(circuit);
    CHECK(all.size() > 60);
    for (const Adjustable& what : all) {
        CAPTURE(what.name);
        const double before = valueOf(circuit, what);
        CHECK(valueInRange(what, before));
        const double other = before == what.spec->low ? what.spec->high : what.spec->low;
        Circuit changed = circuit;
        const Edit back = applyEdit(changed, {"", {settingOf(circuit, what, other)}});
        CHECK(valueOf(changed, what) == other);
        CHECK(changed != circuit);
        applyEdit(changed, back);
        CHECK(changed == circuit);
    }
}

TEST_CASE("values are found by reference and key", "[study][adjustable]") {
    const Circuit circuit = van();
    CHECK(findAdjustable(circuit, "B1.differential_Pa")->subject == Subject::Part);
    CHECK(findAdjustable(circuit, "W2.area_m2")->subject == Subject::Wire);
    CHECK(findAdjustable(circuit, "H3.length_m")->subject == Subject::Hose);
}

TEST_CASE("a name that is none is answered with the names that there are", "[study][adjustable]") {
    const Circuit circuit = van();
    const auto wrongKey = findAdjustable(circuit, "B1.setpoint");
    REQUIRE_FALSE(wrongKey);
    CHECK(wrongKey.error().text.find("B1.setPoint_Pa") != std::string::npos);
    const auto wrongPart = findAdjustable(circuit, "B7.setPoint_Pa");
    REQUIRE_FALSE(wrongPart);
    CHECK(wrongPart.error().text.find("\"B7\"") != std::string::npos);
}

TEST_CASE("a value out of its range is refused with the range", "[study][adjustable]") {
    const Circuit circuit = vanVacuumSide().build();
    const Adjustable length = *findAdjustable(circuit, "H1.length_m");
    CHECK(valueInRange(length, 100));
    const auto tooLong = valueInRange(length, 101);
    REQUIRE_FALSE(tooLong);
    CHECK(tooLong.error().text.find("100 m") != std::string::npos);
}
