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
    // As cut, by hand: 2.4 · 1.05 + 0.1 = 2.62; 0.6 · 1.05 + 0.1 = 0.73; together 3.35; 3.35 · 0.60 = 2.01.
    CHECK_THAT(thick.quantity, WithinAbs(3.35, 1e-12));
    CHECK_THAT(thick.sum, WithinAbs(2.01, 1e-9));

    circuit.wires.at(WireId{"w3"}).colour = "RD";
    CHECK(lineWith(billOf(circuit), "W1").references == std::vector<std::string>{"W1"});
}

TEST_CASE("sums are rounded line by line and the total is what the printed lines add up to",
          "[sheet][bill]") {
    // By hand: 2 × 0.35 = 0.70; 3.35 × 0.60 = 2.01; 1.25 · 1.05 + 0.1 = 1.4125, cut to 1.42; 1.42 × 0.33 =
    // 0.4686 → 0.47; 0.5 × 3.15 = 1.575 → 1.58; 0.70 + 2.01 + 0.47 + 1.58 = 4.76.
    const Bill bill = billOf(pricedCircuit());
    CHECK_THAT(lineWith(bill, "W2").sum, WithinAbs(0.47, 1e-9));
    CHECK_THAT(lineWith(bill, "H1").sum, WithinAbs(1.58, 1e-9));
    CHECK_THAT(bill.total, WithinAbs(4.76, 1e-9));
}

TEST_CASE("a part without a price is counted, not taken for free", "[sheet][bill]") {
    const Bill bill = billOf(pricedCircuit());
    CHECK_FALSE(lineWith(bill, "R3").price.has_value());
    // R3, both reservoirs, and crimps and sleeves of the sizes for 0.75, 1.5 and 1.5 + 0.75 mm²: of these the
    // latter two are the same barrel and the same sleeve.
    CHECK(bill.unpriced == 6);

    const SheetTable table = wiringSheet(pricedCircuit(), {}, "").parts;
    const std::vector<std::string> last{"", "",    "Total", "without 6 lines that no price was entered for",
                                        "", "EUR", "4.76"};
    CHECK(table.rows.back() == last);
}

TEST_CASE("a part from a known catalogue entry is called by the entry's title", "[sheet][bill]") {
    Circuit circuit = pricedCircuit();
    circuit.parts.at(PartId{"R3"}).catalogue = "bleeder";
    CHECK(lineWith(billOf(circuit, {.titles = {{"bleeder", "Bleeder resistor"}}}), "R3").description ==
          "Bleeder resistor");
    CHECK(lineWith(billOf(circuit), "R3").description == "Resistor");
}

TEST_CASE("one barrel and one sleeve are counted where wires meet, a ring for each wire under a nut",
          "[sheet][bill][making-up]") {
    // By hand: W1 and W2 each have a ring at X1; both have the barrel at R1:1 in common.
    const Circuit circuit = CircuitBuilder()
                                .part("ground", "X1")
                                .part("resistor", "R1")
                                .wire("X1.31", "R1.1", 1.5e-6, 1)
                                .wire("X1.31", "R1.1", 0.75e-6, 1)
                                .build();
    const Bill bill = billOf(circuit);
    const auto count = [&](const std::string& ratings) {
        double pieces = 0;
        for (const BillLine& line : bill.lines) {
            pieces += line.ratings == ratings ? line.quantity : 0;
        }
        return pieces;
    };
    CHECK_THAT(count("ring M6, for 1.5–2.5 mm²"), WithinAbs(1, 0));
    CHECK_THAT(count("ring M6, for 0.5–1 mm²"), WithinAbs(1, 0));
    CHECK_THAT(count("splice, for 1.5–2.5 mm²"), WithinAbs(1, 0));
    CHECK_THAT(count("6.4 mm before shrinking, 30 mm long"), WithinAbs(1, 0));
    CHECK_THAT(count("4.8 mm before shrinking, 30 mm long"), WithinAbs(1, 0));
    CHECK_THAT(count("6.4 mm before shrinking, 60 mm long"), WithinAbs(1, 0));
}

TEST_CASE("crimp terminals and sleeves are priced by the piece, large terminals by their own price",
          "[sheet][bill][making-up]") {
    // By hand: a wire of 10 mm² with a ring at each end, and one of 0.75 mm² with a ring at X1 and the barrel
    // at R1:1. 2 large terminals at 1.20 = 2.40; 2 small ones at 0.20, which are a ring and a splice and so
    // stand on two lines, 0.20 + 0.20; 4 sleeves at 0.15: two of 12.7 mm, 0.30, one of 4.8 mm and 30 mm, one
    // of 60 mm, 0.15 each. 2.40 + 0.40 + 0.60 = 3.40.
    const Circuit circuit = CircuitBuilder()
                                .part("ground", "X1")
                                .part("ground", "X2")
                                .part("resistor", "R1")
                                .wire("X1.31", "X2.31", 10e-6, 1)
                                .wire("X1.31", "R1.1", 0.75e-6, 1)
                                .build();
    const PriceList prices{
        .titles = {}, .currency = "EUR", .smallCrimp = 0.20, .largeCrimp = 1.20, .sleeve = 0.15};
    const Bill bill = billOf(circuit, prices);
    CHECK_THAT(bill.total, WithinAbs(3.40, 1e-9));
    CHECK(bill.unpriced == 4); // X1 and X2 on one line, R1, and both sorts of wire
    CHECK_THAT(billOf(circuit).total, WithinAbs(0, 0));

    PriceList crowns = prices;
    crowns.currency = "SEK";
    CHECK_THAT(billOf(circuit, crowns).total, WithinAbs(0, 0));
}

TEST_CASE("what the simulation assumes of a fuse is no rating", "[sheet][bill][fuses]") {
    const Circuit circuit = CircuitBuilder().part("fuse", "F1", {{"rating_A", 15}}).build();
    CHECK(lineWith(billOf(circuit), "F1").ratings == "15 A, 32 V; type (ISO 8820-3): C, medium");
    CHECK(wiringSheet(circuit, {}, "").fuses.rows.at(0).at(2) == "C, medium");
}

TEST_CASE("an empty circuit costs nothing", "[sheet][bill]") {
    const Bill bill = billOf(Circuit{});
    CHECK(bill.lines.empty());
    CHECK_THAT(bill.total, WithinAbs(0, 0));
}
