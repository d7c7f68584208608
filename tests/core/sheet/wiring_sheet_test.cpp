#include "core/sheet/wiring_sheet.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <algorithm>

using namespace pumpwright;

namespace {

using Row = std::vector<std::string>;

Circuit lampCircuit() {
    Circuit circuit = CircuitBuilder()
                          .part("supply", "G1")
                          .part("ground", "X1")
                          .part("fuse", "F1", {{"rating_A", 7.5}})
                          .part("lamp", "P1")
                          .wire("G1.31", "X1.31", 4e-6, 0.3)
                          .wire("G1.30", "F1.1", 1.5e-6, 0.2)
                          .wire("F1.2", "P1.1", 0.75e-6, 2.5)
                          .wire("P1.2", "X1.31", 0.75e-6, 0.4)
                          .build();
    circuit.wires.at(WireId{"w3"}).colour = "GYRD";
    circuit.wires.at(WireId{"w2"}).reference = "W10"; // printed after W3 and W4
    circuit.title.title = "Lamp";
    return circuit;
}

Finding finding(const std::string& what, SignalWord word = SignalWord::Caution) {
    Finding one;
    one.rule = "some-rule";
    one.title = "Some rule";
    one.word = word;
    one.what = what;
    one.source = "common practice, no published source";
    one.why = say("Because.");
    one.remedies = {{say("Do something."), std::nullopt}};
    return one;
}

} // namespace

TEST_CASE("the wire table says all that is needed to cut, run and protect a wire", "[sheet][wires]") {
    const SheetTable table = wiringSheet(lampCircuit(), {}, "").wires;
    REQUIRE(table.rows.size() == 4);
    // The gauges nearest to 4, 0.75 and 1.5 mm² are 11 (4.172 mm²), 18 (0.823 mm²) and 15 (1.650 mm²): ASTM
    // B258.
    // Cut lengths by hand: 0.3 · 1.05 + 0.1 = 0.415 → 0.42; 2.5 · 1.05 + 0.1 = 2.725 → 2.73; 0.2 · 1.05 + 0.1
    // = 0.31.
    CHECK(table.rows[0] == Row{"W1", "G1 supply", "31", "ring M6", "X1 ground point", "31", "ring M6", "BK",
                               "4", "11", "0.3", "0.42", "T105", "ground"});
    CHECK(table.rows[1] == Row{"W3", "F1 fuse", "2", "blade 6.3", "P1 lamp", "1", "blade 6.3", "GYRD", "0.75",
                               "18", "2.5", "2.73", "T105", "F1"});
    CHECK(table.rows[3] == Row{"W10", "G1 supply", "30", "ring M6", "F1 fuse", "1", "blade 6.3", "BK", "1.5",
                               "15", "0.2", "0.31", "T105", "none"});
}

TEST_CASE("every row of every table has a cell for each column", "[sheet]") {
    const WiringSheet sheet = wiringSheet(lampCircuit(), {finding("Something.")}, "");
    for (const SheetTable* table : {&sheet.wires, &sheet.hoses, &sheet.connections, &sheet.parts,
                                    &sheet.fuses, &sheet.setPoints, &sheet.findings}) {
        INFO(table->title);
        CHECK(table->numeric.size() == table->columns.size());
        CHECK(std::ranges::all_of(table->rows,
                                  [&](const Row& row) { return row.size() == table->columns.size(); }));
    }
}

TEST_CASE("hoses are listed with both ports and their inner diameter", "[sheet][hoses]") {
    const Circuit circuit = CircuitBuilder()
                                .part("pump", "M1")
                                .part("booster", "A1")
                                .hose("M1.inlet", "A1.vacuum", 0.009, 0.75)
                                .build();
    const SheetTable table = wiringSheet(circuit, {}, "").hoses;
    REQUIRE(table.rows.size() == 1);
    CHECK(table.rows[0][0] == "H1");
    CHECK(table.rows[0][2] == "inlet");
    CHECK(table.rows[0][4] == "vacuum");
    CHECK(table.rows[0][5] == "9");
    CHECK(table.rows[0][6] == "0.75");
}

TEST_CASE("the fuse table names the wires behind each fuse and the thinnest of them", "[sheet][fuses]") {
    const SheetTable table = wiringSheet(lampCircuit(), {}, "").fuses;
    REQUIRE(table.rows.size() == 1);
    CHECK(table.rows[0][0] == "F1");
    CHECK(table.rows[0][1] == "7.5");
    CHECK(table.rows[0][3] == "W3");
    CHECK(table.rows[0][4] == "0.75");
}

TEST_CASE("a fuse that protects nothing says so", "[sheet][fuses]") {
    const SheetTable table = wiringSheet(CircuitBuilder().part("fuse", "F1").build(), {}, "").fuses;
    REQUIRE(table.rows.size() == 1);
    CHECK(table.rows[0][3] == "none");
}

TEST_CASE("set points are listed in kilopascals and in inches of mercury", "[sheet][set-points]") {
    const Circuit circuit =
        CircuitBuilder().part("vacuum-switch", "B1", {{"setPoint_Pa", 50e3}}).part("resistor", "R1").build();
    const SheetTable table = wiringSheet(circuit, {}, "").setPoints;
    // 50 kPa / 3.38639 kPa (one conventional inch of mercury at 0 °C, NIST SP 811) = 14.76, to three
    // digits 14.8.
    for (const Row& row : table.rows) {
        UNSCOPED_INFO(row[0] << " | " << row[1] << " | " << row[2]);
    }
    const bool found = std::ranges::any_of(table.rows, [](const Row& row) {
        return row[0] == "B1 vacuum switch" && row[2] == "50 kPa (14.8 inHg)";
    });
    CHECK(found);
    CHECK(std::ranges::none_of(table.rows, [](const Row& row) { return row[0].starts_with("R1"); }));
}

TEST_CASE("open findings come before accepted ones, which carry their reason and initials",
          "[sheet][findings]") {
    Finding waived = finding("Accepted thing.", SignalWord::Danger);
    waived.waiver = Waiver{"some-rule", {}, "measured on the bench", "ab", 0};
    Finding open = finding("Open thing.", SignalWord::Notice);
    open.parts = {PartId{"P1"}};
    open.wires = {WireId{"w2"}};
    const SheetTable table = wiringSheet(lampCircuit(), {waived, open}, "").findings;
    REQUIRE(table.rows.size() == 2);
    CHECK(table.rows[0] == Row{"NOTICE", "P1, W10", "Open thing.", "common practice, no published source",
                               "Do something.", "open"});
    CHECK(table.rows[1].back() == "accepted: measured on the bench (ab)");
    CHECK(table.rows[1][1] == "–");
}

TEST_CASE("the sheet carries title block, check sum and all cautions", "[sheet]") {
    const WiringSheet sheet = wiringSheet(lampCircuit(), {}, "ab12cd34");
    CHECK(sheet.title.title == "Lamp");
    CHECK(sheet.checkSum == "ab12cd34");
    CHECK(sheet.cautions == cautions());
}

TEST_CASE("the cautions say what the README promises", "[sheet][cautions]") {
    const auto said = [](const std::string& words) {
        return std::ranges::any_of(
            cautions(), [&](const std::string& caution) { return caution.find(words) != std::string::npos; });
    };
    CHECK(said("safety-critical"));
    CHECK(said("estimates from the values entered"));
    CHECK(said("qualified person"));
    CHECK(said("roadworthiness law decides"));
    CHECK(said("vehicle stationary first"));
    CHECK(said("Disconnect the battery"));
}

TEST_CASE("the same circuit gives the same sheet", "[sheet]") {
    const WiringSheet one = wiringSheet(lampCircuit(), {finding("x")}, "s");
    const WiringSheet two = wiringSheet(lampCircuit(), {finding("x")}, "s");
    CHECK(one.wires.rows == two.wires.rows);
    CHECK(one.parts.rows == two.parts.rows);
    CHECK(one.findings.rows == two.findings.rows);
}

TEST_CASE("a circuit with nothing in it has empty tables and a total of nothing", "[sheet]") {
    const WiringSheet sheet = wiringSheet(Circuit{}, {}, "");
    CHECK(sheet.wires.rows.empty());
    CHECK(sheet.findings.rows.empty());
    REQUIRE(sheet.parts.rows.size() == 1);
    CHECK(sheet.parts.rows[0].back() == "0.00");
}
