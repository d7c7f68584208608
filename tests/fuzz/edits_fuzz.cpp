// The input's bytes decide over a circuit and what is done to it, step by step, and how much of it is taken
// back.

#include "core/circuit/edit.h"
#include "core/files/circuit_file.h"
#include "core/parts/lost_ends.h"
#include "tests/fuzz/compact_circuit.h"
#include "tests/fuzz/promise.h"

#include <vector>

using namespace pumpwright;

namespace {

struct Step {
    Edit inverse;
    std::string before;
};

void takeBack(Circuit& circuit, std::vector<Step>& steps, std::vector<Edit>& redone) {
    redone.push_back(applyEdit(circuit, steps.back().inverse));
    require(circuitText(circuit) == steps.back().before, "an edit taken back leaves the same bytes");
    steps.pop_back();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    RandomCircuits random(std::span(data, size));
    Circuit circuit = compactCircuit(random, 5);
    std::vector<Step> steps;
    std::vector<Edit> redone;
    while (!random.isExhausted()) {
        if (!steps.empty() && random.chance(30)) {
            takeBack(circuit, steps, redone);
            continue;
        }
        redone.clear();
        const Edit whole = editWithLostEnds(circuit, random.edit(circuit));
        steps.push_back({{}, circuitText(circuit)});
        steps.back().inverse = applyEdit(circuit, whole);
        const auto read = parseCircuit(circuitText(circuit), "input");
        require(read && *read == circuit, "whatever the edits, the circuit can be saved and read");
    }
    const Circuit last = circuit;
    redone.clear();
    while (!steps.empty()) {
        takeBack(circuit, steps, redone);
    }
    for (; !redone.empty(); redone.pop_back()) {
        applyEdit(circuit, redone.back());
    }
    require(circuit == last, "edits made again lead to the same circuit");
    return 0;
}
