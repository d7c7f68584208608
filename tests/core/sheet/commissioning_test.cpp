#include "core/nets/nets.h"
#include "core/sheet/commissioning.h"
#include "core/sheet/how_it_works.h"
#include "core/sheet/test_table.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

using Row = std::vector<std::string>;

/// The van with a hand switch, a control fuse and the vacuum switch before the relay's coil.
Circuit vanCircuit() {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 50e3}, {"differential_Pa", 5e3}});
    return addPumpFeed(builder)
        .part("fuse", "F2", {{"rating_A", 5}})
        .part("hand-switch", "S1")
        .wire("G1.30", "F2.1", 1.5e-6, 0.2)
        .wire("F2.2", "S1.1", 0.75e-6, 1)
        .wire("S1.2", "B1.1", 0.75e-6, 1)
        .wire("B1.2", "K1.86", 0.75e-6, 1)
        .build();
}

Commissioning commissioningOf(const Circuit& circuit) {
    const Nets nets = findNets(circuit);
    const Survey survey({circuit, nets, nullptr});
    return pumpwright::commissioningOf(survey, standingTestsOf(survey));
}

const Commissioning& vanCommissioning() {
    static const Commissioning commissioning = commissioningOf(vanCircuit());
    return commissioning;
}

/// The expected reading of the step whose "Measure" holds the words.
std::string expected(std::size_t stage, const std::string& measure) {
    for (const Row& row : vanCommissioning().stages.at(stage).rows) {
        if (row[2].find(measure) != std::string::npos) {
            return row[3];
        }
    }
    return "no such step";
}

} // namespace

TEST_CASE("stationary stages come before the one at low speed, and steps are counted through",
          "[sheet][commissioning]") {
    const auto& stages = vanCommissioning().stages;
    REQUIRE(stages.size() == 5);
    CHECK(stages[0].title.find("battery disconnected") != std::string::npos);
    CHECK(stages[1].title.find("standing") != std::string::npos);
    CHECK(stages[4].title.find("low speed") != std::string::npos);
    int step = 0;
    for (const SheetTable& stage : stages) {
        for (const Row& row : stage.rows) {
            REQUIRE(row.size() == stage.columns.size());
            CHECK(row[0] == std::to_string(++step));
            CHECK_FALSE(row[3].empty());
            CHECK(row.at(stage.toFillIn.value()).empty());
            CHECK_FALSE(row[5].empty());
        }
    }
    CHECK_FALSE(vanCommissioning().stopConditions.empty());
}

TEST_CASE("coils are measured at the value on their nameplate", "[sheet][commissioning]") {
    CHECK(expected(0, "K1:86") == "90 Ω ± 9 Ω");
}

TEST_CASE("at rest there is battery voltage before the open switch and none behind it",
          "[sheet][commissioning]") {
    // A charged lead-acid battery at rest has 12.6 to 12.8 V: common practice, no published source.
    CHECK(expected(1, "G1:30").starts_with("12."));
    CHECK(expected(1, "S1:1").starts_with("12."));
    CHECK(expected(1, "K1:86") == "0 V ± 0.3 V");
    CHECK(expected(2, "K1:86").starts_with("12."));
}

TEST_CASE("the pump stops at the vacuum at which its switch opens", "[sheet][commissioning]") {
    // 50 kPa + 5 kPa; without a timer the pump stops at once.
    const std::string vacuum = expected(2, "vacuum gauge at the booster");
    INFO(vacuum);
    CHECK(std::stoi(vacuum) >= 54);
    CHECK(std::stoi(vacuum) <= 57);
}

TEST_CASE("a resistor across the coil is seen by the ohmmeter", "[sheet][commissioning]") {
    Circuit circuit = vanCircuit();
    circuit.parts.at(PartId{"K1"}).choices["suppression"] = "resistor";
    circuit.parts.at(PartId{"K1"}).values["suppressionResistance_ohm"] = 180;
    // 90 Ω beside 180 Ω: 90 · 180 / 270 = 60 Ω.
    CHECK(commissioningOf(circuit).stages[0].rows[1][3] == "60 Ω ± 6 Ω");
}

TEST_CASE("expected readings are rounded, and told to be missing where they are", "[sheet][commissioning]") {
    CHECK(expectedText(12.6543, 0.3, QuantityKind::Voltage) == "12.7 V ± 0.3 V");
    CHECK(expectedText(std::nullopt, 0.3, QuantityKind::Voltage) == "not reached in the simulation");
    // 50.8 kPa is 15 inHg: 15 · 3.386 kPa = 50.79 kPa (NIST SP 811).
    CHECK(expectedText(50796, 3000, QuantityKind::GaugeVacuum) == "50.8 kPa (15 inHg) ± 3 kPa");
}

TEST_CASE("a circuit without a pump, and an empty one, have no step that needs one",
          "[sheet][commissioning]") {
    CHECK(commissioningOf(Circuit{}).stages.empty());
    CHECK(commissioningOf(CircuitBuilder().part("supply", "G1").build()).stages.size() == 1);
}

TEST_CASE("how it works is told in five sentences that name what does what", "[sheet][how-it-works]") {
    const WiringSheet sheet = wiringSheet(vanCircuit(), {}, "");
    REQUIRE(sheet.howItWorks.size() == 5);
    CHECK(sheet.howItWorks[0] ==
          "M1 vacuum pump gets its current from G1 supply through F1 (15 A) and K1, and "
          "gives it back over the body at X2.");
    CHECK(sheet.howItWorks[1] == "What switches it is fed in turn: K1 relay through F2 (5 A), S1 and B1.");
    CHECK(sheet.howItWorks[2].starts_with("B1 vacuum switch closes when the vacuum has fallen to 50 kPa"));
    CHECK(sheet.howItWorks[3].find("R9") != std::string::npos);
    CHECK(sheet.howItWorks[4] == "Nothing in this circuit warns the driver when the vacuum is low.");
    for (const std::string& sentence : wiringSheet(Circuit{}, {}, "").howItWorks) {
        CHECK(sentence.ends_with('.'));
    }
}

TEST_CASE("the socket view shows every terminal of a relay with its wires, and no two in one place",
          "[sheet][sockets]") {
    const auto sockets = wiringSheet(vanCircuit(), {}, "").sockets;
    REQUIRE(sockets.size() == 1);
    CHECK(sockets[0].title == "K1 relay");
    REQUIRE(sockets[0].pins.size() == 4);
    for (const SocketPin& pin : sockets[0].pins) {
        CHECK(pin.wires.starts_with("W"));
        CHECK(std::ranges::count_if(sockets[0].pins, [&](const SocketPin& other) {
                  return std::abs(other.x - pin.x) + std::abs(other.y - pin.y) < 0.1;
              }) == 1);
    }
}

TEST_CASE("connectors, splices and ground points are listed with the wires that meet there",
          "[sheet][connections]") {
    const SheetTable table = wiringSheet(vanCircuit(), {}, "").connections;
    REQUIRE(table.rows.size() == 3);
    CHECK(table.rows[0] == Row{"X1 ground point", "–", "31", "W1 BK 6 mm² to G1:31"});
}
