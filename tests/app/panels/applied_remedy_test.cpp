#include "app/desktop/panels/applied_remedy.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

TEST_CASE("a remedy leaves labels where somebody moved them since, but not that of a wire led elsewhere",
          "[panels]") {
    Circuit circuit = CircuitBuilder()
                          .part("fuse", "F1")
                          .part("lamp", "P1")
                          .wire("F1.2", "P1.1")
                          .wire("F1.1", "P1.2")
                          .build();
    const Edit remedy{"Change all",
                      {putPart({"F1"}, circuit.parts.at({"F1"})), putWire({"w1"}, circuit.wires.at({"w1"})),
                       putWire({"w2"}, circuit.wires.at({"w1"}))}};
    circuit.parts.at({"F1"}).labelFrom = LabelOffset{20, 5};
    circuit.wires.at({"w1"}).labelFrom = LabelOffset{0, 9};
    circuit.wires.at({"w2"}).labelFrom = LabelOffset{0, 7};
    Circuit after = circuit;
    applyEdit(after, remedyAsDrawn(circuit, remedy));
    CHECK(after.parts.at({"F1"}).labelFrom == LabelOffset{20, 5});
    CHECK(after.wires.at({"w1"}).labelFrom == LabelOffset{0, 9});
    CHECK_FALSE(after.wires.at({"w2"}).labelFrom);
}
