#include "core/parts/part_kind.h"
#include "core/sheet/comparison.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <algorithm>

using namespace pumpwright;

namespace {

Circuit fusedCircuit() {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1", {{"rating_A", 15}})
        .part("lamp", "P1")
        .wire("G1.30", "F1.1", 1.5e-6, 0.2)
        .wire("F1.2", "P1.1", 0.75e-6, 2.5)
        .build();
}

Comparison compared(const Circuit& before, const Circuit& after, const std::vector<Finding>& was = {},
                    const std::vector<Finding>& is = {}) {
    return comparisonOf({before, was}, {after, is});
}

Finding findingAbout(const char* wire, const char* what) {
    Finding finding;
    finding.title = "Wire too thin";
    finding.word = SignalWord::Warning;
    finding.wires = {WireId{wire}};
    finding.what = say(what);
    return finding;
}

} // namespace

TEST_CASE("a circuit compared with itself differs in nothing", "[sheet][compare]") {
    const Comparison same =
        compared(fusedCircuit(), fusedCircuit(), {findingAbout("w1", "x")}, {findingAbout("w1", "x")});
    CHECK(same.circuit.empty());
    CHECK(same.findings.empty());
    CHECK(same.moved == 0);
}

TEST_CASE("a changed value is told with its name, before and after", "[sheet][compare]") {
    Circuit after = fusedCircuit();
    after.parts.at(PartId{"F1"}).values["rating_A"] = 7.5;
    after.wires.at(WireId{"w2"}).colour = "GYRD";
    const Comparison comparison = compared(fusedCircuit(), after);
    REQUIRE(comparison.circuit.size() == 2);
    CHECK(differenceTable(comparison).rows[0] ==
          std::vector<std::string>{"changed", "F1 fuse", "Rating", "15 A", "7.5 A"});
    CHECK(differenceTable(comparison).rows[1] ==
          std::vector<std::string>{"changed", "Wire W2", "Colour", "BK", "GYRD"});
}

TEST_CASE("values that are shown alike and differ are told with all their digits", "[sheet][compare]") {
    Circuit after = fusedCircuit();
    after.wires.at(WireId{"w1"}).length_m = 0.2000001;
    const Comparison comparison = compared(fusedCircuit(), after);
    REQUIRE(comparison.circuit.size() == 1);
    CHECK(comparison.circuit[0].before != comparison.circuit[0].after);
}

TEST_CASE("what was added and what was removed is told by reference", "[sheet][compare]") {
    Circuit after = fusedCircuit();
    after.wires.erase(WireId{"w2"});
    after.parts.erase(PartId{"P1"});
    after.parts[PartId{"p9"}] = newPart(kindOf(fusedCircuit().parts.at(PartId{"F1"})), "F2", {});
    const Comparison comparison = compared(fusedCircuit(), after);
    REQUIRE(comparison.circuit.size() == 3);
    CHECK(comparison.circuit[0].about == "F2 fuse");
    CHECK(comparison.circuit[0].sort == ChangeSort::Added);
    CHECK(comparison.circuit[1].about == "P1 lamp");
    CHECK(comparison.circuit[1].sort == ChangeSort::Removed);
    CHECK(comparison.circuit[2].about == "Wire W2");
}

TEST_CASE("parts of equal reference are the same whatever their ids, a renamed part is changed",
          "[sheet][compare]") {
    Circuit after = fusedCircuit();
    auto fuse = after.parts.extract(PartId{"F1"});
    fuse.key() = PartId{"p7"};
    after.parts.insert(std::move(fuse));
    after.wires.at(WireId{"w1"}).to.part = PartId{"p7"};
    after.wires.at(WireId{"w2"}).from.part = PartId{"p7"};
    after.parts.at(PartId{"P1"}).reference = "P5";
    const Comparison comparison = compared(fusedCircuit(), after);
    REQUIRE_FALSE(comparison.circuit.empty());
    CHECK(comparison.circuit[0].value == "Reference");
    CHECK(comparison.circuit[0].after == "P5");
    CHECK(std::ranges::none_of(comparison.circuit, [](const Difference& one) {
        return one.sort != ChangeSort::Changed || one.about.starts_with("F1");
    }));
}

TEST_CASE("a part that only stands elsewhere is counted, not listed", "[sheet][compare]") {
    Circuit after = fusedCircuit();
    after.parts.at(PartId{"P1"}).at = {99, 99};
    const Comparison comparison = compared(fusedCircuit(), after);
    CHECK(comparison.circuit.empty());
    CHECK(comparison.moved == 1);
}

TEST_CASE("findings that went, came and changed are told, worst news first", "[sheet][compare]") {
    const Comparison comparison =
        compared(fusedCircuit(), fusedCircuit(), {findingAbout("w1", "carries 20 A")},
                 {findingAbout("w1", "carries 18 A"), findingAbout("w2", "carries 9 A")});
    REQUIRE(comparison.findings.size() == 2);
    CHECK(comparison.findings[0].sort == ChangeSort::Added);
    CHECK(comparison.findings[0].about == "Wire too thin (W2)");
    CHECK(comparison.findings[1].before == "WARNING: carries 20 A");
    CHECK(comparison.findings[1].after == "WARNING: carries 18 A");
}
