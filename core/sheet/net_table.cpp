#include "core/nets/nets.h"
#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/wiring_sheet.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {

SheetTable netTable(const Circuit& circuit) {
    SheetTable table{"Nets", {"Net", "Terminals", "Wires"}, {true, false, false}, {}};
    for (const Net& net : findNets(circuit).nets) {
        if (net.terminals.size() < 2) {
            continue;
        }
        std::vector<std::string> terminals;
        for (const Node& node : net.terminals) {
            terminals.push_back(fmt::format("{}:{}", circuit.parts.at(node.part).reference, node.terminal));
        }
        std::vector<std::string> wires;
        for (const WireId& wire : net.wires) {
            wires.push_back(circuit.wires.at(wire).reference);
        }
        table.rows.push_back({std::to_string(table.rows.size() + 1), joinedReferences(std::move(terminals)),
                              wires.empty() ? kNothing : joinedReferences(std::move(wires))});
    }
    return table;
}

} // namespace pumpwright
