#pragma once

#include "core/circuit/circuit.h"

namespace pumpwright {

/// The circuit with as many more lamps on F2 as make it this large.
inline Circuit enlarged(Circuit circuit, std::size_t parts) {
    const Part lamp = circuit.parts.at(PartId{"P1"});
    const Part ground = circuit.parts.at(PartId{"X1"});
    for (int i = 0; circuit.parts.size() < parts; ++i) {
        const PartId lampId{"lamp" + std::to_string(i)};
        const PartId groundId{"ground" + std::to_string(i)};
        Part one = lamp;
        one.reference = freeReference(circuit, "P");
        one.at = {70 + 8 * (i % 12), 10 + 16 * (i / 12)};
        circuit.parts[lampId] = one;
        Part two = ground;
        two.reference = freeReference(circuit, "X");
        two.at = {one.at.x, one.at.y + 6};
        circuit.parts[groundId] = two;
        const std::pair<End, End> ends[] = {{{PartId{"F2"}, "2"}, {lampId, "1"}},
                                            {{lampId, "2"}, {groundId, "31"}}};
        for (const auto& [from, to] : ends) {
            Wire wire;
            wire.reference = freeReference(circuit, "W");
            wire.from = from;
            wire.to = to;
            wire.area_m2 = 0.75e-6;
            circuit.wires[freeWireId(circuit)] = wire;
        }
    }
    return circuit;
}

} // namespace pumpwright
