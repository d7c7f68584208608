#include "core/sheet/bill.h"
#include "core/sheet/wiring_sheet.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

/// Two equal resistors at 0.35, one other without a price; 2.40 m and 0.60 m of one wire at 0.60 a
/// metre, 1.25 m of another at 0.33; half a metre of hose at 3.15.
Circuit pricedCircuit() {
    Circuit circuit = CircuitBuilder()
                          .part("resistor", "R10", {{"resistance_ohm", 680}})
                          .part("resistor", "R2", {{"resistance_ohm", 680}})
                          .part("resistor", "R3", {{"resistance_ohm", 100}})
                          .part("reservoir", "C1")
                          .part("reservoir", "C2")
                          .wire("R2.1", "R3.1", 1.5e-6, 2.4)
                          .wire("R2.2", "R3.2", 0.75e-6, 1.25)
                          .wire("R10.1", "R3.2", 1.5e-6, 0.6)
                          .hose("C1.a", "C2.a", 0.009, 0.5)
                          .build();
    for (const char* id : {"R10", "R2"}) {
        circuit.parts.at(PartId{id}).price = 0.35;
    }
    circuit.wires.at(WireId{"w1"}).price_perMetre = 0.60;
    circuit.wires.at(WireId{"w2"}).price_perMetre = 0.33;
    circuit.wires.at(WireId{"w3"}).price_perMetre = 0.60;
    circuit.hoses.at(HoseId{"h1"}).price_perMetre = 3.15;
    return circuit;
}

const BillLine& lineWith(const Bill& bill, const std::string& reference) {
    for (const BillLine& line : bill.lines) {
        for (const std::string& one : line.references) {
            if (one == reference) {
                return line;
            }
        }
    }
    FAIL("no line holds " << reference);
    return bill.lines.front();
}

} // namespace

TEST_CASE("equal parts share a line that lists them in order", "[sheet][bill]") {
    const Bill bill = billOf(pricedCircuit());
    const BillLine& line = lineWith(bill, "R2");
    CHECK(line.references == std::vector<std::string>{"R2", "R10"});
    CHECK_THAT(line.quantity, WithinAbs(2, 0));
    CHECK_THAT(line.sum, WithinAbs(0.70, 1e-9));
    CHECK(line.unit == "pc");
}

TEST_CASE("parts that differ in a rating have lines of their own", "[sheet][bill]") {
    CHECK(lineWith(billOf(pricedCircuit()), "R3").references == std::vector<std::string>{"R3"});
}

TEST_CASE("wire is bought by the metre of one gauge, colour and insulation", "[sheet][bill]") {
    Circuit circuit = pricedCircuit();
    const BillLine& thick = lineWith(billOf(circuit), "W1");
    CHECK(thick.references == std::vector<std::string>{"W1", "W3"});
    CHECK_THAT(thick.quantity, WithinAbs(3.0, 1e-12));
    CHECK_THAT(thick.sum, WithinAbs(1.80, 1e-9));

    circuit.wires.at(WireId{"w3"}).colour = "RD";
    CHECK(lineWith(billOf(circuit), "W1").references == std::vector<std::string>{"W1"});
}

TEST_CASE("sums are rounded line by line and the total is what the printed lines add up to",
          "[sheet][bill]") {
    // By hand: 2 × 0.35 = 0.70; 3.00 × 0.60 = 1.80; 1.25 × 0.33 = 0.4125 → 0.41; 0.5 × 3.15 = 1.575 → 1.58;
    // 0.70 + 1.80 + 0.41 + 1.58 = 4.49.
    const Bill bill = billOf(pricedCircuit());
    CHECK_THAT(lineWith(bill, "W2").sum, WithinAbs(0.41, 1e-9));
    CHECK_THAT(lineWith(bill, "H1").sum, WithinAbs(1.58, 1e-9));
    CHECK_THAT(bill.total, WithinAbs(4.49, 1e-9));
}

TEST_CASE("a part without a price is counted, not taken for free", "[sheet][bill]") {
    const Bill bill = billOf(pricedCircuit());
    CHECK_FALSE(lineWith(bill, "R3").price.has_value());
    CHECK(bill.unpriced == 2); // R3, and the line of both reservoirs

    const SheetTable table = wiringSheet(pricedCircuit(), {}, "").parts;
    const std::vector<std::string> last{"", "",    "Total", "without 2 lines that no price was entered for",
                                        "", "EUR", "4.49"};
    CHECK(table.rows.back() == last);
}

TEST_CASE("a part from a known catalogue entry is called by the entry's title", "[sheet][bill]") {
    Circuit circuit = pricedCircuit();
    circuit.parts.at(PartId{"R3"}).catalogue = "bleeder";
    CHECK(lineWith(billOf(circuit, {{"bleeder", "Bleeder resistor"}}), "R3").description ==
          "Bleeder resistor");
    CHECK(lineWith(billOf(circuit), "R3").description == "Resistor");
}

TEST_CASE("an empty circuit costs nothing", "[sheet][bill]") {
    const Bill bill = billOf(Circuit{});
    CHECK(bill.lines.empty());
    CHECK_THAT(bill.total, WithinAbs(0, 0));
}
