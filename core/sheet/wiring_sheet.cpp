#include "core/sheet/wiring_sheet.h"

#include "core/nets/nets.h"
#include "core/sheet/protection.h"
#include "core/sheet/tables_p.h"

namespace pumpwright {

WiringSheet wiringSheet(const Circuit& circuit, const std::vector<Finding>& findings, std::string checkSum,
                        const CatalogueTitles& titles) {
    const auto protection = wireProtection(circuit, findNets(circuit));
    WiringSheet sheet;
    sheet.title = circuit.title;
    sheet.checkSum = std::move(checkSum);
    sheet.wires = wireTable(circuit, protection);
    sheet.hoses = hoseTable(circuit);
    sheet.parts = partsList(circuit, titles);
    sheet.fuses = fuseTable(circuit, protection);
    sheet.setPoints = setPointTable(circuit);
    sheet.findings = findingTable(circuit, findings);
    sheet.cautions = cautions();
    return sheet;
}

} // namespace pumpwright
