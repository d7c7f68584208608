#include "app/desktop/document/same_results.h"

namespace pumpwright {

Circuit withoutDrawing(Circuit circuit) {
    for (auto& [id, part] : circuit.parts) {
        part.at = {};
        part.quarterTurns = 0;
        part.mirrored = false;
        part.labelFrom.reset();
    }
    for (auto& [id, wire] : circuit.wires) {
        wire.bends.clear();
        wire.labelFrom.reset();
    }
    for (auto& [id, hose] : circuit.hoses) {
        hose.bends.clear();
        hose.labelFrom.reset();
    }
    return circuit;
}

bool haveSameResults(const Circuit& a, const Circuit& b) {
    return a.parts == b.parts && a.wires == b.wires && a.hoses == b.hoses && a.plan == b.plan &&
           a.limits == b.limits && a.waivers == b.waivers;
}

} // namespace pumpwright
